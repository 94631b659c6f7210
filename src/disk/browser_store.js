// The browser's own store, asked from browser.cpp. Every question is answered once, later, through
// slabside_store_answered(id, failure, bytes, count): `failure` is empty if all went well, else the
// name of an errno or the browser's own words.
mergeInto(LibraryManager.library, {
  $SlabsideStore: {
    database: null, // a promise of it, once somebody has asked
    filling: false, // it was emptied, and is not whole yet
    emptied: null,  // the one that was: what is written to it is gone

    open: function () {
      const store = SlabsideStore;
      if (!store.database) {
        store.database = new Promise(store.ask);
        store.database.catch(store.forget);
      }
      return store.database;
    },
    forget: function () { SlabsideStore.database = null; },
    ask: function (opened, failed) {
      const store = SlabsideStore;
      if (!self.indexedDB) return failed('ENOTSUP');
      const asked = indexedDB.open('slabside', 1);
      asked.onupgradeneeded = () => {
        asked.result.createObjectStore('lines');
        asked.result.createObjectStore('files');
      };
      asked.onerror = () => failed(asked.error);
      asked.onblocked = () => failed('EBUSY'); // another tab holds an older store
      asked.onsuccess = () => {
        const database = asked.result;
        database.onclose = () => { store.forget(); store.was_emptied(database); };
        database.onversionchange = (event) => {
          database.close();
          store.forget();
          if (event.newVersion === null) store.was_emptied(database); // it is deleted
        };
        opened(database);
      };
    },
    // Or so it seems: whatever is missing is put back, and no tick is shown until then.
    was_emptied: function (database) {
      const store = SlabsideStore;
      store.emptied = database;
      if (ABORT || store.filling || Module['slabsideMemory'].names.size === 0) return;
      store.filling = Module['slabsideMemory'].emptied = true;
      _slabside_store_emptied();
      store.fill(0);
    },
    // A browser that clears a store may close it once more when it is opened too soon.
    fill: function (tries) {
      const store = SlabsideStore, enough = 4;
      if (ABORT) return;
      store.transact('readwrite', () => {}, (outcome) => {
        if (!outcome.failure) {
          const memory = Module['slabsideMemory'];
          store.filling = memory.emptied = memory.refused = false;
          return _slabside_store_whole();
        }
        if (tries === enough) Module['slabsideMemory'].is_refused(outcome.failure);
        setTimeout(() => store.fill(tries + 1), tries < enough ? 100 << tries : 30000);
      });
    },

    // Runs `work` in a transaction, and then tells what came of it. A store that was emptied is filled
    // before anything is written to it, within the same transaction.
    transact: function (mode, work, then) {
      const store = SlabsideStore, memory = Module['slabsideMemory'];
      const outcome = {failure: '', bytes: new Uint8Array(0), put_back: null};
      store.open().then((database) => {
        const transaction = database.transaction(['lines', 'files'], mode, {durability: 'strict'});
        const lines = transaction.objectStore('lines'), files = transaction.objectStore('files');
        transaction.oncomplete = () => {
          if (mode !== 'readonly' && database === store.emptied) outcome.failure = 'gone';
          else if (outcome.put_back) memory.is_back(outcome.put_back);
          then(outcome);
        };
        transaction.onabort = () => {
          outcome.failure = store.words_of(outcome.failure || transaction.error);
          then(outcome);
        };
        if (mode === 'readonly') work(lines, files, outcome);
        else
          memory.put_back_before(lines, files, outcome, () => work(lines, files, outcome));
      }).catch((error) => {
        store.forget(); // the next question opens it anew
        outcome.failure = store.words_of(error);
        then(outcome);
      });
    },
    // `work` may say what the answer is; else it is empty. `done`: it went well.
    during: function (id, mode, work, done) {
      const store = SlabsideStore;
      store.transact(mode, work, (outcome) => {
        if (done && !outcome.failure) done(outcome);
        store.answer(id, outcome.failure, outcome.bytes);
      });
    },
    answer: function (id, failure, bytes) {
      const place = _malloc(bytes.length + 1); // whoever is told frees both
      HEAPU8.set(bytes, place);
      _slabside_store_answered(id, allocateUTF8(failure), place, bytes.length);
    },
    words_of: function (error) {
      if (!error) return 'EIO'; // the browser broke it off and gives no reason
      if (typeof error === 'string') return error;
      return error.message ? error.name + ': ' + error.message : error.name;
    },

    // A copy: the program's memory may move, and the browser keeps whole what it is given a part of.
    bytes_at: function (place, count) { return HEAPU8.slice(place, place + count); },
    records_of: function (file) { return IDBKeyRange.bound([file, 0], [file, Infinity]); },
    lines_in: function (bytes) {
      const lines = [];
      for (let from = 0; from < bytes.length;) {
        const end = bytes.indexOf(10, from);
        const past = end < 0 ? bytes.length : end + 1;
        lines.push(bytes.slice(from, past));
        from = past;
      }
      return lines;
    },
    joined: function (pieces) {
      const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
      let at = 0;
      for (const piece of pieces) {
        whole.set(piece, at);
        at += piece.length;
      }
      return whole;
    },
    same: function (a, b) { return a.length === b.length && a.every((byte, i) => byte === b[i]); },
  },

  // `records` and `size`: what was put into the file so far. Where the store has less of it somebody
  // cleared or replaced the store: "gone". Where it has more another program wrote to it, and
  // nothing may be added: EEXIST.
  slabside_store_append__deps: ['$SlabsideStore'],
  slabside_store_append: function (id, file_at, place, count, records, size) {
    const store = SlabsideStore, file = UTF8ToString(file_at), bytes = store.bytes_at(place, count);
    store.during(id, 'readwrite', (lines, files, outcome) => {
      const before = files.get(file);
      before.onsuccess = () => {
        const there = before.result || {records: 0, bytes: 0};
        if (there.records !== records || there.bytes !== size) {
          outcome.failure = there.records < records ? 'gone' : 'EEXIST';
          lines.transaction.abort();
          return;
        }
        const added = store.lines_in(bytes);
        try {
          files.put({records: records + added.length, bytes: size + count}, file);
          added.forEach((line, i) => lines.add(line, [file, records + i]));
        } catch (error) { // thrown from here it would be the page's, and end it
          outcome.failure = store.words_of(error);
          lines.transaction.abort();
          return;
        }
        lines.transaction.commit();
      };
    }, () => Module['slabsideMemory'].was_added(file, bytes));
  },

  // Where it is there with other bytes it stays, and the failure is "keep".
  slabside_store_keep__deps: ['$SlabsideStore'],
  slabside_store_keep: function (id, file_at, place, count) {
    const store = SlabsideStore, file = UTF8ToString(file_at), bytes = store.bytes_at(place, count);
    store.during(id, 'readwrite', (lines, files, outcome) => {
      const there = lines.getAll(store.records_of(file));
      there.onsuccess = () => {
        if (there.result.length === 0) {
          files.add({records: 1, bytes: count}, file);
          lines.add(bytes, [file, 0]);
        } else if (!store.same(store.joined(there.result), bytes)) {
          outcome.failure = 'keep';
        }
      };
    }, () => Module['slabsideMemory'].was_listed([file]));
  },

  // The answer is a line for each file whose name begins so: its size, a space, its name.
  slabside_store_list__deps: ['$SlabsideStore'],
  slabside_store_list: function (id, beginning_at) {
    const beginning = UTF8ToString(beginning_at);
    SlabsideStore.during(id, 'readonly', (lines, files, outcome) => {
      const names = files.getAllKeys(), sizes = files.getAll();
      sizes.onsuccess = () => {
        const rows = names.result.map((name, i) => sizes.result[i].bytes + ' ' + name + '\n');
        const wanted = rows.filter((row, i) => names.result[i].startsWith(beginning));
        outcome.bytes = new TextEncoder().encode(wanted.join(''));
        Module['slabsideMemory'].was_listed(names.result);
      };
    });
  },

  slabside_store_read__deps: ['$SlabsideStore'],
  slabside_store_read: function (id, file_at) {
    const store = SlabsideStore, file = UTF8ToString(file_at);
    store.during(id, 'readonly', (lines, files, outcome) => {
      const there = lines.getAll(store.records_of(file));
      there.onsuccess = () => { outcome.bytes = store.joined(there.result); };
    }, (outcome) => Module['slabsideMemory'].was_read(file, outcome.bytes));
  },

  // Null where there is none.
  slabside_small_text__deps: ['$SlabsideStore'],
  slabside_small_text: function (name_at) {
    try {
      const text = localStorage.getItem(UTF8ToString(name_at));
      return text === null ? 0 : allocateUTF8(text);
    } catch (error) {
      return 0; // not allowed here: nothing is remembered, and keeping says so
    }
  },

  // Null, or why not.
  slabside_keep_small_text__deps: ['$SlabsideStore'],
  slabside_keep_small_text: function (name_at, text_at) {
    try {
      localStorage.setItem(UTF8ToString(name_at), UTF8ToString(text_at));
      return 0;
    } catch (error) {
      return allocateUTF8(SlabsideStore.words_of(error));
    }
  },
});
