#!/usr/bin/python3
"""The real program on real file systems: what a card, a stick or a share may have under a studio.

Usage: systems.py SLABSIDE     prints what each did, and what could not be had here and why. Ends
                               with 77 where none can be mounted.

On an image of each a script is played; it then shows as on this computer's own disk, checks clean
after the image was taken out and put in again, is packed, unpacked and mended there, takes in what
another device wrote, and serves as the place for lines while the studio fails. Some have no call to
force a folder, some do not tell capital from small letters: neither costs a line.
"""

import json
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

SCRIPT = pathlib.Path(__file__).with_name("kill") / "evening.taps"
PHOTO = pathlib.Path(__file__).parents[1] / "studio/pictures/base.jpg"
MB = 1 << 20

# name: (MB of the image, how it is made, how it is mounted); {image}, {folder} and, for what wants a
# block device of its own, {device} are filled in. FAT is not had in FUSE: fusefat 0.1a moves a folder
# without what is in it.
LOOP = "mount -o loop {image} {folder}"
SYSTEMS = {
    "tmpfs": (0, None, "mount -t tmpfs -o size=16m slabside {folder}"),
    "ext4": (32, "mkfs.ext4 -q {image}", LOOP),
    "xfs": (320, "mkfs.xfs -q {image}", LOOP),
    "btrfs": (128, "mkfs.btrfs -q {image}", LOOP),
    "FAT": (64, "mkfs.vfat {image}", LOOP + " -t vfat"),
    "exFAT": (64, "mkfs.exfat {image}", LOOP + " -t exfat"),
    "exFAT, FUSE": (64, "mkfs.exfat {image}", "mount.exfat-fuse {device} {folder}"),
    "NTFS, FUSE": (64, "mkfs.ntfs -F -q {image}", "ntfs-3g {image} {folder}"),
    "another folder, FUSE": (0, None, "bindfs {image}.d {folder}"),
    # The far end is this computer: ssh itself is left out.
    "another computer's, sshfs": (0, None, "sshfs -o ssh_command={sftp} far:{image}.d {folder}"),
}


class Missing(Exception):
    """This machine cannot have it."""


def sure(command, why):
    try:
        done = subprocess.run(command, capture_output=True, text=True, check=False)
    except FileNotFoundError:
        raise Missing(f"no program {command[0]}") from None
    if done.returncode != 0:
        said = (done.stderr or done.stdout).strip().splitlines() or ["no reason given"]
        raise Missing(f"{why}: {said[0]}")
    return done.stdout


class Image:
    """A file system in a file; mounted from begin to end, but when it is taken out."""

    def __init__(self, folder, name):
        size, self.make, self.mount = SYSTEMS[name]
        self.lasts = self.make is not None or "{image}.d" in self.mount
        self.names = {"image": folder / "image", "folder": folder / "mounted",
                      "sftp": pathlib.Path(__file__).with_name("sftp")}
        self.folder = self.names["folder"]
        self.folder.mkdir(parents=True)
        (folder / "image.d").mkdir()
        if size:
            with self.names["image"].open("wb") as image:
                image.truncate(size * MB)

    def words(self, line):
        return [word.format(**self.names) for word in line.split()]

    def __enter__(self):
        if self.make:
            sure(self.words(self.make), "cannot be made")
        self.put_in()
        return self

    def put_in(self):
        if "{device}" in self.mount:
            self.names["device"] = sure(["losetup", "--find", "--show", self.names["image"]],
                                        "no loop device").strip()
        try:
            sure(self.words(self.mount), "cannot be mounted")
        except Missing:
            self.free_device()
            raise

    def take_out(self):
        subprocess.run(["umount", self.folder], check=True)
        self.free_device()

    def free_device(self):
        if device := self.names.pop("device", None):
            subprocess.run(["losetup", "--detach", device], check=True)

    def __exit__(self, *_):
        if os.path.ismount(self.folder):
            self.take_out()


class Slabside:
    def __init__(self, program):
        self.program = program

    def run(self, *words, status=0):
        done = subprocess.run([self.program, *words], capture_output=True, text=True, check=False)
        assert done.returncode == status, f"{words} ended with {done.returncode}: {done.stdout}{done.stderr}"
        return done.stdout

    def play(self, studio, script=SCRIPT, fallback="", *more):
        return self.run("play", script, "--studio", studio, "--fallback", fallback, "--report", *more)

    def shown(self, studio, fallback=""):
        return json.loads(self.run("show", "last", "--json", "--studio", studio, "--fallback", fallback))


