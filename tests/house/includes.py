#!/usr/bin/python3
"""Whether a source includes what it uses: rooms are compiled in parts, with common headers read before
them, and so a compiler finds no include that is missing. By names alone: those of the standard library
below, and types and functions that one header of ours declares. What a header includes counts for who
includes it.

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

SKIPPED = re.compile(r'//[^\n]*|/\*.*?\*/|R"\(.*?\)"|"(?:\\.|[^"\\\n])*"', re.DOTALL)
INCLUDE = re.compile(r'^\s*#\s*include\s*(?:"([^"]+)"|<([^>]+)>)', re.MULTILINE)
STD = re.compile(r"\bstd::(\w+)")
# What a header declares: types, and functions of a namespace.
TYPE = re.compile(r"^(?:template <[^\n]*>\s*)?(?:struct|class|enum class|enum|using)\s+"
                  r"([A-Z]\w*)\b(?!\s*;)", re.MULTILINE)
FUNCTION = re.compile(r"^(?:inline |constexpr )*(?!return|using|namespace|static|struct)"
                      r"[A-Za-z][\w:<>,&* ]*[\s&*>]([a-z]\w+)\(", re.MULTILINE)
# Names that a file gives itself: of types, of values and of functions.
GIVEN = re.compile(r"\b(?:struct|class|enum class|enum|using|typename|concept|auto|auto&)\s+(?:\w+::)*(\w+)\b"
                   r"|(\w+|>|\])[&*]?\s+(\w+)\b(?=\s*[({=>;:,)])")
NO_TYPE = {"return", "else", "case", "throw"}
ROOMS = "words paint colour session notes bench disk studio paper screens window commands app".split()
USED = re.compile(r"(?<![\w.>:])(?:(?:" + "|".join(ROOMS) + r")::)?(?:([A-Z]\w*)\b|([a-z]\w*)\()")


def given_in(text):
    return {m[1] or m[3] for m in GIVEN.finditer(text) if m[2] not in NO_TYPE}


class House:
    def __init__(self, root):
        self.text, self.own, self.system, self.header_of = {}, {}, {}, {}
        src = pathlib.Path(root) / "src"
        for path in sorted(src.rglob("*.?pp")):
            whole, name = path.read_text(), str(path.relative_to(src))
            self.own[name] = [own for own, _ in INCLUDE.findall(whole) if own]
            self.system[name] = {system for _, system in INCLUDE.findall(whole) if system}
            self.text[name] = SKIPPED.sub(lambda m: re.sub(r"[^\n]", " ", m[0]), whole)
        self.given = {name: given_in(text) for name, text in self.text.items()}
        for name, text in self.text.items():
            for one in (TYPE.findall(text) + FUNCTION.findall(text)) if name.endswith(".hpp") else ():
                self.header_of.setdefault(one, set()).add(name)

    def reached(self, name):
        """The files that one includes, itself among them."""
        found, ahead = set(), [name]
        while ahead:
            here = ahead.pop()
            if here in self.own and here not in found:
                found.add(here)
                ahead += self.own[here]
        return found

    def standard_faults(self, name, reached):
        there = set().union(*(self.system[one] for one in reached))
        there |= {more for header in there for more in BRINGS.get(header, "").split()}
        for used in STD.finditer(self.text[name]):
            header = OF_NAME.get(used[1])
            if header and header not in there:
                there.add(header)
                yield used.start(), f"std::{used[1]} is of <{header}>"

    def own_faults(self, name, reached):
        known = set().union(*(self.given[one] for one in reached))
        for used in USED.finditer(self.text[name]):
            one = used[1] or used[2]
            headers = self.header_of.get(one, ())
            if len(headers) == 1 and one not in known:
                known.add(one)
                yield used.start(), f'{one} is of "{next(iter(headers))}"'

    def faults(self):
        for name, text in self.text.items():
            reached = self.reached(name)
            for at, words in [*self.standard_faults(name, reached), *self.own_faults(name, reached)]:
                yield f"src/{name}:{text.count(chr(10), 0, at) + 1}: {words}, which is not included"


def faults(root):
    return list(House(root).faults())


if __name__ == "__main__":
    found = faults(sys.argv[1])
    print("\n".join(found) or "what is used is included")
    sys.exit(1 if found else 0)
