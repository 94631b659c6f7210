#!/usr/bin/python3
"""Kills the real program at random moments while it plays a script, and looks at what is left.

Usage: kill.py SLABSIDE [TIMES [SEED]]     TIMES: 100 unless said; prints what it found.

The same script and seed give the same bytes, so one run to the end is the truth. After each kill:
- the file is the beginning of the truth, cut at worst inside its last line: nothing is invented,
  nothing is there twice, nothing is out of order;
- every line that the program had reported as saved is in it, whole;
- `check` finds nothing damaged, and a batch that was opened can be shown.
"""

import os
import pathlib
import random
import signal
import subprocess
import sys
import tempfile
import time

SCRIPT = pathlib.Path(__file__).with_name("evening.taps")
PACE = "150"


def play(slabside, studio, report):
    return subprocess.Popen(
        [slabside, "play", SCRIPT, "--studio", studio, "--report", "--pace", PACE],
        stdout=report, stderr=subprocess.STDOUT)


def reported(report):
    """The last line said to be saved; -1 for none. A line cut by the kill does not count."""
    whole = report.read_text().split("\n")[:-1]
    return max((int(line.split()[1]) for line in whole if line.startswith("saved ")), default=-1)


def only_file(studio):
    files = list((studio / "sessions").glob("*")) if (studio / "sessions").exists() else []
    assert len(files) <= 1, f"more than one file: {files}"
    return files[0] if files else None


def truth_of(slabside, folder):
    """The file of a run that nobody killed, and how long it took."""
    studio, report = folder / "truth", folder / "truth.out"
    began = time.monotonic()
    with report.open("w") as out:
        assert play(slabside, studio, out).wait() == 0, report.read_text()
    seconds = time.monotonic() - began
    truth = only_file(studio).read_bytes()
    lines = truth.count(b"\n")
    assert reported(report) == lines - 1, "the last line was never reported"
    return truth, seconds


def look(slabside, studio, report, truth):
    """What is left after one kill; returns the number of lines confirmed."""
    saved = reported(report)
    file = only_file(studio)
    left = file.read_bytes() if file else b""
    assert truth.startswith(left), "the file is not the beginning of the truth"
    whole = left.count(b"\n")
    assert whole > saved, f"line {saved} was reported as saved, and {whole} lines are there"
    if whole == 0:
        return 0  # killed before there was a line to read
    run = subprocess.run([slabside, "check", studio], capture_output=True, text=True)
    assert run.returncode == 0, run.stdout + run.stderr
    if b'"e":"opened"' in left[: left.rfind(b"\n")]:
        run = subprocess.run([slabside, "show", "last", "--studio", studio, "--fallback", ""],
                             capture_output=True, text=True)
        assert run.returncode == 0, run.stdout + run.stderr
    return saved + 1


def kill_once(slabside, folder, truth, after):
    folder.mkdir()
    studio, report = folder / "studio", folder / "out"
    with report.open("w") as out:
        process = play(slabside, studio, out)
        time.sleep(after)
        killed = process.poll() is None
        if killed:
            os.kill(process.pid, signal.SIGKILL)
        process.wait()
    return killed, look(slabside, studio, report, truth)


def main():
    slabside = sys.argv[1]
    times = int(sys.argv[2]) if len(sys.argv) > 2 else 100
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    rng = random.Random(seed)
    killed = saved = 0
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        truth, seconds = truth_of(slabside, folder)
        for i in range(times):
            hit, confirmed = kill_once(slabside, folder / str(i), truth, rng.uniform(0, seconds))
            killed += hit
            saved += confirmed
    print(f"seed {seed}: {killed} kills in {times} runs, {saved} lines confirmed, none lost")
    assert killed > times / 2 and saved > times, "the kills did not hit what they should"


if __name__ == "__main__":
    main()
