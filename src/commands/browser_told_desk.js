// The page's side of browser_told_desk.cpp: how files are saved and picked, the page itself knows.
mergeInto(LibraryManager.library, {
  slabside_save_told: function (name_at, place, count) {
    Module['slabsideTold'].save(UTF8ToString(name_at), HEAPU8.slice(place, place + count));
  },
  slabside_pick_told: function (most) {
    const text = (words) => {
      const size = lengthBytesUTF8(words) + 1, at = _malloc(size);
      stringToUTF8(words, at, size);
      return at;
    };
    Module['slabsideTold'].pick(most, ({name, at, bytes, failure}) => {
      const place = _malloc(bytes.length + 1); // whoever is told frees all
      HEAPU8.set(bytes, place);
      _slabside_told_picked(text(name), at, place, bytes.length, text(failure));
    });
  },
});
