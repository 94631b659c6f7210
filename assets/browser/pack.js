// A studio as one zip file, the same bytes as the program on a computer packs the same files into:
// nothing compressed, no times and no owners.
'use strict';

Slabside.pack = {
  // What is more is written in another way, and by computers only.
  most_files: 65535,
  most_bytes: 2 ** 32 - 1,

  little: function (fields) { // [value, bytes] ...
    return Uint8Array.from(fields.flatMap(([value, count]) =>
      Array.from({length: count}, (_, i) => Math.floor(value / 256 ** i) & 255)));
  },
  // What stands alike before an entry's bytes and in the list. Its sum is said behind the bytes first.
  about: function (file, crc) {
    const sum_behind = 8, utf8 = 0x800, stored = 0, year_1980 = 0x21, size = file.bytes.length;
    const flags = sum_behind | (file.letters.some((byte) => byte > 127) ? utf8 : 0);
    return [[10, 2], [flags, 2], [stored, 2], [0, 2], [year_1980, 2], [crc, 4], [size, 4], [size, 4],
            [file.letters.length, 2], [Slabside.pack.extra.length, 2]];
  },
  // Info-ZIP's extra fields: no times (UT), owner and group 0 (ux).
  extra: Uint8Array.of(0x55, 0x54, 1, 0, 0, 0x75, 0x78, 11, 0, 1, 4, 0, 0, 0, 0, 4, 0, 0, 0, 0),
  before: function (file) {
    const {little, about, extra} = Slabside.pack;
    return [little([[0x04034b50, 4], ...about(file, 0)]), file.letters, extra];
  },
  behind: function (file) {
    const size = file.bytes.length;
    return Slabside.pack.little([[0x08074b50, 4], [file.crc, 4], [size, 4], [size, 4]]);
  },
  listed: function (file, at) {
    const {little, about, extra} = Slabside.pack, by_unix = 0x030a, plain_file = 0o100644 * 65536;
    const rest = [[0, 2], [0, 2], [0, 2], [plain_file, 4], [at, 4]]; // comment, disk, kind of text
    return [little([[0x02014b50, 4], [by_unix, 2], ...about(file, file.crc), ...rest]), file.letters, extra];
  },
  end: function (files, list_bytes, list_at) {
    return Slabside.pack.little([[0x06054b50, 4], [0, 2], [0, 2], [files, 2], [files, 2], [list_bytes, 4],
                                 [list_at, 4], [0, 2]]);
  },

  // By bytes, as a computer sorts its names.
  in_order: function (names) {
    const bytes = new Map(names.map((name) => [name, new TextEncoder().encode(name)]));
    const folder = (name) => name.startsWith('sessions/') ? 0 : 1;
    return names.slice().sort((one, other) => {
      if (folder(one) !== folder(other)) return folder(one) - folder(other);
      const a = bytes.get(one), b = bytes.get(other);
      for (let i = 0; i < Math.min(a.length, b.length); ++i) if (a[i] !== b[i]) return a[i] - b[i];
      return a.length - b.length;
    });
  },
  // What the program packs and nothing else.
  wanted: function (name) {
    const file = name.split('/')[1] ?? '';
    return Slabside.unzip.belongs(name.split('/')) && !file.startsWith('.') && !file.endsWith('.unfinished');
  },

  // The pieces of a pack, one after the other; `read` gives a file's bytes. Each goes into a blob at once,
  // which a browser may lay on its disk.
  of: async function (names, read) {
    const {Refused, crc32} = Slabside.unzip, {before, behind, listed, end, most_files, most_bytes} = Slabside.pack;
    const wanted = names.filter(Slabside.pack.wanted), whole = [], list = [];
    const too_long = () => new Refused('pack_too_long', most_files, 4);
    if (wanted.length === 0) throw new Refused('pack_empty');
    if (wanted.length > most_files) throw too_long();
    let at = 0;
    for (const name of Slabside.pack.in_order(wanted)) {
      const file = {letters: new TextEncoder().encode(name), bytes: await read(name)};
      file.crc = crc32(file.bytes);
      const piece = new Blob([...before(file), file.bytes, behind(file)]);
      list.push(...listed(file, at));
      at += piece.size;
      if (at > most_bytes) throw too_long();
      whole.push(piece);
    }
    const lists = new Blob(list);
    whole.push(lists, end(wanted.length, lists.size, at));
    return {files: wanted.length, blob: new Blob(whole, {type: 'application/zip'})};
  },
};
