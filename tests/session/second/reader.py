"""A second reader of session files, written from src/session/FORMAT.md alone.

It shares nothing with the program but that page, so where the two agree the page is enough.
"""

import codecs
import datetime
import json
import math
import re

LONGEST = 65536
NEWEST = 2
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


def name_of_batch(v):
    if not isinstance(v, str) or not v:
        raise Damaged("no name of a batch")


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


def lab(v):
    if not isinstance(v, dict):
        raise Damaged("lab")
    doubts = {name: number(0, 200) for name in ("l_u", "a_u", "b_u")}
    read(v, {"l": number(0, 150), "a": number(-200, 200), "b": number(-200, 200), **doubts})
    if "l_own" in v:
        read(v, {name + "_own": number(0, 200) for name in "lab"})
        read(v, {name + "_white": number(-200, 200) for name in "lab"})


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


def takes(v):
    if not isinstance(v, list) or not all(isinstance(each, dict) for each in v):
        raise Damaged("takes")
    for each in v:
        read(each, {"of": text(), "g": number(0, 5000, False), "parts": number(0, 1000, False)})


def off_the_shelf(v):
    if not isinstance(v, list) or not all(isinstance(each, dict) for each in v):
        raise Damaged("takes")
    for each in v:
        read(each, {"of": text(), "g": number(0, 100000)})


MOST_SAID = {"parts": 1000, "g": 5000, "drops": 10000, "spoons": 1000}


def said(v):
    if not isinstance(v, list) or not all(isinstance(each, dict) for each in v):
        raise Damaged("list of amounts")
    for each in v:
        by = next((by for by in ("spoons", "drops", "g", "parts") if by in each), "g")
        read(each, {"of": text(), by: number(0, MOST_SAID[by])})
        if by in ("drops", "spoons"):
            read(each, {"with": text()})


LIQUIDS = ("binder", "water", "honey", "glycerin", "wetting_aid", "other")
CARDS = ("pigment", *LIQUIDS, "paint", "dropper", "spoon", "pan", "slab", "muller",
         "recipe")
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
RECIPE = {"pigments": (said, False), "liquids": (said, False), "per_g": number(0, 5000, False),
          "per_spoons": number(0, 1000, False), "from": word("head", "notes", "batch"),
          "from_batch": text(False), "mine": (yes, False), "note": text(False)}
SPOON = {"mL": number(0.01, 1000), "u": number(0, 1000, False)}
PAN = {**SPOON, "depth_mm": number(1, 200, False)}

PLACES = ("slab", "jar", "pans")

KINDS = {
    "began": {"format": text(), "version": whole(1, 10**6), "session": text(),
              "part": whole(0, 10**6), "device": text(), "local": text()},
    "laid_out": CARD,
    "put_away": {"card": text()},
    "bought": {"of": text(), "g": number(0, 100000), "price": number(0, 1e9, False),
               "currency": text(False), "lot": text(False), "on": text(False)},
    "stock_weighed": {"of": text(), "g": number(0, 100000), "tare_g": number(0, 100000, False)},
    "making": {"step": word("gum", "steep", "strain", "sweeten", "preserve", "jar", "thinned",
                            "thickened", "dried", "given_up", "dose"), "of": text()},
    "opened": {"name": text(), "again_of": text(False)},
    "planned": {"pans": whole(1, 1000, False), "takes": (takes, False),
                "recipe": text(False)},
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
    "confirmed": {"line": (line_name, True), "g": number(0, 100000)},
    "told": {"range": text()},
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
                "dropper": DROPPER, "spoon": SPOON, "pan": PAN, "slab": FACE, "muller": FACE,
                "recipe": RECIPE}
        read(line, {**more.get(line["is_a"], {"parts": (parts, True)}), **KEEPING})
        if line["is_a"] == "recipe" and line.get("per_spoons", 0) > 0:
            read(line, {"per_with": text()})
    if kind == "making":
        done_to_jar = {"g": number(0, 100000), "had_g": number(0, 100000)}
        dose = {"drops": number(0, 10000, False), "g": number(0, 100000, False)}
        more = {"gum": {"by": text(False), "parts": (parts, True), "spoons": number(0, 1000, False)},
                "preserve": dose, "dose": dose,
                "thinned": done_to_jar, "thickened": done_to_jar, "dried": done_to_jar}
        read(line, {**more.get(line["step"], {}), "takes": (off_the_shelf, False)})
        if line["step"] == "gum" and line.get("spoons", 0) > 0:
            read(line, {"with": text()})
    if kind == "planned" and "pans" in line:
        read(line, {"in": text()})
    if kind == "poured":
        read(line, {"last": whole(line["first"], 1000)})
    if kind == "photo" and line["ending"] not in ("jpg", "png"):
        raise Damaged("ending")
    if kind == "photo" and line["of"] == "swatch" and "lab" in line:
        read(line, {"colour": (colour, True), "lab": (lab, True)})
        if "paint" in line:
            papers = line.get("paper", [])
            if not isinstance(papers, list):
                raise Damaged("paper")
            for part in [line["paint"], *papers]:
                if not isinstance(part, dict):
                    raise Damaged("paint")
                read(part, {"x": whole(0, 32768), "y": whole(0, 32768),
                            "width": whole(1, 32768), "height": whole(1, 32768)})
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
                "e": text(), "batch": (name_of_batch, False)})
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


