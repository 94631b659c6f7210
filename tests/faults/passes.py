#!/usr/bin/python3
"""The program ends in the middle of a pass; the pass is known as long as its session was.

Usage: passes.py SLABSIDE     prints what it found.

The same twenty minutes of mulling, and three under the knife before any, ended in four ways: the
pass ended at the slab (the truth), the program closed, killed, or another device going on with the
batch while the first still runs. Each time somebody feels the paint later. Closed, or told apart
by another device, it has lost as much as at the slab; killed, no more is missing than the minutes
since its last sign of life, and powder that was worked in stays so.
"""

import json
import pathlib
import shutil
import subprocess
import sys
import tempfile
import typing

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
"""
GO_ON = """at 2026-11-20TBACK+01:00
seed 42
session d52f19e6
device 07bd
tap go_on BATCH
tap felt FELT
"""


class Work(typing.NamedTuple):
    stage: str
    begin: str
    felt: str
    minutes: int
    sign_of_life_min: int  # at most so far apart
    back: str  # two minutes later, or nearly


WORKS = [
    Work("wetting_out", BEGIN, "wont_move", 3, 1, "19:35:00"),
    Work("mulling", BEGIN + "wait 60\ntap pass\n", "right", 20, 5, "19:53:00"),
]


def play(slabside, studio, script):
    studio.mkdir(exist_ok=True)
    file = studio / "script.taps"
    file.write_text(script)
    run = subprocess.run([slabside, "play", file, "--studio", studio], text=True,
                         capture_output=True)
    assert run.returncode == 0, run.stdout + run.stderr
    return next(line.split()[1] for line in run.stdout.splitlines() if line.startswith("batch "))


def look(slabside, studio, batch, stage):
    run = subprocess.run([slabside, "show", batch, "--json", "--studio", studio, "--fallback", ""],
                         capture_output=True, text=True)
    assert run.returncode == 0, run.stderr
    shown = json.loads(run.stdout)
    assert shown["warnings"] == [], shown["warnings"]
    worked = [p["end_s"] - p["start_s"] for p in shown["passes"] if p["stage"] == stage]
    return sum(worked) / 60, shown["feel_notes"][-1]


def go_on(slabside, studio, batch, work):
    script = GO_ON.replace("BACK", work.back)
    play(slabside, studio, script.replace("BATCH", batch).replace("FELT", work.felt))


def ended(slabside, folder, work, how):
    studio = folder / f"{work.stage}_{how}".replace(" ", "_")
    wait = f"wait {work.minutes}m\n"
    ends = {"at the slab": wait + f"tap pass\nwait 2m\ntap felt {work.felt}\n", "closed": wait,
            "killed": wait + "stop\n", "another device": wait + "wait 1h\n"}
    batch = play(slabside, studio, work.begin + ends[how])
    if how in ("closed", "killed"):
        go_on(slabside, studio, batch, work)
    if how == "another device":  # which has seen no more than was written by then
        seen = folder / f"{work.stage}_seen"
        assert play(slabside, seen, work.begin + ends["killed"]) == batch
        go_on(slabside, seen, batch, work)
        for file in (seen / "sessions").glob("*-d52f19e6.jsonl"):
            shutil.copy(file, studio / "sessions")
    return look(slabside, studio, batch, work.stage)


def judge(slabside, folder, work):
    minutes, truth = ended(slabside, folder, work, "at the slab")
    flow = truth["flow"]
    assert abs(minutes - work.minutes) < 0.1, minutes
    print(f"{work.stage}, at the slab: {minutes:.1f} min, flow {flow:.2f}")
    for how in ("closed", "killed", "another device"):
        known, felt = ended(slabside, folder, work, how)
        print(f"{work.stage}, {how}: {known:.1f} min, flow {felt['flow']:.2f}")
        missing = work.sign_of_life_min if how == "killed" else 0
        # The first device works on until the other one speaks.
        beyond = 2 if how == "another device" else 0.1
        assert -0.1 - missing < known - work.minutes < beyond, how
        assert felt["flow"] < flow * (1.15 if missing else 1.02), how


def main():
    slabside = sys.argv[1]
    with tempfile.TemporaryDirectory() as name:
        for work in WORKS:
            judge(slabside, pathlib.Path(name), work)


if __name__ == "__main__":
    main()
