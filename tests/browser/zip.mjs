// A zip file made by hand, field by field after PKWARE's APPNOTE 6.3 (4.3.7, 4.3.12, 4.3.14 to 4.3.16), so
// that it can be as wrong as a hostile one. Shares nothing with what reads it.
export const plain_file = 0o100644, link = 0o120777, device = 0o020666, folder = 0o040755;

// CRC-32 bit by bit (ISO 3309).
function crc32_of(bytes) {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let i = 0; i < 8; ++i) crc = crc & 1 ? crc >>> 1 ^ 0xedb88320 : crc >>> 1;
  }
  return ~crc >>> 0;
}

const little = (value, count) => {
  const bytes = Buffer.alloc(count);
  for (let i = 0; i < count; ++i) bytes[i] = Math.floor(value / 256 ** i) % 256;
  return bytes;
};
const bytes_of = (text) => Buffer.isBuffer(text) ? text : Buffer.from(text);

// What a local header and the list at the end say alike, from the flags on.
function about(entry, said) {
  const {name, bytes, flags = 0, method = 0, crc_off_by = 0, plain = bytes} = entry;
  const size = said ?? bytes_of(plain).length;
  return Buffer.concat([little(flags, 2), little(method, 2), little(0, 2), little(0x21, 2),
    little((crc32_of(bytes_of(plain)) + crc_off_by) % 2 ** 32, 4), little(bytes_of(bytes).length, 4),
    little(size, 4), little(bytes_of(name).length, 2), little(0, 2)]);
}

// Each entry: name, bytes, and if wanted mode, flags, method, crc_off_by, plain (unpacked, of deflated
// bytes), size (as it is said), listed (the same in the list alone), named (in the list alone).
export function zip_of(entries, {behind = '', wide = false} = {}) {
  const list = [], whole = [];
  let at = 0;
  for (const entry of entries) {
    const listed = {...entry, name: entry.named ?? entry.name};
    list.push(Buffer.from('PK\x01\x02'), little(0x0314, 2), little(20, 2), about(listed, entry.listed ?? entry.size),
      little(0, 6), little((entry.mode ?? plain_file) * 65536, 4), little(at, 4), bytes_of(listed.name));
    const piece = Buffer.concat([Buffer.from('PK\x03\x04'), little(20, 2), about(entry, entry.size),
      bytes_of(entry.name), bytes_of(entry.bytes)]);
    whole.push(piece);
    at += piece.length;
  }
  const lists = Buffer.concat(list), count = entries.length;
  const wide_end = wide ? Buffer.concat([Buffer.from('PK\x06\x06'), little(44, 8), little(0x032d, 2), little(45, 2),
    little(0, 8), little(count, 8), little(count, 8), little(lists.length, 8), little(at, 8),
    Buffer.from('PK\x06\x07'), little(0, 4), little(at + lists.length, 8), little(1, 4)]) : Buffer.alloc(0);
  const end = Buffer.concat([Buffer.from('PK\x05\x06'), little(0, 4), little(count, 2), little(count, 2),
    little(lists.length, 4), little(at, 4), little(0, 2)]);
  return Buffer.concat([...whole, lists, wide_end, end, Buffer.from(behind)]);
}
