// The page's side of browser_paper_desk.cpp: how a page prints and saves, the page itself knows.
mergeInto(LibraryManager.library, {
  slabside_put_on_paper: function (stem_at, ending_at, place, count) {
    const bytes = HEAPU8.slice(place, place + count); // the program's memory may move
    Module['slabsidePaper'](UTF8ToString(stem_at), UTF8ToString(ending_at), bytes)
        .then((went) => _slabside_paper_went(allocateUTF8(went.name), went.printed ? 1 : 0, allocateUTF8(went.why)));
  },
  slabside_fetch_codes: function () {
    const came = (why) => _slabside_codes_came(allocateUTF8(why));
    Module['slabsideCodes'].fetch().then(() => came(''), (error) => came(error.message));
  },
});
