#!/usr/bin/python3
"""Fills a real disk, a small tmpfs of its own, while the real program plays a script into it.

Usage: full.py SLABSIDE [TIMES [SEED]]     TIMES: how often a full disk gets room again, 3 unless
                                           said; prints what it found. Ends with 77 where no file
                                           system can be mounted.

The same script and seed give the same lines, so one run on a roomy disk is the truth.
- Full for good, with a stand-in: everything is saved, in two places, and shows as the truth does;
  once there is room, the next start brings it home, and home alone shows it.
- Full for good, with nowhere else: the program says how many entries are not saved, and every line
  that it reported as saved is there, as in the truth.
- Full from the start for good: it fails as often as its retries say and no more, with a file each.
- Full for a while: everything is saved in the end.
"""

import fcntl
import json
import pathlib
import random
import subprocess
import sys
import tempfile

from soak import script_of

MINUTES = 1  # of a script like soak.py's
PAGE = 4096  # tmpfs gives room by the page
AHEAD = 2  # failures that the program may be ahead of who reads of them


class Mounted:
    """A tmpfs; removed at the end."""

    def __init__(self, folder, size, inodes=100):
        self.folder = folder
        folder.mkdir()
        mount = ["mount", "-t", "tmpfs", "-o", f"size={size},nr_inodes={inodes}", "slabside", folder]
        self.mounted = subprocess.run(mount, capture_output=True).returncode == 0

    def make_room(self):
        remount = ["mount", "-o", "remount,size=1m,nr_inodes=100", self.folder]
        subprocess.run(remount, check=True, capture_output=True)

    def __enter__(self):
        return self

    def __exit__(self, *_):
        if self.mounted:
            subprocess.run(["umount", self.folder], check=True)


class Slabside:
    def __init__(self, program, script):
        self.program, self.script = program, script

    def run(self, *words):
        return subprocess.run([self.program, *words], capture_output=True, text=True)

    def play(self, studio, adrift="", *more, script=None):
        return self.run("play", script or self.script, "--studio", studio, "--fallback", adrift,
                        "--report", *more)

    def shown(self, studio, adrift=""):
        """The script's last batch as numbers, of everything that lies there."""
        run = self.run("show", "last", "--json", "--studio", studio, "--fallback", adrift)
        assert run.returncode == 0, run.stderr
        return json.loads(run.stdout)

    def check(self, studio):
        run = self.run("check", studio)
        assert run.returncode == 0, run.stdout + run.stderr


def reported(out):
    return max((int(line.split()[1]) for line in out.splitlines() if line.startswith("saved ")),
               default=-1)


def not_saved(entries):
    return "1 entry is not saved." if entries == 1 else f"{entries} entries are not saved."


def lines_of(studio):
    """By number, without what binds a line to its file. Torn ends are passed over."""
    found = {}
    for file in sorted((studio / "sessions").glob("*")) if (studio / "sessions").exists() else []:
        for text in file.read_text().split("\n")[:-1]:
            line = json.loads(text)
            if line["e"] != "began":
                found[line["n"]] = {k: v for k, v in line.items() if k not in "pc"}
    return found


def fill_for_good(slabside, folder, truth, size, inodes):
    with Mounted(folder / "home", size, inodes) as home:
        adrift = folder / "adrift"
        run = slabside.play(home.folder, adrift)
        assert run.returncode == 0, run.stderr
        struck = str(adrift) in run.stderr
        assert slabside.shown(home.folder, adrift) == truth["shown"]
        home.make_room()
        nothing = folder / "nothing.taps"
        nothing.write_text("wait 1\n")
        run = slabside.play(home.folder, adrift, script=nothing)
        assert run.returncode == 0, run.stderr
        assert slabside.shown(home.folder) == truth["shown"], "it did not come home"
        slabside.check(home.folder)
    return struck


def fill_with_nowhere_else(slabside, folder, truth, size, inodes):
    with Mounted(folder / "home", size, inodes) as home:
        run = slabside.play(home.folder)
        saved, found = reported(run.stdout), lines_of(home.folder)
        unsaved = len(truth["lines"]) - saved  # the truth has no line 0 here: began is left out
        if run.returncode == 0:
            assert unsaved == 0
        else:
            assert run.stderr.startswith(not_saved(unsaved)), run.stderr
        for n in range(1, saved + 1):
            assert found.get(n) == truth["lines"][n], f"line {n} of {saved} saved"
        for n, line in found.items():
            assert line == truth["lines"][n], f"line {n} was not tapped so"
    return run.returncode != 0


