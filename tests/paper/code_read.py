#!/usr/bin/python3
"""What zbar, a reader of codes, finds on a sheet of labels as it is printed at 300 dots to the inch.

Usage: code_read.py SLABSIDE SCRIPT     the program, and taps that make a batch. Fails unless every label
of a whole sheet says the batch's name, its day and the first signs of its id; on a small label the words
take the room, and there is no code.
"""

import json
import pathlib
import subprocess
import sys
import tempfile

WITH_ROOM, WITHOUT = ("60x30", "50x25"), ("38x21",)


def read_codes(png):
    ran = subprocess.run(["zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", png],
                         capture_output=True, text=True)
    return ran.stdout


def main():
    slabside, script = sys.argv[1:]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)

        def run(*words):
            return subprocess.run([slabside, *words], check=True, capture_output=True, text=True).stdout

        studio = ("--studio", folder / "studio", "--fallback", "")
        run("play", script, *studio)
        listed = json.loads(run("show", "last", "--json", *studio))
        batch, paint = listed["batch"], listed["name"]
        for size in WITH_ROOM + WITHOUT:
            svg, png = folder / f"{size}.svg", folder / f"{size}.png"
            run("labels", "--batch", "last", "--mm", size, "--out", svg, *studio)
            subprocess.run(["rsvg-convert", "--dpi-x", "300", "--dpi-y", "300", "--background-color",
                            "white", "-o", png, svg], check=True)
            said = read_codes(png)
            count = svg.read_text().count(f">{paint}<") if size in WITH_ROOM else 0
            found = said.count(f"batch {batch[:8]}")
            assert found == count and said.count(paint) == count, f"{size}: {found} of {count}\n{said}"
    print("codes: each label says name, day and batch")


if __name__ == "__main__":
    main()
