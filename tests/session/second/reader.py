"""A second reader of session files, written from src/session/FORMAT.md alone.

It shares nothing with the program but that page, so where the two agree the page is enough.
"""

import json
import math
import re

LONGEST = 65536
DEEPEST = 8

TABLE = []
for byte in range(256):
    for _ in range(8):
        byte = byte >> 1 ^ (0x82F63B78 if byte & 1 else 0)
    TABLE.append(byte)


def crc32c(data, before=0):
    crc = before ^ 0xFFFFFFFF
    for byte in data:
        crc = TABLE[(crc ^ byte) & 0xFF] ^ crc >> 8
    return crc ^ 0xFFFFFFFF


class Damaged(Exception):
    pass


class Unknown(Exception):
    pass


def pairs_once(pairs):
    if len({key for key, _ in pairs}) < len(pairs):
        raise Damaged("a key twice")
    return dict(pairs)


def depth(value):
    inner = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    return 1 + max(map(depth, inner), default=0) if isinstance(value, (dict, list)) else 0


def number(least, most, needed=True):
    def check(v):
        if isinstance(v, bool) or not isinstance(v, (int, float)) or not least <= v <= most:
            raise Damaged("number")
    return check, needed


def whole(least, most, needed=True):
    def check(v):
        if isinstance(v, bool) or not isinstance(v, int) or not least <= v <= most:
            raise Damaged("whole number")
    return check, needed


def text(needed=True):
    def check(v):
        if not isinstance(v, str):
            raise Damaged("text")
    return check, needed


def yes(v):
    if not isinstance(v, bool):
        raise Damaged("true or false")


def word(*known, needed=True):
    def check(v):
        if not isinstance(v, str):
            raise Damaged("word")
        if v not in known:
            raise Unknown
    return check, needed


def colour(v):
    if not isinstance(v, str) or len(v) != 7 or v[0] != "#" or set(v[1:]) - set("0123456789abcdef"):
        raise Damaged("colour")


def sha256(v):
    if not isinstance(v, str) or len(v) != 64 or set(v) - set("0123456789abcdef"):
        raise Damaged("no SHA-256")


def texts(v):
    if not isinstance(v, list) or not all(isinstance(each, str) for each in v):
        raise Damaged("list of texts")


def line_name(v):
    if not (isinstance(v, list) and len(v) == 2 and isinstance(v[0], str)
            and isinstance(v[1], int) and not isinstance(v[1], bool) and v[1] >= 0):
        raise Damaged("line")


def parts(v):
    if not isinstance(v, dict):
        raise Damaged("parts")
    read(v, {p: number(0, 1e6, False)
             for p in ("gum", "water", "honey", "glycerin", "alcohol", "other")})


def made_of(v):
    if not isinstance(v, dict):
        raise Damaged("made_of")
    read(v, {p: number(0, 1e6, False)
             for p in ("pigment", "gum", "water", "honey", "glycerin", "alcohol", "other")})


LIQUIDS = ("binder", "water", "honey", "glycerin", "wetting_aid", "other")
CARDS = ("pigment", *LIQUIDS, "paint", "dropper", "spoon", "pan", "slab", "muller")
CARD = {"card": text(), "is_a": word(*CARDS), "name": text()}
KEEPING = {"lot": text(False), "made_on": text(False), "keep_until": text(False),
           "made_g": number(0, 1e6, False)}
PIGMENT = {"index_name": text(False), "colour": (colour, True), "family": text(),
           "g_per_mL": number(0.1, 25), "g_per_mL_u": number(0, 25, False),
           "oil_g_per_100g": number(0, 2000, False), "oil_u": number(0, 2000, False),
           "heap_g_per_mL": number(0.01, 5, False), "heap_u": number(0, 5, False),
           "cautions": (texts, False)}
DROPPER = {"mL_per_drop": number(1e-4, 1), "u": number(0, 1000, False),
           "calibrated_with": word(*CARDS, needed=False)}
