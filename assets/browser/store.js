// The store of browser_store.js, read and added to as a whole: what goes into a pack, and what comes out
// of one.
'use strict';

Slabside.store = {
  open: function () {
    return new Promise((opened, failed) => {
      const asked = indexedDB.open('slabside', 1);
      asked.onupgradeneeded = () => {
        asked.result.createObjectStore('lines');
        asked.result.createObjectStore('files');
      };
      asked.onerror = () => failed(asked.error);
      asked.onblocked = () => failed(new Error('EBUSY'));
      asked.onsuccess = () => {
        asked.result.onversionchange = () => asked.result.close();
        opened(asked.result);
      };
    });
  },
  // Ends with the transaction, which is there whole or not at all.
  during: async function (mode, work) {
    const database = await Slabside.store.open();
    try {
      return await new Promise((done, failed) => {
        const transaction = database.transaction(['lines', 'files'], mode, {durability: 'strict'});
        const outcome = {}, lines = transaction.objectStore('lines'), files = transaction.objectStore('files');
        transaction.oncomplete = () => {
          if (outcome.put_back) Slabside.memory.is_back(outcome.put_back);
          done(outcome.value);
        };
        transaction.onabort = () => failed(outcome.failure ?? transaction.error ?? new Error('EIO'));
        if (mode === 'readonly') work(lines, files, outcome);
        else Slabside.memory.put_back_before(lines, files, outcome, () => work(lines, files, outcome));
      });
    } finally {
      database.close();
    }
  },

  records_of: (name) => IDBKeyRange.bound([name, 0], [name, Infinity]),
  joined: function (pieces) {
    const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
    let at = 0;
    for (const piece of pieces) {
      whole.set(piece, at);
      at += piece.length;
    }
    return whole;
  },
  // A session is one record a line, a photo one record.
  records_in: function (name, bytes) {
    if (!name.startsWith('sessions/')) return [bytes];
    const lines = [];
    for (let from = 0; from < bytes.length;) {
      const end = bytes.indexOf(10, from), past = end < 0 ? bytes.length : end + 1;
      lines.push(bytes.slice(from, past));
      from = past;
    }
    return lines;
  },
  begins_with: (whole, part) => part.length <= whole.length && part.every((byte, i) => byte === whole[i]),

  names: () => Slabside.store.during('readonly', (lines, files, outcome) => {
    const keys = files.getAllKeys();
    keys.onsuccess = () => { outcome.value = keys.result; };
  }),
  // [name, bytes] of each.
  sizes: () => Slabside.store.during('readonly', (lines, files, outcome) => {
    const names = files.getAllKeys(), all = files.getAll();
    all.onsuccess = () => { outcome.value = names.result.map((name, i) => [name, all.result[i].bytes]); };
  }),
  read: (name) => Slabside.store.during('readonly', (lines, files, outcome) => {
    const records = lines.getAll(Slabside.store.records_of(name));
    records.onsuccess = () => { outcome.value = Slabside.store.joined(records.result); };
  }),

  // All of them, or after a failure none. A file that is here and goes on in the pack becomes longer; one
  // that tells something else stays as it is here.
  join: async function (incoming) { // [name, bytes] ...
    const store = Slabside.store, told = {fresh: 0, longer: 0, known: 0, stayed: []};
    await store.during('readwrite', (lines, files, outcome) => {
      for (const [name, bytes] of incoming) {
        const there = lines.getAll(store.records_of(name));
        there.onsuccess = () => {
          try {
            store.join_one(lines, files, told, name, bytes, there.result);
          } catch (error) { // thrown from here it would be the page's, and end it
            outcome.failure = error;
            lines.transaction.abort();
          }
        };
      }
    });
    Slabside.memory.was_listed(incoming.map((file) => file[0]));
    return told;
  },
  join_one: function (lines, files, told, name, bytes, records) {
    const store = Slabside.store, here = store.joined(records);
    if (records.length > 0 && store.begins_with(here, bytes)) return ++told.known;
    if (!store.begins_with(bytes, here) || (records.length > 0 && here.at(-1) !== 10)) return told.stayed.push(name);
    if (records.length > 0) ++told.longer; else ++told.fresh;
    const added = store.records_in(name, bytes.subarray(here.length));
    added.forEach((line, i) => lines.add(line, [name, records.length + i]));
    files.put({records: records.length + added.length, bytes: bytes.length}, name);
  },
};
