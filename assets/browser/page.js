// What is there before the program, and what is left when it stops.
'use strict';

const Slabside = {
  // A sentence of the page, in its language.
  say: function (name, ...facts) {
    const {lang} = document.documentElement;
    const pattern = document.querySelector(`template[lang="${lang}"]`).content.querySelector(`[data-say="${name}"]`);
    return pattern.textContent.replace(/\{(\d)\}/g, (_, at) => facts[at]);
  },

  // What stands on the page already is said in that language too.
  speak: function (lang) {
    if (document.documentElement.lang === lang || !Slabside.languages().includes(lang)) return;
    document.documentElement.lang = lang;
    for (const element of document.querySelectorAll('[data-say]'))
      element.textContent = Slabside.say(element.dataset.say);
  },
  languages: () => Array.from(document.querySelectorAll('template'), (all) => all.lang),

  // As it was chosen on this tablet, else the first that the browser asks for and that there is.
  own_language: function () {
    const asked = navigator.languages.map((tag) => tag.split('-')[0]);
    try {
      asked.unshift(JSON.parse(localStorage.getItem('slabside.tablet'))?.language);
    } catch (error) { // the program says what is wrong with it
      console.warn(error);
    }
    return asked.find((tag) => Slabside.languages().includes(tag));
  },

  // As any page's download.
  save: function (file) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(file);
    link.download = file.name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  },

  // Words instead of the canvas, and one button below them.
  show_words: function (words, button, then) {
    document.body.classList.remove('ready');
    document.getElementById('words').textContent = words;
    const again = document.getElementById('again');
    again.hidden = !button;
    again.textContent = button ?? '';
    again.onclick = then;
  },

  has_stopped: false,
  // Nothing of the program runs any more: what it would do then, nobody knows. What it has saved is in
  // the store, and the next start reads it.
  end: function () {
    Slabside.has_stopped = true;
    if (Module.slabsideEnd) Module.slabsideEnd();
    for (const dialog of document.querySelectorAll('dialog[open]')) dialog.close();
    document.getElementById('pads').replaceChildren();
    document.getElementById('keeping').hidden = true;
  },
  stop: function (why) {
    if (Slabside.has_stopped) return;
    console.error(why);
    Slabside.end();
    const sentence = `${why}`.replace(/[.\s]*$/, '.');
    Slabside.show_words(Slabside.say('stopped', sentence), Slabside.say('start_again'), () => location.reload());
  },

  // Every way from the page into the program. One that does not come back as it should is the last.
  guarded: function (name, enter) {
    return (...words) => {
      if (Slabside.has_stopped) return 0;
      try {
        return enter(...words);
      } catch (error) {
        Slabside.stop(`${error}, ${name}`);
        return 0;
      }
    };
  },
  guard: function (exports) {
    const all = {};
    for (const [name, value] of Object.entries(exports))
      all[name] = /^(slabside_|main$|__main_argc_argv$)/.test(name) ? Slabside.guarded(name, value) : value;
    return all;
  },
};

var Module = {
  canvas: document.getElementById('canvas'),
  locateFile: (file) => `${document.body.dataset.version}/${file}`,
  onAbort: (why) => Slabside.stop(why),
  instantiateWasm: (imports, receive) => {
    const place = Module.locateFile('slabside.wasm');
    const whole = async () => WebAssembly.instantiate(await (await fetch(place)).arrayBuffer(), imports);
    // A server that has no name for the kind of file: all of it is fetched first.
    const program = WebAssembly.instantiateStreaming(fetch(place), imports)
      .catch((error) => { if (error instanceof TypeError) return whole(); throw error; });
    Promise.all([program, Slabside.faces.fetch_first()])
      .then(([{instance, module}]) => {
        Module.slabsideProgram = module; // the worker that learns begins with it
        receive({exports: Slabside.guard(instance.exports)}, module);
      })
      .catch((error) => Slabside.stop(error.message));
    return {};
  },
  slabsideShown: () => {},
  slabsideGaveUp: (sentence) => {
    Slabside.end();
    Slabside.show_words(sentence, Slabside.say('start_again'), () => location.reload());
  },
};

// An extension's script, or whatever else somebody runs in this page, may fail by itself.
window.addEventListener('error', (event) => {
  const own = event.filename?.startsWith(new URL(Module.locateFile(''), document.baseURI).href);
  if (own || event.error instanceof WebAssembly.RuntimeError) Slabside.stop(event.message);
});
window.addEventListener('unhandledrejection', (event) => {
  if (event.reason instanceof WebAssembly.RuntimeError) Slabside.stop(`${event.reason}.`);
});

Slabside.speak(Slabside.own_language());
document.body.classList.toggle('night', matchMedia('(prefers-color-scheme: dark)').matches); // as the program begins
