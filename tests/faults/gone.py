#!/usr/bin/python3
"""Takes the files away from under the real program while it plays a script.

Usage: gone.py SLABSIDE [TIMES [SEED]]     TIMES: of each way, 1 unless said; prints what it found.

The session's file, its folder or the whole studio is removed, renamed, written over or put elsewhere
at a moment that the seed draws. The program does not notice from write or fsync, which go on to
succeed. Afterwards every line that was reported as saved, and was not reported as failed since, is in
what lies there now, under the studio's name or in the fallback; and it was said.
"""

import os
import pathlib
import random
import shutil
import signal
import subprocess
import sys
import tempfile

sys.path.insert(0, str(pathlib.Path(__file__).parents[1] / "session/second"))
from reader import read_file  # noqa: E402

SENTENCE = ".jsonl” is no longer there as it was written: all of this session is written again.\n"
SCRIPT = pathlib.Path(__file__).with_name("kill") / "evening.taps"


def only_file(studio):
    return next((studio / "sessions").glob("*.jsonl"))


def removed(studio):
    only_file(studio).unlink()


def renamed(studio):
    only_file(studio).rename(studio / "moved.jsonl")


def written_over(studio):
    new = studio / "new"
    new.write_text("mine\n")
    new.rename(only_file(studio))


def cut(studio):
    os.truncate(only_file(studio), 100)


def written_into(studio):
    with only_file(studio).open("ab") as file:
        file.write(b"mine\n")


def without_sessions(studio):
    shutil.rmtree(studio / "sessions")


def sessions_renamed(studio):
    (studio / "sessions").rename(studio / "elsewhere")


def without_studio(studio):
    shutil.rmtree(studio)


def studio_renamed(studio):
    studio.rename(studio.with_name("elsewhere"))


def another_studio(studio):
    studio.rename(studio.with_name("elsewhere"))
    (studio / "sessions").mkdir(parents=True)


WAYS = [removed, renamed, written_over, cut, written_into, without_sessions, sessions_renamed,
        without_studio, studio_renamed, another_studio]


class Output:
    """What a program prints, line by line, and without waiting for more."""

    def __init__(self, stream):
        self.fd, self.text = stream.fileno(), ""

    def read_some(self):
        got = os.read(self.fd, 1 << 16)
        self.text += got.decode()
        return bool(got)

    def read_what_is_there(self):
        os.set_blocking(self.fd, False)
        try:
            while self.read_some():
                pass
        except BlockingIOError:
            pass
        os.set_blocking(self.fd, True)

    def lines(self):
        return self.text.splitlines(keepends=True)

    def saved(self):
        return max((int(line.split()[1]) for line in self.lines() if line.startswith("saved ")), default=-1)


def play(slabside, folder, pace, away, after, last):
    """What it printed; `away` is done once line `after` was said to be saved, while the program stands
    still wherever it is then: it would else put back what half of `away` has taken. None where line
    `last` was saved by then: there was nothing left to notice it by."""
    command = [slabside, "play", SCRIPT, "--studio", folder / "studio", "--fallback",
               folder / "fallback", "--report", "--pace", str(pace)]
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT) as run:
        said = Output(run.stdout)
        while away and said.saved() < after:
            assert said.read_some(), f"line {after} was never saved:\n{said.text}"
        if away:
            run.send_signal(signal.SIGSTOP)
            os.waitid(os.P_PID, run.pid, os.WSTOPPED | os.WEXITED | os.WNOWAIT)
            said.read_what_is_there()
            if said.saved() >= last:
                run.kill()
                return None
            away(folder / "studio")
            run.send_signal(signal.SIGCONT)
        while said.read_some():
            pass
    return said.lines()


def play_in_time(slabside, folder, away, after, last):
    """At a pace that this machine can follow."""
    for pace in (400, 100, 25, 6, 2):
        said = play(slabside, folder, pace, away, after, last)
        if said is not None:
            return said
        shutil.rmtree(folder)
    raise AssertionError("the test was too slow to take anything away in time, at every pace")


def bare(line):
    return {key: value for key, value in line.items() if key not in ("p", "c")}


def lines_left(folder):
    """By number, those of the last part that says them, in what lies under the two names."""
    files = [(f.name, f.read_bytes()) for place in ("studio", "fallback")
             for f in (folder / place / "sessions").glob("*.jsonl")]
    found = {}
    for name, data in sorted(files, key=lambda file: file[0].count(".")):
        for line in read_file(name, data)[0]:
            found.setdefault(line["n"], []).append(bare(line))
    return found


def look(said, truth, folder):
    saved = [line for line in said if line.startswith(("saved ", "failed "))]
    last = max(i for i, line in enumerate(saved) if line.startswith("saved "))
    confirmed = int(saved[last].split()[1])
    told = [line for line in said if line.startswith("failed ") and SENTENCE in line]
    assert told, "it was not said:\n" + "".join(said)
    assert confirmed == len(truth) - 1, f"only {confirmed} of {len(truth) - 1}:\n" + "".join(said)
    left = lines_left(folder)
    for n in range(1, confirmed + 1):
        assert truth[n] in left.get(n, []), f"line {n} was reported as saved, and is not there"
    return confirmed


def main():
    slabside = pathlib.Path(sys.argv[1]).resolve()
    times = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    chance = random.Random(int(sys.argv[3]) if len(sys.argv) > 3 else 1)
    confirmed = 0
    with tempfile.TemporaryDirectory() as folder:
        whole = pathlib.Path(folder) / "whole"
        play(slabside, whole, 400, None, 0, 0)
        file = only_file(whole / "studio")
        truth = [bare(line) for line in read_file(file.name, file.read_bytes())[0]]
        for way in WAYS:
            for i in range(times):
                one = pathlib.Path(folder) / f"{way.__name__}-{i}"
                after = chance.randrange(2, len(truth) // 2)  # enough is still to come
                said = play_in_time(slabside, one, way, after, len(truth) - 1)
                try:
                    confirmed += look(said, truth, one)
                except AssertionError as error:
                    sys.exit(f"{way.__name__} after line {after}: {error}")
    print(f"{len(WAYS)} ways to lose a file, {times} times each: "
          f"{confirmed} lines were said to be saved, and all are there")


if __name__ == "__main__":
    main()
