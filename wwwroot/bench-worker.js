// Lets the bench be opened again without the server: the page as it was last seen, its styles, fonts and scripts.
const KEPT = 'barshow-bench-1';
const PARTS = ['/css/tokens.css', '/css/bench.css', '/js/bench.js', '/js/bench-queue.js', '/favicon.svg'];

self.addEventListener('install', (event) => {
  // Always through the worker: a browser that asks the network beside it would show the network's error.
  event.addRoutes?.({ condition: { urlPattern: '/bench/*' }, source: 'fetch-event' });
  event.waitUntil(caches.open(KEPT).then((cache) => cache.addAll(PARTS)).then(() => self.skipWaiting()));
});
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim().then(async () => {
  // The page that installed this worker was fetched before it: fetch it once more, to keep it.
  const cache = await caches.open(KEPT);
  for (const client of await self.clients.matchAll()) await cache.add(client.url).catch(() => {});
})));

// The server's word first; what is kept only when it does not answer. The log is never answered from here.
self.addEventListener('fetch', (event) => {
  if (event.request.method !== 'GET') return;
  event.respondWith((async () => {
    const cache = await caches.open(KEPT);
    try {
      const answer = await fetch(event.request);
      if (answer.ok) await cache.put(event.request, answer.clone());
      return answer;
    } catch (error) {
      const kept = await cache.match(event.request, { ignoreVary: true });
      if (kept) return kept;
      throw error;
    }
  })());
});
