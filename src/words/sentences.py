#!/usr/bin/python3
"""The sentences of words/english_*.cpp in other languages: LANGUAGE.po beside this file, one entry for each.

An entry's context is ROOM/id, as in slab/pad_more, its msgid the English of today, its msgstr the translation.
Behind them stand the pigments of assets/pigments.json, as in pigments/pb28.

Usage: sentences.py check            prints each fault as file:line: words, and fails if there is one
       sentences.py renew            brings every .po up to date: new sentences come in empty, where the English
                                     has changed the old translation stays and is marked fuzzy,
                                     and what only has another room or id now comes along
       sentences.py table PO OUT.cpp [ROOM ...]
                                     what the build compiles: PO checked by msgfmt, as a table. What is not
                                     translated as the English stands today is not in it, and is said in English;
                                     nor are the sentences of these rooms
       sentences.py letters OUT.txt  every letter that a sentence of any language has
"""

import json
import pathlib
import re
import shutil
import struct
import subprocess
import sys
import tempfile

WORDS = pathlib.Path(__file__).resolve().parent
PIGMENTS = WORDS.parent.parent / "assets" / "pigments.json"
SHIPS = "bench/ships_"  # names of other cards that ship, each with its id
LITERAL = re.compile(r'R"\((?P<raw>.*?)\)"|"(?P<plain>(?:[^"\\\n]|\\.)*)"', re.DOTALL)
COMMENT = re.compile(r"//[^\n]*")
ESCAPES = {"n": "\n", "t": "\t", '"': '"', "\\": "\\"}
PLACE = re.compile(r"\{\d\}")


def plain(text):
    return re.sub(r"\\(.)", lambda found: ESCAPES[found[1]], text, flags=re.DOTALL)


def joined_literals(text, at):
    """Of the string literals that begin here, one behind the other; None where there is none."""
    out = None
    while True:
        at += len(text[at:]) - len(text[at:].lstrip())
        comment = COMMENT.match(text, at)
        literal = LITERAL.match(text, at)
        if comment:
            at = comment.end()
        elif literal:
            out = (out or "") + (literal["raw"] if literal["raw"] is not None else plain(literal["plain"]))
            at = literal.end()
        else:
            return out


def english_of(words=WORDS):
    """"room/id": its English, in the order of the files."""
    files = sorted(words.glob("english_*.cpp"))
    texts = {path: path.read_text() for path in files}
    named = {}  # texts that stand elsewhere: name = "..." or name() { return "..."
    for text in texts.values():
        for found in re.finditer(r"std::string_view (\w+)(?: =|\(\) \{\s*return)", text):
            other = re.compile(r"\s*(\w+);").match(text, found.end())
            named[found[1]] = other[1] if other else joined_literals(text, found.end())
    for name, what in named.items():
        named[name] = named.get(what, what)
    out = {}
    for path, text in texts.items():
        for found in re.finditer(r"case Say::(\w+):\s*return\s+(?:(\w+)(?:\(\))?;)?", text):
            what = named.get(found[2]) if found[2] else joined_literals(text, found.end())
            context = path.stem.removeprefix("english_") + "/" + found[1]
            if what is None:
                raise SystemExit(f"{path}: {found[1]} is not written as `case Say::id: return \"...\";`")
            out[context] = what
    for pigment in json.loads(PIGMENTS.read_text())["pigments"]:
        out["pigments/" + pigment["id"]] = pigment["name"]
    return out


class Entry:
    def __init__(self):
        self.line, self.comments, self.fuzzy = 0, [], False
        self.context = self.id = self.text = None


