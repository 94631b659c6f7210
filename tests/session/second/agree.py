#!/usr/bin/python3
"""Both readers on one corpus: agree.py SLABSIDE SCRIPT...

The corpus is what the program writes when it plays the scripts, the same sealed as in version 1,
both in many states of damage (seeded), and lines made by hand with true check values but fields that
are not. `slabside check` and reader.py must name the same places and believe the same number of
lines.
"""

import json
import pathlib
import random
import re
import subprocess
import sys
import tempfile

sys.path.insert(0, str(pathlib.Path(__file__).parent))
from reader import crc32c, read_file, seed_of  # noqa: E402

BEGAN = {"n": 0, "t": 0, "at": 0, "e": "began", "format": "slabside-session", "version": 1,
         "session": "5e1f20c7", "part": 0, "device": "07bd", "local": ""}
PAGE = 4096
PHOTO = '"e":"photo","sha256":"' + "0a" * 32 + '","ending":"jpg","of":'
PART = '{"x":1,"y":2,"width":30,"height":40}'
LAB = '"lab":{"l":38,"a":8,"b":-42.5,"l_u":0.6,"a_u":0.9,"b_u":1.1}'
OWN = '"l_own":0.05,"a_own":0.04,"b_own":0.1'
PARTS = [OWN + ',"l_white":0.3,"a_white":-0.2,"b_white":0.6', OWN + ',"l_white":0.3,"a_white":-0.2',
         OWN.replace("0.05", "-1") + ',"l_white":0,"a_white":0,"b_white":0', '"l_white":0.3']
