"""A second reader of session files, written from src/session/FORMAT.md alone.

It shares nothing with the program but that page, so where the two agree the page is enough.
"""

import json
import math

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


def whole(least, most):
    def check(v):
        if isinstance(v, bool) or not isinstance(v, int) or not least <= v <= most:
            raise Damaged("whole number")
    return check, True


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


def line_name(v):
    if not (isinstance(v, list) and len(v) == 2 and isinstance(v[0], str)
            and isinstance(v[1], int) and not isinstance(v[1], bool) and v[1] >= 0):
        raise Damaged("line")


def parts(v):
    if not isinstance(v, dict):
        raise Damaged("parts")
    read(v, {p: number(0, 1e6, False)
             for p in ("gum", "water", "honey", "glycerin", "alcohol", "other")})


LIQUIDS = ("binder", "water", "honey", "glycerin", "wetting_aid", "other")
CARDS = ("pigment", *LIQUIDS, "dropper", "spoon")
CARD = {"card": text(), "is_a": word(*CARDS), "name": text()}
PIGMENT = {"index_name": text(False), "colour": (colour, True), "family": text(),
           "g_per_mL": number(0.1, 25), "g_per_mL_u": number(0, 25, False),
           "oil_g_per_100g": number(0, 2000, False), "oil_u": number(0, 2000, False)}
DROPPER = {"mL_per_drop": number(1e-4, 1), "u": number(0, 1000, False),
           "calibrated_with": word(*CARDS, needed=False)}
SPOON = {"mL": number(0.01, 1000), "u": number(0, 1000, False)}

KINDS = {
    "began": {"format": text(), "version": whole(1, 10**6), "session": text(),
              "part": whole(0, 10**6), "device": text(), "local": text()},
    "laid_out": CARD,
    "opened": {"name": text()},
    "room": {"celsius": number(-50, 100), "humidity": number(0, 1), "guessed": (yes, False)},
    "added": {"of": text()},
    "felt": {"as": word("wont_move", "too_sticky", "right", "too_loose", "too_runny"),
             "by": word("knife", "muller")},
    "stage": {"stage": word("wetting_out", "mulling", "resting")},
    "dot": {"specks": word("many", "few", "none")},
    "trouble": {"what": word("wont_wet", "gelling", "gummy")},
    "bottle_weighed": {"of": text(), "g": number(0, 100000)},
    "count_lost": {"of": text()},
    "withdrawn": {"line": (line_name, True)},
    "gathered": {}, "closed": {}, "left": {},
    "clock_jumped": {"by_ms": whole(-2**53, 2**53), "local": text()},
}


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
        more = {"pigment": PIGMENT, "dropper": DROPPER, "spoon": SPOON}
        read(line, more.get(line["is_a"], {"parts": (parts, True)}))
    if kind == "added":
        by = "drops" if "drops" in line else "spoons" if "spoons" in line else "g"
        read(line, {by: number(0, {"drops": 10000, "spoons": 1000, "g": 5000}[by])})
        if by != "g":
            read(line, {"with": text()})


def parse(raw):
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
    return line


def sealed(raw):
    body, seal = raw[:-16], raw[-16:]
    digits = seal[6:14]
    if seal[:6] != b',"c":"' or seal[14:] != b'"}' or set(digits) - set(b"0123456789abcdef"):
        return None
    return body, int(digits, 16)


def read_file(data):
    """The lines that are believed, and the damage: (line from 1, byte, whether it is ordinary)."""
    lines, damage = [], []
    candidates, at, number_of, part, ended = [0], 0, 0, 0, False
    while at < len(data):
        number_of += 1
        end = data.find(b"\n", at)
        if end < 0:
            damage.append((number_of, at, True))
            break
        raw = data[at:end]
        try:
            found = sealed(raw)
            if found is None:
                candidates = [crc32c(raw[:max(0, len(raw) - 16)], c) for c in candidates]
                raise Damaged("no check value")
            body, value = found
            own = [crc32c(body, before) for before in candidates]
            fits = value in own
            candidates = [value] if fits else [value] + own
            if not fits:
                raise Damaged("check value")
            if len(raw) >= LONGEST:
                raise Damaged("too long")
            line = parse(raw)
            if line["e"] == "began" and "unknown" not in line:
                part = line["part"]
                if line["version"] > 1:
                    damage.append((number_of, at, False))
            # A later part's beginning bears the number of the first line it takes over.
            first = len(lines) == 1 and part > 0
            if lines and line["n"] < lines[-1]["n"] + (0 if first else 1):
                raise Damaged("order")
            ended = line["e"] == "left"
            lines.append(line)
        except Damaged:
            damage.append((number_of, at, False))
        at = end + 1
    if not lines or lines[0]["e"] != "began":
        damage.append((number_of, at, b"\n" not in data))
    if not ended:
        damage.append((number_of, at, True))
    return lines, damage
