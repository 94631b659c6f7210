#!/usr/bin/python3
"""Whether a source includes what it uses: rooms are compiled in parts, with common headers read before
them, and so a compiler finds no include that is missing. By names alone: those of the standard library
below, and types, functions and constants that headers of a room declare. What a header includes counts
for who includes it. `alone` compiles each file by itself, and so knows for certain.

Usage: includes.py ROOT     prints each fault as file:line: words, and fails if there is one.
"""

import pathlib
import re
import sys

STANDARD = {
    "algorithm": "all_of any_of none_of find_if sort stable_sort min max clamp count_if remove_if transform "
                 "max_element min_element lower_bound upper_bound reverse rotate unique partition nth_element",
    "array": "array to_array",
    "atomic": "atomic",
    "charconv": "from_chars to_chars",
    "chrono": "chrono",
    "cmath": "abs exp log log1p expm1 pow sqrt isfinite isnan lround llround floor ceil hypot cbrt fmod",
    "condition_variable": "condition_variable",
    "cstdint": "int64_t uint64_t int32_t uint32_t uint16_t uint8_t",
    "deque": "deque",
    "filesystem": "filesystem",
    "fstream": "ifstream ofstream",
    "functional": "function greater",
    "initializer_list": "initializer_list",
    "limits": "numeric_limits",
    "map": "map multimap",
    "memory": "unique_ptr shared_ptr make_unique make_shared weak_ptr",
    "mutex": "mutex lock_guard unique_lock scoped_lock",
    "numbers": "numbers",
    "numeric": "accumulate iota reduce inner_product",
    "optional": "optional nullopt",
    "ostream": "endl",
    "set": "set multiset",
    "span": "span",
    "sstream": "ostringstream istringstream stringstream",
    "string": "string to_string getline",
    "string_view": "string_view",
    "thread": "thread this_thread",
    "tuple": "tuple tie make_tuple",
    "unordered_map": "unordered_map",
    "utility": "pair move exchange swap forward",
    "variant": "variant visit holds_alternative get_if monostate",
    "vector": "vector",
}
# Headers that the standard has bring others: those that are leant on.
BRINGS = {
    "map": "utility", "set": "utility", "optional": "utility", "variant": "utility", "vector": "initializer_list",
    "string": "string_view initializer_list", "algorithm": "utility", "functional": "utility", "memory": "utility",
    "tuple": "utility", "iostream": "ostream", "sstream": "string ostream", "fstream": "string ostream",
    "tl/expected.hpp": "utility", "nlohmann/json.hpp": "string map vector initializer_list",
    "condition_variable": "mutex", "filesystem": "string chrono", "array": "utility", "span": "array",
    "numeric": "utility", "unordered_map": "utility", "deque": "initializer_list",
}
OF_NAME = {name: header for header, names in STANDARD.items() for name in names.split()}

SKIPPED = re.compile(r"//[^\n]*|/\*.*?\*/|'(?:\\.|[^'\\\n])'|R\"(\w*)\(.*?\)\1\"|\"(?:\\.|[^\"\\\n])*\"", re.DOTALL)
INCLUDE = re.compile(r'^\s*#\s*include\s*(?:"([^"]+)"|<([^>]+)>)', re.MULTILINE)
STD = re.compile(r"\bstd::(\w+)")
# What a header declares in the namespace of its room.
TYPE = re.compile(r"^(?:template <[^\n]*>\s*)?(?:struct|class|enum class|enum|using|concept)\s+"
                  r"(?:\[\[\w+\]\]\s*)?(\w+)\b(?!\s*;)", re.MULTILINE)
FUNCTION = re.compile(r"^(?:\[\[\w+\]\] )?(?:inline |constexpr )*(?!return|using|namespace|static|struct)"
                      r"[A-Za-z][\w:<>,&* ]*[\s&*>](\w+)\(", re.MULTILINE)
CONSTANT = re.compile(r"^inline constexpr [\w:<>, ]+?\s(\w+)(?:\[\w*\])?\s*[={]", re.MULTILINE)
# Names that a file gives itself: of types, of values and of functions.
GIVEN = re.compile(r"\b(?:struct|class|enum class|enum|using|typename|concept|auto|auto&)\s+(\w+)\b(?!\s*(?:;|::))"
                   r"|(\w+|>|\])[&*]?\s+(\w+)\b(?=\s*[({=>;:,)])")
