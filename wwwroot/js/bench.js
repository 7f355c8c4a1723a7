import { BenchQueue } from './bench-queue.js';

const episode = document.body.dataset.episode;
const cards = [...document.querySelectorAll('.card[data-drink]')];
const link = document.querySelector('.link');
const queue = await BenchQueue.open(episode);
let shown = 0;
let downSince = null;

// ---- one drink a screen

function show(place) {
  if (cards.length === 0) return;
  shown = Math.max(0, Math.min(cards.length - 1, place));
  cards.forEach((card, i) => { card.hidden = i !== shown; });
  sessionStorage.setItem(`bench:${episode}`, cards[shown].dataset.drink);
  tellPlace();
  cards[shown].querySelector('h2').focus({ preventScroll: true });
  window.scrollTo(0, 0);
}

function tellPlace() {
  const card = cards[shown];
  document.querySelector('.place').textContent = card ? `${shown + 1} of ${cards.length}, take ${takeOf(card)} of ${card.dataset.takes}` : '';
}

document.addEventListener('keydown', (event) => {
  if (document.querySelector('dialog[open]') || event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement) return;
  const by = { ArrowRight: 1, PageDown: 1, ArrowLeft: -1, PageUp: -1 }[event.key];
  if (!by) return;
  event.preventDefault();
  show(shown + by);
});

// ---- what the log says, drawn on the cards

let log = await queue.all();
const ofCard = (card) => log.filter((entry) => entry.drink === card.dataset.drink);
const takeOf = (card) => 1 + ofCard(card).filter((entry) => entry.kind === 'judged').reduce((most, entry) => Math.max(most, entry.take), 0);

// "1½ oz": the figure big, its unit small beside it.
function write(place, text) {
  const cut = text.lastIndexOf('\u00a0');
  place.textContent = cut < 0 ? text : text.slice(0, cut);
  if (cut < 0) return;
  const unit = document.createElement('i');
  unit.textContent = ` ${text.slice(cut + 1)}`;
  place.append(unit);
}

function draw(card) {
  const take = takeOf(card);
  const entries = ofCard(card).filter((entry) => entry.take === take);
  for (const line of card.querySelectorAll('.line')) {
    const last = entries.filter((entry) => entry.line === Number(line.dataset.line)).at(-1);
    const other = last && (last.kind !== 'poured' || (last.measure ?? '') !== line.dataset.planned);
    const pad = card.querySelector(`.pad[data-line="${line.dataset.line}"]`);
    const step = last?.measure ? [...pad.querySelectorAll('[data-measure]')].find((button) => button.dataset.measure === last.measure) : null;
    write(line.querySelector('.first'), last?.kind === 'left-out' ? '0' : step?.dataset.first ?? (line.dataset.first || '–'));
    write(line.querySelector('.second'), last?.kind === 'left-out' ? '' : step?.dataset.second ?? line.dataset.second);
    line.querySelector('.poured').textContent = !other ? '' : last.kind === 'swapped' ? `poured: ${last.name}` : last.kind === 'left-out' ? 'left out' : `poured; spec ${[line.dataset.first, line.dataset.second].filter(Boolean).join(' · ')}`;
    line.classList.toggle('changed', Boolean(other));
    line.querySelector('.tick').setAttribute('aria-pressed', last ? 'true' : 'false');
  }
  card.querySelector('.added').replaceChildren(...entries.filter((entry) => entry.kind === 'added').map((entry) => {
    const item = document.createElement('li');
    const button = [...card.querySelectorAll('[data-added]')].find((each) => each.dataset.added === entry.measure);
    item.textContent = `added: ${button?.dataset.text ?? ''} ${entry.name}`;
    return item;
  }));
  tellPlace();
}

async function note(card, entry) {
  log.push(await queue.append({ drink: card.dataset.drink, take: takeOf(card), ...entry }));
  draw(card);
  await handOver();
}

// ---- taps

