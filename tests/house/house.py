#!/usr/bin/python3
"""The house rules: which room may include what, that every sentence is said, how long a file may be.

Usage: house.py ROOT     prints each fault as file:line: words, and fails if there is one.
"""

import pathlib
import re
import sys

# The links of the design. A room includes what its links reach.
LINKS = {
    "words": [],
    "paint": ["words"],
    "colour": [],
    "session": ["paint"],
    "notes": ["session"],
    "bench": ["session", "colour"],
    "disk": [],
    "studio": ["session", "disk", "colour"],
    "paper": ["session", "colour"],
    "screens": ["bench"],
    "window": [],
    "commands": ["bench", "notes", "studio", "paper"],
}
LINKS["app"] = list(LINKS)
# The one folder within a room.
SUB_ROOMS = {("paint", "range")}

DRAWING_ROOMS = {"screens", "window", "app"}
DRAWING_HEADER = re.compile(r"(backends/)?im(gui|stb)\w*\.h$|imconfig\.h$|(GLFW|glad|GL|GLES\d?|EGL|KHR|X11)/")

# Bytes in, bytes out: these rooms open nothing, start nothing and print nothing.
PURE_ROOMS = {"words", "paint", "colour", "session", "notes", "bench", "paper"}
IMPURE_HEADER = re.compile(r"(fstream|iostream|filesystem|thread|mutex|condition_variable|future)$"
                           r"|(unistd|fcntl|dirent|pthread|signal|time)\.h$|(sys|emscripten)/")

LONGEST = 400

# Whose the sentences of words/<name>_says.hpp are, where that is no room of this name.
SAYS_OF = {"language": "words", **dict.fromkeys(
    ("today", "shelf", "plan", "slab", "pans", "book", "ranges", "tablet"),
    "screens"), "making": "session", "photos": "bench"}
SAYS = re.compile(r'"words/([a-z]+)_says\.hpp"')

INCLUDE = re.compile(r"\s*#\s*include\b\s*(.*)")
# What a scan over JavaScript passes by: comments, strings and regular expressions.
JS_SKIPPED = re.compile(r"//[^\n]*|/\*.*?\*/|'(?:\\.|[^'\\])*'|\"(?:\\.|[^\"\\])*\"|`(?:\\.|[^`\\])*`"
                        r"|(?<=[(,=:&|!?])\s*/(?:\\.|\[[^\]]*\]|[^/\\\n])+/", re.DOTALL)
JS_DECLARATION = re.compile(r"\b(?:const|let|var)\b")
OWN = re.compile(r'"([a-z]+)/(?:range/)?[a-z0-9_]+\.hpp"')
SYSTEM = re.compile(r"<([^>]+)>")


def reach(room):
    """The room itself and every room its links lead to."""
    found, ahead = set(), [room]
    while ahead:
        here = ahead.pop()
        if here not in found:
            found.add(here)
            ahead += LINKS[here]
    return found


def include_fault(room, written):
    """What is wrong with one include of a room, or None."""
    own = OWN.match(written)
    if own:
        if own[1] not in LINKS:
            return f"there is no room {own[1]}"
        says = SAYS.match(written)
        whose = says and SAYS_OF.get(says[1], says[1])
        if says and room != "words" and whose not in reach(room):
            return f"{room} has no link to {whose}, so it does not say what {whose} says"
        return None if own[1] in reach(room) else f"{room} has no link to {own[1]}"
    system = SYSTEM.match(written)
    if not system:
        return f'an include is written "room/file.hpp" or <header>, not {written}'
    name = system[1]
    if name.split("/")[0] in LINKS and "/" in name:
        return f'a room\'s header is written "{name}"'
    if DRAWING_HEADER.match(name) and room not in DRAWING_ROOMS:
        return f"{room} does not draw, so it cannot include <{name}>"
    if IMPURE_HEADER.match(name) and room in PURE_ROOMS:
        return f"{room} is pure, so it cannot include <{name}>"
    return None


