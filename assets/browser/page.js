// What is there before the program, and what is left when it stops.
'use strict';

function stopped(why) {
  console.error(why);
  document.body.classList.remove('ready');
  const words = document.getElementById('words'); // its data are sentences
  words.textContent = words.dataset.stopped.replace('{0}', () => why);
}

var Module = {
  canvas: document.getElementById('canvas'),
  onAbort: (why) => stopped(why + '.'),
};

window.addEventListener('error', (event) => {
  if (!event.message.startsWith('ResizeObserver loop')) stopped(event.message + '.'); // else a remark
});

if (typeof WebAssembly !== 'object')
  stopped(document.getElementById('words').dataset.noWebassembly);

// Offline the page comes from its own cache. Browsers allow that on https and localhost only.
if (window.isSecureContext && 'serviceWorker' in navigator)
  navigator.serviceWorker.register('worker.js').catch((error) => console.warn('not offline:', error.message));
