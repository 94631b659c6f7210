// What this tablet keeps, and how batches come out of it and into it; and when a new version of the page
// may be had. Opened by a button on the tablet's own screen.
'use strict';

Slabside.keeping = {
  shown: null,
  waiting: null, // a worker of a newer version

  element: (id) => document.getElementById(id),
  say_how: async function () {
    const {say} = Slabside, element = Slabside.keeping.element('kept-how');
    if (!self.indexedDB) return element.textContent = say('kept_nothing');
    element.textContent = `${say(await Slabside.keeping.how())} ${say('kept_private_perhaps')}`;
    if (await Slabside.keeping.is_private()) element.textContent = say('kept_private');
  },
  // Some ask the person, and answer when she has.
  how: async function () {
    if (!navigator.storage?.persisted) return 'kept_not_promised';
    if (await navigator.storage.persisted()) return 'kept_promised';
    const asked = navigator.storage.persist().then((yes) => yes ? 'kept_promised' : 'kept_not_promised',
                                                   () => 'kept_not_promised');
    return Promise.race([asked, new Promise((later) => setTimeout(later, 500, 'kept_not_answered'))]);
  },
  // One browser keeps its private windows' file system shut; of the others nobody can tell.
  is_private: async function () {
    if (!navigator.storage?.getDirectory) return false;
    return navigator.storage.getDirectory().then(() => false, (error) => error.name === 'SecurityError');
  },

  show: function (shown) {
    const keeping = Slabside.keeping, button = keeping.element('keeping');
    keeping.shown = shown;
    button.hidden = !shown.free;
    if (shown.free) Slabside.pads.place(button, shown.free);
    keeping.show_version();
  },
  show_version: function () {
    const keeping = Slabside.keeping, open = keeping.shown?.open ?? false;
    keeping.element('version').hidden = !keeping.waiting;
    keeping.element('version-later').hidden = !open;
    keeping.element('version-take').disabled = open;
    const button = keeping.element('keeping');
    button.classList.toggle('waits', keeping.waiting !== null);
    button.dataset.say = keeping.waiting ? 'keeping_new' : 'keeping';
    button.textContent = Slabside.say(button.dataset.say);
  },
  open: function () {
    const keeping = Slabside.keeping;
    keeping.element('pack-said').textContent = '';
    keeping.show_version();
    Slabside.copy.show();
    keeping.element('kept').showModal();
    keeping.say_how().catch((error) => console.warn(error));
  },

  // Said at once, whatever is on the screen.
  was_emptied: function (sentence) {
    const keeping = Slabside.keeping;
    if (Slabside.has_stopped) return;
    keeping.element('emptied-said').textContent = sentence;
    if (!keeping.element('kept').open) keeping.open();
  },

  tell: (...sentences) => { Slabside.keeping.element('pack-said').textContent = sentences.join(' '); },
  why: function (error) {
    if (error instanceof Slabside.unzip.Refused) return Slabside.say(error.sentence, ...error.facts);
    return Slabside.say('pack_not_read', `${error.name}: ${error.message}`);
  },

  pack_name: function () {
    const day = new Date(Date.now()), two = (number) => String(number).padStart(2, '0');
    return `slabside-${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}.zip`;
  },
  // To the tablet's own sheet of whom to give it to, where there is one for such files; else it is saved.
  hand_on: async function (file) {
    const shared = {files: [file]};
    try {
      if (navigator.canShare && navigator.canShare(shared)) return await navigator.share(shared);
    } catch (error) { // a large studio was read longer than a press lasts
      if (error.name !== 'NotAllowedError') throw error;
    }
    Slabside.save(file);
  },
  packed: async function () {
    const {memory, pack, store} = Slabside;
    if (memory.refused) return pack.of([...memory.sessions.keys()], memory.bytes_of);
    return pack.of(await store.names(), store.read);
  },
  pack: async function () {
    const keeping = Slabside.keeping, at = Date.now(), saved = Module.slabsideIsSaved();
    try {
      const packed = await keeping.packed();
      const file = new File([packed.blob], keeping.pack_name(), {type: 'application/zip'});
      await keeping.hand_on(file);
      if (saved) Module.slabsideHandedOn(at);
      const lost = Slabside.memory.lost.size, lacks = lost > 0 ? [Slabside.say('pack_lacks', lost)] : [];
      keeping.tell(Slabside.say('pack_handed_on', packed.files, file.name), ...lacks);
    } catch (error) {
      if (error.name === 'AbortError') return; // she has thought better of it
      keeping.tell(keeping.why(error));
    }
  },
  take_in: async function (file) {
    const keeping = Slabside.keeping, all = [];
    try {
      await Slabside.unzip.each(file, (name, bytes) => { all.push([name, bytes]); });
      const told = await Slabside.store.join(all);
      const stayed = told.stayed.length > 0 ? [Slabside.say('pack_stayed', told.stayed.join(', '))] : [];
      keeping.tell(Slabside.say('pack_taken_in', told.fresh, told.longer, told.known), ...stayed);
      Module.slabsideLook();
    } catch (error) {
      const full = error.name === 'QuotaExceededError';
      keeping.tell(full ? Slabside.say('pack_no_room', file.name)
                        : Slabside.say('pack_not_taken', file.name, keeping.why(error)));
    }
  },

  // Looked for when the page comes into sight, and taken by a tap; never in the middle of a batch.
  watch_versions: function (registration) {
    const keeping = Slabside.keeping;
    const note = () => {
      keeping.waiting = registration.waiting && navigator.serviceWorker.controller ? registration.waiting : null;
      keeping.show_version();
    };
    registration.addEventListener('updatefound', () => {
      const coming = registration.installing;
      coming?.addEventListener('statechange', note);
    });
    note();
    document.addEventListener('visibilitychange', () => {
      if (!document.hidden && !keeping.shown?.open) registration.update().catch(() => {}); // no network: later
    });
  },
  take_version: function () {
    if (!Slabside.keeping.waiting || Slabside.keeping.shown?.open) return;
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), {once: true});
    Slabside.keeping.waiting.postMessage('take over');
  },

  listen: function () {
    const keeping = Slabside.keeping, on = (id, then) => { keeping.element(id).onclick = then; };
    on('keeping', keeping.open);
    on('kept-done', () => keeping.element('kept').close());
    keeping.element('kept').onclose = () => { keeping.element('emptied-said').textContent = ''; };
    on('pack-out', keeping.pack);
    on('pack-in', () => keeping.element('pack-file').click());
    on('version-take', keeping.take_version);
    keeping.element('pack-file').onchange = (event) => {
      const file = event.target.files[0];
      event.target.value = '';
      if (file) keeping.take_in(file);
    };
  },
};

Slabside.keeping.listen();
Module.slabsideKeep = Slabside.keeping.open;
navigator.storage?.persist?.().catch(() => {});
// Offline the page comes from its own cache. Browsers allow that on https and localhost only.
if (window.isSecureContext && 'serviceWorker' in navigator)
  navigator.serviceWorker.register('worker.js')
    .then(Slabside.keeping.watch_versions, (error) => console.warn('not offline:', error.message));
