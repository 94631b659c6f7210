// Starts the program, in one tab at a time: two would write down the same batch, and neither would show
// what the other one counts.
'use strict';

Slabside.start = function () {
  // The program draws with it. A browser that has drawn nothing yet takes half a second to begin, while the
  // program is on its way.
  Module.canvas.getContext('webgl2', {alpha: false, depth: false, stencil: false, antialias: false});
  const script = document.createElement('script');
  script.src = Module.locateFile('slabside.js');
  script.onerror = () => Slabside.stop(script.src);
  document.body.append(script);
};

// Held as long as this page lives. Browsers have it on https and localhost only; elsewhere there is none.
Slabside.start_alone = function () {
  const forever = new Promise(() => {});
  const name = 'slabside';
  const here = (lock) => {
    Slabside.show_words(document.getElementById('words').dataset.first);
    Slabside.start();
    return forever;
  };
  // Another tab has taken it over.
  const lost = () => {
    if (Slabside.has_stopped) return;
    Slabside.end();
    Slabside.show_words(Slabside.say('goes_on_elsewhere'), Slabside.say('go_on_here'), () => {
      sessionStorage.setItem('slabside.takes_over', 'yes');
      location.reload();
    });
  };
  const take_over = () => navigator.locks.request(name, {steal: true}, here).catch(lost);
  if (sessionStorage.getItem('slabside.takes_over')) {
    sessionStorage.removeItem('slabside.takes_over');
    return take_over();
  }
  navigator.locks.request(name, {ifAvailable: true}, (lock) => {
    if (lock) return here(lock);
    const waits = new AbortController();
    Slabside.show_words(Slabside.say('other_tab'), Slabside.say('go_on_here'), () => {
      waits.abort();
      take_over();
    });
    navigator.locks.request(name, {signal: waits.signal}, here).catch(() => { if (!waits.signal.aborted) lost(); });
  }).catch(lost);
};

const first_words = document.getElementById('words');
first_words.dataset.first = first_words.textContent;
if (typeof WebAssembly !== 'object') Slabside.stop(Slabside.say('no_webassembly'));
else if (navigator.locks) Slabside.start_alone();
else Slabside.start();