BY_HAND = [
    '"e":"felt","as":"silky","by":"knife"', '"e":"sniffed","as":3', '"e":"felt","as":7,"by":"knife"',
    '"e":"added","of":"x","g":-1', '"e":"added","of":"x","g":5001', '"e":"added","of":"x"',
    '"e":"added","of":"x","drops":2', '"e":"added","of":"x","spoons":1,"with":"s"',
    '"e":"room","celsius":20,"humidity":50', '"e":"room","celsius":20,"humidity":0.5,"guessed":1',
    '"e":"goes_on"', '"e":"discarded"', '"e":"set_aside","line":["a",1]', '"e":"set_aside","line":"a"',
    '"e":"confirmed","line":["a",1],"g":84.3', '"e":"confirmed","line":["a",1]',
    '"e":"confirmed","line":["a",1],"g":-1', '"e":"told","range":"{}"', '"e":"told","range":{}',
    '"e":"withdrawn","line":["a",-1]', '"e":"withdrawn","line":["a",1,2]', '"e":"closed","e":"left"',
    '"e":"closed","x":[[[[[[[[[[1]]]]]]]]]]', '"e":"opened","name":"' + "a" * 65600 + '"',
    '"batch":"","e":"goes_on"', '"batch":"b","e":"goes_on"', '"batch":7,"e":"goes_on"', '"e":"left"',
    '"e":"opened","name":"caf\u00e9 \\ud83c\\udfa8"', '"e":"opened"', '"e":5',
    '"e":"laid_out","card":"a","is_a":"spoon","name":"s","mL":0',
    '"e":"laid_out","card":"a","is_a":"binder","name":"s","parts":{"gum":-1}',
    '"e":"laid_out","card":"a","is_a":"ladle","name":"s"',
    '"e":"laid_out","card":"a","is_a":"pigment","name":"s","colour":"blue","family":"x","g_per_mL":2',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"head"',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"hearsay"',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"notes","pigments":[{"of":"p","spoons":1}]',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"notes","pigments":[{"of":"p","parts":1001}]',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"notes","liquids":[{"of":"b"}],"per_g":10',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"batch","liquids":7,"mine":true',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"batch","per_spoons":1,"mine":1',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"notes","note":7',
    '"e":"laid_out","card":"a","is_a":"recipe","name":"s","from":"notes","note":"n"',
    '"e":"planned","recipe":5', '"e":"planned","recipe":"r"',
    '"e":"planned","takes":[{"of":"a","parts":3},{"of":"b","parts":1000}]',
    '"e":"planned","takes":[{"of":"a","parts":1000.5}]', '"e":"planned","takes":[{"of":"a","parts":"3"}]',
    '"e":"laid_out","card":"a","is_a":"pan","name":"s","mL":1.7,"depth_mm":0.5',
    '"e":"laid_out","card":"a","is_a":"pan","name":"s","mL":1.7,"depth_mm":9',
    '"e":"bought","of":"a"', '"e":"bought","of":"a","g":0,"price":-1', '"e":"bought","of":"a","g":100001',
    '"e":"bought","of":"a","g":50,"price":0,"currency":7', '"e":"bought","of":"a","g":50,"on":"yesterday"',
    '"e":"stock_weighed","of":"a","g":-0.1', '"e":"stock_weighed","of":"a","g":0',
    '"e":"stock_weighed","of":"a","g":5,"tare_g":-1', '"e":"making","step":"steep"',
    '"e":"making","step":"gum","of":"j"', '"e":"making","step":"gum","of":"j","parts":{"gum":60}',
    '"e":"making","step":"gum","of":"j","parts":{"gum":60},"spoons":4',
    '"e":"making","step":"gum","of":"j","parts":{"gum":-60}', '"e":"making","step":"boil","of":"j"',
    '"e":"making","step":"boil","of":"j","takes":7', '"e":"making","step":"steep","of":"j","takes":7',
    '"e":"making","step":"sweeten","of":"j","takes":[{"of":"h"}]',
    '"e":"making","step":"dried","of":"j","g":12', '"e":"making","step":"dried","of":"j","g":12,"had_g":120',
    '"e":"making","step":"dose","of":"j","drops":10', '"e":"making","step":"dose","of":"j","g":-1',
    '"e":"making","step":"dose","of":"j"', '"e":"making","step":"dose","g":1',
    '"e":"making","step":"preserve","of":"j","drops":-3', '"e":"making","step":"steep","of":5',
    '"e":"stock_weighed","g":5', '"e":"corrected","line":["a",1],"says":{"e":"bought","of":"a","g":5}',
    '"e":"corrected","line":["a",1],"by_ms":-500', '"e":"corrected","line":["a"],"by_ms":-500',
    '"e":"corrected","line":["a",1],"by_ms":0.5',
    '"e":"corrected","line":["a",1],"says":{"e":"felt","as":"right","by":"knife"}',
    '"e":"corrected","line":["a",1],"says":{"e":"felt","as":"silky","by":"knife"}',
    '"e":"corrected","line":["a",1],"says":{"e":"felt","by":"knife"}',
    '"e":"corrected","line":["a",1],"says":{"e":"closed"}', '"e":"corrected","line":["a",1],"says":5',
    '"e":"photo","sha256":"' + "0a" * 32 + '","ending":"jpg","of":"dot"',
    '"e":"photo","sha256":"' + "0A" * 32 + '","ending":"jpg","of":"dot"',
    '"e":"photo","sha256":"' + "0a" * 32 + '","ending":"exe","of":"dot"',
    PHOTO + '"swatch",' + LAB + ',"colour":"#2e4f9a"', PHOTO + '"swatch",' + LAB,
    PHOTO + '"swatch",' + LAB + ',"colour":"blue"', PHOTO + '"swatch","colour":"blue"',
    PHOTO + '"swatch",' + LAB.replace("38", "150.5") + ',"colour":"#2e4f9a"',
    PHOTO + '"swatch",' + LAB.replace('"a":8,', "") + ',"colour":"#2e4f9a"',
    PHOTO + '"swatch","lab":[38,8,-42],"colour":"#2e4f9a"', PHOTO + '"dot","lab":5',
    *(PHOTO + '"swatch",' + LAB + ',"colour":"#2e4f9a","paint":' + paint + paper for paint, paper in [
        (PART, ""), (PART, ',"paper":[]'), (PART, ',"paper":[' + PART + "," + PART + "]"), (PART, ',"paper":5'),
        (PART, ',"paper":[5]'), ("5", ""), (PART.replace('"x":1', '"x":-1'), ""), (PART.replace("30", "0"), ""),
        (PART, ',"paper":[{"x":1,"y":2}]'), (PART.replace('"x":1', '"x":1.5'), "")]),
    *(PHOTO + '"swatch",' + LAB.replace("}", "," + parts + "}") + ',"colour":"#2e4f9a"' for parts in PARTS),
    PHOTO + '"swatch","paint":5', PHOTO + '"dot","paint":5',
    '"e":"gone","to":5,"why":"torn"', '"e":"gone","to":-5,"why":"torn"',
    '"e":"began","format":"other","version":1,"session":"a","part":0,"device":"","local":""',
    '"e":"began","format":"slabside-session","version":1,"session":"a","part":2,"device":"","local":""',
]


def seal(body, before, seed=0):
    body += b',"p":"%08x"' % before
    value = crc32c(body, before ^ seed)
    return body + b',"c":"%08x"}\n' % value, value


def by_hand(fields, version=1, t=5):
    seed = seed_of(BEGAN["session"], 0) if version > 1 else 0
    began = json.dumps({**BEGAN, "version": version}, separators=(",", ":"))[:-1].encode()
    first, check = seal(began, 0, seed)
    line, check = seal(f'{{"n":1,"t":{t},"at":5,{fields}'.encode(), check, seed)
    last, _ = seal(b'{"n":2,"t":6,"at":6,"e":"left"', check, seed)
    return first + line + last


