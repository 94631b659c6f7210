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
    let over = false;
    const end_it = () => { if (!over) wait(() => --open, 0); over = true; };
    for (const end of ends) asked.addEventListener(end, end_it, {once: true});
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
    counted(this, 'message', 'error');
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

// A browser that keeps no files of the page: whatever is asked for comes from the server each time.
export function no_service_worker() {
  delete Navigator.prototype.serviceWorker;
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

// What a page says where nobody but its developer looks.
export function tell_said() {
  const said = window.slabsideSaid = [];
  for (const kind of ['warn', 'error']) {
    const say = console[kind];
    console[kind] = (...words) => { said.push(words.join(' ')); say.apply(console, words); };
  }
  addEventListener('error', (event) => said.push(event.message));
  addEventListener('unhandledrejection', (event) => said.push(String(event.reason)));
}

// Counts what came from outside, by its kind: some drivers answer before the page has heard it.
export function tell_heard() {
  const heard = window.slabsideHeard = {};
  for (const kind of ['pointerdown', 'pointermove', 'pointerup', 'keydown', 'keyup']) {
    heard[kind] = 0;
    addEventListener(kind, () => { ++heard[kind]; });
  }
}

// For what_it_has: what the page itself asks its engine and is told, and which kind of finger comes.
export function note_what_it_has() {
  const seen = window.slabsideSeen = {persist: 'is not asked for', fingers: []};
  addEventListener('pointerdown', ({pointerType}) => {
    if (!seen.fingers.includes(pointerType)) seen.fingers.push(pointerType);
  }, true);
  if (!navigator.storage?.persist) {
    seen.persist = 'absent';
    return;
  }
  const ask = StorageManager.prototype.persist;
  StorageManager.prototype.persist = function () {
    seen.persist = 'no answer until a person gives one';
    const answer = ask.call(this);
    answer.then((yes) => { seen.persist = yes ? 'yes' : 'no'; }, (error) => { seen.persist = `refused: ${error}`; });
    return answer;
  };
}

// What this engine can do here, in its own words.
export async function what_it_has() {
  const seen = window.slabsideSeen;
  const zip = new File(['a'], 'a.zip', {type: 'application/zip'});
  const wake_lock = !navigator.wakeLock ? 'absent' : await navigator.wakeLock.request('screen').then(
    async (lock) => { await lock.release(); return 'yes'; }, (error) => `refused: ${error.message}`);
  return {
    'a promise to keep what is stored': seen.persist,
    'a zip file handed to another program': !navigator.canShare ? 'absent' : navigator.canShare({files: [zip]}) ? 'yes' : 'no',
    'a folder picker': 'showDirectoryPicker' in window ? 'yes' : 'absent',
    'a lock that keeps the display awake': wake_lock,
    'fingers that came': seen.fingers.join(', '),
    'a display that says it is touched': matchMedia('(pointer: coarse)').matches ? 'yes' : 'no',
  };
}

// The page presses its own buttons: those of `first`, then those of `in_turn` without end, each when all
// before was drawn and kept. It posts to /told what its store holds when it comes, every line that is
// confirmed, what it says to its developer, and why it stopped if it did.
export function press_without_end({first, in_turn}) {
  const tell = (what) => fetch('/told', {method: 'POST', body: JSON.stringify(what)});
  window.confirmed = (key) => tell({confirmed: key});
  const until = (there) => new Promise((done) => {
    const look = () => { const found = there(); if (found) done(found); else setTimeout(look, 5); };
    look();
  });
  const press = async (pad) => {
    (await until(() => document.querySelector(`#pads button[data-pad="${pad}"]`))).click();
    await until(window.slabsideIsAtRest);
    if (window.slabsideSaid.length > 0) await tell({said: window.slabsideSaid.splice(0)});
  };
  const work = async () => {
    await until(() => document.querySelector('body.ready canvas[aria-busy=false]'));
    await until(window.slabsideIsAtRest);
    await tell({kept: await lines_in_store()});
    for (const pad of first) await press(pad);
    for (;;) for (const pad of in_turn) await press(pad);
  };
  const failed = () => tell({failed: document.getElementById('words').textContent});
  addEventListener('DOMContentLoaded', () => {
    until(() => Slabside.has_stopped).then(failed);
    work().catch((error) => tell({failed: String(error)}));
  });
}
