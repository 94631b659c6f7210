// What this page knows of the store: the bytes of every session, as they were read and as lines were added
// since. Where somebody empties the store under the page they are put back, before anything else is
// written. The program holds more memory for the same lines. Of photos only the names are known.
'use strict';

Slabside.memory = {
  sessions: new Map(), // name -> its bytes, in pieces
  names: new Set(),    // of all files that were ever seen in the store
  lost: new Set(),     // files that were, and that are not here either
  emptied: false,      // and not whole again as yet
  refused: false,      // the store has not taken them back

  was_listed: function (names) {
    for (const name of names) {
      Slabside.memory.names.add(name);
      Slabside.memory.lost.delete(name);
    }
  },
  was_read: function (name, bytes) {
    if (name.startsWith('sessions/') && bytes.length > 0) Slabside.memory.sessions.set(name, [bytes]);
  },
  was_added: function (name, bytes) {
    const {sessions, names} = Slabside.memory;
    names.add(name);
    if (!sessions.has(name)) sessions.set(name, []);
    sessions.get(name).push(bytes);
  },
  bytes_of: (name) => Slabside.store.joined(Slabside.memory.sessions.get(name)),

  // Within a transaction that is to write: first all that the store lacks, then `work`. There whole or not at
  // all, like everything in it. As many sessions as are here are taken for the same ones, unless the store
  // was emptied: then another page may have filled it with its own.
  put_back_before: function (lines, files, outcome, work) {
    const {memory} = Slabside, sessions = IDBKeyRange.bound('sessions/', 'sessions0', false, true);
    const there = files.count(sessions);
    there.onsuccess = () => {
      if (!memory.emptied && there.result >= memory.sessions.size) return work();
      const names = files.getAllKeys();
      names.onsuccess = () => {
        try {
          outcome.put_back = memory.put_back(lines, files, new Set(names.result));
        } catch (error) { // thrown from here it would be the page's, and end it
          outcome.failure = error;
          return lines.transaction.abort();
        }
        work();
      };
    };
  },
  put_back: function (lines, files, here) {
    const {memory, store} = Slabside;
    const missing = [...memory.sessions.keys()].filter((name) => !here.has(name));
    for (const name of missing) {
      const bytes = memory.bytes_of(name), records = store.records_in(name, bytes);
      records.forEach((line, i) => lines.put(line, [name, i]));
      files.put({records: records.length, bytes: bytes.length}, name);
    }
    const lost = [...memory.names].filter((name) => !here.has(name) && !memory.sessions.has(name));
    return missing.length + lost.length > 0 ? {sessions: missing.length, lost} : null;
  },
  // The transaction is complete.
  is_back: function (put_back) {
    const {memory} = Slabside;
    for (const name of put_back.lost) {
      memory.names.delete(name);
      memory.lost.add(name);
    }
    Slabside.keeping.was_emptied(Slabside.say('store_put_back', put_back.sessions, memory.lost.size));
  },
  is_refused: function (why) {
    Slabside.memory.refused = true;
    Slabside.keeping.was_emptied(Slabside.say('store_not_put_back', why.replace(/[.\s]*$/, '')));
  },
};

Module.slabsideMemory = Slabside.memory;
