// The page's side of browser_told_desk.cpp: how files are saved and picked, the page itself knows.
mergeInto(LibraryManager.library, {
  slabside_save_told: function (name_at, place, count) {
    Module['slabsideTold'].save(UTF8ToString(name_at), HEAPU8.slice(place, place + count));
  },
  slabside_pick_told: function (most) {
    Module['slabsideTold'].pick(most, (file) => {
      const place = _malloc(file.bytes.length + 1); // whoever is told frees all
      HEAPU8.set(file.bytes, place);
      _slabside_told_picked(allocateUTF8(file.name), file.at, place, file.bytes.length, allocateUTF8(file.failure));
    });
  },
});
