// A pack from elsewhere: hostile until read. What is refused, and in which words, is what the program on
// a computer refuses; tests hold the two against each other. The list at a zip's end decides (PKWARE
// APPNOTE 6.3, 4.3.7, 4.3.12 to 4.3.16, 4.5.3); names, kinds and sizes are judged before anything is
// unpacked.
'use strict';

Slabside.unzip = {
  most_entries: 500000,
  most_entry_bytes: 256 * 2 ** 20,
  most_bytes: 2 ** 40,
  most_times_larger: 100,
  most_list_bytes: 256 * 2 ** 20,

  // What is wrong with a pack: a sentence by its name, with its facts.
  Refused: class extends Error {
    constructor(name, ...facts) {
      super(name);
      this.sentence = name;
      this.facts = facts;
    }
  },

  crc_table: Uint32Array.from({length: 256}, (_, byte) => {
    let crc = byte;
    for (let i = 0; i < 8; ++i) crc = crc & 1 ? crc >>> 1 ^ 0xedb88320 : crc >>> 1;
    return crc;
  }),
  crc32: function (bytes) {
    const table = Slabside.unzip.crc_table;
    let crc = 0xffffffff;
    for (let i = 0; i < bytes.length; ++i) crc = table[(crc ^ bytes[i]) & 255] ^ crc >>> 8;
    return ~crc >>> 0;
  },

  // Numbers with their lowest byte first.
  number: function (bytes, at, count) {
    let value = 0;
    for (let i = count - 1; i >= 0; --i) value = value * 256 + bytes[at + i];
    return value;
  },
  signed_as: function (bytes, size, signature) {
    return bytes.length >= size && [...signature].every((letter, i) => letter.charCodeAt(0) === bytes[i]);
  },
  reader: function (blob) {
    return async (at, count) => new Uint8Array(await blob.slice(at, at + count).arrayBuffer());
  },

  // Where the list lies. A zip of more than 65,535 entries or 4 GiB says so in a larger record before
  // the usual one.
  place_of_list: async function (size, read) {
    const {number, signed_as} = Slabside.unzip, end_size = 22, locator_size = 20, end64_size = 56;
    if (size < end_size) return null;
    const end = await read(size - end_size, end_size);
    if (!signed_as(end, end_size, 'PK\x05\x06') || number(end, 20, 2) !== 0) return null;
    const usual = {at: number(end, 16, 4), size: number(end, 12, 4), entries: number(end, 10, 2),
                   end: size - end_size};
    if (size < end_size + locator_size + end64_size) return usual;
    const locator = await read(size - end_size - locator_size, locator_size);
    if (!signed_as(locator, locator_size, 'PK\x06\x07')) return usual;
    const at = number(locator, 8, 8);
    if (at !== size - end_size - locator_size - end64_size) return null;
    const end64 = await read(at, end64_size);
    if (!signed_as(end64, end64_size, 'PK\x06\x06')) return null;
    return {at: number(end64, 48, 8), size: number(end64, 40, 8), entries: number(end64, 32, 8), end: at};
  },

  // What does not fit in 32 bits is said in full in an extra field, in this order.
  widen: function (entry, extra) {
    const {number} = Slabside.unzip;
    let wide = new Uint8Array(0), rest = extra;
    while (rest.length >= 4) {
      const size = number(rest, 2, 2);
      if (number(rest, 0, 2) === 1 && wide.length === 0) wide = rest.subarray(4, 4 + size);
      rest = rest.subarray(4 + size);
    }
    for (const field of ['size', 'packed', 'at']) {
      if (entry[field] !== 0xffffffff) continue;
      if (wide.length < 8) return false;
      entry[field] = number(wide, 0, 8);
      wide = wide.subarray(8);
    }
    return true;
  },
  entry_of: function (row, name_size) {
    const {number} = Slabside.unzip, system = row[5];
    return {
      bytes: row.slice(46, 46 + name_size), // of its name
      mode: system === 3 || system === 19 ? number(row, 40, 2) : 0,
      flags: number(row, 8, 2),
      method: number(row, 10, 2),
      crc: number(row, 16, 4),
      packed: number(row, 20, 4),
      size: number(row, 24, 4),
      at: number(row, 42, 4),
    };
  },
  // In the order in which they lie there; null where the zip is not whole.
  list: async function (size, read) {
    const {number, signed_as, widen, entry_of, most_list_bytes, place_of_list} = Slabside.unzip;
    const place = await place_of_list(size, read);
    if (!place || place.size > most_list_bytes || place.end - place.at !== place.size) return null;
    let rest = await read(place.at, place.size);
    const entries = [];
    while (signed_as(rest, 46, 'PK\x01\x02')) {
      const name_size = number(rest, 28, 2), extra_size = number(rest, 30, 2);
      const whole = 46 + name_size + extra_size + number(rest, 32, 2);
      if (whole > rest.length) return null;
      const entry = entry_of(rest, name_size);
      const extra = rest.subarray(46 + name_size, 46 + name_size + extra_size);
      if (!widen(entry, extra) || entry.at >= place.at) return null;
      entries.push(entry);
      rest = rest.subarray(whole);
    }
    if (rest.length > 0 || entries.length !== place.entries) return null;
    return entries.sort((a, b) => a.at - b.at);
  },

  // The name as text, once it may be one. Signs by which a path means something here or elsewhere, or
  // by which it shows as another than it is, are none (Unicode 15.0, Bidi_Control; UAX #14).
  allowed_name: function (bytes, taken) {
    const {Refused, most_entries} = Slabside.unzip;
    const shown = new TextDecoder('utf-8', {ignoreBOM: true}).decode(bytes);
    let name;
    try {
      name = new TextDecoder('utf-8', {fatal: true, ignoreBOM: true}).decode(bytes);
    } catch (error) {
      throw new Refused('entry_not_utf8', shown);
    }
    const path_sign = /[\\:*?"<>|]/, unseen = /[\0-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;
    if (path_sign.test(name) || name.search(unseen) >= 0)
      throw new Refused('entry_odd_name', name.replace(unseen, '?'));
    const parts = name.split('/');
    if (parts.some((part) => part === '' || part === '.' || part === '..')) throw new Refused('entry_leaves', name);
    if (!Slabside.unzip.belongs(parts)) throw new Refused('entry_elsewhere', name);
    const small = name.toLowerCase(); // some file systems know no capitals
    if (taken.has(small)) throw new Refused('entry_twice', name);
    taken.add(small);
    if (taken.size > most_entries) throw new Refused('pack_too_many', most_entries);
    return name;
  },
  belongs: function (parts) {
    if (parts.length !== 2) return false;
    if (parts[0] === 'photos') return /^[0-9a-f]{64}\.(jpg|png)$/.test(parts[1]);
    return parts[0] === 'sessions' && parts[1].length > 6 && parts[1].endsWith('.jsonl');
  },
  is_own_folder: function (entry) {
    const kind = entry.mode & 0o170000, name = String.fromCharCode(...entry.bytes.subarray(0, 10));
    return (kind === 0o040000 || kind === 0) && (name === 'sessions/' || name === 'photos/');
  },
  within_bounds: function (name, entry_bytes, all_bytes, pack_bytes) {
    const {Refused, most_entry_bytes, most_bytes, most_times_larger} = Slabside.unzip, spare = 2 ** 20;
    if (entry_bytes > most_entry_bytes) throw new Refused('entry_too_large', name, most_entry_bytes);
    if (all_bytes > most_bytes) throw new Refused('pack_too_large', most_bytes);
    if (all_bytes > spare && Math.floor((all_bytes - spare) / most_times_larger) > pack_bytes)
      throw new Refused('pack_swells', name, most_times_larger);
  },

  // By the list, before anything is read.
  allow: function (entries, pack_bytes) {
    const {Refused, is_own_folder, allowed_name, within_bounds} = Slabside.unzip, taken = new Set();
    let all_bytes = 0;
    for (const entry of entries) {
      entry.is_folder = is_own_folder(entry);
      if (entry.is_folder) continue;
      entry.name = allowed_name(entry.bytes, taken);
      const kind = entry.mode & 0o170000;
      if (kind !== 0o100000 && kind !== 0) throw new Refused('entry_not_plain', entry.name);
      all_bytes += entry.size;
      within_bounds(entry.name, entry.size, all_bytes, pack_bytes);
    }
  },

  // The bytes of one entry, which must lie there as the list has it.
  bytes_of: async function (entry, blob, read) {
    const {Refused, number, signed_as} = Slabside.unzip, head_size = 30;
    const head = await read(entry.at, head_size + entry.bytes.length);
    const named = signed_as(head, head_size + entry.bytes.length, 'PK\x03\x04') &&
        number(head, 26, 2) === entry.bytes.length && entry.bytes.every((byte, i) => byte === head[head_size + i]);
    const shown = entry.name ?? new TextDecoder().decode(entry.bytes);
    if (!named) throw new Refused('entry_unlike', shown);
    if (entry.is_folder) return null;
    if ((entry.flags | number(head, 6, 2)) & 1) throw new Refused('entry_encrypted', shown);
    if (number(head, 8, 2) !== entry.method) throw new Refused('entry_unlike', shown);
    if (entry.method !== 0 && entry.method !== 8) throw new Refused('entry_packing', shown, entry.method);
    const from = entry.at + head_size + entry.bytes.length + number(head, 28, 2);
    const packed = blob.slice(from, from + entry.packed);
    const bytes = await Slabside.unzip.unpacked(entry, packed);
    if (Slabside.unzip.crc32(bytes) !== entry.crc) throw new Refused('entry_broken', shown, Slabside.say('pack_wrong_sum'));
    return bytes;
  },
  // No more than the list says comes out of it, whatever is in it.
  unpacked: async function (entry, packed) {
    const {Refused} = Slabside.unzip;
    const early = () => new Refused('entry_broken', entry.name, Slabside.say('pack_ends_early'));
    if (packed.size !== entry.packed) throw early();
    if (entry.method === 0) {
      if (entry.packed !== entry.size) throw early();
      return new Uint8Array(await packed.arrayBuffer());
    }
    const bytes = new Uint8Array(entry.size), reader = packed.stream()
        .pipeThrough(new DecompressionStream('deflate-raw')).getReader();
    let at = 0;
    try {
      for (;;) {
        const {done, value} = await reader.read();
        if (done) break;
        if (at + value.length > entry.size) throw new TypeError('longer than its list says');
        bytes.set(value, at);
        at += value.length;
      }
    } catch (error) {
      await reader.cancel().catch(() => {});
      throw new Refused('entry_broken', entry.name, error.message);
    }
    if (at !== entry.size) throw early();
    return bytes;
  },

  // Calls take(name, bytes) for each file, one after the other. Nothing may be kept before it is over:
  // the last entry may be the one that is refused.
  each: async function (blob, take) {
    const {Refused, list, reader, allow, bytes_of, signed_as} = Slabside.unzip, read = reader(blob);
    const entries = await list(blob.size, read);
    // Of what begins as a zip the end was not fetched.
    if (!entries && signed_as(await read(0, 4), 4, 'PK\x03\x04')) throw new Refused('pack_cut', blob.size);
    if (!entries) throw new Refused('pack_no_zip');
    allow(entries, blob.size);
    for (const entry of entries) {
      const bytes = await bytes_of(entry, blob, read);
      if (bytes) await take(entry.name, bytes);
    }
  },
};
