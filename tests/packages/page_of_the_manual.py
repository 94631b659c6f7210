#!/usr/bin/python3
"""The page of the manual names the commands that `slabside help` names, each used in the same way.

Usage: page_of_the_manual.py SLABSIDE PAGE       prints what only one of them has, and fails if there is any
"""

import pathlib
import re
import subprocess
import sys


def plain(words):
    return " ".join(words.split())


def uses_of_help(text):
    """What stands before the words of an entry, over as many lines as it takes."""
    found = []
    for line in text.splitlines():
        use = re.split(r"\s{3,}", line.strip())[0]
        if line.startswith("slabside ") and not line.startswith("slabside: "):
            found.append(use)
        elif found and re.match(r"\s{9,24}\S", line):  # the words begin further to the right
            found[-1] += " " + use
        elif not line.startswith(" "):
            if found and line:
                break  # of the rest nothing is a command
    return {plain(use) for use in found}


def uses_of_page(text):
    found = set()
    lines = text.splitlines()
    for before, line in zip(lines, lines[1:]):
        if before == ".TP" and line.startswith(r"\fBslabside"):
            found.add(plain(re.sub(r"\\f[BIR]", "", line).replace(r"\-", "-")))
    return found


if __name__ == "__main__":
    program, page = sys.argv[1:]
    said = subprocess.run([program, "help", "--language", "en"], capture_output=True, text=True, check=True).stdout
    in_help, in_page = uses_of_help(said), uses_of_page(pathlib.Path(page).read_text())
    for use in sorted(in_help ^ in_page):
        print(f"only {'the help' if use in in_help else 'the page'} has: {use}")
    print(f"{len(in_help)} uses in the help, {len(in_page)} in the page")
    sys.exit(in_help != in_page or len(in_help) < 15)