def seconds_left(truth, saved):
    """On the session's clock, from the first line that was not saved to the last one."""
    moments = {n: line["t"] / 1000 for n, line in truth["lines"].items()}
    return moments[max(moments)] - moments[saved + 1]


def retries_within(seconds):
    """Half a minute after a failure, and then each time after twice as long, up to ten minutes."""
    count, at, after = 0, 30, 30
    while at <= seconds:
        count += 1
        after = min(2 * after, 600)
        at += after
    return count


def play_into_full(slabside, home):
    """With a filler that takes all the room but a page."""
    filler = home.folder / "filler"
    filler.write_bytes(bytes(63 * PAGE))
    return filler, ["play", slabside.script, "--studio", home.folder, "--fallback", "", "--report"]


def stays_full(slabside, folder, truth):
    """How often it fails: the first part, one more at once, each retry, and at last the goodbye.

    Every failure leaves one file, and of those behind the first none holds anything.
    """
    with Mounted(folder / "home", 64 * PAGE) as home:
        _, words = play_into_full(slabside, home)
        run = slabside.run(*words)
        failures = [line for line in run.stdout.splitlines() if line.startswith("failed ")]
        saved = reported(run.stdout)
        retries = retries_within(seconds_left(truth, saved))
        assert len(failures) == 2 + retries + 1, f"{retries} retries: {failures}"
        assert all("The disk is full" in line for line in failures), failures
        unsaved = len(truth["lines"]) - saved
        assert run.stderr.startswith(not_saved(unsaved)), run.stderr
        sizes = [file.stat().st_size for file in (home.folder / "sessions").iterdir()]
        assert len(sizes) == len(failures), sizes
        assert sorted(sizes)[:-1] == [0] * (len(sizes) - 1), sizes
    return len(failures)


def fill_for_a_while(slabside, folder, truth, failures):
    """The filler is removed once so many saves have failed.

    The program cannot run far ahead of its reader. Its reports go into a pipe of one page, and the
    studio's path is so long that two failures do not fit into it: when one is read, the next may
    stand there and the one after it have happened.
    """
    deep = folder.joinpath(*["d" * 250] * (PAGE // 2 // 250 + 1))
    deep.mkdir(parents=True)
    with Mounted(deep / "home", 64 * PAGE) as home:
        filler, words = play_into_full(slabside, home)
        process = subprocess.Popen([slabside.program, *words], bufsize=0, stdout=subprocess.PIPE,
                                   stderr=subprocess.PIPE)
        fcntl.fcntl(process.stdout, fcntl.F_SETPIPE_SZ, PAGE)
        seen = 0
        while seen < failures:
            line = process.stdout.readline()
            assert line, "the disk did not fill up"
            seen += line.startswith(b"failed The disk is full")
        filler.unlink()
        _, err = process.communicate()
        assert process.returncode == 0, err.decode()
        assert slabside.shown(home.folder) == truth["shown"]
        slabside.check(home.folder)


def main():
    times = int(sys.argv[2]) if len(sys.argv) > 2 else 3
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    rng = random.Random(seed)
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        script = folder / "script"
        script.write_text("\n".join(script_of(MINUTES, seed)[0].lines) + "\n")
        slabside = Slabside(sys.argv[1], script)
        with Mounted(folder / "try", PAGE) as tried:
            if not tried.mounted:
                print("not run: no file system can be mounted here; it takes root")
                return 77
        assert slabside.play(folder / "truth").returncode == 0
        truth = {"shown": slabside.shown(folder / "truth"), "lines": lines_of(folder / "truth")}

        pages = sum(file.stat().st_size for file in (folder / "truth").rglob("*")) // PAGE
        cases = [(size * PAGE, 100) for size in range(1, pages + 2)]
        cases += [(64 * PAGE, inodes) for inodes in range(1, 5)]
        struck = 0
        for i, (size, inodes) in enumerate(cases):
            for kind in (fill_for_good, fill_with_nowhere_else):
                here = folder / f"{kind.__name__}{i}"
                here.mkdir()
                struck += kind(slabside, here, truth, size, inodes)
        (folder / "stays").mkdir()
        failures = stays_full(slabside, folder / "stays", truth)
        assert failures > AHEAD + 1, "too short an evening to make room in"
        for i in range(times):
            here = folder / f"while{i}"
            here.mkdir()
            fill_for_a_while(slabside, here, truth, rng.randint(1, failures - AHEAD - 1))
    print(f"seed {seed}: {2 * len(cases)} disks of {len(cases)} sizes, {struck} filled up; one that "
          f"stayed full failed {failures} times; {times} more had room again later; nothing lost")
    assert struck > len(cases), "the disks did not fill up"
    return 0


if __name__ == "__main__":
    sys.exit(main())
