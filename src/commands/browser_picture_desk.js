// The page's side of browser_picture_desk.cpp: where pictures are and how they are decoded, the page itself
// knows. Every question is answered once, later, through slabside_picture_answered(id, failure, bytes,
// count, width, height): `failure` is empty if all went well, "gone", "changed", or the browser's own words.
mergeInto(LibraryManager.library, {
  $SlabsidePictures: {
    give: function (id, failure, bytes, width, height) {
      const pictures = SlabsidePictures, place = _malloc(bytes.length + 1); // whoever is told frees both
      if (!place) return pictures.give(id, 'there is not enough memory', new Uint8Array(0), 0, 0);
      HEAPU8.set(bytes, place);
      _slabside_picture_answered(id, allocateUTF8(failure), place, bytes.length, width, height);
    },
    answer: function (id, asked) {
      const pictures = SlabsidePictures, none = new Uint8Array(0);
      asked.then((found) => pictures.give(id, '', found.bytes, found.width || 0, found.height || 0),
                 (error) => pictures.give(id, error.message || error.name, none, 0, 0));
    },
  },

  slabside_pictures_pick__deps: ['$SlabsidePictures'],
  slabside_pictures_pick: function () {
    Module['slabsidePictures'].pick((names) => _slabside_pictures_picked(allocateUTF8(names.join('\n'))));
  },
  slabside_picture_bytes__deps: ['$SlabsidePictures'],
  slabside_picture_bytes: function (id, image_at) {
    SlabsidePictures.answer(id, Module['slabsidePictures'].bytes_of(UTF8ToString(image_at)));
  },
  slabside_picture_keep__deps: ['$SlabsidePictures'],
  slabside_picture_keep: function (id, image_at, ending_at) {
    SlabsidePictures.answer(id, Module['slabsidePictures'].keep(UTF8ToString(image_at), UTF8ToString(ending_at)));
  },
  slabside_picture_pixels__deps: ['$SlabsidePictures'],
  slabside_picture_pixels: function (id, place, count, by, longest) {
    const bytes = HEAPU8.slice(place, place + count); // the program's memory may move
    SlabsidePictures.answer(id, Module['slabsidePictures'].pixels_of(bytes, by, longest));
  },
});
