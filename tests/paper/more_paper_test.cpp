// Several batches on one page, jars of binder, the list of paints, cards to paint on.
#include "colour/card.hpp"
#include "paper/blank_card.hpp"
#include "paper/hand.hpp"
#include "paper/label.hpp"
#include "paper/paint_list.hpp"
#include "paper/sheet.hpp"
#include "words/paper_says.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace more_paper_test {

using namespace hand;
using Say = words::PaperSay;

namespace {

std::size_t count(const std::string& text, const std::string& part) {
  std::size_t found = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
  return found;
}

Card binder(const std::string& name) {
  Card card = make::liquid("gum_12", CardKind::binder, {.gum = 1, .water = 2, .honey = 0.4});
  card.name = name;
  card.lot = "jar 7";
  card.made_on = "2026-11-25";
  card.keep_until = "2027-02-25";
  return card;
}

std::vector<paper::ListedPaint> paints(const std::string& name) {
  const Batch batch = ordinary(name);
  paper::ListedPaint read{name, paper::pigments_of(batch), 0x2e4f9a, true, batch.id, "25 Nov 2026"};
  paper::ListedPaint guessed = read;
  read.jar_mL = 6.3;
  read.pans = 12;
  guessed.swatch = false;
  guessed.batch = "0123456789ab";
  return {read, guessed};
}

}

TEST_CASE("several sheets are pages of one file and share no id") {
  const Batch one = ordinary("Weir blue"), other = ordinary("Ferry sky");
  const std::string html = paper::sheets({{one, offsets()}, {other, offsets()}});
  CHECK(count(html, "<h1") == 2);
  CHECK(count(html, "class=\"sheet\"") == 2);
  CHECK(count(html, "id=\"trail-1-1\"") == 1);
  CHECK(count(html, "id=\"trail-2-1\"") == 1);
}

TEST_CASE("labels of several batches follow one another on the same sheets") {
  const Batch one = ordinary("Weir blue"), other = ordinary("Ferry sky");
  const auto html =
      paper::labels_as_html({{{one, offsets()}, 60}, {{other, offsets()}, 10}}, paper::LabelPlan{});
  REQUIRE(html);
  CHECK(count(*html, ">Weir blue</text>") == 60);
  CHECK(count(*html, ">Ferry sky</text>") == 10);
  CHECK(count(*html, "<svg ") == 2); // 65 a sheet
  const auto many = paper::labels_as_html({{{one, offsets()}, 600}, {{other, offsets()}, 600}},
                                          paper::LabelPlan{});
  REQUIRE_FALSE(many);
  CHECK(many.error() == words::Error{Say::labels_too_many, {"1200", "1000"}});
}

TEST_CASE("a label that is refused says why before whose it is") {
  const auto html = paper::labels_as_html({ordinary(std::string(5000, 'w')), offsets()}, {});
  REQUIRE_FALSE(html);
  CHECK(words::message(html.error()).rfind("Too many words for a label of 38", 0) == 0);
}

TEST_CASE("a jar of binder says what is in it, from when and until when") {
  const paper::LabelPlan plan{.label = paper::jar_label, .count = 3};
  const auto html = paper::binder_labels_as_html(binder("Gum 1:2"), 6, plan);
  REQUIRE(html);
  for (const char* words :
       {">Gum 1:2, jar 7<", ">5 gum, 10 water, 2 honey<", ">preservative: 6 drops<",
        ">made 25 Nov 2026<", ">keep cold, until 25 Feb 2027<", "smells"})
    CHECK_MESSAGE(has(*html, words), words);
  CHECK(count(*html, ">Gum 1:2, jar 7</text>") == 3);
  const auto weighed = paper::binder_labels_as_html(binder("Gum 1:2"), 0, plan);
  REQUIRE(weighed);
  CHECK(has(*weighed, ">preservative: not said<"));
  Card bare = binder("Bought gum");
  bare.facts = LiquidCard{CardKind::binder, {}};
  bare.lot = bare.made_on = bare.keep_until = "";
  const auto little = paper::binder_labels_as_html(bare, 0, {});
  REQUIRE(little);
  CHECK_FALSE(has(*little, " water"));
  CHECK_FALSE(has(*little, "preservative"));
  CHECK_FALSE(has(*little, "until"));
}

TEST_CASE("a jar's label is set as large as it has room for") {
  const auto least = [](const paper::Size& label) {
    const auto set = paper::set_label(paper::binder_texts(binder("Gum 1:2"), 6), {}, label, 3);
    REQUIRE(set);
    double out = 100;
    for (const auto& line : set->lines) out = std::min(out, line.size);
    return out;
  };
  CHECK(least(paper::jar_label) > 2.6); // 7.4 point
  CHECK(least({90, 60}) > 1.4 * least(paper::jar_label));
}

TEST_CASE("the list of paints has each with its colour, number and what is left") {
  const std::string html = paper::paint_list(paints("Weir blue"), "28 Nov 2026");
  CHECK(count(html, "<h2") == 2);
  for (const char* words :
       {"Paints on 28 Nov 2026, by hue and lightness: 2", "Cobalt blue, PB28", "#2e4f9a",
        "6.3 mL in the jar, 12 pans", "batch 9a04d3e1", "batch 01234567", "none left", "a guess"})
    CHECK_MESSAGE(has(html, words), words);
}

TEST_CASE("a swatch card has its greys, its scale and its batch, to the millimetre") {
  const Batch batch = ordinary();
  const std::string html = paper::swatch_cards({{batch, offsets()}}, paper::a4);
  CHECK(has(html, "width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\""));
  for (const char* words : {">Weir blue<", ">Cobalt blue, PB28<", "batch 9a04d3e1", "#777777",
                            "#bbbbbb", "sRGB 119", "sRGB 187", ">50 mm<"})
    CHECK_MESSAGE(has(html, words), words);
  const colour::CardPlaces& p = colour::card_places;
  for (const colour::Place& r : {p.paint, p.white, p.light, p.dark}) {
    CHECK(r.x >= 0);
    CHECK(r.x + r.w <= p.w);
    CHECK(r.y + r.h <= p.scale_y);
  }
  const std::vector<paper::Handed> nine(9, paper::Handed{batch, offsets()});
  CHECK(count(paper::swatch_cards(nine, paper::a4), "<svg ") == 2);
  CHECK(count(paper::swatch_cards(nine, paper::letter_size), "<svg ") == 2);
}

TEST_CASE("hostile names are harmless on all of them") {
  const auto folder = std::filesystem::temp_directory_path() / "slabside-more-paper";
  std::filesystem::create_directories(folder);
  std::size_t n = 0;
  const auto keep = [&](const std::string& html) {
    std::ofstream(folder / (std::to_string(n++) + ".html"), std::ios::binary) << html;
  };
  for (const std::string& name : hostile_names()) {
    const Batch batch = ordinary(name);
    keep(paper::sheets({{batch, offsets()}, {batch, offsets()}}));
    keep(paper::paint_list(paints(name), name));
    keep(paper::swatch_cards({{batch, offsets()}}, paper::a4));
    if (name.size() == 5000) continue;
    const auto label =
        paper::binder_labels_as_html(binder(name), 6, {.label = {60, 40}, .count = 2});
    REQUIRE(label);
    keep(*label);
  }
  const std::string reads = std::string("/usr/bin/python3 -B ") + SLABSIDE_ROOT +
                            "/tests/paper/reads_as_xml.py " + std::to_string(n) + " " +
                            folder.string();
  CHECK(std::system(reads.c_str()) == 0);
  std::filesystem::remove_all(folder);
}

}
