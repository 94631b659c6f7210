// A second copy of all that is kept, in a folder of this tablet that somebody has chosen, where a browser lets
// a page write into one. Each file is written whole, which takes too long for a tap: so after a batch.
'use strict';

Slabside.copy = {
  folder: null,
  making: Promise.resolve(), // the last one
  said: '',                  // of it
  open: false,               // a batch is

  is_possible: () => 'showDirectoryPicker' in window && Boolean(self.indexedDB),

  // Which folder: kept apart from what is copied.
  remember: function (mode, ask) {
    return new Promise((done, failed) => {
      const asked = indexedDB.open('slabside-copy', 1);
      asked.onupgradeneeded = () => asked.result.createObjectStore('folders');
      asked.onerror = () => failed(asked.error);
      asked.onsuccess = () => {
        const transaction = asked.result.transaction('folders', mode), answer = ask(transaction.objectStore('folders'));
        transaction.oncomplete = () => { asked.result.close(); done(answer.result); };
        transaction.onabort = () => { asked.result.close(); failed(transaction.error); };
      };
    });
  },
  recall: async function () {
    const {copy} = Slabside;
    if (copy.is_possible()) copy.folder = await copy.remember('readonly', (store) => store.get('folder')) ?? null;
  },
  choose: async function () {
    const {copy} = Slabside;
    copy.folder = await window.showDirectoryPicker({id: 'slabside', mode: 'readwrite'});
    await copy.remember('readwrite', (store) => store.put(copy.folder, 'folder'));
    return copy.make(true);
  },

  file_in: async function (name, create) {
    const [place, leaf] = name.split('/');
    try {
      const folder = await Slabside.copy.folder.getDirectoryHandle(place, {create});
      return await folder.getFileHandle(leaf, {create});
    } catch (error) {
      if (!create && error.name === 'NotFoundError') return null;
      throw error;
    }
  },
  // What is there already and goes on here is written anew. What tells something else stays, and gives false.
  take_along: async function (name, size) {
    const {copy, store} = Slabside, there = await (await copy.file_in(name, false))?.getFile();
    if (there?.size === size) return true;
    const bytes = await store.read(name);
    if (there && !store.begins_with(bytes, new Uint8Array(await there.arrayBuffer()))) return false;
    const out = await (await copy.file_in(name, true)).createWritable();
    await out.write(bytes);
    await out.close();
    return true;
  },
  take_all_along: async function () {
    const {copy, store, pack} = Slabside, at = Date.now(), saved = Module.slabsideIsSaved(), stayed = [];
    const all = (await store.sizes()).filter(([name]) => pack.wanted(name));
    for (const [name, size] of all)
      if (!await copy.take_along(name, size)) stayed.push(name);
    if (saved && stayed.length === 0) Module.slabsideHandedOn(at);
    const made = Slabside.say('copy_made', copy.folder.name, all.length - stayed.length);
    return stayed.length > 0 ? `${made} ${Slabside.say('copy_stayed', stayed.join(', '))}` : made;
  },

  // `ask`: somebody has pressed a button, as browsers want it before they ask for a permission.
  may_write: async function (ask) {
    const {folder} = Slabside.copy, how = {mode: 'readwrite'};
    if (await folder.queryPermission(how) === 'granted') return true;
    return ask && await folder.requestPermission(how) === 'granted';
  },
  make_one: async function (ask) {
    const {copy, memory} = Slabside;
    if (memory.emptied) return; // what the store lacks, it is given back first
    try {
      copy.said = await copy.may_write(ask) ? await copy.take_all_along() : Slabside.say('copy_not_allowed', copy.folder.name);
    } catch (error) {
      console.warn(error);
      copy.said = Slabside.say('copy_not_made', copy.folder.name, `${error.name}: ${error.message}`);
    }
    copy.show();
  },
  // One after the other.
  make: function (ask) {
    const {copy} = Slabside;
    copy.making = copy.making.then(() => copy.make_one(ask));
    return copy.making;
  },
  by_itself: function () {
    const {copy} = Slabside, soon_ms = 1000;
    if (!copy.folder || Slabside.has_stopped) return;
    if (Module.slabsideIsSaved()) copy.make(false);
    else setTimeout(copy.by_itself, soon_ms);
  },

  note: function (shown) {
    const {copy} = Slabside, was_open = copy.open;
    copy.open = shown.open;
    if (was_open && !shown.open) copy.by_itself();
  },
  show: function () {
    const {copy} = Slabside, element = (id) => document.getElementById(id);
    element('copy').hidden = !copy.is_possible();
    element('copy-make').hidden = !copy.folder;
    if (copy.folder) element('copy-make').textContent = Slabside.say('copy_make', copy.folder.name);
    element('copy-said').textContent = copy.said;
  },
  listen: function () {
    const {copy} = Slabside;
    const pressed = (work) => work().catch((error) => {
      if (error.name !== 'AbortError') throw error; // else she has thought better of it
    });
    document.getElementById('copy-choose').onclick = () => pressed(copy.choose);
    document.getElementById('copy-make').onclick = () => pressed(() => copy.make(true));
    document.addEventListener('visibilitychange', () => { if (document.hidden) copy.by_itself(); });
    copy.recall().then(copy.show, (error) => console.warn(error));
  },
};

Slabside.copy.listen();