def seed_of(session, part):
    return crc32c(f"{session}.{part}".encode("utf-8", "replace"))


def seed_asked_for(began, fits):
    """The seed that a beginning's own words ask for, where it fits."""
    seed = seed_of(began["session"], began["part"]) if began["version"] > 1 else 0
    return next((s for s in ([seed, 0] if began["version"] > NEWEST else [seed]) if fits(s)), None)


def torn(tail, last, left):
    """Whether these bytes are the beginning of a line behind number `last`."""
    if left or len(tail) >= LONGEST:
        return False
    number = re.match(rb'\{"n":([0-9]{1,16})', tail)
    if not number:
        return b'{"n":'.startswith(tail)
    rest = tail[number.end():]
    then = b',"t":'
    if rest and not (then.startswith(rest) or rest.startswith(then) and last < int(number[1])):
        return False
    if rest and last >= int(number[1]):
        return False
    try:
        letters = codecs.getincrementaldecoder("utf-8")().decode(tail)
    except UnicodeDecodeError:
        return False
    inside = escaped = False
    nested = 0
    for i, letter in enumerate(letters):
        if letter < " ":
            return False
        if inside:
            inside = letter != '"' or escaped
            escaped = letter == "\\" and not escaped
        elif letter == '"':
            inside = True
        elif letter in "{[":
            nested += 1
            if nested > DEEPEST:
                return False
        elif letter in "}]":
            nested -= 1
            if nested == 0 and i + 1 < len(letters):
                return False
        elif letter not in ",:+-.0123456789eEtrufalsn":
            return False
    return not (nested == 0 and len(tail) > len(letters.encode()))


def takes_over(line):
    """The beginning of a later part, which is no line of the session."""
    return line["e"] == "began" and line.get("part", 0) > 0 and line["from"] > 0


def odd_after(before, line):
    """A session ends with `left`, and its clock never goes back."""
    return before["e"] == "left" and "unknown" not in before or line["t"] < before["t"]


class Raw:
    def __init__(self, number, at, text):
        self.changed_end = text.endswith(b"\r") and sealed(text[:-1]) is not None
        text = text[:-1] if self.changed_end else text
        self.number, self.at, self.text = number, at, text
        found = sealed(text)
        self.formed = found is not None
        self.body, self.p, self.c = found or (b"", 0, 0)
        self.line = None

    def fits(self, seed):
        return self.formed and crc32c(self.body, self.p ^ seed) == self.c

    def beginning(self):
        """The line, and its seed, if it is a beginning that fits the seed it asks for."""
        if not self.formed or b'"e":"began"' not in self.text or len(self.text) >= LONGEST:
            return None
        try:
            line = parse(self.text, False)
        except Damaged:
            return None
        if line["e"] != "began" or "unknown" in line:
            return None
        seed = seed_asked_for(line, self.fits)
        return None if seed is None else (line, seed)


def whose(name, raws):
    """The raw line with the file's own beginning, the seed, and the version."""
    begun = [(raw, *found) for raw in raws if (found := raw.beginning())]
    # Between the last dash and the next dot, and what stands between that one and the next.
    named = re.search(r"-([^-.]*)\.(?:([0-9]{1,6})\.)?[^-]*$", name)
    session = named[1] if named else ""
    by_name = seed_of(session, int(named[2] or 0) if named else 0)  # of no name, that of ""
    for raw, line, seed in begun:
        if line["session"] == session:
            return raw, line, seed
    if begun and not re.search(r"(^|/)\d{4}-\d\d-\d\dT\d{6}Z-[0-9a-f]{4}-[0-9a-f]{8,}"
                               r"(\.\d{1,6})?\.jsonl$", name):
        raw, line, seed = begun[0]
        behind = seed == 0 and any(r.fits(0) for r in raws if r.number < raw.number)
        if not behind and not any(r.fits(by_name) for r in raws):
            return raw, line, seed
    return None, None, by_name if any(r.fits(by_name) for r in raws) else 0


def clock(raw):
    return raw.line["at"] - raw.line["t"]