def entries_of(po):
    """The header's msgstr, and the entries in their order."""
    entries, entry, part = [], Entry(), None
    for number, line in enumerate(po.read_text().splitlines() + [""], 1):
        keyword = re.match(r'(msgctxt|msgid|msgstr) (".*")$', line)
        more = re.match(r'".*"$', line)
        if keyword:
            part = {"msgctxt": "context", "msgid": "id", "msgstr": "text"}[keyword[1]]
            entry.line = entry.line or number
            setattr(entry, part, plain(keyword[2][1:-1]))
        elif more and part:
            setattr(entry, part, getattr(entry, part) + plain(line[1:-1]))
        elif line.startswith("#"):
            if line.startswith("#,"):
                entry.fuzzy = "fuzzy" in line
            elif not line.startswith("#~") and not line.startswith("#|"):
                entry.comments.append(line)
        elif not line.strip():
            if entry.id is not None:
                entries.append(entry)
            entry, part = Entry(), None
        else:
            raise SystemExit(f"{po}:{number}: not understood: {line}")
    header = next((e.text for e in entries if e.context is None and e.id == ""), "")
    return header, [e for e in entries if e.context is not None]


def check(po, english):
    """What is wrong with one language, as file:line: words."""
    _, entries = entries_of(po)
    seen = {}
    for entry in entries:
        where = f"{po.name}:{entry.line}: {entry.context}:"
        if entry.context in seen:
            yield f"{where} is there twice, first on line {seen[entry.context]}"
            continue
        seen[entry.context] = entry.line
        if entry.context not in english:
            yield f"{where} there is no such sentence any more"
            continue
        now = english[entry.context]
        if entry.id != now:
            yield f"{where} the English has changed: was {entry.id!r}, is {now!r}"
        elif entry.fuzzy:
            yield f"{where} is marked fuzzy: look at the translation of {now!r}"
        elif not entry.text and now:
            yield f"{where} is not translated: {now!r}"
        elif sorted(set(PLACE.findall(entry.text))) != sorted(set(PLACE.findall(now))):
            yield f"{where} other places than in {now!r}"
    for context, now in english.items():
        if context not in seen:
            yield f"{po.name}: {context}: is missing: {now!r}"
    order = [c for c in english if c in seen]
    written = [c for c in seen if c in english]
    if order != written:
        first = next(there for wanted, there in zip(order, written) if wanted != there)
        yield f"{po.name}:{seen[first]}: {first}: does not stand in the order of the English files"


def quoted(keyword, text):
    text = text.replace("\\", "\\\\").replace('"', '\\"').replace("\t", "\\t")
    lines = text.split("\n")
    lines = [line + "\\n" for line in lines[:-1]] + ([lines[-1]] if lines[-1] or len(lines) == 1 else [])
    if len(lines) > 1:
        return f'{keyword} ""\n' + "".join(f'"{line}"\n' for line in lines)
    return f'{keyword} "{lines[0]}"\n'


def renew(po, english):
    header, entries = entries_of(po)
    known = {}
    for entry in entries:
        known.setdefault(entry.context, entry)
    out = quoted("msgid", "") + quoted("msgstr", header)
    moved = {e.id: e for e in entries if e.context not in english}
    for context, now in english.items():
        entry = known.get(context) or moved.get(now, Entry())
        changed = bool(entry.text) and entry.id != now
        out += "\n" + "".join(line + "\n" for line in entry.comments)
        out += "#, fuzzy\n" if entry.text and (entry.fuzzy or changed) else ""
        out += quoted("msgctxt", context) + quoted("msgid", now) + quoted("msgstr", entry.text or "")
    po.write_text(out)


def compiled(po):
    """(context, msgid): msgstr, as msgfmt has it once it has checked the file: nothing fuzzy, nothing empty."""
    if not shutil.which("msgfmt"):
        raise SystemExit("msgfmt is not installed: it comes with the package gettext")
    with tempfile.TemporaryDirectory() as folder:
        mo = pathlib.Path(folder) / "words.mo"
        done = subprocess.run(["msgfmt", "--check", "--endianness=little", "-o", mo, po])
        if done.returncode:
            raise SystemExit(f"msgfmt finds {po} wrong")
        data = mo.read_bytes()
    count, ids, texts = struct.unpack_from("<3I", data, 8)
    def string(table, at):
        length, offset = struct.unpack_from("<2I", data, table + 8 * at)
        return data[offset:offset + length].decode()
    pairs = [(string(ids, at).split("\4", 1), string(texts, at)) for at in range(count)]
    return {(key[0], key[1]): text for key, text in pairs if len(key) == 2}


