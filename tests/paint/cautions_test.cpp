// What a pigment asks for, how that is said, and by which names it is found.
#include "paint/catalogue.hpp"
#include "words/lists.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace cautions_test {

using paint::Caution;
using Say = words::PaintSay;

namespace {

std::size_t letters(const std::string& text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

auto times(const std::vector<words::Sentence>& said, words::Sentence sentence) {
  return std::count(said.begin(), said.end(), sentence);
}

}

TEST_CASE("titanium dioxide, quartz, cadmium and soot name cancer by breathing, and IARC's group") {
  for (const auto& [caution, group] : {std::pair{Caution::titanium, "IARC 2B"},
                                       {Caution::fine_black, "IARC 2B"},
                                       {Caution::silica, "IARC 1)"},
                                       {Caution::cadmium, "IARC 1)"}}) {
    const std::string said = words::say(paint::sentence(caution));
    CAPTURE(said);
    for (const char* part : {"cancer", "breathed", group})
      CHECK(said.find(part) != std::string::npos);
  }
}

TEST_CASE("every caution has a word, and every one but not_known can be chosen") {
  std::set<Caution> offered;
  for (const Caution c : paint::cautions_to_choose()) offered.insert(c);
  for (const Caution c : words::all_of<Caution>) {
    CHECK(paint::caution_named(paint::name_of(c)) == c);
    CHECK(offered.count(c) == (c != Caution::not_known));
  }
  CHECK(offered.size() == paint::cautions_to_choose().size());
  CHECK_FALSE(paint::caution_named("dragons"));
}

TEST_CASE("what a pigment asks for: the catalogue's, its card's, or that nobody knows") {
  using C = std::vector<Caution>;
  CHECK(paint::cautions_of("pr108", {}) == C{Caution::dust, Caution::cadmium, Caution::no_drain});
  CHECK(paint::cautions_of("pb29", {"lead", "dust"}) ==
        C{Caution::dust, Caution::no_acid_sulfide, Caution::lead});
  CHECK(paint::cautions_of("found_in_a_drawer", {}) == C{Caution::not_known});
  CHECK(paint::cautions_of("found_in_a_drawer", {"dust"}) == C{Caution::dust});
  // Of a later program's words nothing is known here.
  CHECK(paint::cautions_of("a", {"cobalt", "thallium"}) == C{Caution::cobalt, Caution::not_known});
}

TEST_CASE(
    "the mask and the supplier's sheet come first, each sentence once, gloves for the unknown") {
  const auto said = paint::cautions_for(
      {paint::cautions_of("pb28", {}), paint::cautions_of("pb36", {}), {Caution::not_known}});
  REQUIRE(said.size() > 2);
  CHECK(said[0] == Say::care_mask);
  CHECK(said[1] == Say::care_sheet_first);
  CHECK(std::set<words::Sentence>(said.begin(), said.end()).size() == said.size());
  CHECK(times(said, Say::caution_cobalt) == 1);
  CHECK(times(said, Say::caution_not_known) == 1);
  CHECK(words::say(Say::caution_not_known).find("Gloves") != std::string::npos);
  CHECK(times(said, Say::care_gloves) == 0);
  const auto none = paint::cautions_for({});
  CHECK(times(none, Say::care_gloves) == 1);
  std::string all;
  for (const words::Sentence s : said) all += words::say(s);
  CHECK(all.find("No draught") != std::string::npos);
  CHECK(all.find("air moving") == std::string::npos);
}

TEST_CASE("a pigment goes by its names, its Colour Index name and what else it is called") {
  const auto found = [](const char* wanted) {
    std::set<std::string> ids;
    for (const auto& p : paint::catalogue())
      if (paint::goes_by(p.id, p.name, p.ci_name, wanted)) ids.insert(p.id);
    return ids;
  };
  CHECK(found("").size() == paint::catalogue().size());
  CHECK(found("  ").size() == paint::catalogue().size());
  for (const char* wanted : {"PB27", "pb 27", "Pigment Blue 27", "pigment blue 27", "p.b. 27",
                             "Iron Blue", "iron-blue", "prussian"}) {
    CAPTURE(wanted);
    CHECK(found(wanted) == std::set<std::string>{"pb27"});
  }
  CHECK(found("terre verte") == std::set<std::string>{"pg23"});
  CHECK(found("ivory black") == std::set<std::string>{"pbk9"});
  CHECK(found("pigment black 7") == std::set<std::string>{"pbk7"});
  CHECK(found("PB 15:1") == std::set<std::string>{"pb15_1"});
  CHECK(found("natural ultramarine") == std::set<std::string>{"pb29_lapis"});
  CHECK(found("unobtainium").empty());
  CHECK(paint::goes_by("my_red", "Kiln red", "PR101", "pigment red 101"));
  CHECK_FALSE(paint::goes_by("my_red", "Kiln red", "", "pigment"));
}

// 70 characters: what one line holds at arm's length, own choice.
TEST_CASE("each caution is one short sentence of its own") {
  std::set<words::Sentence> sentences;
  for (const Caution c : words::all_of<Caution>) sentences.insert(paint::sentence(c));
  CHECK(sentences.size() == words::count_of<Caution>);
  CHECK(sentences.count(words::Sentence{}) == 0);
  sentences.insert(paint::general_care().begin(), paint::general_care().end());
  for (words::Sentence id : sentences) {
    const std::string text = words::say(id);
    CAPTURE(text);
    CHECK(letters(text) > 20);
    CHECK(letters(text) <= 70);
  }
}

}
