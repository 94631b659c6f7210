// The page's side of browser_paper_desk.cpp: how a page prints and saves, the page itself knows.
mergeInto(LibraryManager.library, {
  $SlabsidePaper: {
    text: function (words) {
      const size = lengthBytesUTF8(words) + 1, at = _malloc(size);
      stringToUTF8(words, at, size);
      return at;
    },
  },

  slabside_put_on_paper__deps: ['$SlabsidePaper'],
  slabside_put_on_paper: function (stem_at, ending_at, place, count) {
    const text = SlabsidePaper.text, bytes = HEAPU8.slice(place, place + count); // the program's memory may move
    Module['slabsidePaper'](UTF8ToString(stem_at), UTF8ToString(ending_at), bytes)
        .then((went) => _slabside_paper_went(text(went.name), went.printed ? 1 : 0, text(went.why)));
  },
  slabside_fetch_codes__deps: ['$SlabsidePaper'],
  slabside_fetch_codes: function () {
    const came = (why) => _slabside_codes_came(SlabsidePaper.text(why));
    Module['slabsideCodes'].fetch().then(() => came(''), (error) => came(error.message));
  },
});
