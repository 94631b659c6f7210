mergeInto(LibraryManager.library, {
  // Where a file lies that came with the program.
  slabside_beside: function (file_at) {
    const place = locateFile(UTF8ToString(file_at));
    const size = lengthBytesUTF8(place) + 1, text = _malloc(size);
    stringToUTF8(place, text, size);
    return text;
  },
});
