mergeInto(LibraryManager.library, {
  // A worker that will run this program once more, from what the page has compiled of it already.
  slabside_learner__deps: ['$Browser', 'emscripten_create_worker'],
  slabside_learner: function () {
    const file = locateFile('learner.js'), place = allocateUTF8(file);
    const id = _emscripten_create_worker(place);
    _free(place);
    const worker = Browser.workers[id].worker;
    worker.onerror = (event) => {
      event.preventDefault(); // it is no end of the page's own program
      _slabside_learner_failed(allocateUTF8(event.message || file));
    };
    worker.postMessage(Module['slabsideProgram']);
    return id;
  },
  // Within that worker.
  slabside_learnt: function (answer, size) { Module['slabsideLearnt'](HEAPU8.slice(answer, answer + size)); },
});
