#!/usr/bin/python3
"""Proof that house.py and includes.py find what they are for: small bad houses, each with one fault."""

import pathlib
import subprocess
import sys
import tempfile
import unittest

import house
import includes

BUILD = "src/CMakeLists.txt"
GOOD = {
    BUILD: "room(words tl::expected)\nroom(paint words)\nroom(window third_party::imgui glfw)\n",
    "src/words/say.hpp": "#include <string>\n",
    "src/paint/flow.hpp": '#include "words/say.hpp"\n#include <cmath>\n',
    "src/bench/step.cpp": '#include "bench/step.hpp"\n  #  include "words/say.hpp" // far reach\n',
    "src/studio/keep.cpp": '#include "disk/disk.hpp"\n#include <filesystem>\n',
    "src/screens/slab.cpp": '#include "bench/step.hpp"\n#include <imgui.h>\n',
    "src/window/window.cpp": "#include <GLFW/glfw3.h>\n#include <glad/gl.h>\n",
    "src/app/main.cpp": '#include "window/window.hpp"\n#include "studio/keep.hpp"\n',
    "src/disk/browser_store.js": "const all = [[1, 2]], text = 'const [a]'; // const [a]\n"
                                 "for (const each of [[1], [2]]) f({each}, /let [a]/);\n"
                                 "let one = each[0], two = {let: 3};\n[one, two] = [two, one];\n",
    "src/words/paint_says.hpp": "enum class PaintSay {\n  // of flow\n  loose, // 0: mL\n  stiff,\n};\n",
    "src/words/english_paint.cpp": "using Say = PaintSay;\nSay::loose, Say::stiff, Say::neither\n",
    "src/paint/say_flow.cpp": "using Say = words::PaintSay;\nSay::loose\n",
    "src/app/say_flow.cpp": "words::PaintSay::stiff\n",
    "tests/paint/flow.cpp": "// a line\n" * 400,
}


def found_in(files, checker):
    with tempfile.TemporaryDirectory() as root:
        for name, text in files.items():
            path = pathlib.Path(root, name)
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text)
        return checker.faults(root)


def faults_of(changes):
    return found_in({**GOOD, **changes}, house)


def includes_of(files):
    return found_in(files, includes)