def as_version_1(data):
    """The same lines as they were sealed once."""
    out, check = b"", 0
    for line in data.replace(b'"version":2', b'"version":1', 1).splitlines():
        sealed, check = seal(line[:-31], check)
        out += sealed
    return out


def damaged(data, chance):
    lines = data.splitlines(keepends=True)
    k = chance.randrange(1, len(lines) - 1)
    for _ in range(8):
        yield data[:chance.randrange(len(data))]
    for _ in range(30):
        i = chance.randrange(len(data))
        yield data[:i] + bytes([data[i] ^ 1 << chance.randrange(8)]) + data[i + 1:]
    yield b"".join(lines[:k] + lines[k + 1:])
    yield b"".join(lines[:k] + [lines[k]] + lines[k:])
    yield b"".join(lines[:k] + [lines[k + 1], lines[k]] + lines[k + 2:])
    for blank in (b"\n", b" \n", b"\r\n"):
        yield b"".join(lines[:k] + [blank] + lines[k:])
        yield data + blank
    yield b"".join(lines + [lines[k]])
    yield data.replace(b"\n", b"\r\n")
    yield b"\xef\xbb\xbf" + data
    yield b"".join(reversed(lines))
    yield data + data
    for i in range(0, len(data), PAGE):
        yield data[:i] + bytes(min(PAGE, len(data) - i)) + data[i + PAGE:]
        yield data[:i] + data[i:i + PAGE] + data[i:]
        yield data[:i] + chance.randbytes(PAGE) + data[i + PAGE:]
    for end in (b"\0" * 9, lines[k][:60], lines[-1][:40], b'{"n":', b'{"n":99999,"t":5,"at":"\xc3'):
        yield data + end
        yield b"".join(lines[:-1]) + end


def crossed(data, other, chance):
    """Pages and lines of another file in this one."""
    ours, theirs = data.splitlines(keepends=True), other.splitlines(keepends=True)
    for _ in range(8):
        i = chance.randrange(0, len(data), PAGE)
        yield data[:i] + other[i:i + PAGE] + data[i + PAGE:]
        k, m = chance.randrange(len(ours)), chance.randrange(len(theirs))
        yield b"".join(ours[:k] + theirs[m:m + 9] + ours[k:])
        yield b"".join(ours[:k] + theirs[m:m + 9] + ours[k + 9:])
    yield b"".join(ours[:3] + theirs[:1] + ours[3:])
    yield b"".join(theirs[:1] + ours[1:])
    yield data + other


def main(slabside, scripts):
    chance = random.Random(20261125)
    with tempfile.TemporaryDirectory() as folder:
        studio = pathlib.Path(folder)
        for script in scripts:
            subprocess.run([slabside, "play", script, "--studio", studio], check=True,
                           stdout=subprocess.DEVNULL)
        sessions = studio / "sessions"
        written = [f.read_bytes() for f in sorted(sessions.iterdir())]
        names = sorted(f.name for f in sessions.iterdir())
        cases = [d for data in written for d in damaged(data, chance)] + [b"", b"\n", b"{}\n"]
        cases += [by_hand(fields, version) for fields in BY_HAND for version in (1, 2)]
        cases += [by_hand('"e":"closed"', version, t) for version in (1, 2, 3) for t in (6, 7, 2000)]
        for i, data in enumerate(cases):
            (sessions / f"case-{i:04}.jsonl").write_bytes(data)
        # Under names of their own, by which whose they are is known where nothing else says it.
        for i, data in enumerate(written):
            name, other = names[i], written[i - 1]
            old, old_other = as_version_1(data), as_version_1(other)
            more = [*crossed(data, other, chance), *crossed(old, old_other, chance),
                    *damaged(old, chance), *damaged(data, chance)]
            for k, bytes_of_it in enumerate(more):
                (sessions / f"{k:04}-{name}").write_bytes(bytes_of_it)
            cases += more
        said = subprocess.run([slabside, "check", studio], stdout=subprocess.PIPE, check=False)
        out = said.stdout.decode()
        theirs = {(m[2], int(m[3]), int(m[4]), m[1] is not None)
                  for m in re.finditer(r"^(note: )?(\S+): line (\d+), byte (\d+): ", out, re.M)}
        their_lines = int(re.search(r"(\d+) files?, (\d+) lines?", out)[2])
        ours, our_lines = set(), 0
        for f in sessions.iterdir():
            lines, damage = read_file(f.name, f.read_bytes())
            our_lines += len(lines)
            ours |= {(f.name, *d) for d in damage}
        for place in sorted(ours ^ theirs)[:20]:
            who = "only the second reader" if place in ours else "only the program"
            print(who, *place)
        print(f"{len(written) + len(cases)} files, {our_lines} lines here, {their_lines} there, "
              f"{len(ours)} places named here, {len(theirs)} there")
        return 0 if ours == theirs and our_lines == their_lines else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2:]))
