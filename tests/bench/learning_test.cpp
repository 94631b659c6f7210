// How a bench learns while it works: no thread is needed to see it.
#include "bench/ranges.hpp"
#include "studying.hpp"
#include "words/bench_says.hpp"
#include "words/paint_says.hpp"
#include "words/studio_says.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace learning_test {

using namespace bench;
using hands::Hands;
using studying::study_all;

namespace {

void batch_of_cobalt(Hands& h) {
  h.tap("plan");
  h.begin();
  h.tap("add pb28");
  h.type("12");
  for (int drops = 0; drops < 60; ++drops) h.tap("add gum_12");
  h.tap("felt too_sticky");
  for (int drops = 0; drops < 40; ++drops) h.tap("add gum_12");
  h.tap("felt right");
  for (int drops = 0; drops < 40; ++drops) h.tap("add gum_12");
  h.tap("felt too_loose");
  for (int passes = 0; passes < 3; ++passes) h.tap("pass");
}

}

namespace {

paint::ToldRange told_of_blue() {
  paint::ToldRange told;
  told.pigments = {"pb28"};
  told.ln_demands = {0.4};
  told.covariance = {0.01};
  told.class_offset = {0, 0.1};
  told.strength = {3.9, 1};
  told.hand.fill({0, 0.5});
  told.batches = 2;
  told.from = "5e1f20c70b94";
  return told;
}

}

TEST_CASE("what studios tell each other is asked for, taken and put away on this tablet") {
  Hands h;
  h.tap("tablet");
  CHECK_FALSE(h.shows("other_studios")); // where no file can be kept
  h.b.sharing.folder = "told";
  h.tap("other_studios");
  CHECK_FALSE(h.shows("bind undo"));
  const auto told_view = [&] { return *std::get<TabletView>(view(h.b, h.now()).screen).told; };
  h.tap("tell"); // nothing was felt
  CHECK(told_view().preparing);
  study_all(h);
  CHECK(told_view().failure);
  h.give(FriendsFound{std::nullopt});
  CHECK(told_view().none);

  paint::ToldRange told = told_of_blue();
  h.give(FriendsFound{FriendsFile{"friend.json", 1795617120000, told}});
  CHECK(told_view().found == "friend.json");
  CHECK_FALSE(told_view().none);
  h.tap("leave_told");
  CHECK(told_view().found.empty());
  CHECK(h.count<session::Told>() == 0);
  h.give(FriendsFound{FriendsFile{"friend.json", 1795617120000, told}});
  h.tap("take_told");
  CHECK(h.count<session::Told>() == 1);
  REQUIRE(h.b.learning.told);
  CHECK(told_view().pigments == 1);
  study_all(h);
  CHECK(h.b.learning.ranges.fit.told);
  h.give(FriendsFound{FriendsFile{"again.json", 1795617120000, told}}); // counts already
  CHECK(told_view().found.empty());
  CHECK(told_view().failure->what == words::Sentence(words::BenchSay::told_counts_already));
  paint::ToldRange older = told;
  older.batches -= 1; // of the same studio
  h.give(FriendsFound{FriendsFile{"older.json", 1795617120000, older}});
  CHECK(told_view().found.empty());
  told.notes += 1;
  h.give(FriendsFound{FriendsFile{"later.json", 1795617120000, told,
                                  words::Error{words::StudioSay::told_file_refused, {}}}});
  CHECK(told_view().found == "later.json");
  CHECK(told_view().failure); // of a file that is passed over
  h.tap("leave_told");
  h.tap("forget_told");
  CHECK(h.count<session::Told>() == 2);
  CHECK_FALSE(h.b.learning.told);
  CHECK_FALSE(h.shows("forget_told"));
  h.tap("other_studios");
  CHECK(h.shows("bind undo"));
}

TEST_CASE(
    "its own words, heard by a device that knew its sessions only later, do not count twice") {
  paint::ToldRange told = told_of_blue();
  told.from = "0123456789ab";
  session::Log first, second;
  first.session = told.from;
  second.session = "ba9876543210";
  second.lines.push_back({1, 1, 1, "", session::Told{bytes_of(told)}});
  const auto heard = [](const session::Logs& logs) {
    const auto found = session::told_in(logs);
    REQUIRE(found);
    return *found != nullptr;
  };
  CHECK(heard({&second}));
  CHECK_FALSE(heard({&second, &first}));
  told.from = "f00df00df00d";
  second.lines.insert(second.lines.begin(), {1, 0, 0, "", session::Told{bytes_of(told)}});
  CHECK(heard({&second, &first})); // a friend's, heard before, goes on counting
}

