#!/usr/bin/python3
"""Packs written by Python's zipfile, which shares nothing with the library that reads them.

Usage: python_zip.py WHAT FILE     WHAT: names, zip64_heads, zip64_everywhere, zip64_small, zip64_many
"""

import sys
import zipfile

STUDIO = {"sessions/a.jsonl": b"one\n", f"photos/{0:064x}.jpg": b"p" * 100_000}
FEW = {"sessions/a.jsonl": b"one\n", f"photos/{11:064x}.jpg": b"a photo"}
NAMES = {"sessions/M\u00fcller.jsonl": b"one sign", "sessions/Mu\u0308ller.jsonl": b"two signs",
         "sessions/\u58a8.jsonl": b"ink"}


def write(file, entries, heads64=False, packing=zipfile.ZIP_DEFLATED):
    with zipfile.ZipFile(file, "w", packing) as archive:
        for name, content in entries.items():
            with archive.open(name, "w", force_zip64=heads64) as entry:
                entry.write(content)


def without_limits():
    """All that may stand in a zip64 record does, as if it were too large for the usual one."""
    zipfile.ZIP64_LIMIT = zipfile.ZIP_FILECOUNT_LIMIT = 1


def main():
    what, file = sys.argv[1:]
    if what == "names":
        write(file, NAMES)
    elif what == "zip64_heads":
        write(file, STUDIO, heads64=True)
    elif what == "zip64_everywhere":
        without_limits()
        write(file, STUDIO, heads64=True)
    elif what == "zip64_small":
        without_limits()
        write(file, FEW, heads64=True, packing=zipfile.ZIP_STORED)
    elif what == "zip64_many":
        write(file, STUDIO | {f"photos/{n:064x}.png": b"" for n in range(65_536)},
              packing=zipfile.ZIP_STORED)
    else:
        sys.exit(__doc__.strip())


main()