FORWARD = re.compile(r"^(?:struct|class|enum class)\s+(\w+)\s*;", re.MULTILINE)
NO_TYPE = {"return", "else", "case", "throw", "struct", "class"}
ROOMS = "words paint colour session notes bench disk studio paper screens window commands app".split()
OF_A_ROOM = re.compile(r"(?<![\w:])(" + "|".join(ROOMS) + r")::(\w+)\b")
OF_ITS_OWN = re.compile(r"(?<![\w.>:])(?:([A-Z]\w*)\b|([a-z]\w*)\()")


def given_in(text):
    return {m[1] or m[3] for m in GIVEN.finditer(text) if m[2] not in NO_TYPE}


def declared_in(text):
    return TYPE.findall(text) + FUNCTION.findall(text) + CONSTANT.findall(text)


def room_of(name):
    return name.split("/")[0]


class House:
    def __init__(self, root):
        self.text, self.own, self.system, self.headers_of = {}, {}, {}, {}
        src = pathlib.Path(root) / "src"
        for path in sorted(path for path in src.rglob("*.?pp") if path.is_file()):
            whole, name = path.read_text(errors="replace"), str(path.relative_to(src))
            self.own[name] = [own for own, _ in INCLUDE.findall(whole) if own]
            self.system[name] = {system for _, system in INCLUDE.findall(whole) if system}
            self.text[name] = SKIPPED.sub(lambda m: re.sub(r"[^\n]", " ", m[0]), whole)
        self.given = {name: given_in(text) for name, text in self.text.items()}
        for name, text in self.text.items():
            for one in declared_in(text) if name.endswith(".hpp") else ():
                self.headers_of.setdefault((room_of(name), one), set()).add(name)

    def reached(self, name):
        """The files that one includes, itself among them."""
        found, ahead = set(), [name]
        while ahead:
            here = ahead.pop()
            if here in self.own and here not in found:
                found.add(here)
                ahead += self.own[here]
        return found

    def own_header_fault(self, name, reached):
        header = name.removesuffix(".cpp") + ".hpp"
        if header in self.text and header not in reached:
            yield 0, f'its own header is "{header}"'

    def absent_faults(self, name):
        for own in self.own[name]:
            if own not in self.text:
                yield 0, f'there is no "{own}"'

    def standard_faults(self, name, reached):
        there = set().union(*(self.system[one] for one in reached))
        there |= {more for header in there for more in BRINGS.get(header, "").split()}
        for used in STD.finditer(self.text[name]):
            header = OF_NAME.get(used[1])
            if header and header not in there:
                there.add(header)
                yield used.start(), f"std::{used[1]} is of <{header}>"

    def of_a_room(self, name, reached):
        """Each name that belongs to a room: where it is used, room and name. Without its room a name may be
        a local one, or be found by what it is given."""
        for used in OF_A_ROOM.finditer(self.text[name]):
            yield used.start(), used[1], used[2]
        known = set().union(*(self.given[one] for one in reached))
        for used in OF_ITS_OWN.finditer(self.text[name]):
            one = used[1] or (used[2] if name.endswith(".cpp") else None)  # in a header that is of who uses a template
            if one and one not in known:
                yield used.start(), room_of(name), one

    def room_faults(self, name, reached):
        said = set()
        announcing = reached if name.endswith(".hpp") else {name}
        forward = set().union(*(FORWARD.findall(self.text[one]) for one in announcing))
        for at, room, one in self.of_a_room(name, reached):
            headers = self.headers_of.get((room, one), set())
            if headers and one not in said and one not in forward and not headers & reached:
                said.add(one)
                yield at, f'{one} is of "{min(headers)}"'

    def faults(self):
        if not self.text:
            yield "src: there is no source"
        for name, text in self.text.items():
            reached = self.reached(name)
            for at, words in [*self.absent_faults(name), *self.own_header_fault(name, reached),
                              *self.standard_faults(name, reached), *self.room_faults(name, reached)]:
                yield f"src/{name}:{text.count(chr(10), 0, at) + 1}: {words}, which is not included"


def faults(root):
    return list(House(root).faults())


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    found = faults(sys.argv[1])
    print("\n".join(found) or "what is used is included")
    sys.exit(1 if found else 0)
