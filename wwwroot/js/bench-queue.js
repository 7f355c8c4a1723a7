// The bench's own log: kept in the browser's database, handed over in order when the server answers, and never thrown away.

const NAME = 'barshow-bench';

const settled = (request) => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

const finished = (transaction) => new Promise((resolve, reject) => {
  transaction.oncomplete = () => resolve();
  transaction.onerror = () => reject(transaction.error);
  transaction.onabort = () => reject(transaction.error);
});

async function opened() {
  const request = indexedDB.open(NAME, 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore('entries', { keyPath: ['episode', 'sequence'] });
    request.result.createObjectStore('facts');
  };
  return settled(request);
}

export class BenchQueue {
  #db; #episode; #device; #handedOver = 0; #busy = false;

  static async open(episode) {
    const queue = new BenchQueue();
    queue.#db = await opened();
    queue.#episode = episode;
    const transaction = queue.#db.transaction('facts', 'readwrite');
    const facts = transaction.objectStore('facts');
    // The device keeps its name for as long as the browser keeps its database.
    queue.#device = await settled(facts.get('device'));
    if (!queue.#device) {
      queue.#device = `bench-${crypto.getRandomValues(new Uint32Array(2)).join('-')}`;
      facts.put(queue.#device, 'device');
    }
    queue.#handedOver = await settled(facts.get(`handed-over:${episode}`)) ?? 0;
    await finished(transaction);
    return queue;
  }

  get device() { return this.#device; }

  /** Every entry of this device for the episode, in order. */
  async all() {
    const store = this.#db.transaction('entries').objectStore('entries');
    return (await settled(store.getAll(IDBKeyRange.bound([this.#episode, 0], [this.#episode, Infinity])))).map((row) => row.entry);
  }

  /** Entries that the server has not confirmed. */
  async waiting() { return (await this.all()).filter((entry) => entry.sequence > this.#handedOver); }

  /** Appends one entry; two windows of one device never take the same sequence. */
  async append(entry) {
    const transaction = this.#db.transaction('entries', 'readwrite', { durability: 'strict' });
    const store = transaction.objectStore('entries');
    const last = await settled(store.openCursor(IDBKeyRange.bound([this.#episode, 0], [this.#episode, Infinity]), 'prev'));
    const whole = { device: this.#device, sequence: (last?.value.sequence ?? 0) + 1, at: new Date().toISOString(), ...entry };
    store.add({ episode: this.#episode, sequence: whole.sequence, entry: whole });
    await finished(transaction);
    return whole;
  }

  /** Hands over what waits. What was sent but not confirmed is sent again: the server keeps each entry once. */
  async handOver() {
    if (this.#busy) return;
    this.#busy = true;
    try {
      const entries = (await this.waiting()).slice(0, 500);
      if (entries.length === 0) return;
      const answer = await fetch(`/bench/${this.#episode}/entries`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(entries) });
      if (!answer.ok) throw new Error(`The server answered ${answer.status}.`);
      const through = (await answer.json())[this.#device] ?? 0;
      const transaction = this.#db.transaction('facts', 'readwrite');
      transaction.objectStore('facts').put(through, `handed-over:${this.#episode}`);
      await finished(transaction);
      this.#handedOver = through;
    } finally {
      this.#busy = false;
    }
  }
}
