mergeInto(LibraryManager.library, {
  // A worker that will run this program once more, from what the page has compiled of it already.
  slabside_learner__deps: ['$Browser', 'emscripten_create_worker'],
  slabside_learner: function () {
    const file = locateFile('learner.js'), size = lengthBytesUTF8(file) + 1, place = _malloc(size);
    stringToUTF8(file, place, size);
    const id = _emscripten_create_worker(place);
    _free(place);
    const worker = Browser.workers[id].worker;
    worker.onerror = (event) => {
      event.preventDefault(); // it is no end of the page's own program
      const why = event.message || file, length = lengthBytesUTF8(why) + 1, text = _malloc(length);
      stringToUTF8(why, text, length);
      _slabside_learner_failed(text);
    };
    worker.postMessage(Module['slabsideProgram']);
    return id;
  },
  // Within that worker.
  slabside_learnt: function (answer, size) { Module['slabsideLearnt'](HEAPU8.slice(answer, answer + size)); },
});
