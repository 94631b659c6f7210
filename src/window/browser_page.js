// The page's side of browser_window.cpp: what comes from the browser goes there as it comes, and
// then `hear` is called.
mergeInto(LibraryManager.library, {
  $SlabsidePage: {
    canvas: null,
    typed: null,      // the field that calls up a tablet's keyboard
    timer: 0,
    asked: false,     // to show
    woken: false,
    down: null,       // pointers that are down, by the browser's number -> the finger
    fields: [],       // where text is written: pads, with their boxes in the canvas's pixels
    writing: '',      // the pad that was touched last
    moved: 0,         // down, to keep it in sight
    wake_lock: null,
    wants_wake_lock: false,
    audio: null,

    ratio: function () { return window.devicePixelRatio || 1; },
    is_touched: function () { return matchMedia('(pointer: coarse)').matches; },
    sides: function () { return [screen.width, screen.height].sort((a, b) => b - a).join(' x '); },

    // CSS pixels to the inch, of tablets that are known by their sides; all have two pixels to one. By
    // their maker's technical specifications, 2012 to 2025: 264 pixels to the inch, the smallest 326.
    // 1024 x 768 is not here: it is one of either kind.
    known_px_per_inch: {
      '1376 x 1032': 132, '1366 x 1024': 132, '1210 x 834': 132, '1194 x 834': 132, '1180 x 820': 132,
      '1112 x 834': 132, '1080 x 810': 132, '1133 x 744': 163,
    },
    // 0: not known.
    known_scale: function () {
      const page = SlabsidePage;
      return page.is_touched() && page.ratio() === 2 ? page.known_px_per_inch[page.sides()] || 0 : 0;
    },
    // A tablet's is a guess until a card was held to the glass: Android's own unit is defined as 1/160 inch.
    px_per_inch: function () {
      const page = SlabsidePage, by_mouse = 96, by_touch = 160;
      return page.known_scale() || (page.is_touched() ? by_touch : by_mouse);
    },

    // Each finger down has the lowest number that no other has.
    finger_of: function (event) {
      const page = SlabsidePage;
      if (!page.down.has(event.pointerId)) {
        const taken = new Set(page.down.values());
        let finger = 0;
        while (taken.has(finger)) ++finger;
        page.down.set(event.pointerId, finger);
      }
      return page.down.get(event.pointerId);
    },
    place_of: function (event) {
      const canvas = SlabsidePage.canvas, box = canvas.getBoundingClientRect();
      return {x: (event.clientX - box.left) * canvas.width / box.width,
              y: (event.clientY - box.top) * canvas.height / box.height};
    },
    pointed: function (phase, event) {
      const page = SlabsidePage, at = page.place_of(event), finger = page.finger_of(event);
      if (phase >= 2) page.down.delete(event.pointerId);
      const ago = Math.max(0, performance.now() - event.timeStamp);
      _slabside_pointer(phase, at.x, at.y, finger, ago, event.isPrimary ? 1 : 0);
    },
    // A thumb laid flat is some 15 mm wide (our own measure).
    is_palm: function (event) {
      const widest_mm = 18, mm = SlabsidePage.px_per_inch() / 25.4;
      return event.pointerType === 'touch' && Math.max(event.width, event.height) > widest_mm * mm;
    },
    // A tablet shows its keyboard only for a field that gets the focus within the touch itself. So what
    // a touch on a field leads to is drawn at once.
    draw_field: function (at) {
      const page = SlabsidePage, most_frames = 4;
      const within = (box) => at.x >= box[0] && at.x < box[0] + box[2] && at.y >= box[1] && at.y < box[1] + box[3];
      const touched = page.fields.find((field) => within(field.box));
      if (!touched) return;
      page.writing = touched.id;
      page.call_keyboard_back();
      for (let frame = 0; frame < most_frames && document.activeElement !== page.typed; ++frame) _slabside_show();
    },
    // One that was put away while its field kept the focus comes again when that is touched.
    call_keyboard_back: function () {
      const typed = SlabsidePage.typed, view = window.visualViewport;
      const is_up = view && view.height < 0.85 * innerHeight; // own choice: a bar of tools is less
      if (document.activeElement !== typed || is_up) return;
      typed.blur();
      typed.focus({preventScroll: true});
    },
    // Of the field that is written in the upper and the lower edge in the page's own pixels, where nothing
    // has been moved.
    written_from_to: function () {
      const page = SlabsidePage, fields = page.fields;
      const field = fields.find((pad) => pad.id === page.writing) || (fields.length === 1 ? fields[0] : null);
      if (!field) return null;
      const box = field.box;
      const top = page.canvas.getBoundingClientRect().top - page.moved + box[1] / page.ratio();
      return [top, top + box[3] / page.ratio()];
    },
    // A tablet's keyboard lies over the page. Where it lies over the field that is written in, all of it
    // moves, but not under a finger.
    uncover: function () {
      const page = SlabsidePage, view = window.visualViewport, field = page.written_from_to(), air = 8;
      if (page.down.size > 0) return;
      let by = 0;
      if (view && field && document.activeElement === page.typed) {
        by = Math.min(0, view.offsetTop + view.height - air - field[1]);
        const least = view.offsetTop + air - field[0];
        by = Math.max(by, view.offsetTop > 0 ? least : Math.min(0, least));
      }
      if (by === page.moved) return;
      page.moved = by;
      document.body.style.setProperty('--moved', by + 'px');
    },
    // A button of the page was pressed, by voice, a switch, a key or a reader of screens: a finger of
    // its own (touch.cpp knows its number) taps where the button stands, or holds. It lifts when it should have: what the program
    // took meanwhile, on a tablet that is slow, is no time that it rested there.
    press: function (x, y, hold_ms) {
      const page = SlabsidePage, finger = 99, lifted = performance.now() + hold_ms;
      const lift = () => {
        _slabside_pointer(2, x, y, finger, Math.max(0, performance.now() - lifted), 1);
        _slabside_hear();
        page.draw_field({x: x, y: y});
      };
      _slabside_pointer(0, x, y, finger, 0, 1);
      _slabside_hear();
      if (hold_ms > 0) return setTimeout(lift, hold_ms);
      _slabside_show();
      lift();
    },
    listen_to_pointers: function () {
      const page = SlabsidePage, canvas = page.canvas;
      const on = (name, then) => canvas.addEventListener(name, then, {passive: false});
      on('pointerdown', (event) => {
        event.preventDefault();
        if (event.pointerType === 'mouse' && event.button !== 0) return;
        if (page.is_button(document.activeElement)) document.activeElement.blur();
        if (page.is_palm(event)) return;
        canvas.setPointerCapture(event.pointerId);
        page.pointed(0, event);
        _slabside_hear();
      });
      const lifted = (phase, event) => {
        if (!page.down.has(event.pointerId)) return;
        if (event.pointerType === 'mouse' && event.type === 'pointerup' && event.button !== 0) return;
        page.pointed(phase, event);
        _slabside_hear();
        if (phase === 2) page.draw_field(page.place_of(event));
        page.uncover();
      };
      // A mouse that hovers is for ImGui alone, which shows nothing of it.
      on('pointermove', (event) => {
        if (!page.down.has(event.pointerId)) return;
        if (page.is_palm(event)) return lifted(3, event);
        const all = event.getCoalescedEvents ? event.getCoalescedEvents() : [];
        for (const each of all.length > 0 ? all : [event]) page.pointed(1, each);
        _slabside_hear();
      });
      on('pointerup', (event) => lifted(2, event));
      on('pointercancel', (event) => lifted(3, event));
      on('contextmenu', (event) => event.preventDefault());
      // Safari zooms and scrolls on touches that touch-action does not hold back.
      for (const name of ['touchstart', 'touchmove', 'touchend', 'gesturestart'])
        on(name, (event) => event.preventDefault());
    },

    is_button: function (element) { return element instanceof HTMLButtonElement; },
    // Tab walks through the page's buttons, and who has walked there presses them by these.
    is_the_pages: function (event) {
      if (document.querySelector('dialog[open]')) return true;
      if (event.key === 'Tab') return !_slabside_typing();
      return (event.key === 'Enter' || event.key === ' ') && SlabsidePage.is_button(document.activeElement);
    },
    listen_to_keys: function () {
      const page = SlabsidePage;
      const tell = (event, down) => {
        const name = allocateUTF8(event.key), code = allocateUTF8(event.code);
        _slabside_key(name, code, event.location, down, event.repeat ? 1 : 0,
                      (event.ctrlKey ? 1 : 0) | (event.shiftKey ? 2 : 0) | (event.altKey ? 4 : 0) |
                          (event.metaKey ? 8 : 0));
      };
      const written = (event) => Array.from(event.key).length === 1 &&
          ((!event.ctrlKey && !event.metaKey && !event.altKey) || event.getModifierState('AltGraph'));
      window.addEventListener('keydown', (event) => {
        if (event.isComposing || event.key === 'Unidentified' || event.key === 'Process') return;
        if (page.is_the_pages(event)) return;
        tell(event, 1);
        if (written(event)) _slabside_character(event.key.codePointAt(0));
        const browsers = event.ctrlKey || event.metaKey || event.altKey || /^F\d/.test(event.key);
        if (!browsers || written(event) || (_slabside_typing() && event.ctrlKey && /^[axz]$/i.test(event.key)))
          event.preventDefault();
        _slabside_hear();
      });
      window.addEventListener('keyup', (event) => { tell(event, 0); _slabside_hear(); });
      window.addEventListener('blur', () => { page.down.clear(); _slabside_lost(); _slabside_hear(); });
    },
    // What a tablet's own keyboard writes reaches only a field of the page. It holds one sign, so
    // that there is always something to erase.
    listen_to_tablet_keyboard: function () {
      const page = SlabsidePage;
      const view = window.visualViewport;
      for (const name of ['resize', 'scroll']) if (view) view.addEventListener(name, page.uncover);
      page.typed.addEventListener('beforeinput', (event) => {
        if (event.inputType === 'insertCompositionText') return;
        event.preventDefault();
        if (event.inputType.startsWith('delete')) _slabside_erase();
        for (const letter of event.data || '') _slabside_character(letter.codePointAt(0));
        _slabside_hear();
      });
      page.typed.addEventListener('compositionend', (event) => {
        for (const letter of event.data || '') _slabside_character(letter.codePointAt(0));
        page.typed.value = '.';
        _slabside_hear();
      });
    },

    resized: function () {
      const page = SlabsidePage, canvas = page.canvas;
      const w = Math.max(1, Math.round(canvas.clientWidth * page.ratio()));
      const h = Math.max(1, Math.round(canvas.clientHeight * page.ratio()));
      if (canvas.width === w && canvas.height === h) return;
      canvas.width = w; // which empties it: draw in the same breath
      canvas.height = h;
      _slabside_resized();
      _slabside_hear();
      _slabside_show();
    },
    listen_to_page: function () {
      const page = SlabsidePage;
      new ResizeObserver(page.resized).observe(page.canvas);
      window.addEventListener('resize', page.resized); // another pixel ratio
      window.addEventListener('pagehide', () => { _slabside_close(); _slabside_hear(); });
      window.addEventListener('pageshow', (event) => { if (event.persisted) location.reload(); });
      document.addEventListener('visibilitychange', () => {
        page.asked = false;
        if (!document.hidden) page.hold_wake_lock();
        _slabside_exposed();
        _slabside_hear();
      });
      page.canvas.addEventListener('webglcontextlost', (event) => event.preventDefault());
      page.canvas.addEventListener('webglcontextrestored', () => { _slabside_restored(); _slabside_hear(); });
    },

    hold_wake_lock: function () {
      const page = SlabsidePage;
      if (!page.wants_wake_lock || page.wake_lock || !navigator.wakeLock || document.hidden) return;
      page.wake_lock = navigator.wakeLock.request('screen');
      page.wake_lock.then((lock) => {
        lock.addEventListener('release', () => { page.wake_lock = null; });
        if (!page.wants_wake_lock) lock.release();
      }).catch((error) => {
        page.wake_lock = null;
        _slabside_may_sleep(allocateUTF8(error.message || error.name));
      });
    },
  },

  slabside_page_open__deps: ['$SlabsidePage'],
  slabside_page_open: function () {
    const page = SlabsidePage;
    page.canvas = Module['canvas'];
    page.down = new Map();
    page.typed = document.getElementById('typed');
    page.canvas.width = Math.max(1, Math.round(page.canvas.clientWidth * page.ratio()));
    page.canvas.height = Math.max(1, Math.round(page.canvas.clientHeight * page.ratio()));
  },
  // ImGui asks before every frame for the state that it puts back behind it. Nobody else draws here: what it
  // was told first stays true, and whoever asks again waits until all has been drawn.
  slabside_page_remember_state: function () {
    const context = GLctx, told = new Map();
    const ask = context.getParameter.bind(context);
    context.getParameter = (name) => {
      if (!told.has(name)) told.set(name, ask(name));
      return told.get(name);
    };
  },
  // Once there is somebody who hears.
  slabside_page_listen__deps: ['$SlabsidePage', '$Browser'],
  slabside_page_listen: function () {
    const page = SlabsidePage;
    page.listen_to_pointers();
    page.listen_to_keys();
    if (page.typed) page.listen_to_tablet_keyboard();
    page.listen_to_page();
    Module['slabsidePress'] = page.press;
    Module['slabsideLook'] = () => _slabside_look();
    Module['slabsideIsSaved'] = () => _slabside_is_saved() === 1;
    Module['slabsideHandedOn'] = (at) => _slabside_handed_on(at);
    Module['slabsideEnd'] = () => {
      ABORT = true; // what emscripten would still call is not called
      clearTimeout(page.timer);
      page.wants_wake_lock = false;
      for (const each of Browser.workers) if (each) each.worker.terminate();
    };
  },
  slabside_page_width__deps: ['$SlabsidePage'],
  slabside_page_width: function () { return SlabsidePage.canvas.width; },
  slabside_page_height__deps: ['$SlabsidePage'],
  slabside_page_height: function () { return SlabsidePage.canvas.height; },
  slabside_page_ratio__deps: ['$SlabsidePage'],
  slabside_page_ratio: function () { return SlabsidePage.ratio(); },
  slabside_page_px_per_inch__deps: ['$SlabsidePage'],
  slabside_page_px_per_inch: function () { return SlabsidePage.px_per_inch(); },
  slabside_page_prefers: function (what) { return matchMedia(UTF8ToString(what)).matches ? 1 : 0; },
  slabside_page_language__deps: ['$SlabsidePage'],
  slabside_page_language: function () { return allocateUTF8(document.documentElement.lang); },
  slabside_page_display__deps: ['$SlabsidePage'],
  slabside_page_display: function () {
    const page = SlabsidePage, known = page.known_scale() ? ' at 2' : ''; // what a card has told of a guess is not for it
    return allocateUTF8('browser ' + page.sides() + known);
  },

  slabside_ask_to_show__deps: ['$SlabsidePage'],
  slabside_ask_to_show: function () {
    const page = SlabsidePage;
    if (page.asked || document.hidden) return;
    page.asked = true;
    requestAnimationFrame(() => {
      page.asked = false;
      _slabside_show();
    });
  },
  slabside_hear_in__deps: ['$SlabsidePage'],
  slabside_hear_in: function (ms) {
    const page = SlabsidePage;
    clearTimeout(page.timer);
    page.timer = ms < 0 ? 0 : setTimeout(_slabside_hear, Math.min(ms, 0x7fffffff));
  },
  slabside_hear_soon__deps: ['$SlabsidePage'],
  slabside_hear_soon: function () {
    const page = SlabsidePage;
    if (page.woken) return;
    page.woken = true;
    Promise.resolve().then(() => {
      page.woken = false;
      _slabside_hear();
    });
  },

  slabside_show_canvas__deps: ['$SlabsidePage'],
  slabside_show_canvas: function (busy) {
    document.body.classList.add('ready');
    SlabsidePage.canvas.setAttribute('aria-busy', busy ? 'true' : 'false');
  },
  slabside_tell__deps: ['$SlabsidePage'],
  slabside_tell: function (shown_at) {
    const shown = JSON.parse(UTF8ToString(shown_at));
    SlabsidePage.fields = shown.pads.filter((pad) => pad.field);
    SlabsidePage.uncover(); // a field may lie elsewhere now
    Module['slabsideShown'](shown);
  },
  slabside_show_keeping: function () { Module['slabsideKeep'](); },
  slabside_give_up: function (sentence) { Module['slabsideGaveUp'](UTF8ToString(sentence)); },
  // A tablet shows its keyboard while a field of the page has the focus.
  slabside_call_keyboard__deps: ['$SlabsidePage'],
  slabside_call_keyboard: function (wanted) {
    const page = SlabsidePage, field = page.typed;
    if (!field || wanted === (document.activeElement === field ? 1 : 0)) return;
    field.value = '.';
    const at = page.written_from_to(); // where browsers look for what they bring into sight
    if (at) field.style.top = at[0] + 'px';
    if (wanted) field.focus({preventScroll: true}); else field.blur();
    if (!wanted) page.writing = '';
    page.uncover();
  },

  slabside_keep_awake__deps: ['$SlabsidePage'],
  slabside_keep_awake: function (awake) {
    const page = SlabsidePage;
    page.wants_wake_lock = awake !== 0;
    if (page.wants_wake_lock) return page.hold_wake_lock();
    if (page.wake_lock) page.wake_lock.then((lock) => lock.release()).catch(() => {});
  },

  // A browser lets a page be heard once somebody has touched it.
  slabside_play__deps: ['$SlabsidePage'],
  slabside_play: function (samples, count, rate) {
    const page = SlabsidePage, Audio = window.AudioContext || window.webkitAudioContext;
    if (!Audio) return;
    if (!page.audio) page.audio = new Audio();
    const buffer = page.audio.createBuffer(1, count, rate), channel = buffer.getChannelData(0);
    for (let i = 0; i < count; ++i) channel[i] = HEAP16[(samples >> 1) + i] / 32768;
    const play = () => {
      const source = page.audio.createBufferSource();
      source.buffer = buffer;
      source.connect(page.audio.destination);
      source.start();
    };
    const asked = performance.now(), too_late_ms = 200;
    if (page.audio.state === 'running') play();
    else page.audio.resume().then(() => { if (performance.now() - asked < too_late_ms) play(); }, () => {});
  },
});
