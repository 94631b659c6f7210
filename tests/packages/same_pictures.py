#!/usr/bin/python3
"""Whether two PNG files, or all those of two folders, show the same.

Usage: same_pictures.py [--most-other SHARE] ONE OTHER
    --most-other  how large a share of the picture's bytes may differ (0.02: another release of the
                  drawing program smooths edges differently)
"""

import argparse
import pathlib
import struct
import sys
import zlib


def rows(path):
    """Width, height and all bytes of a PNG of eight bits a channel, unfiltered."""
    data, at, packed = path.read_bytes(), 8, b""
    while at < len(data):
        size, kind = struct.unpack(">I4s", data[at:at + 8])
        if kind == b"IHDR":
            w, h, depth, colour = struct.unpack(">IIBB", data[at + 8:at + 18])
        if kind == b"IDAT":
            packed += data[at + 8:at + 8 + size]
        at += size + 12
    step = {2: 3, 6: 4}[colour]
    assert depth == 8, f"{path}: {depth} bits a channel"
    raw, out, above = zlib.decompress(packed), bytearray(), bytearray(w * step)
    for y in range(h):
        start = y * (w * step + 1)
        line = bytearray(raw[start + 1:start + 1 + w * step])
        unfilter(raw[start], line, above, step)
        out += line
        above = line
    return w, h, bytes(out)


def unfilter(kind, line, above, step):  # PNG specification, section 9
    for x in range(len(line) if kind else 0):
        left = line[x - step] if x >= step else 0
        corner = above[x - step] if x >= step else 0
        up = above[x]
        if kind == 4:
            near = left + up - corner
            guess = min((abs(near - left), 0, left), (abs(near - up), 1, up), (abs(near - corner), 2, corner))[2]
        else:
            guess = (left, up, (left + up) // 2)[kind - 1]
        line[x] = (line[x] + guess) & 255


def fault(one, other, most):
    if one.read_bytes() == other.read_bytes():
        return None
    (w, h, a), (v, k, b) = rows(one), rows(other)
    if (w, h, len(a)) != (v, k, len(b)):
        return "another size"
    share = sum(abs(x - y) > 8 for x, y in zip(a, b)) / len(a)
    return f"{share:.1%} of it differ" if share > most else None


def main():
    words = argparse.ArgumentParser()
    words.add_argument("--most-other", type=float, default=0.02)
    words.add_argument("one", type=pathlib.Path)
    words.add_argument("other", type=pathlib.Path)
    given = words.parse_args()
    pairs = [(given.one, given.other)]
    if given.one.is_dir():
        names = {p.relative_to(f) for f in (given.one, given.other) for p in f.rglob("*.png")}
        pairs = [(given.one / name, given.other / name) for name in sorted(names)]
    bad = 0
    for one, other in pairs:
        there = one.exists() and other.exists()
        wrong = fault(one, other, given.most_other) if there else "only one is there"
        if wrong:
            bad += 1
            print(f"{other}: {wrong}")
    print(f"{len(pairs)} compared, {bad} unlike")
    sys.exit(bad > 0 or not pairs)


if __name__ == "__main__":
    main()