FACE = {"cm2": number(0, 100000)}
SPOON = {"mL": number(0.01, 1000), "u": number(0, 1000, False)}

PLACES = ("slab", "jar", "pans")

KINDS = {
    "began": {"format": text(), "version": whole(1, 10**6), "session": text(),
              "part": whole(0, 10**6), "device": text(), "local": text()},
    "laid_out": CARD,
    "put_away": {"card": text()},
    "opened": {"name": text(), "again_of": text(False)},
    "cautions_seen": {},
    "room": {"celsius": number(-50, 100), "humidity": number(0, 1), "guessed": (yes, False)},
    "added": {"of": text()},
    "felt": {"as": word("wont_move", "too_sticky", "right", "too_loose", "too_runny"),
             "by": word("knife", "muller")},
    "stage": {"stage": word("wetting_out", "mulling", "resting")},
    "goes_on": {},
    "dot": {"specks": word("many", "few", "none")},
    "trouble": {"what": word("wont_wet", "gelling", "gummy", "gritty", "foams", "separates",
                              "smells")},
    "bottle_weighed": {"of": text(), "g": number(0, 100000)},
    "count_lost": {"of": text()},
    "moved": {"from": word(*PLACES), "to": word(*PLACES)},
    "lost": {"from": word(*PLACES), "into": text(False)},
    "weighed": {"place": word(*PLACES), "g": number(0, 100000), "tare_g": number(0, 100000, False)},
    "as_before": {"line": (line_name, True)},
    "found": {"as": word("wet", "dry")},
    "poured": {"first": whole(1, 1000), "in": text(), "g": number(0, 5000, False)},
    "pan_weighed": {"pan": whole(1, 1000), "g": number(0, 100000)},
    "verdict": {"as": word("good", "full", "sunken", "cracked", "sticky", "rubs_off", "wont_rewet",
                           "mould"), "pan": whole(1, 1000, False)},
    "noted": {"text": text()},
    "set_aside": {"line": (line_name, True)},
    "withdrawn": {"line": (line_name, True)},
    "corrected": {"line": (line_name, True), "by_ms": whole(-2**53, 2**53, False)},
    "photo": {"sha256": (sha256, True), "ending": text(), "of": word("slab", "dot", "swatch", "pan")},
    "gone": {"to": whole(0, 2**53), "why": text()},
    "gathered": {}, "closed": {}, "discarded": {}, "left": {},
    "clock_jumped": {"by_ms": whole(-2**53, 2**53), "local": text()},
}


CORRECTABLE = ("opened", "room", "added", "felt", "stage", "dot", "trouble", "bottle_weighed",
               "moved", "lost", "weighed", "found", "poured", "pan_weighed", "verdict", "noted")


def read(line, fields):
    unknown = False
    for name, (check, needed) in fields.items():
        if name not in line:
            if needed:
                raise Damaged(f"{name} is missing")
            continue
        try:
            check(line[name])
        except Unknown:
            unknown = True
    if unknown:
        raise Unknown


def check_fields(line):
    kind = line["e"]
    if kind not in KINDS:
        raise Unknown
    read(line, KINDS[kind])
    if kind == "began":
        if line["format"] != "slabside-session":
            raise Damaged("another format")
        if line["part"] > 0:
            read(line, {"from": whole(0, 2**53)})
    if kind == "laid_out":
        more = {"pigment": PIGMENT, "paint": {**PIGMENT, "made_of": (made_of, True)},
                "dropper": DROPPER, "spoon": SPOON, "pan": SPOON, "slab": FACE, "muller": FACE}
        read(line, {**more.get(line["is_a"], {"parts": (parts, True)}), **KEEPING})
    if kind == "poured":
        read(line, {"last": whole(line["first"], 1000)})
    if kind == "photo" and line["ending"] not in ("jpg", "png"):
        raise Damaged("ending")
    if kind == "corrected" and "says" in line:
        says = line["says"]
        if not isinstance(says, dict) or not isinstance(says.get("e"), str):
            raise Damaged("says")
        check_fields(says)
        if says["e"] not in CORRECTABLE:
            raise Unknown
    if kind in ("moved", "lost"):
        read(line, {"g": number(0, 5000)} if "g" in line else {"share": number(0, 1)})
    if kind == "added":
        by = "drops" if "drops" in line else "spoons" if "spoons" in line else "g"
        read(line, {by: number(0, {"drops": 10000, "spoons": 1000, "g": 5000}[by])})
        if by != "g":
            read(line, {"with": text()})


