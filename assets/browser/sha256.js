// SHA-256 (FIPS 180-4) of bytes, in hexadecimal. Browsers bring one on https alone, and in a house the page
// is served without.
'use strict';

{
  const primes = [];
  for (let number = 2; primes.length < 64; ++number)
    if (primes.every((prime) => number % prime !== 0)) primes.push(number);
  const fraction = (root) => (root % 1) * 2 ** 32 | 0;
  const constants = Int32Array.from(primes, (prime) => fraction(Math.cbrt(prime)));
  const start = Int32Array.from(primes.slice(0, 8), (prime) => fraction(Math.sqrt(prime)));
  const turned = (word, by) => word >>> by | word << 32 - by;

  const words = new Int32Array(64);
  const mix = (state, view, at) => {
    for (let i = 0; i < 16; ++i) words[i] = view.getInt32(at + 4 * i);
    for (let i = 16; i < 64; ++i) {
      const early = words[i - 15], late = words[i - 2];
      words[i] = words[i - 16] + words[i - 7] + (turned(early, 7) ^ turned(early, 18) ^ early >>> 3) +
                 (turned(late, 17) ^ turned(late, 19) ^ late >>> 10);
    }
    let [a, b, c, d, e, f, g, h] = state;
    for (let i = 0; i < 64; ++i) {
      const one = h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + (e & f ^ ~e & g) + constants[i] + words[i] | 0;
      const other = (turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + (a & b ^ a & c ^ b & c) | 0;
      h = g; g = f; f = e; e = d + one | 0; d = c; c = b; b = a; a = one + other | 0;
    }
    [a, b, c, d, e, f, g, h].forEach((word, i) => { state[i] += word; });
  };

  Slabside.sha256 = function (bytes) {
    const state = Int32Array.from(start), whole = bytes.length - bytes.length % 64;
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
    for (let at = 0; at < whole; at += 64) mix(state, view, at);
    const rest = bytes.subarray(whole), end = new Uint8Array(rest.length < 56 ? 64 : 128), tail = new DataView(end.buffer);
    end.set(rest);
    end[rest.length] = 0x80;
    tail.setBigUint64(end.length - 8, BigInt(bytes.length) * 8n);
    for (let at = 0; at < end.length; at += 64) mix(state, tail, at);
    return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
  };
}
