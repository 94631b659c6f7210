#!/usr/bin/python3
"""What LibreOffice Calc reads from our tables, beside what Python's csv module reads.

Usage: calc_agrees.py PAPER_TABLES     the program of sample/tables.cpp. Fails unless Calc reads every
cell: names as the text they are, whatever they look like, numbers as the numbers they are, and
nothing as a formula. Ends with 77, and says so, where there is no LibreOffice.
"""

import csv
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree

# Filter options of "Text - txt - csv (StarCalc)", as LibreOffice's help on filter options for CSV
# has them: comma, quote, UTF-8 (76), from line 1, the columns' formats (1 standard, 2 text), US
# English (1033, so that a point is a point), quoted fields not all text, special numbers not
# detected.
OPTIONS = "44,34,76,1,{},1033,false,false"

# OpenDocument 1.2, part 1: 9.1 (tables), 6.1 (spaces and tabs in text), 19.385 (types of cells).
OFFICE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}"
TABLE = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}"
TEXT = "{urn:oasis:names:tc:opendocument:xmlns:text:1.0}"

TABLES = {"additions": {"clock_s", "amount", "g", "u_g"},
          "totals": {"g", "u_g", "drops", "spoons", "weighed_g", "ratio", "u_ratio"}}


def words_of(element):
    """The text of a paragraph, with the spaces and tabs that stand in it as elements."""
    out = element.text or ""
    for child in element:
        if child.tag == TEXT + "s":
            out += " " * int(child.get(TEXT + "c", "1"))
        elif child.tag == TEXT + "tab":
            out += "\t"
        elif child.tag == TEXT + "line-break":
            out += "\n"
        else:
            out += words_of(child)
        out += child.tail or ""
    return out


def cell_of(cell):
    """A number, or text."""
    assert cell.get(TABLE + "formula") is None, cell.get(TABLE + "formula")
    kind = cell.get(OFFICE + "value-type", "string")
    if kind == "float":
        return float(cell.get(OFFICE + "value"))
    if kind != "string":
        return kind, cell.get(OFFICE + "date-value", "")
    return "\n".join(words_of(p) for p in cell.iter(TEXT + "p"))


def calc_reads(folder, source, formats):
    """The rows as Calc has them after reading the table."""
    done = subprocess.run(
        ["soffice", f"-env:UserInstallation=file://{folder}/profile", "--headless", "--norestore",
         "--infilter=Text - txt - csv (StarCalc):" + OPTIONS.format(formats), "--convert-to", "fods",
         "--outdir", str(folder / "read"), str(source)], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    rows = []
    for row in tree.parse(folder / "read" / f"{source.stem}.fods").iter(TABLE + "table-row"):
        cells = []
        for cell in row.iter(TABLE + "table-cell"):
            cells += [cell_of(cell)] * min(int(cell.get(TABLE + "number-columns-repeated", "1")), 100)
        rows += [cells] * min(int(row.get(TABLE + "number-rows-repeated", "1")), 1000)
    return rows


def python_reads(source):
    with open(source, newline="", encoding="utf-8") as file:
        return list(csv.reader(file, strict=True))


def plain(text):
    """A line break is one, however it is written; in a cell of several lines Calc keeps no tab."""
    text = re.sub("\r\n|\r", "\n", text)
    return text.replace("\t", "") if "\n" in text else text


def compare(ours, calcs, numbers):
    assert len(calcs) >= len(ours) and not any(any(row) for row in calcs[len(ours):])
    for at, (mine, calc) in enumerate(zip(ours, calcs)):
        calc = calc + [""] * (len(mine) - len(calc))
        assert not any(calc[len(mine):]), (at, calc)
        for name, a, b in zip(ours[0], mine, calc):
            if at > 0 and name in numbers and a:
                assert isinstance(b, float) and abs(float(a) - b) <= 1e-9 * abs(b), (at, name, a, b)
            else:
                assert plain(a) == b, (at, name, a, b)


def check(folder, source, numbers):
    ours = python_reads(source)
    assert len(ours) >= 100 and len({len(row) for row in ours}) == 1
    assert not source.read_bytes().startswith(b"\xef\xbb\xbf")
    formats = "/".join(f"{n}/{1 if name in numbers else 2}" for n, name in enumerate(ours[0], 1))
    compare(ours, calc_reads(folder, source, formats), numbers)
    # A person who is asked nothing gets every column as standard: still nothing is computed.
    guessed, column = calc_reads(folder, source, ""), ours[0].index("batch_name")
    kept = [mine[column] for mine, calc in zip(ours, guessed)
            if mine[column].startswith("'") and plain(mine[column]) == calc[column]]
    assert len(kept) == sum(row[column].startswith("'") for row in ours) > 10, kept
    print(f"{source.name}: {len(ours)} rows, {sum(map(len, ours))} cells agree")


def main(tables):
    if not shutil.which("soffice"):
        print("no soffice here: third_party/install test brings it; nothing was compared")
        return 77
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        subprocess.run([tables, str(folder)], check=True)
        for table, numbers in TABLES.items():
            check(folder, folder / f"{table}.csv", numbers)
    return 0


sys.exit(main(sys.argv[1]))