def another_script(folder):
    """The same evening by another device."""
    script = folder / "another.taps"
    lines = SCRIPT.read_text().splitlines()
    lines = [line for line in lines if not line.startswith(("session ", "device ", "seed "))]
    script.write_text("\n".join(["seed 4711", *lines]) + "\n")
    return script


def tells_letters_apart(folder):
    (folder / "letters").write_text("small")
    apart = not (folder / "LETTERS").exists()
    (folder / "letters").unlink()
    return apart


def forces_folders(folder):
    handle = os.open(folder, os.O_RDONLY | os.O_DIRECTORY)
    try:
        os.fsync(handle)
        return True
    except OSError:
        return False
    finally:
        os.close(handle)


def packs(slabside, here, outside):
    """Packed and unpacked, a photo among it; two names that differ in their letters alone."""
    studio = here / "studio"
    slabside.run("photo", PHOTO, "--batch", "last", "--of", "slab", "--studio", studio, "--fallback", "")
    shown = slabside.shown(studio)
    slabside.run("pack", "--studio", studio, "--fallback", "", "--out", here / "pack.zip")
    slabside.run("unpack", here / "pack.zip", "--out", here / "unpacked")
    assert slabside.shown(here / "unpacked") == shown
    slabside.run("check", here / "unpacked")
    slabside.run("mend", "--studio", studio, "--fallback", "", "--out", here / "mended")
    assert slabside.shown(here / "mended") == shown
    slabside.run("check", here / "mended")
    names = {file: file.stem.upper() + file.suffix for file in (studio / "sessions").glob("*.jsonl")}
    one, other_name = next((file, name) for file, name in names.items() if name != file.name)
    twice = outside / "twice"
    (twice / "sessions").mkdir(parents=True)
    for name in (one.name, other_name):
        shutil.copy(one, twice / "sessions" / name)
    slabside.run("pack", "--studio", twice, "--fallback", "", "--out", outside / "twice.zip", status=1)


def plays(slabside, image, outside, truth):
    here = image.folder
    studio = here / "studio"
    said = slabside.play(studio)
    assert "failed" not in said, said
    assert f"saved {truth['last']}" in said, said
    assert slabside.shown(studio) == truth["shown"]
    if image.lasts:
        image.take_out()
        image.put_in()
    assert slabside.shown(studio) == truth["shown"], "not as before the image was taken out"
    slabside.run("check", studio)
    slabside.play(studio, another_script(outside))
    assert len(list((studio / "sessions").glob("*.jsonl"))) == 2
    slabside.run("check", studio)
    packs(slabside, here, outside)
    # As the place for lines while the studio, on this computer's own disk, fails.
    slabside.play(outside / "failing", SCRIPT, here / "fallback", "--fault", "fail-from:30")
    assert list((here / "fallback" / "sessions").glob("*.jsonl")), "nothing came into the fallback"
    assert slabside.shown(outside / "failing", here / "fallback") == truth["shown"]


def main():
    slabside = Slabside(pathlib.Path(sys.argv[1]).resolve())
    had, missing = [], []
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        said = slabside.play(folder / "truth")
        last = [int(line.split()[1]) for line in said.splitlines() if line.startswith("saved ")][-1]
        truth = {"shown": slabside.shown(folder / "truth"), "last": last}
        for i, name in enumerate(SYSTEMS):
            outside = folder / f"outside{i}"
            outside.mkdir()
            try:
                with Image(folder / f"system{i}", name) as image:
                    letters = tells_letters_apart(image.folder)
                    forces = forces_folders(image.folder)
                    plays(slabside, image, outside, truth)
            except Missing as why:
                missing.append(f"{name} ({why})")
                continue
            had.append(name)
            print(f"{name}: nothing lost; folders {'are' if forces else 'cannot be'} forced, capital and "
                  f"small letters are {'two' if letters else 'the same'}")
    for what in missing:
        print(f"not run: {what}")
    return 0 if had else 77


if __name__ == "__main__":
    sys.exit(main())
