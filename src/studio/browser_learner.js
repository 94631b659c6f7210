mergeInto(LibraryManager.library, {
  // A worker that will run this program once more, from what the page has compiled of it already.
  slabside_learner__deps: ['$Browser', 'emscripten_create_worker'],
  slabside_learner: function () {
    const file = locateFile('learner.js'), size = lengthBytesUTF8(file) + 1, place = _malloc(size);
    stringToUTF8(file, place, size);
    const id = _emscripten_create_worker(place);
    _free(place);
    Browser.workers[id].worker.postMessage(Module['slabsideProgram']);
    return id;
  },
  // Within that worker.
  slabside_learnt: function (answer, size) { Module['slabsideLearnt'](HEAPU8.slice(answer, answer + size)); },
});
