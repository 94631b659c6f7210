#!/usr/bin/python3
"""Hours at the slab, played as fast as they go: memory stays flat, and the file is right.

Usage: soak.py SLABSIDE [MINUTES [SEED]]     MINUTES: 10 unless said; prints what it found.

The real program plays batch after batch at a realistic pace on the script's own clock. Meanwhile
its resident memory is read, with the number of the last line that it has reported as saved. A
session keeps its lines, so memory may grow by so many bytes for each; from the first tenth on it
may grow by nothing else, but for a slack that does not depend on the length of the run.
"""

import collections
import json
import pathlib
import random
import subprocess
import sys
import tempfile
import time

BYTES_A_LINE = 1000  # a line in memory, its strings, and its place in two indexes: measured 300
SLACK = 4 << 20  # what the allocator keeps, and one batch being folded
BATCH_S = 40 * 60

PIGMENTS = ["pb29", "pb28"]
ADDITIONS = ["add gum_12"] * 6 + ["add water"] * 3 + ["add honey_11"]
FEELS = ["wont_move", "too_sticky", "right", "too_loose", "too_runny"]


class Script:
    def __init__(self, seed):
        self.random = random.Random(seed)
        self.lines = ["at 2026-11-20T09:00:00+01:00", f"seed {seed}"]
        self.taps = collections.Counter()
        self.seconds = 0.0

    def tap(self, pad):
        self.lines.append("tap " + pad)
        self.taps[pad.split()[0]] += 1
        self.seconds += 0.6

    def wait(self, least, most):
        seconds = round(self.random.uniform(least, most), 1)
        self.lines.append(f"wait {seconds}")
        self.seconds += seconds

    def drops(self):
        times, every = self.random.randint(1, 12), round(self.random.uniform(0.8, 1.6), 1)
        self.lines.append(f"tap {self.random.choice(ADDITIONS)} x{times} every {every}")
        self.taps["add"] += times
        self.seconds += times * every

    def batch(self, number, seconds):
        ends = self.seconds + seconds
        self.tap("plan")
        pigment = self.random.choice(PIGMENTS)
        self.lines.append(f"write search {pigment}")
        self.tap("pigment " + pigment)
        self.lines.append(f"write name Batch {number}")
        self.tap("weigh")
        self.lines.append(f"type {self.random.randint(8, 20)}")
        self.tap("begin")
        self.tap("pass")  # wetting out, until the next one begins to mull
        self.drops()
        while self.seconds < ends:
            self.tap("pass")
            for _ in range(self.random.randint(5, 20)):
                self.drops()
                self.wait(1, 8)
                if self.random.random() < 0.3:
                    self.tap("felt " + self.random.choice(FEELS))
                if self.random.random() < 0.1:
                    self.tap("undo")
            self.tap("pass")
            self.tap("dot")
            self.tap("specks " + self.random.choice(["many", "few"]))
            self.wait(5, 40)
        self.tap("felt right")
        self.tap("pass")
        self.wait(5, 10)
        self.tap("pass")
        self.tap("dot")
        self.tap("specks none")
        self.tap("gather")
        self.tap("close")


def script_of(minutes, seed):
    script = Script(seed)
    batches = 0
    while script.seconds < minutes * 60:
        batches += 1
        script.batch(batches, min(BATCH_S, minutes * 60 / 2))
    return script, batches


def resident(pid):
    pages = pathlib.Path(f"/proc/{pid}/statm").read_text().split()
    return int(pages[1]) * 4096 if pages else 0


class Report:
    """The last line reported as saved, read as the report grows."""

    def __init__(self, path):
        self.file, self.rest, self.saved = path.open(), "", -1

    def look(self):
        lines = (self.rest + self.file.read()).split("\n")
        self.rest = lines.pop()
        for line in lines:
            if line.startswith("saved "):
                self.saved = int(line.split()[1])
        return self.saved


def play(slabside, folder, script):
    """Plays it; returns samples of (lines saved, bytes resident)."""
    taps, out = folder / "soak.taps", folder / "out"
    taps.write_text("\n".join(script.lines) + "\n")
    with out.open("w") as stream:
        process = subprocess.Popen([slabside, "play", taps, "--studio", folder / "studio", "--report"],
                                   stdout=stream, stderr=subprocess.STDOUT)
    report, samples = Report(out), []
    while process.poll() is None:
        before = report.look()
        bytes_now = resident(process.pid)
        if bytes_now and before >= 0:
            samples.append((before, bytes_now))
        time.sleep(0.02)
    assert process.returncode == 0, out.read_text()[-2000:]
    return samples, report.look() + 1


def check_memory(samples, lines):
    settled = [s for s in samples if s[0] >= lines / 10]
    assert len(settled) > 10, "too few looks at the memory: play longer"
    first_line, first = settled[0]
    for line, now in settled:
        allowed = first + SLACK + BYTES_A_LINE * (line - first_line)
        assert now <= allowed, f"{now} bytes at line {line}, {first} at line {first_line}"
    last_line, last = settled[-1]
    return first, last, (last - first) / max(1, last_line - first_line)


def check_file(slabside, folder, script, batches, lines):
    files = list((folder / "studio" / "sessions").iterdir())
    assert len(files) == 1, files
    events = [json.loads(line) for line in files[0].read_text().splitlines()]
    assert [e["n"] for e in events] == list(range(lines))
    kinds = collections.Counter(e["e"] for e in events)
    wanted = {"opened": batches, "closed": batches, "gathered": batches, "left": 1,
              "felt": script.taps["felt"], "dot": script.taps["specks"],
              "stage": script.taps["pass"], "withdrawn": script.taps["undo"],
              "added": script.taps["add"] + batches}  # and the pigment of each
    assert {k: kinds[k] for k in wanted} == wanted, (kinds, wanted)
    run = subprocess.run([slabside, "check", folder / "studio"], capture_output=True, text=True)
    assert run.returncode == 0, run.stdout + run.stderr


def main():
    slabside = sys.argv[1]
    minutes = float(sys.argv[2]) if len(sys.argv) > 2 else 10
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    script, batches = script_of(minutes, seed)
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        samples, lines = play(slabside, folder, script)
        first, last, each = check_memory(samples, lines)
        check_file(slabside, folder, script, batches, lines)
    print(f"seed {seed}: {script.seconds / 3600:.1f} h, {batches} batches, {lines} lines; resident "
          f"{first / 2**20:.1f} MiB after a tenth, {last / 2**20:.1f} MiB at the end, {each:.0f} "
          f"bytes a line ({len(samples)} looks)")


if __name__ == "__main__":
    main()