TEST_CASE("what is told is learnt of the studio's own notes, of all that are there") {
  Hands h;
  batch_of_cobalt(h);
  h.tap("gather");
  CHECK(h.b.learning.training.empty()); // nobody has looked through it yet
  h.tap("plan");
  h.tap("tablet");
  h.b.sharing.folder = "told";
  h.tap("other_studios");
  h.tap("tell");
  std::optional<paint::ToldRange> told;
  study_all(h, &told);
  REQUIRE(told);
  CHECK(told->pigments == std::vector<std::string>{"pb28"});
  h.give(ToldWritten{std::string("told/2026-11-25.json")});
  CHECK(std::get<TabletView>(view(h.b, h.now()).screen).told->written == "told/2026-11-25.json");
}

TEST_CASE("what is told has the notes of the batch that still lies on the slab") {
  Hands h;
  batch_of_cobalt(h);
  h.tap("plan");
  h.tap("tablet");
  h.b.sharing.folder = "told";
  h.tap("other_studios");
  h.tap("tell");
  std::optional<paint::ToldRange> told;
  study_all(h, &told);
  REQUIRE(told);
  CHECK(told->pigments == std::vector<std::string>{"pb28"});
  CHECK(told->batches == 1);
  CHECK(h.b.learning.training.empty());
}

TEST_CASE("a batch teaches when it is off the slab, not while it lies there") {
  Hands h;
  batch_of_cobalt(h);
  CHECK(study_all(h) == 0);
  CHECK(h.b.learning.version == 0);
  h.tap("gather");
  CHECK(study_all(h) == 1);
  CHECK(h.b.learning.version == 1);
  CHECK(h.b.learning.ranges.names.of_studio == 1);
  CHECK(h.b.learning.ranges.names.batches.at("pb28") == 1);
  CHECK(study_all(h) == 0);
}

TEST_CASE("the next batch starts from what the last ones taught, and after three it is no hint") {
  Hands h;
  for (int i = 0; i < 3; ++i) {
    batch_of_cobalt(h);
    h.tap("gather");
    study_all(h);
  }
  h.tap("plan");
  h.begin();
  h.tap("add pb28");
  h.type("12");
  for (int drops = 0; drops < 30; ++drops) h.tap("add gum_12");
  const SlabView slab = h.slab();
  REQUIRE(slab.trail.band);
  CHECK(slab.trail.band->batches == 3);
  CHECK(slab.trail.band->of_studio == 3);
  CHECK_FALSE(slab.advice.hint);
  CHECK(slab.trail.band->sd < 0.3);
}

TEST_CASE("Book shows how a pigment came to be known, and what leaving a note out changes") {
  Hands h;
  for (int i = 0; i < 2; ++i) {
    batch_of_cobalt(h);
    h.tap("gather");
    study_all(h);
  }
  h.tap("book");
  h.tap("ranges");
  while (!h.shows("range_of pb28")) h.tap("page_on");
  h.tap("range_of pb28");
  const auto story = [&] { return std::get<StoryView>(view(h.b, h.now()).screen); };
  REQUIRE(story().steps.size() == 3);
  CHECK(story().steps[0].of.batch.empty());
  CHECK(story().steps[2].of.notes.size() == 3);
  CHECK(story().steps[2].name.find("Cobalt") == 0);
  h.tap("note_before");
  h.tap("note_before");
  const auto before = story();
  h.tap("set_aside");
  CHECK(h.count<session::SetAside>() == 1);
  CHECK(note_chosen(*story_of(h.b.book.page))->set_aside);
  CHECK(study_all(h) == 1);
  const auto after = story();
  CHECK(after.was == std::pair(before.range.low, before.range.high));
  CHECK(after.range.low != before.range.low);
  CHECK(after.chosen->note.line == before.chosen->note.line);
  h.tap("set_aside");
  CHECK(h.count<session::Withdrawn>() == 1);
  CHECK(study_all(h) == 1);
  CHECK(story().range.low == doctest::Approx(before.range.low).epsilon(1e-6));
  h.tap("to_list");
  CHECK(std::holds_alternative<RangesView>(view(h.b, h.now()).screen));
}

TEST_CASE("a batch taken up again is left out of what is learnt from") {
  Hands h;
  batch_of_cobalt(h);
  h.tap("gather");
  study_all(h);
  h.tap("undo");
  CHECK(study_all(h) == 1);
  CHECK(h.b.learning.ranges.names.of_studio == 0);
}

TEST_CASE("an answer that makes no sense is said, and what was known stays") {
  Hands h;
  batch_of_cobalt(h);
  h.tap("gather");
  h.b.learning.asked.emplace();
  h.give(Fitted{words::failure(words::PaintSay::learn_not_json)});
  CHECK(h.b.learning.failure);
  CHECK(h.b.learning.version == 0);
  h.tap("book");
  h.tap("ranges");
  CHECK(std::get<RangesView>(view(h.b, h.now()).screen).failure);
  h.give(Fitted{std::string("{}")}); // to no question
  CHECK(h.b.learning.version == 0);
}

}