def parse(raw, newer):
    try:
        line = json.loads(raw.decode("utf-8"), object_pairs_hook=pairs_once,
                          parse_constant=lambda _: math.nan)
    except (ValueError, RecursionError):
        raise Damaged("not JSON") from None
    if not isinstance(line, dict) or depth(line) > DEEPEST:
        raise Damaged("no object, or too deep")
    read(line, {"n": whole(0, 2**53), "t": whole(0, 2**53), "at": whole(-2**53, 2**53),
                "e": text(), "batch": text(False)})
    try:
        check_fields(line)
    except Unknown:
        line["unknown"] = True
    except Damaged:
        if not newer:
            raise
        line["unknown"] = True
    return line


def hexadecimal(digits):
    return None if set(digits) - set(b"0123456789abcdef") else int(digits, 16)


def sealed(raw):
    """The body, the check value of the line before as it is given here, and the line's own."""
    body, seal = raw[:-16], raw[-16:]
    before = body[-15:]
    if (len(raw) < 31 or seal[:6] != b',"c":"' or seal[14:] != b'"}'
            or before[:6] != b',"p":"' or before[14:] != b'"'):
        return None
    p, c = hexadecimal(before[6:14]), hexadecimal(seal[6:14])
    return None if p is None or c is None else (body, p, c)


def same(a, b):
    """Equal but for the place in the chain."""
    drop = ("p", "c")
    return {k: v for k, v in a.items() if k not in drop} == {k: v for k, v in b.items() if k not in drop}


def takes_over(line):
    """The beginning of a later part, which is no line of the session."""
    return line["e"] == "began" and line.get("part", 0) > 0 and line["from"] > 0


def read_file(name, data):
    """The lines that are believed, and the damage: (line from 1, byte, whether it is ordinary)."""
    lines, damage = [], []
    before, at, number_of, began, newer, ended, foreign = 0, 0, 0, None, False, False, False
    while at < len(data) and not foreign:
        number_of += 1
        end = data.find(b"\n", at)
        if end < 0:
            damage.append((number_of, at, True))
            break
        raw = data[at:end]
        try:
            found, last, before = sealed(raw), before, None
            if found is None:
                raise Damaged("no check value")
            body, p, c = found
            if crc32c(body, p) != c:
                raise Damaged("check value")
            before = c
            if last is not None and last != p:
                damage.append((number_of, at, False))
            if len(raw) >= LONGEST:
                raise Damaged("too long")
            line = parse(raw, newer)
            if line["e"] == "began" and "unknown" not in line:
                whose = re.search(r"-([^-.]*)\.[^-]*$", name)
                own = not lines or whose is not None and whose[1] == line["session"]
                if began is None and own:
                    began, newer, ended = line, line["version"] > 1, False
                    lines.append(line)
                    if newer:
                        damage.append((number_of, at, False))
                elif began is None or not same(line, began):
                    foreign = True
                    raise Damaged("two sessions")
            elif there := [x for x in lines if x["n"] == line["n"] and not takes_over(x)]:
                if not same(there[0], line):
                    raise Damaged("number twice")
            else:
                ended = line["e"] == "left"
                lines.append(line)
        except Damaged:
            damage.append((number_of, at, False))
        at = end + 1
    if began is None:
        damage.append((1, 0, b"\n" not in data))
    if not ended:
        damage.append((number_of, at, True))
    return lines, damage
