// The page's side of browser_face_files.cpp: its files are those of the page, in faces.js.
mergeInto(LibraryManager.library, {
  // Nothing where the page has not got it. Whoever is told frees it.
  slabside_face: function (bold, rank, count_at) {
    const bytes = Module['slabsideFaces'].of(bold, rank);
    if (!bytes) return 0;
    const place = _malloc(bytes.length);
    HEAPU8.set(bytes, place);
    HEAP32[count_at >> 2] = bytes.length;
    return place;
  },
  slabside_fetch_faces: function () {
    Module['slabsideFaces'].fetch_others(() => {
      if (ABORT) return;
      _slabside_faces_came();
      _slabside_exposed();
      _slabside_hear();
    });
  },
});