def literal(text):
    """As C++ takes it; in pieces, as a compiler may refuse long ones."""
    escaped = {"\n": "\\n", "\t": "\\t", '"': '\\"', "\\": "\\\\"}
    pieces = [text[at:at + 2000] for at in range(0, len(text), 2000)] or [""]
    return " ".join('"' + "".join(escaped.get(c, c) for c in piece) + '"' for piece in pieces)


def table(po, out, left_out, english):
    said = {key: text for key, text in compiled(po).items() if key[0].split("/")[0] not in left_out}
    rooms = {}
    for context, now in english.items():
        if (context, now) in said:
            room, name = context.split("/")
            rooms.setdefault(room, []).append((name, said[context, now]))
    cards = [(name, english["pigments/" + name], text) for name, text in rooms.pop("pigments", [])]
    cards += [(context.removeprefix(SHIPS), now, said[context, now]) for context, now in english.items()
              if context.startswith(SHIPS) and (context, now) in said]
    lines = ["// Written by sentences.py.", '#include "words/card_names.hpp"', '#include "words/languages.hpp"']
    lines += [f'#include "words/{room}_says.hpp"' for room in rooms]
    lines += ["", "namespace words {", "", "namespace {"]
    for room, rows in rooms.items():
        lines += ["", f"std::string_view in_{room}({room.capitalize()}Say id) {{",
                  f"  using Say = {room.capitalize()}Say;", "  switch (id) {"]
        lines += [f"  case Say::{name}: return {literal(text)};" for name, text in rows]
        lines += ["  default: return {};", "  }", "}"]
    lines += ["", "const CardName cards[] = {"]
    lines += ["    {" + ", ".join(map(literal, card)) + "}," for card in cards] + ["    {},", "};"]
    lines += ["", "}", "", f"const CardName* {po.stem}_card(std::string_view id) {{",
              "  for (const CardName& card : cards)", "    if (card.id == id) return &card;",
              "  return nullptr;", "}"]
    lines += ["", f"std::string_view {po.stem}_of(Sentence sentence) {{",
              "  switch (sentence.table) {"]
    lines += [f"  case Table::{room}: return in_{room}(static_cast<{room.capitalize()}Say>(sentence.row));"
              for room in rooms]
    lines += ["  default: return {};", "  }", "}", "", "}", ""]
    pathlib.Path(out).write_text("\n".join(lines))


def letters(languages, english):
    texts = list(english.values())
    for po in languages:
        texts += [entry.text or "" for entry in entries_of(po)[1]]
    return "".join(sorted(set("".join(texts)) - {"\n", "\t"}))


def main(words):
    english = english_of()
    languages = sorted(WORDS.glob("*.po"))
    if words == ["check"]:
        found = [fault for po in languages for fault in check(po, english)]
        print("\n".join(found) or f"{len(english)} sentences are said in each of {len(languages) + 1} languages")
        if found:
            print(f"{len(found)} to be looked at. `src/words/sentences.py renew` puts what is missing into the "
                  "files, empty, and marks as fuzzy what has changed.")
        return bool(found)
    if words == ["renew"]:
        for po in languages:
            renew(po, english)
        return 0
    if len(words) >= 3 and words[0] == "table":
        return table(pathlib.Path(words[1]), words[2], words[3:], english)
    if len(words) == 2 and words[0] == "letters":
        pathlib.Path(words[1]).write_text(letters(languages, english))
        return 0
    print(__doc__, file=sys.stderr)
    return 2


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