def room_faults(root):
    """Files outside the rooms, and every forbidden include."""
    for path in sorted((root / "src").rglob("*")):
        shown = path.relative_to(root)
        if path.is_dir() or shown.name == "CMakeLists.txt" or path.suffix in (".cmake", ".md"):
            continue
        in_room = len(shown.parts) == 3 and shown.parts[1] in LINKS or shown.parts[1:3] in SUB_ROOMS
        if shown.parts[1] == "words" and (path.suffix == ".po" or shown.name == "sentences.py"):
            continue
        if in_room and path.suffix == ".js" and shown.name.startswith("browser_"):
            continue
        if not in_room or path.suffix not in (".cpp", ".hpp"):
            yield f"{shown}:1: a source is src/<room>/<file>.cpp or .hpp, or browser_<file>.js"
            continue
        for number, line in enumerate(path.read_text().splitlines(), 1):
            include = INCLUDE.match(line)
            fault = include and include_fault(shown.parts[1], include[1])
            if fault:
                yield f"{shown}:{number}: {fault}"


def build_faults(root):
    """Links that the build makes and the design does not name."""
    build = root / "src" / "CMakeLists.txt"
    for number, line in enumerate(build.read_text().splitlines(), 1):
        call = re.match(r"\s*room\(([^)]*)\)", line)
        if not call:
            continue
        room, *links = call[1].split()
        if room not in LINKS:
            yield f"src/CMakeLists.txt:{number}: there is no room {room}"
            continue
        for link in links:
            if link in LINKS and link not in LINKS[room]:
                yield f"src/CMakeLists.txt:{number}: {room} has no link to {link}"
            if re.search("imgui|glad|glfw|egl", link) and room not in DRAWING_ROOMS:
                yield f"src/CMakeLists.txt:{number}: {room} does not draw, so it cannot link {link}"


def declared_sentences(root):
    """(enum, id): where it is declared."""
    found = {}
    for path in sorted((root / "src" / "words").glob("*_says.hpp")):
        enum = None
        for number, line in enumerate(path.read_text().splitlines(), 1):
            opening = re.match(r"enum class (\w+) \{", line)
            one = re.match(r"  (\w+),", line)
            enum = opening[1] if opening else None if line.startswith("}") else enum
            if enum and one:
                found[enum, one[1]] = f"{path.relative_to(root)}:{number}"
    return found


def used_sentences(root):
    """(enum, id) of all that any code says. In a file, Say is the table it says most of."""
    found = set()
    for path in (root / "src").rglob("*.?pp"):
        if path.name.startswith("english_"):
            continue
        text = path.read_text()
        own = re.search(r"using Say = (?:words::)?(\w+);", text)
        for enum, name in re.findall(r"\b(\w*Say)::(\w+)", text):
            found.add((own[1] if own and enum == "Say" else enum, name))
    return found


def sentence_faults(root):
    used = used_sentences(root)
    for (enum, name), where in declared_sentences(root).items():
        if (enum, name) not in used:
            yield f"{where}: no code says {name}"


def size_faults(root):
    for folder in ("src", "tests"):
        paths = [p for p in (root / folder).rglob("*") if p.suffix in (".cpp", ".hpp", ".js", ".mjs")]
        for path in sorted(paths):
            shown = path.relative_to(root)
            lines = len(path.read_text().splitlines())
            if lines > LONGEST:
                yield f"{shown}:{LONGEST + 1}: {lines} lines, {LONGEST} is the most"


def patterns_declared(text):
    """Where names are taken apart in a declaration: const [a, b] = ..., for (const {a} of ...)."""
    blank = JS_SKIPPED.sub(lambda skipped: re.sub(r"[^\n]", " ", skipped[0]), text)
    for declaration in JS_DECLARATION.finditer(blank):
        depth, name_comes = 0, True
        for at in range(declaration.end(), len(blank)):
            sign = blank[at]
            if name_comes and depth == 0 and not sign.isspace():
                if sign in "[{":
                    yield at
                name_comes = False
            depth += (sign in "([{") - (sign in ")]}")
            if depth < 0 or (depth == 0 and sign == ";"):
                break
            name_comes = name_comes or (depth == 0 and sign == ",")


def page_faults(root):
    """What emscripten's remover of dead code would break: it knows a declared name, and no pattern."""
    for path in sorted((root / "src").rglob("*.js")):
        text = path.read_text()
        for at in patterns_declared(text):
            line = text.count("\n", 0, at) + 1
            yield (f"{path.relative_to(root)}:{line}: a declaration takes no names apart here; "
                   "emscripten loses them when it optimises")


def faults(root):
    root = pathlib.Path(root)
    return [*room_faults(root), *build_faults(root), *sentence_faults(root),
            *size_faults(root), *page_faults(root)]


if __name__ == "__main__":
    found = faults(sys.argv[1])
    print("\n".join(found) or "the house is in order")
    sys.exit(1 if found else 0)
