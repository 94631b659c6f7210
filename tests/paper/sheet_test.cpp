#include "paper/hand.hpp"
#include "paper/label.hpp"
#include "paper/sheet.hpp"
#include "paper/timeline.hpp"
#include "paper/trail.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace sheet_test {

using namespace hand;

namespace {

std::string sheet_of(const Batch& batch) { return paper::sheet({batch, offsets()}); }

std::size_t count(const std::string& text, const std::string& part) {
  std::size_t found = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
  return found;
}

}

TEST_CASE("the sheet says what the paint is, what went in and how it was made") {
  const std::string html = sheet_of(ordinary());
  for (const char* words :
       {"Weir blue", "Cobalt blue, PB28", "25 Nov 2026, 15:32", "batch 9a04d3e1c26f", "closed",
        "what went in", "Gum 1:2", "weighed + 20 drops", "12.0 g", "19.5 °C, 47 %", "knife",
        "pass 1", "3:20", "too sticky", "few specks", "gathered", "liquid to pigment, by volume"})
    CHECK_MESSAGE(has(html, words), words);
}

// 6 g weighed and 20 drops: 0.05 mL of water each, for gum of 55 mN/m by Tate's law with the
// correction of Harkins and Brown 0.0365 g (the format page's example): 6.73 g on 12 g is 5.61 to
// 10 g. Its uncertainty, 0.03 from two readings of a scale of 0.1 g and from the drops, leaves two
// decimals at most.
TEST_CASE("the ratio stands there with the digits it bears") {
  const Batch batch = ordinary();
  REQUIRE(batch.standing.binder_ratio);
  CHECK(batch.standing.binder_ratio->value == doctest::Approx(5.61).epsilon(0.002));
  CHECK(has(sheet_of(batch), "<b>5.6"));
}

TEST_CASE("additions are told together until something else is told") {
  std::vector<std::string> words;
  for (const paper::TimelineItem& t : paper::timeline(ordinary())) words.push_back(t.words);
  CHECK(words == std::vector<std::string>{"Cobalt blue 12.0 g", "Gum 1:2 6.0 g", "too sticky",
                                          "Gum 1:2 12 drops", "Gum 1:2 8 drops", "right",
                                          "few specks", "gathered"});
}

TEST_CASE("what was withdrawn is not on the sheet") {
  Made made;
  made.open("Weir blue");
  made.work();
  const Ref gummy = made.put(Trouble{TroubleKind::gummy});
  CHECK(has(sheet_of(made.batch()), "gummy"));
  made.put(Withdrawn{gummy});
  CHECK_FALSE(has(sheet_of(made.batch()), "gummy"));
}

TEST_CASE("cautions are those of the pigment, then those of every batch") {
  const std::string html = sheet_of(ordinary());
  CHECK(has(html, "Cobalt: gloves on"));
  CHECK(has(html, "mask on"));
  CHECK(has(html, "safety data sheet and local rules come first"));
  CHECK_FALSE(has(html, "Cadmium"));
}

TEST_CASE("of a pigment that is in no catalogue that is said") {
  Made made;
  Card own = make::pigment("own_earth", 3, 30);
  own.name = "Earth from the quarry";
  made.writer.card(own);
  made.open("Quarry");
  made.put(Added{"own_earth", Unit::g, 10, ""});
  const std::string html = sheet_of(made.batch());
  CHECK(has(html, "Earth from the quarry: not in the catalogue"));
  CHECK(has(html, "treat as toxic. Gloves on"));
}

TEST_CASE("what its maker chose for a pigment stands on the sheet and asks for care on the label") {
  Made made;
  Card own = make::pigment("own_white", 6.7, 10);
  own.name = "White of the attic";
  std::get<PigmentCard>(own.facts).cautions = {"lead"};
  made.writer.card(own);
  made.open("Attic");
  made.put(Added{"own_white", Unit::g, 10, ""});
  const std::string html = sheet_of(made.batch());
  CHECK(has(html, "Lead: gloves"));
  CHECK_FALSE(has(html, "treat as toxic"));
  CHECK_FALSE(has(html, "not in the catalogue"));
  const auto cares = [](const Batch& batch) {
    bool says = false;
    for (const auto& t : paper::label_texts({batch, offsets()}))
      says |= has(t.words, "safety data sheet");
    return says;
  };
  CHECK(cares(made.batch()));
  Made harmless;
  std::get<PigmentCard>(own.facts).cautions = {"dust"};
  harmless.writer.card(own);
  harmless.open("Attic");
  harmless.put(Added{"own_white", Unit::g, 10, ""});
  CHECK_FALSE(cares(harmless.batch()));
}

TEST_CASE("what could not be read is said on the sheet") {
  Made made;
  made.open("Weir blue");
  made.work();
  made.put(Added{"moon", Unit::g, 3, ""});
  CHECK(has(sheet_of(made.batch()), "no session says what that is"));
  CHECK_FALSE(has(sheet_of(ordinary()), "could be read"));
  made.writer.log.damaged = true;
  CHECK(has(sheet_of(made.batch()), "A file of this batch is damaged"));
}

