// The page's side of browser_qr.cpp: what makes a code, codes.js has fetched.
mergeInto(LibraryManager.library, {
  // Its modules, a byte each. Whoever is told frees them.
  slabside_qr: function (text_at, side_at) {
    const modules = Module['slabsideCodes'].of(UTF8ToString(text_at)), place = _malloc(modules.length);
    HEAPU8.set(modules, place);
    HEAP32[side_at >> 2] = Math.sqrt(modules.length);
    return place;
  },
});