def moment_in(name):
    """Of a name as a writer gives it, in ms since 1970."""
    found = re.search(r"(?:^|/)(\d{4}-\d\d-\d\d)T(\d\d)(\d\d)(\d\d)Z-[0-9a-f]{4}-[0-9a-f]{8,}"
                      r"(\.\d{1,6})?\.jsonl$", name)
    try:
        days = (datetime.date.fromisoformat(found[1]) - datetime.date(1970, 1, 1)).days
    except (TypeError, ValueError):
        return None
    return ((days * 24 + int(found[2])) * 60 + int(found[3])) * 60000 + int(found[4]) * 1000


def bound(runs, by_seal, known):
    """Of runs of lines the believed ones, each with how sure that is."""
    if by_seal:
        return {i: 0 for i, run in enumerate(runs) if not run["foreign"]}
    own = [i for i, run in enumerate(runs) if run["own"]]
    own = own or [i for i, run in enumerate(runs) if not run["foreign"] and any(
        known is None or abs(clock(raw) - known) <= 2000 for raw in run["lines"])]
    rank, ahead = ({own[0]: 0}, [own[0]]) if own else ({}, [])
    for i in ahead:
        checks = {raw.c for raw in runs[i]["lines"]}
        for k, run in enumerate(runs):
            if k not in rank and not run["foreign"] and run["before"] in checks:
                rank[k] = 0
                ahead.append(k)

    known = clock(runs[own[0]]["lines"][0]) if own else None
    for i, run in enumerate(runs):
        if run["foreign"] or not run["lines"]:
            continue
        if i not in rank and known is not None and abs(clock(run["lines"][0]) - known) <= 2000:
            rank[i] = 1
        if i in rank:
            known = clock(run["lines"][-1])
    return rank


def read_file(name, data):
    """The lines that are believed, and the damage: (line from 1, byte, whether it is ordinary)."""
    damage, raws, at = [], [], 0
    if data.startswith(b"\xef\xbb\xbf"):
        damage, at = [(1, 0, False)], 3
    *whole, tail = data[at:].split(b"\n")
    for number_of, text in enumerate(whole, 1):
        raws.append(Raw(number_of, at, text))
        at += len(text) + 1
    own, began, seed = whose(name, raws)
    newer = began is not None and began["version"] > NEWEST
    runs, before = [], 0

    def say(raw):
        damage.append((raw.number, raw.at, False))

    damage += [(raw.number, raw.at, False) for raw in raws if raw.changed_end][:1]
    for raw in raws:
        last, before = before, None
        if not raw.fits(seed):
            say(raw)
            continue
        before = raw.c
        if last is not None and last != raw.p:
            say(raw)
        if raw is own and newer:
            say(raw)
        try:
            if len(raw.text) >= LONGEST:
                raise Damaged("too long")
            raw.line = parse(raw.text, newer)
        except Damaged:
            say(raw)
        line = raw.line
        foreign = (line is not None and line["e"] == "began" and "unknown" not in line
                   and (began is None or not same(line, began)))
        if last != raw.p or foreign or raw is own or not runs:
            runs.append({"before": raw.p, "foreign": foreign and seed == 0, "own": False,
                         "lines": []})
        if foreign:
            say(raw)
        elif line is not None:
            runs[-1]["lines"].append(raw)
            runs[-1]["own"] |= raw is own
    rank = bound(runs, seed != 0 or newer, None if began else moment_in(name))
    believed = []
    for i, run in enumerate(runs):
        if i in rank:
            believed += [(raw.line["n"], raw.line["e"] != "began", rank[i], raw.number, raw)
                         for raw in run["lines"]]
        elif run["lines"] and not run["foreign"]:
            say(run["lines"][0])
    lines, numbered, over, before = [], {}, None, None
    for n, _, _, _, raw in sorted(believed, key=lambda each: each[:4]):
        there = over if takes_over(raw.line) else numbered.get(n)
        if there is not None:
            if not same(there.line, raw.line):
                say(raw)
            continue
        if takes_over(raw.line):
            over = raw
        else:
            numbered[n] = raw
            if before is not None and not newer and odd_after(before.line, raw.line):
                say(raw)
            before = raw
        lines.append(raw)
    is_left = [raw.line["e"] == "left" and "unknown" not in raw.line for raw in lines]
    ends = len(raws) + (1 if tail else 0)
    last = max((raw.line["n"] for raw in lines if not takes_over(raw.line)), default=-1)
    is_torn = not tail or torn(tail, last, any(is_left))
    if tail:
        damage.append((ends, at, is_torn))
    if began is None:
        damage.append((1, 0, not raws and is_torn))
    if not lines or not is_left[lines.index(max(lines, key=lambda raw: raw.number))]:
        damage.append((ends, at, True))
    return [raw.line for raw in lines], damage