TEST_CASE("a batch of a newer format is listed as measured, and not summed") {
  Made made;
  made.open("Weir blue");
  made.work();
  made.writer.log.future = true;
  const std::string html = sheet_of(made.batch());
  CHECK(has(html, "shown, not summed"));
  CHECK(has(html, "weighed + 20 drops"));
  CHECK(has(html, "<b>–</b>"));
}

TEST_CASE("pans, verdicts and notes stand there with their days") {
  Made made;
  made.open("Weir blue");
  made.put(LaidOut{make::pan("half_pan", 2)});
  made.work();
  made.put(Poured{1, 3, "half_pan", std::nullopt});
  made.writer.wait(86400);
  made.put(Verdict{Became::cracked, 2});
  const Ref note = made.put(Noted{"colder than the last one"});
  const std::string html = sheet_of(made.batch());
  for (const char* words :
       {"pans 1 to 3 poured, half pan", "26 Nov, 15:36",
        "pan 2: cracked, 1 day after the last pour", "colder than the last one"})
    CHECK_MESSAGE(has(html, words), words);
  made.put(Withdrawn{note});
  CHECK_FALSE(has(sheet_of(made.batch()), "colder"));
  CHECK_FALSE(has(sheet_of(ordinary()), "pans and notes"));
}

TEST_CASE("an empty batch has a sheet") {
  Made made;
  made.open("Nothing yet");
  const std::string html = sheet_of(made.batch());
  CHECK(has(html, "no pass timed"));
  CHECK(has(html, "The trail begins once"));
}

TEST_CASE("a zone that no session tells is said") {
  const Batch batch = ordinary();
  const std::string html = paper::sheet({batch, {}});
  CHECK(has(html, "times in UTC"));
  CHECK(has(html, "14:32"));
}

TEST_CASE("notes beyond the height of a page are listed under the trail, none is left out") {
  Made made;
  made.open("Weir blue");
  made.put(Added{"pb28", Unit::g, 12, ""});
  for (int i = 0; i < 120; ++i) {
    made.writer.wait(20);
    made.put(Added{"gum_12", Unit::drops, 1, "dropper"});
    made.put(Felt{Feel::too_sticky, By::knife});
  }
  const Batch batch = made.batch();
  const paper::Trail drawn = paper::trail({batch, offsets()});
  CHECK(drawn.left.size() > 100);
  // Two words of it are the band's caption and the end of the scale.
  CHECK(count(sheet_of(batch), ">too sticky<") >= 120);
}

TEST_CASE("told things keep their order, their distance, and the page") {
  CHECK(paper::spread({10, 10, 10}, 4, 0, 100) == std::vector<double>{10, 14, 18});
  CHECK(paper::spread({10, 50, 99, 99}, 4, 0, 100) == std::vector<double>{10, 50, 96, 100});
  CHECK(paper::spread({}, 4, 0, 100).empty());
  const auto crowded = paper::spread(std::vector<double>(30, 50), 4, 0, 100); // room for 26
  CHECK(crowded.front() == 0);
  for (std::size_t i = 1; i < crowded.size(); ++i) CHECK(crowded[i] - crowded[i - 1] >= 4);
}

TEST_CASE("hostile names are harmless to an XML parser and to a browser") {
  const auto folder = std::filesystem::temp_directory_path() / "slabside-sheets";
  std::filesystem::create_directories(folder);
  std::size_t n = 0;
  for (const std::string& name : hostile_names()) {
    Made made;
    Card odd = make::liquid("odd", CardKind::binder, {.gum = 1, .water = 2});
    odd.name = name;
    made.writer.card(odd);
    made.open(name);
    made.work();
    made.put(Added{"odd", Unit::g, 1, ""});
    std::ofstream(folder / (std::to_string(n++) + ".html"), std::ios::binary)
        << sheet_of(made.batch());
  }
  const std::string reads = std::string("/usr/bin/python3 -B ") + SLABSIDE_ROOT +
                            "/tests/paper/reads_as_xml.py " + std::to_string(n) + " " +
                            folder.string();
  CHECK(std::system(reads.c_str()) == 0);
  std::filesystem::remove_all(folder);
}

TEST_CASE("photos stand on the sheet where they are wanted, the last of each kind") {
  Batch batch;
  batch.name = "Blue";
  const auto kept = [&](char digit, PhotoOf of, bool withdrawn) {
    Entry e;
    e.event = Photo{std::string(64, digit), "jpg", of};
    e.withdrawn = withdrawn;
    batch.entries.push_back(e);
  };
  kept('a', PhotoOf::swatch, false);
  kept('b', PhotoOf::swatch, false);
  kept('c', PhotoOf::dot, true);
  CHECK(sheet_of(batch).find("<img") == std::string::npos);
  const Offsets none;
  paper::Handed handed{batch, none};
  handed.with_photos = true;
  const std::string html = paper::sheet(handed);
  CHECK(html.find("photos/" + std::string(64, 'b') + ".jpg") != std::string::npos);
  for (const char gone : {'a', 'c'}) CHECK(html.find(std::string(64, gone)) == std::string::npos);
}

}
