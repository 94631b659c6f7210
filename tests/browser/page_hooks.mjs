// What tests put into the page before the program, so that the program itself is the real one.

// Clocks that stand where they are put, and given random numbers, four bytes each, lowest first.
export function fixed_world({wall_ms, run_ms, random}) {
  const clock = window.slabsideClock = {wall_ms, run_ms};
  Date.now = () => clock.wall_ms;
  performance.now = () => clock.run_ms;
  Object.defineProperty(Event.prototype, 'timeStamp', {get: () => clock.run_ms});
  const bytes = random.flatMap((number) => [0, 8, 16, 24].map((shift) => (number >>> shift) & 255));
  let drawn = 0;
  crypto.getRandomValues = (into) => {
    if (drawn + into.length > bytes.length) throw new Error('more random numbers than were given');
    for (let i = 0; i < into.length; ++i) into[i] = bytes[drawn++];
    return into;
  };
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
