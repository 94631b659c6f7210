#!/usr/bin/python3
"""The program ends in the middle of a pass; the pass is known as long as its session was.

Usage: passes.py SLABSIDE     prints what it found.

The same twenty minutes of mulling, ended in four ways: the batch gathered at the slab (the truth),
the program closed, killed, or another device going on with the batch while the first still runs.
Each time somebody feels the paint a minute later. Closed, or told apart by another device, it has
lost as much as at the slab; killed, no more is missing than the minutes since its last sign of
life.
"""

import json
import pathlib
import shutil
import subprocess
import sys
import tempfile

MINUTES = 20
SIGN_OF_LIFE_MIN = 5  # at most so far apart
BEGIN = """at 2026-11-20T19:30:00+01:00
seed 41
session c41e08d5
device a83f
tap pigment pb29
write name Evening blue
tap weigh
type 12
tap begin
tap another
tap amount weigh
tap add gum_12
type 12
tap pass
wait 60
tap pass
"""
GO_ON = """at 2026-11-20T19:53:00+01:00
seed 42
session d52f19e6
device 07bd
tap go_on BATCH
tap felt right
"""


def play(slabside, studio, script):
    studio.mkdir(exist_ok=True)
    file = studio / "script.taps"
    file.write_text(script)
    run = subprocess.run([slabside, "play", file, "--studio", studio], text=True,
                         capture_output=True)
    assert run.returncode == 0, run.stdout + run.stderr
    return next(line.split()[1] for line in run.stdout.splitlines() if line.startswith("batch "))


def look(slabside, studio, batch):
    run = subprocess.run([slabside, "show", batch, "--json", "--studio", studio, "--fallback", ""],
                         capture_output=True, text=True)
    assert run.returncode == 0, run.stderr
    shown = json.loads(run.stdout)
    assert shown["warnings"] == [], shown["warnings"]
    mulled = [p["end_s"] - p["start_s"] for p in shown["passes"] if p["stage"] == "mulling"]
    return sum(mulled) / 60, shown["feel_notes"][-1]["flow"]


def go_on(slabside, studio, batch):
    play(slabside, studio, GO_ON.replace("BATCH", batch))


def ended(slabside, folder, how):
    studio = folder / how.replace(" ", "_")
    wait = f"wait {MINUTES}m\n"
    ends = {"at the slab": wait + "tap pass\nwait 2m\ntap felt right\n", "closed": wait,
            "killed": wait + "stop\n", "another device": wait + "wait 1h\n"}
    batch = play(slabside, studio, BEGIN + ends[how])
    if how in ("closed", "killed"):
        go_on(slabside, studio, batch)
    if how == "another device":  # which has seen no more than was written by then
        seen = folder / "seen"
        assert play(slabside, seen, BEGIN + ends["killed"]) == batch
        go_on(slabside, seen, batch)
        for file in (seen / "sessions").glob("*-d52f19e6.jsonl"):
            shutil.copy(file, studio / "sessions")
    return look(slabside, studio, batch)


def main():
    slabside = sys.argv[1]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        minutes, flow = ended(slabside, folder, "at the slab")
        assert abs(minutes - MINUTES) < 0.1, minutes
        print(f"at the slab: {minutes:.1f} min, flow {flow:.2f}")
        for how in ("closed", "killed", "another device"):
            known, felt = ended(slabside, folder, how)
            print(f"{how}: {known:.1f} min, flow {felt:.2f}")
            missing = SIGN_OF_LIFE_MIN if how == "killed" else 0
            # The first device mulls until the other one speaks.
            beyond = 2 if how == "another device" else 0.1
            assert -0.1 - missing < known - MINUTES < beyond, how
            assert felt < flow * (1.15 if missing else 1.02), how


if __name__ == "__main__":
    main()
