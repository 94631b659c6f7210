// What tests put into the page before the program, so that the program itself is the real one.

// Clocks that stand where they are put, so that no tap is too long or too soon on a busy machine; and
// random numbers, where they are given, four bytes each, lowest first.
export function fixed_world({wall_ms, run_ms, random}) {
  const clock = window.slabsideClock = {wall_ms, run_ms};
  Date.now = () => clock.wall_ms;
  performance.now = () => clock.run_ms;
  Object.defineProperty(Event.prototype, 'timeStamp', {get: () => clock.run_ms});
  if (!random) return;
  const bytes = random.flatMap((number) => [0, 8, 16, 24].map((shift) => (number >>> shift) & 255));
  let drawn = 0;
  crypto.getRandomValues = (into) => {
    if (drawn + into.length > bytes.length) throw new Error('more random numbers than were given');
    for (let i = 0; i < into.length; ++i) into[i] = bytes[drawn++];
    return into;
  };
}

// Counts what the program has asked of the browser and has no answer to yet: to be drawn, its store, its
// learner, a turn that is due at once. Where that is nothing the page is at rest: it shows and has kept all that was
// done to it, and nothing changes until somebody touches it or its clock is put on.
export function tell_rest() {
  let open = 0;
  const draw = window.requestAnimationFrame.bind(window);
  const wait = window.setTimeout.bind(window), forget = window.clearTimeout.bind(window);
  window.requestAnimationFrame = (then) => {
    ++open;
    return draw((at) => { try { then(at); } finally { --open; } });
  };
  const due = new Set();
  window.setTimeout = (then, ms, ...words) => {
    const id = wait(() => { due.delete(id); then(...words); }, ms);
    if (!(ms > 0)) due.add(id);
    return id;
  };
  window.clearTimeout = (id) => { due.delete(id); forget(id); };
  // The program hears the answer before it counts as given.
  const counted = (asked, ...ends) => {
    ++open;
    for (const end of ends) asked.addEventListener(end, () => wait(() => --open, 0), {once: true});
    return asked;
  };
  const {open: open_store} = IDBFactory.prototype, {transaction} = IDBDatabase.prototype;
  IDBFactory.prototype.open = function (...words) {
    return counted(open_store.apply(this, words), 'success', 'error');
  };
  IDBDatabase.prototype.transaction = function (...words) {
    return counted(transaction.apply(this, words), 'complete', 'abort');
  };
  const ask = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (...words) {
    counted(this, 'message');
    return ask.apply(this, words);
  };
  window.slabsideIsAtRest = () => open === 0 && due.size === 0;
}

// Of sessions, in the order of their keys: [[file, n], line]. The page's program must have made the store.
export async function lines_in_store() {
  const store = await new Promise((done, failed) => {
    const asked = indexedDB.open('slabside');
    asked.onupgradeneeded = () => asked.transaction.abort();
    asked.onerror = () => failed(asked.error);
    asked.onsuccess = () => done(asked.result);
  });
  const lines = store.transaction('lines').objectStore('lines');
  const keys = lines.getAllKeys(), values = lines.getAll();
  await new Promise((done) => { values.onsuccess = done; });
  store.close();
  const text = new TextDecoder('utf-8', {fatal: true, ignoreBOM: true});
  return keys.result.map((key, i) => [key, values.result[i]])
    .filter(([[file]]) => file.startsWith('sessions/')).map(([key, line]) => [key, text.decode(line)]);
}

// Tells confirmed(file, n) of every line once the browser has said that it is safe.
export function tell_confirmed() {
  const add = IDBObjectStore.prototype.add;
  IDBObjectStore.prototype.add = function (value, key) {
    if (this.name === 'lines')
      this.transaction.addEventListener('complete', () => window.confirmed(key));
    return add.call(this, value, key);
  };
}

// The browser's disk is full for some lines: those from..to-1, counted as they are added.
export function full_disk({from, to}) {
  const add = IDBObjectStore.prototype.add;
  let count = 0;
  IDBObjectStore.prototype.add = function (value, key) {
    if (this.name === 'lines' && ++count >= from && count < to)
      throw new DOMException('The disk of this test is full.', 'QuotaExceededError');
    return add.call(this, value, key);
  };
}

// A browser without a store, as some are in private windows.
export function no_store() {
  Object.defineProperty(window, 'indexedDB', {get: () => undefined});
}

// Packs that are handed to somebody or saved come here instead: each a file.
export function catch_packs({shares}) {
  const packs = window.slabsidePacks = [];
  const blobs = new Map(), click = HTMLAnchorElement.prototype.click, address = URL.createObjectURL;
  URL.createObjectURL = (blob) => {
    const place = address.call(URL, blob);
    blobs.set(place, blob);
    return place;
  };
  URL.revokeObjectURL = () => {};
  HTMLAnchorElement.prototype.click = function () {
    const blob = blobs.get(this.getAttribute('href'));
    if (!blob) return click.call(this);
    packs.push(new File([blob], this.download));
  };
  if (!shares) return;
  navigator.canShare = ({files}) => files.length === 1;
  navigator.share = async ({files}) => { packs.push(files[0]); };
}

// What goes to the browser's print comes here instead, as it lies in the frame then. The frame must be there.
export function catch_prints() {
  const prints = window.slabsidePrints = [], frame = document.getElementById('paper').contentWindow;
  frame.print = () => {
    if (window.slabsideNoPrinter) throw new Error('no printer here');
    const page = frame.document, script = page.createElement('script');
    script.textContent = 'document.title = "it runs"';
    const {title} = page;
    page.body.append(script);
    script.remove();
    prints.push({html: page.documentElement.outerHTML, scripts: page.scripts.length,
                 rules: [...page.styleSheets].reduce((sum, sheet) => sum + sheet.cssRules.length, 0),
                 images: [...page.images].map((image) => [image.naturalWidth, image.naturalHeight]),
                 policy_holds: page.title === title, touched: navigator.userActivation.isActive});
  };
}

// The program breaks down the next time it is called, once somebody asks for that.
export function trap_on_demand() {
  const start = WebAssembly.instantiateStreaming;
  WebAssembly.instantiateStreaming = async (...words) => {
    const {instance, module} = await start.apply(WebAssembly, words);
    const hear = instance.exports.slabside_hear;
    const exports = {...instance.exports, slabside_hear: () => {
      if (window.slabsideTraps) throw new WebAssembly.RuntimeError('unreachable');
      return hear();
    }};
    return {instance: {exports}, module};
  };
}