document.addEventListener('click', async (event) => {
  const button = event.target instanceof Element ? event.target.closest('button') : null;
  const card = button?.closest('.card');
  if (!button || !card) return;
  const data = button.dataset;
  const dialog = button.closest('dialog');
  const line = Number(dialog?.dataset.line ?? button.closest('.line')?.dataset.line);
  if (data.turn) show(shown + Number(data.turn));
  else if (data.open) document.getElementById(data.open).showModal();
  else if ('close' in data) dialog.close();
  else if (button.matches('.tick')) {
    const planned = button.closest('.line').dataset.planned;
    await note(card, { kind: 'poured', line, ...(planned ? { measure: planned } : {}) });
  } else if (data.measure) {
    dialog.close();
    await note(card, { kind: 'poured', line, measure: data.measure });
  } else if (data.ingredient) {
    dialog.close();
    await note(card, { kind: 'swapped', line, name: data.name, ingredient: data.ingredient });
  } else if ('leftOut' in data) {
    dialog.close();
    await note(card, { kind: 'left-out', line });
  } else if (data.added) {
    const chosen = dialog.querySelector('.added-name');
    dialog.close();
    await note(card, { kind: 'added', measure: data.added, name: chosen.selectedOptions[0].text, ingredient: chosen.value });
  } else if (data.verdict) {
    const word = card.querySelector('.word input');
    await note(card, { kind: 'judged', verdict: data.verdict, ...(word.value.trim() ? { remark: word.value.trim() } : {}) });
    word.value = '';
    if (data.verdict === 'good' && shown + 1 < cards.length) show(shown + 1);
  } else if (button.matches('.timer')) count(button);
});

// ---- the timer: figures, a flash and a sound

let running = null;
function count(button) {
  if (running) { clearInterval(running.every); reset(running.button); const same = running.button === button; running = null; if (same) return; }
  const until = performance.now() + Number(button.dataset.seconds) * 1000;
  const sound = window.AudioContext ? new AudioContext() : null;
  button.querySelector('span').textContent = `seconds left of ${button.dataset.seconds}`;
  const every = setInterval(() => {
    const left = Math.ceil((until - performance.now()) / 1000);
    button.querySelector('b').textContent = String(Math.max(0, left));
    if (left > 0) return;
    clearInterval(every);
    running = null;
    button.classList.add('done');
    if (sound) {
      const tone = sound.createOscillator();
      tone.frequency.value = 880;
      tone.connect(sound.destination);
      tone.start();
      tone.stop(sound.currentTime + 0.5);
    }
    setTimeout(() => reset(button), 2500);
  }, 100);
  running = { every, button };
}

function reset(button) {
  button.classList.remove('done');
  button.querySelector('b').textContent = button.dataset.seconds;
  button.querySelector('span').textContent = 'seconds: start';
}

// ---- the line to the server

async function handOver() {
  try {
    while ((await queue.waiting()).length > 0) await queue.handOver();
    downSince = null;
  } catch {
    downSince ??= new Date();
  }
  const waiting = (await queue.waiting()).length;
  const time = (when) => `${String(when.getHours()).padStart(2, '0')}:${String(when.getMinutes()).padStart(2, '0')}`;
  link.textContent = downSince ? `Off line since ${time(downSince)}. ${waiting} ${waiting === 1 ? 'entry' : 'entries'} kept here.` : log.length > 0 ? `${log.length} logged and handed over.` : 'Ready.';
  link.classList.toggle('off', Boolean(downSince));
  document.querySelector('.clock').textContent = time(new Date());
}

// ---- the screen stays awake where the browser allows it

async function stayAwake() {
  if (document.visibilityState === 'visible') await navigator.wakeLock?.request('screen').catch(() => {});
}
document.addEventListener('visibilitychange', stayAwake);

navigator.serviceWorker?.register('/bench-worker.js', { scope: '/bench/' }).catch(() => {});
addEventListener('online', handOver);
setInterval(handOver, 5000);
cards.forEach(draw);
show(Math.max(0, cards.findIndex((card) => card.dataset.drink === sessionStorage.getItem(`bench:${episode}`))));
await stayAwake();
await handOver();
document.body.dataset.ready = 'true';
