#include "paint/catalogue.hpp"
#include "paper/hand.hpp"
#include "paper/label.hpp"
#include "paper/measure.hpp"
#include "words/paper_says.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <limits>

namespace labels_test {

using namespace hand;
using Say = words::PaperSay;

namespace {

std::string made(const Batch& batch, const paper::LabelPlan& plan = {}) {
  const auto svg = paper::labels_as_svg({batch, offsets()}, plan);
  REQUIRE(svg);
  return *svg;
}

std::size_t count(const std::string& text, const std::string& part) {
  std::size_t found = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
  return found;
}

words::Sentence fault(const Batch& batch, const paper::LabelPlan& plan) {
  const auto html = paper::labels_as_html({batch, offsets()}, plan);
  return html ? words::Sentence{} : html.error().what;
}

// All the words of one label, joined as they were before they were broken.
std::string joined(const paper::SetLabel& set) {
  std::string out;
  for (const auto& line : set.lines) out += line.words;
  return out;
}

}

TEST_CASE("a label says paint, pigment, what else stays, date, batch and whom to ask") {
  const std::string line = "Weir workshop, by the old mill";
  const std::string svg = made(ordinary(), {.label = {60, 35}, .count = 1, .line = line});
  for (const char* words : {">Weir blue<", ">Cobalt blue, PB28<", ">in gum arabic<",
                            "25 Nov 2026, batch 9a04d3e1<", "safety data sheet", line.c_str()})
    CHECK_MESSAGE(has(svg, words), words);
}

TEST_CASE("how it was made stays with its maker") {
  const std::string svg = made(ordinary(), {.label = {60, 30}, .count = 1});
  for (const char* amount : {"5.6", "1:2", " g ", "water"}) CHECK_FALSE(has(svg, amount));
}

TEST_CASE(
    "care is asked for where a pigment asks for more than a mask, and where nothing is known") {
  Made ultramarine;
  Card pb29 = make::pigment("pb29", 2.35, 35);
  ultramarine.writer.card(pb29);
  ultramarine.open("Evening");
  ultramarine.put(Added{"pb29", Unit::g, 5, ""});
  bool asks = false;
  for (const auto& t : paper::label_texts({ultramarine.batch(), offsets()}))
    asks |= has(t.words, "safety data sheet");
  const auto* entry = paint::in_catalogue("pb29");
  REQUIRE(entry);
  bool has_some = false;
  for (const auto c : entry->cautions) has_some |= c != paint::Caution::dust;
  CHECK(asks == has_some);
}

TEST_CASE("a label claims nothing") {
  const std::string svg = made(ordinary());
  for (const char* claim : {"conform", "ASTM", "EN 71", "CE ", "non-toxic", "nontoxic", "safe for",
                            "approved", "certif", "lightfast"})
    CHECK_FALSE(has(svg, claim));
}

TEST_CASE("a sheet is filled where no count is named, in true millimetres") {
  const auto grid = paper::grid_of({});
  REQUIRE(grid);
  CHECK(grid->across == 5); // (210 - 16) / 38
  CHECK(grid->down == 13);  // (297 - 22) / 21
  const std::string svg = made(ordinary());
  CHECK(count(svg, ">Weir blue<") == 65);
  CHECK(has(svg, "width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\""));
  CHECK(count(svg, "width=\"38\" height=\"21\"") == 65);
  const std::string letter = made(ordinary(), {.sheet = paper::letter_size});
  CHECK(has(letter, "width=\"215.9mm\" height=\"279.4mm\""));
  CHECK(count(letter, ">Weir blue<") == 5 * 12);
}

TEST_CASE("more than a sheet holds goes on another page of HTML, and is refused as one drawing") {
  const Batch batch = ordinary();
  const auto html = paper::labels_as_html({batch, offsets()}, {.count = 66});
  REQUIRE(html);
  CHECK(count(*html, "<svg ") == 2);
  CHECK(count(*html, ">Weir blue</text>") == 66);
  const auto svg = paper::labels_as_svg({batch, offsets()}, {.count = 66});
  REQUIRE_FALSE(svg);
  CHECK(svg.error() == words::Error{Say::labels_one_page, {"65"}});
}

TEST_CASE("sizes that make no sense get words") {
  for (const char* text : {"", "x", "38", "38x", "x21", "0x0", "38x0", "nanxnan", "infx21",
                           "-38x21", "38x21x2", "1e9x21", "14.9x21", "38x7.9", "38 x21"})
    CHECK_MESSAGE(!paper::label_size(text), text);
  CHECK(paper::label_size("38x21") == paper::Size{38, 21});
  CHECK(paper::label_size("38,1x21.2") == paper::Size{38.1, 21.2});
  const Batch batch = ordinary();
  const double nan = std::numeric_limits<double>::quiet_NaN();
  for (const paper::Size size :
       {paper::Size{211, 21}, paper::Size{38, 298}, paper::Size{nan, 21}, paper::Size{38, nan},
        paper::Size{0, 0}, paper::Size{1e300, 1e300}})
    CHECK(fault(batch, {.label = size}) == Say::labels_bad_size);
}

TEST_CASE("counts that make no sense get words") {
  for (const char* text : {"", "0", "-1", "1.5", "1001", "many", "nan"})
    CHECK_MESSAGE(!paper::label_count(text), text);
  CHECK(paper::label_count("1000") == 1000);
}

TEST_CASE("long names are broken and set smaller, and nothing of them is lost") {
  for (const std::string& name :
       {std::string("The blue of the weir below the old mill in November"),
        std::string("Weirbluewithoutanyspacebetweenitslettersatall"), std::string(90, 'W'),
        std::string("kékesszürke árnyalatú ultramarin, negyedik főzet")}) {
    const auto set = paper::set_label({{name, true, false}, {"PB28", false, false}}, {}, {38, 21});
    REQUIRE_MESSAGE(set, name);
    std::string letters = name;
    letters.erase(std::remove(letters.begin(), letters.end(), ' '), letters.end());
    std::string there = joined(*set);
    there.erase(std::remove(there.begin(), there.end(), ' '), there.end());
    CHECK(there == letters + "PB28");
    for (const auto& line : set->lines) {
      CHECK(paper::width_em(line.words, line.title) * line.size <= line.room + 1e-9);
      CHECK(line.baseline < set->notes_y);
      CHECK(line.size >= 1.6);
    }
  }
}

TEST_CASE("a name that has no room at all is refused, with the size that was asked for") {
  const Batch batch = ordinary(std::string(5000, 'w'));
  const auto html = paper::labels_as_html({batch, offsets()}, {});
  REQUIRE_FALSE(html);
  CHECK(html.error().what == Say::labels_too_small);
  CHECK(html.error().args[1] == "38");
  CHECK(fault(ordinary(), {.label = {15, 8}}) == Say::labels_too_small);
}

TEST_CASE("text is broken between letters, and marks stay with theirs") {
  CHECK(paper::broken("two words", 20, false) == std::vector<std::string>{"two words"});
  CHECK(paper::broken("two  words", 4, false) == std::vector<std::string>{"two", "words"});
  CHECK(paper::broken("", 10, false).empty());
  CHECK(paper::broken("anything", 0.1, false).empty());
  for (const auto& line : paper::broken("e\u0301e\u0301e\u0301e\u0301e\u0301", 2, false))
    CHECK(line.substr(0, 1) == "e");
  CHECK(paper::shortened("short", 10) == "short");
  CHECK(paper::shortened("much too long for it", 5).back() == "…"[2]);
  CHECK(paper::width_em(paper::shortened(std::string(5000, 'm'), 20), false) <= 21.1);
}

TEST_CASE("hostile names are harmless on labels") {
  const auto folder = std::filesystem::temp_directory_path() / "slabside-labels";
  std::filesystem::create_directories(folder);
  std::size_t n = 0;
  for (const std::string& name : hostile_names()) {
    if (name.size() == 5000) continue;
    const auto html =
        paper::labels_as_html({ordinary(name), offsets()}, {.label = {60, 40}, .count = 2});
    REQUIRE(html);
    std::ofstream(folder / (std::to_string(n++) + ".html"), std::ios::binary) << *html;
  }
  const std::string reads = std::string("/usr/bin/python3 -B ") + SLABSIDE_ROOT +
                            "/tests/paper/reads_as_xml.py " + std::to_string(n) + " " +
                            folder.string();
  CHECK(std::system(reads.c_str()) == 0);
  std::filesystem::remove_all(folder);
}

}
