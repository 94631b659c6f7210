#!/usr/bin/python3
"""What other programs say about a pack: zipfile of Python, unzip (Info-ZIP) and bsdtar.

Usage: zip_agrees.py PACK STUDIO     fails unless all three read from the pack, whole, exactly the
sessions and photos that lie in the studio: the same names, in the same order, the same bytes.
"""

import os
import pathlib
import subprocess
import sys
import zipfile
import zlib

pack, studio = sys.argv[1], pathlib.Path(sys.argv[2])
os.environ["LC_ALL"] = "C.UTF-8"  # else unzip and bsdtar know no other letters than ASCII
names = [f"{folder}/{name}" for folder in ("sessions", "photos") if (studio / folder).is_dir()
         for name in sorted(path.name for path in (studio / folder).iterdir())]
assert names, "an empty studio proves nothing"

with zipfile.ZipFile(pack) as archive:
    assert archive.testzip() is None
    assert archive.namelist() == names, archive.namelist()
    for entry in archive.infolist():
        bytes_there = (studio / entry.filename).read_bytes()
        assert entry.CRC == zlib.crc32(bytes_there), entry.filename
        assert entry.file_size == entry.compress_size == len(bytes_there), entry.filename
        assert entry.date_time == (1980, 1, 1, 0, 0, 0), entry.date_time
        assert archive.read(entry) == bytes_there, entry.filename
        assert bool(entry.flag_bits & 0x800) != entry.filename.isascii(), entry.filename


def said(*words):
    return subprocess.run(words, check=True, capture_output=True, text=True).stdout


said("unzip", "-tqq", pack)
assert said("unzip", "-Z1", pack).splitlines() == names
assert said("bsdtar", "-tf", pack).splitlines() == names
for name in names:
    read = subprocess.run(["bsdtar", "-xOf", pack, name], check=True, capture_output=True).stdout
    assert read == (studio / name).read_bytes(), name
