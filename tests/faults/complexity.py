#!/usr/bin/python3
"""Counts the instructions of the real program on files made to be slow to read, and on a long batch.

Usage: complexity.py SLABSIDE [LINES]     LINES: of the smaller one of each kind, 600 unless said

Twice as much may take at most 2.3 times the instructions, less those of a studio with nothing in
it. They are counted by valgrind and not by a clock, so the answer is the same each time.
"""

import pathlib
import re
import subprocess
import sys
import tempfile

sys.path.insert(0, str(pathlib.Path(__file__).parents[1] / "session/second"))
from reader import crc32c, seed_of  # noqa: E402

MOST = 2.3
SESSION = "5e1f20c70b94"
NAME = f"2026-11-25T143200Z-07bd-{SESSION}"
BEGAN = ('{{"n":{},"t":0,"at":1795617120000,"e":"began","format":"slabside-session","version":2,'
         '"session":"{}","part":{},{}"device":"07bd","local":""')


def sealed(bodies, part=0):
    """Each line with its LF."""
    seed, check, out = seed_of(SESSION, part), 0, []
    for body in bodies:
        start = body.encode() + b',"p":"%08x"' % check
        check = crc32c(start, check ^ seed)
        out.append(start + b',"c":"%08x"}\n' % check)
    return out


def began(part=0, start=0, session=SESSION):
    return BEGAN.format(start, session, part, f'"from":{start},' if part else "")


def felt(n, how="right"):
    return f'{{"n":{n},"t":{n},"at":{1795617120000 + n},"e":"felt","batch":"b","as":"{how}","by":"knife"'


def usual(count, how="right"):
    return sealed([began()] + [felt(n, how) for n in range(1, count)])


def descending(count):
    return {NAME: b"".join(reversed(usual(count)))}


def gaps(count):
    return {NAME: b"".join(usual(2 * count)[::2])}


def contradictions(count):
    return {NAME: b"".join(usual(count)), "copy-" + NAME: b"".join(usual(count, "too_loose"))}


def keys(count):
    many = ",".join(f'"k{i}":0' for i in range(60 * count))
    lines = [began()] + [felt(n) + "," + part for n, part in enumerate(split(many), 1)]
    return {NAME: b"".join(sealed(lines))}


def split(many, most=60000):
    while many:
        end = len(many) if len(many) <= most else many.rindex(",", 0, most)
        yield many[:end]
        many = many[end + 1:]


def beginnings(count):
    others = [began(session=f"{i:012x}") for i in range(count)]
    return {NAME: b"".join(sealed([began()] + others))}


def same_number(count):
    return {NAME: b"".join(sealed([began()] + [felt(1, h) for h in ["right", "too_loose"] * (count // 2)]))}


def parts(count):
    return {NAME + (f".{i}" if i else ""): b"".join(sealed([began(i, i), felt(i + 1)], i))
            for i in range(count // 4)}


def zeros(count):
    return {NAME: b"".join(usual(8)) + bytes(150 * count)}


def no_lines(count):
    return {NAME: b"\n" * (50 * count)}


CASES = [descending, gaps, contradictions, keys, beginnings, same_number, parts, zeros, no_lines]


TAPS = """at 2026-11-25T14:32:00+01:00
seed 7
tap pigment pb28
tap weigh
type 12
tap begin
"""


def long_batch(count):
    """Of one batch: a tap costs no more where it has many."""
    round_ = "tap add gum_12 x8 every 2\nwait 5\ntap felt too_sticky\ntap undo\ntap add gum_12\n"
    return {"evening.taps": (TAPS + round_ * (count // 12)).encode()}


def instructions(program, files, folder, command):
    sessions = folder / "studio" / "sessions"
    sessions.mkdir(parents=True)
    for name, data in files.items():
        place = folder / name if name.endswith(".taps") else sessions / f"{name}.jsonl"
        place.write_bytes(data)
    if not files:
        (folder / "evening.taps").write_text(TAPS)
    words = {"check": ["check", folder / "studio", "--fallback", ""],
             "mend": ["mend", "--studio", folder / "studio", "--fallback", "", "--out", folder / "new"],
             "play": ["play", folder / "evening.taps", "--studio", folder / "studio",
                      "--fallback", ""]}
    run = subprocess.run(["valgrind", "--tool=callgrind", "--callgrind-out-file=/dev/null", program,
                          *words[command]], capture_output=True, text=True)
    assert run.returncode in (0, 1), run.stderr
    return int(re.search(r"Collected : (\d+)", run.stderr)[1])


def main():
    program = pathlib.Path(sys.argv[1]).resolve()
    count = int(sys.argv[2]) if len(sys.argv) > 2 else 600
    slow = 0
    with tempfile.TemporaryDirectory() as root:
        for command, cases in (("check", CASES), ("mend", CASES), ("play", [long_batch])):
            nothing = instructions(program, {}, pathlib.Path(root) / f"{command}-0", command)
            for case in cases:
                one, two = (instructions(program, case(size), pathlib.Path(root)
                                         / f"{command}-{case.__name__}-{size}", command) - nothing
                            for size in (count, 2 * count))
                slow += two > MOST * one
                print(f"{command:6} {case.__name__:15} {one / 1e6:9.1f} and {two / 1e6:9.1f} million: "
                      f"{two / one:.2f}", flush=True)
    return 1 if slow else 0


if __name__ == "__main__":
    sys.exit(main())