class Proof(unittest.TestCase):
    def bad(self, name, text, words):
        """The house with this one file changed has exactly one fault, in that file."""
        found = faults_of({name: text})
        self.assertEqual(len(found), 1, found)
        self.assertIn(words, found[0])
        self.assertTrue(found[0].startswith(name + ":"), found[0])

    def test_a_good_house_has_no_fault(self):
        self.assertEqual(faults_of({}), [])

    def test_every_forbidden_link_is_found(self):
        for room in house.LINKS:
            for other in set(house.LINKS) - house.reach(room):
                with self.subTest(room=room, other=other):
                    self.bad(f"src/{room}/x.cpp", f'#include "{other}/y.hpp"\n',
                             f"{room} has no link to {other}")

    def test_links_of_the_design(self):
        # Written out from the design's sentence a second time, so that a slip in the table shows.
        self.assertEqual(house.reach("notes"), {"notes", "session", "paint", "words"})
        self.assertEqual(house.reach("bench"), {"bench", "session", "paint", "words", "colour"})
        self.assertEqual(house.reach("studio"), {"studio", "disk", "colour", "session", "paint",
                                                 "words"})
        self.assertEqual(house.reach("paper"), {"paper", "session", "paint", "words", "colour"})
        self.assertEqual(house.reach("screens"), {"screens", "bench", "session", "paint", "words",
                                                  "colour"})
        self.assertEqual(house.reach("commands"), {"commands", "bench", "notes", "studio", "paper",
                                                   "disk", "colour", "session", "paint", "words"})
        for alone in ("words", "colour", "disk", "window"):
            self.assertEqual(house.reach(alone), {alone})
        self.assertEqual(house.reach("app"), set(house.LINKS))

    def test_drawing_headers_only_where_drawing_is(self):
        for header in ("imgui.h", "imgui_internal.h", "backends/imgui_impl_glfw.h",
                       "imgui_impl_opengl3.h", "GLFW/glfw3.h", "glad/gl.h", "GL/gl.h",
                       "GLES3/gl3.h", "EGL/egl.h"):
            for room in sorted(set(house.LINKS) - house.DRAWING_ROOMS):
                with self.subTest(header=header, room=room):
                    self.bad(f"src/{room}/x.hpp", f"#include <{header}>\n", "does not draw")

    def test_pure_rooms_touch_nothing(self):
        for header in ("fstream", "filesystem", "thread", "unistd.h", "sys/stat.h"):
            with self.subTest(header=header):
                self.bad("src/session/x.cpp", f"#include <{header}>\n", "is pure")

    def test_how_an_include_is_written(self):
        for written in ('"flow.hpp"', '"../words/say.hpp"', '"words/say.h"', '"words/in/say.hpp"',
                        '"imgui.h"', "HEADER"):
            with self.subTest(written=written):
                self.bad("src/paint/x.cpp", f"#include {written}\n", "an include is written")
        self.bad("src/paint/x.cpp", "#include <words/say.hpp>\n", "a room's header is written")
        self.bad("src/paint/x.cpp", '#include "attic/say.hpp"\n', "there is no room attic")

    def test_the_line_is_named(self):
        found = faults_of({"src/words/x.cpp": '\n\n#include "paint/flow.hpp"\n'})
        self.assertEqual(found, ["src/words/x.cpp:3: words has no link to paint"])

    def test_a_source_lives_in_a_room(self):
        for name in ("src/x.cpp", "src/attic/x.cpp", "src/paint/in/x.cpp", "src/paint/x.h",
                     "src/disk/x.js", "src/browser_x.js"):
            with self.subTest(name=name):
                self.bad(name, "", "a source is")

    def test_what_the_build_links(self):
        self.bad(BUILD, "room(paint words disk)\n", "paint has no link to disk")
        self.bad(BUILD, "  room(bench third_party::imgui)\n", "bench does not draw")
        self.bad(BUILD, "room(attic words)\n", "there is no room attic")

    def test_every_sentence_is_said(self):
        self.bad("src/words/paint_says.hpp", "enum class PaintSay {\n  loose,\n  stiff,\n  dry,\n};\n",
                 "paint_says.hpp:4: no code says dry")
        self.bad("src/words/slab_says.hpp", "enum class SlabSay {\n  loose,\n};\n",
                 "no code says loose")

    def test_whose_sentences_a_room_says(self):
        self.bad("src/paint/x.cpp", '#include "words/session_says.hpp"\n',
                 "paint has no link to session, so it does not say")
        self.bad("src/bench/x.cpp", '#include "words/plan_says.hpp"\n', "bench has no link to screens")
        self.assertEqual(faults_of({"src/app/x.cpp": '#include "words/plan_says.hpp"\n'}), [])
        self.assertEqual(faults_of({"src/words/x.cpp": '#include "words/app_says.hpp"\n'}), [])

    def test_size(self):
        self.bad("src/paint/x.cpp", "\n" * 401, "401 lines")
        self.bad("tests/paint/x.cpp", "\n" * 401, "401 lines")

    def test_a_declaration_takes_no_names_apart(self):
        for text in ("for (const [a, b] of all) f(a);", "const {a} = b;", "let a = f(1, 2), [b] = c;",
                     "var\n  {a} = b", "x = () => { const [a] = 'it\\'s'; }"):
            with self.subTest(text=text):
                self.bad("src/window/browser_x.js", text + "\n", "a declaration takes no names apart")
        found = faults_of({"src/window/browser_x.js": "/* const [a]\n*/ const a = 1;\nconst [b] = c;\n"})
        self.assertIn("browser_x.js:3:", found[0])

    def test_what_is_used_is_included(self):
        flow = "#include <vector>\nstruct Flow {};\nFlow flow_of(int drops);\n"
        for text, words in (
                ("std::vector<int> x;\n", "std::vector is of <vector>"),
                ("void f() {\n  Flow x;\n}\n", 'Flow is of "paint/flow.hpp"'),
                ("void f() {\n  return flow_of(1);\n}\n", 'flow_of is of "paint/flow.hpp"'),
                ("void f() {\n  paint::flow_of(1);\n}\n", 'flow_of is of "paint/flow.hpp"')):
            with self.subTest(text=text):
                found = includes_of({"src/paint/flow.hpp": flow, "src/paint/x.cpp": text})
                self.assertEqual(len(found), 1, found)
                self.assertIn(words, found[0])
                for included in ('#include "paint/flow.hpp"\n', '#include "paint/y.hpp"\n'):
                    self.assertEqual(includes_of({"src/paint/flow.hpp": flow, "src/paint/x.cpp": included + text,
                                                  "src/paint/y.hpp": '#include "paint/flow.hpp"\n'}), [])

    def test_an_include_of_nothing_and_a_missing_own_header(self):
        flow = "struct Flow {};\ninline constexpr double most_flow = 9;\n"
        for text, words in (
                ('#include "paint/far.hpp"\n', 'there is no "paint/far.hpp"'),
                ("using paint::Flow;\n", 'Flow is of "paint/flow.hpp"'),
                ("double f(double most_flow) {\n  return paint::most_flow;\n}\n", 'most_flow is of "paint/flow.hpp"')):
            with self.subTest(text=text):
                found = includes_of({"src/paint/flow.hpp": flow, "src/bench/x.cpp": text})
                self.assertEqual(len(found), 1, found)
                self.assertIn(words, found[0])
        self.assertIn("its own header", includes_of({"src/paint/flow.hpp": flow, "src/paint/flow.cpp": "\n"})[0])
        self.assertEqual(len(includes_of({"src/paint/x.txt": ""})), 1)

    def test_what_a_file_names_itself_needs_no_include(self):
        flow = "struct Flow {};\nFlow flow_of(int drops);\n"
        for text in ("// Flow\nconst char* x = \"Flow\";\n", "struct Flow {};\nFlow x;\n", "void f() {\n  x.flow_of(1);\n}\n",
                     "void f() {\n  const auto flow_of = g;\n  flow_of(1);\n}\n", "struct Flow;\nvoid f(Flow& x);\n",
                     "char q = '\"';\nauto x = \"Flow\";\n", 'auto x = R"y(" Flow )y";\n', ""):
            with self.subTest(text=text):
                self.assertEqual(includes_of({"src/paint/flow.hpp": flow, "src/paint/x.cpp": text}), [])

    def test_the_program_fails_on_a_bad_house(self):
        checker = [sys.executable, house.__file__]
        with tempfile.TemporaryDirectory() as root:
            pathlib.Path(root, "src").mkdir()
            pathlib.Path(root, BUILD).write_text("room(words)\n")
            self.assertEqual(subprocess.run([*checker, root], capture_output=True).returncode, 0)
            pathlib.Path(root, BUILD).write_text("room(words paint)\n")
            self.assertEqual(subprocess.run([*checker, root], capture_output=True).returncode, 1)


if __name__ == "__main__":
    unittest.main()
