#!/usr/bin/python3
"""What the system does not let the real program read or write: each command ends with exit status 1
(`check` and `mend` with 2), says what and why, and leaves all that was there as it was.

Usage: refused.py SLABSIDE     run by root it asks as somebody else, whom permissions hold.
"""

import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

SCRIPT = pathlib.Path(__file__).with_name("kill") / "evening.taps"
ANYBODY = 65534
NOT_ALLOWED = "The system does not allow it"


def as_anybody(slabside, folder):
    """Runs the program from `folder`, of which nobody but anybody is the owner."""
    env = {"PATH": os.environ["PATH"], "HOME": str(folder / "home"), "LC_ALL": "C.UTF-8"}
    who = {"user": ANYBODY, "group": ANYBODY, "extra_groups": []} if os.geteuid() == 0 else {}

    def run(*words):
        return subprocess.run([slabside, *words], cwd=folder, env=env, capture_output=True, text=True,
                              **who)
    return run


def make(folder, slabside):
    (folder / "home").mkdir()
    program = shutil.copy(slabside, folder / "slabside")
    subprocess.run([program, "play", SCRIPT, "--studio", folder / "studio"], check=True,
                   capture_output=True)
    subprocess.run([program, "pack", "--studio", folder / "studio", "--out", folder / "a.slabside"],
                   check=True, capture_output=True)
    for name in ("a.json", "a.csv", "a.png", "a.taps"):
        (folder / name).write_text("mine\n")
    shutil.copytree(folder / "studio", folder / "folder_closed")
    shutil.copytree(folder / "studio", folder / "files_closed")
    shutil.copytree(folder / "studio", folder / "part_closed")
    (folder / "part_closed" / "sessions" / "other.jsonl").write_text("closed\n")
    (folder / "closed").mkdir()
    shutil.copytree(folder / "studio", folder / "closed" / "studio")
    if os.geteuid() == 0:
        for path in [folder, *folder.rglob("*")]:
            os.chown(path, ANYBODY, ANYBODY)
    return program


def close(folder):
    """To its owner too."""
    for name in ("a.json", "a.csv", "a.png", "a.taps", "a.slabside", "folder_closed/sessions",
                 "closed"):
        (folder / name).chmod(0)
    for file in (folder / "files_closed" / "sessions").iterdir():
        file.chmod(0)


def refused(ran, *said, status=1):
    words = " ".join(map(str, ran.args[1:]))
    assert ran.returncode == status, f"{words}: {ran.returncode}\n{ran.stdout}{ran.stderr}"
    for part in said:
        assert part in ran.stderr + ran.stdout, f"{words}: no “{part}”:\n{ran.stdout}{ran.stderr}"


def files_that_may_not_be_read(run):
    studio = ("--studio", "studio")
    for words in (["hear", "a.json", *studio], ["bring", "a.csv", *studio],
                  ["photo", "a.png", "--batch", "last", "--of", "pan", *studio],
                  ["colour", "a.png"], ["play", "a.taps", "--studio", "new"],
                  ["unpack", "a.slabside", "--out", "new"], ["a.slabside"]):
        refused(run(*words), NOT_ALLOWED, next(word for word in words if word.startswith("a.")))
    for words in (["hear", "none", *studio], ["bring", "none", *studio], ["colour", "none"],
                  ["unpack", "none", "--out", "new"], ["play", "none", "--studio", "new"]):
        refused(run(*words), "no such file or folder", "“none”")
    refused(run("unpack", "studio", "--out", "new"), "no file but a link, folder or device")


def studios_that_may_not_be_read(run, folder):
    """None of them is empty, and none is shown as if it were."""
    for name in ("folder_closed", "files_closed", "closed/studio"):
        studio = ("--studio", name)
        for words in (["list"], ["show", "last"], ["range"], ["table"], ["paints"],
                      ["sheet", "--batch", "last"], ["tell", "--out", "new.json"],
                      ["pack", "--out", "new.slabside"], ["hear", "--no-more"],
                      ["picture", "today", "--out", "new.png"]):
            refused(run(*words, *studio), NOT_ALLOWED, name)
        refused(run("check", name), NOT_ALLOWED, name, status=2)
    for words in (["list"], ["picture", "today", "--out", "new.png"]):
        refused(run(*words, "--studio", "none"), "There is no studio folder “none”.")
    assert not list(folder.glob("new*")), list(folder.glob("new*"))


def a_part_that_may_not_be_read(run, folder):
    """The rest is shown, and what is lacking is named."""
    (folder / "part_closed" / "sessions" / "other.jsonl").chmod(0)
    for words in (["list"], ["range"], ["table"], ["picture", "today", "--out", "part.png"]):
        ran = run(*words, "--studio", "part_closed")
        assert ran.returncode == 0, ran.stderr
        assert NOT_ALLOWED in ran.stderr and "other.jsonl" in ran.stderr, (words, ran.stderr)


def places_that_may_not_be_written(run, folder):
    studio = ("--studio", "studio")
    for words in (["picture", "slab"], ["sheet", "--batch", "last"], ["table"]):
        refused(run(*words, *studio, "--out", "closed/new"), NOT_ALLOWED, "“closed/new”")
        refused(run(*words, *studio, "--out", "none/new"), "no such file or folder", "“none/new”")
        refused(run(*words, *studio, "--out", "a.csv/new"), "no folder", "“a.csv/new”")
        before = (folder / "studio" / "mine").write_text("mine\n")
        refused(run(*words, *studio, "--out", "studio/mine"), "“studio/mine” is there already")
        assert (folder / "studio" / "mine").stat().st_size == before
    (folder / "a.slabside").chmod(0o600)
    refused(run("unpack", "a.slabside", "--out", "closed/new"), NOT_ALLOWED, "closed/new")


def first_day(run, folder):
    """Where no studio is named and there is none yet, nothing is withheld."""
    ran = run("picture", "today", "--out", "first.png")
    assert ran.returncode == 0, ran.stderr
    assert (folder / "first.png").stat().st_size > 1000


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        program = make(folder, sys.argv[1])
        close(folder)
        run = as_anybody(program, folder)
        files_that_may_not_be_read(run)
        studios_that_may_not_be_read(run, folder)
        a_part_that_may_not_be_read(run, folder)
        places_that_may_not_be_written(run, folder)
        first_day(run, folder)
    print("refused: each with its reason, and nothing was written")


if __name__ == "__main__":
    main()
