// What was tapped by mistake: said otherwise, taken back, and had back again.
#include "bench/again.hpp"
#include "bench/book_index.hpp"
#include "bench/corrections.hpp"
#include "bench/planning.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"

namespace corrections_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;

namespace {

double drops_of(const Hands& h, const std::string& card) {
  for (const session::Total& t : h.b.folded->totals)
    if (t.card.id == card) return t.drops;
  return 0;
}

double grams_of(const Hands& h, const std::string& card) {
  for (const session::Total& t : h.b.folded->totals)
    if (t.card.id == card) return t.grams.value;
  return 0;
}

void open_lines(Hands& h) {
  h.tap("more");
  h.tap("lines");
}

void open_last_line(Hands& h) {
  const std::string line = arg_of(correctable(h.b).front()->ref);
  open_lines(h);
  h.tap("line " + line);
}

// A whole batch, closed.
std::string make_one(Hands& h) {
  h.tap("plan");
  h.begin();
  const std::string batch = h.b.batch;
  for (int i = 0; i < 5; ++i) h.tap("add gum_12");
  h.tap("pass");
  h.tap("pass");
  h.tap("felt right");
  h.tap("pass");
  h.tap("gather");
  h.tap("close");
  return batch;
}

void open_in_book(Hands& h, const std::string& batch) {
  h.tap("book");
  h.tap("batch " + batch);
}

bool is_listed(const Hands& h, const std::string& batch) {
  return std::find(h.b.batches.begin(), h.b.batches.end(), batch) != h.b.batches.end();
}

void learn(Hands& h) {
  for (int i = 0; i < 20; ++i) h.give(Study{});
}

}

TEST_CASE("a drop of water tapped as binder becomes water, and back") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  h.tap("add gum_12");
  open_last_line(h);
  h.tap("other_material");
  h.tap("it_was water");
  CHECK(drops_of(h, "gum_12") == 1);
  CHECK(drops_of(h, "water") == 1);
  CHECK(grams_of(h, "water") > 0.01);
  CHECK(h.count<session::Added>() == 3);
  h.tap("undo");
  CHECK(drops_of(h, "gum_12") == 2);
  CHECK(drops_of(h, "water") == 0);
}

TEST_CASE("while a line is open a material's pad says what it was, and adds nothing") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  open_last_line(h);
  for (const MaterialView& m : h.slab().materials) CHECK(m.corrects);
  h.tap("add water");
  CHECK(h.count<session::Added>() == 2); // the pigment and the one drop
  CHECK(drops_of(h, "water") == 1);
  CHECK(drops_of(h, "gum_12") == 0);
  h.tap("add water");
  CHECK(drops_of(h, "water") == 2);
}

TEST_CASE("a drop was never powder: the line stays, and why is said") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  open_last_line(h);
  const auto lines = h.lines.size();
  h.tap("add pb28");
  CHECK(h.lines.size() == lines);
  REQUIRE(h.b.notice.error);
  CHECK(h.b.notice.error->what == words::BenchSay::powder_is_weighed);
  CHECK(is_open<LinePanel>(h.b.panel));
}

TEST_CASE("a weighed bottle was another one, but never one of powder") {
  Hands h;
  h.begin();
  h.tap("more");
  h.tap("bottle");
  h.tap("bottle_of gum_12");
  h.type("80");
  open_last_line(h);
  h.tap("add pb28");
  CHECK(h.b.notice.error->what == words::BenchSay::bottle_of_liquid);
  h.tap("add water");
  const auto& corrected = std::get<session::Corrected>(h.lines.back().event);
  CHECK(std::get<session::BottleWeighed>(*corrected.says) == session::BottleWeighed{"water", 80});
}

TEST_CASE("what was taken back out of the list comes back by undo, once") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  h.tap("add water");
  h.tap("felt too_sticky");
  open_lines(h);
  std::string gum;
  for (const session::Entry* e : correctable(h.b))
    if (const auto* a = std::get_if<session::Added>(&e->event); a && a->of == "gum_12")
      gum = arg_of(e->ref);
  h.tap("line " + gum);
  h.tap("take_back");
  CHECK(drops_of(h, "gum_12") == 0);
  CHECK(h.slab().undo.gives_back);
  CHECK(h.slab().undo.card_name == h.slab().materials[0].name);
  h.tap("undo");
  CHECK(drops_of(h, "gum_12") == 1);
  CHECK_FALSE(h.slab().undo.gives_back);
  h.tap("undo"); // the feel note, and not the drop again
  CHECK(drops_of(h, "gum_12") == 1);
  CHECK(h.b.folded->feelings.empty());
}

TEST_CASE("a batch begun by mistake is taken back, and Plan stands as it was") {
  Hands h;
  h.tap("plan");
  h.tap("pigment pb28");
  h.tap("weigh");
  h.type("12");
  h.give(Text{*pad_named("name"), "Not yet"});
  h.tap("begin");
  const std::string batch = h.b.batch;
  h.tap("add gum_12");
  h.tap("undo"); // the drop
  h.tap("undo"); // the powder
  CHECK(std::holds_alternative<session::Opened>(*h.slab().undo.target));
  h.tap("undo");
  CHECK(h.b.batch.empty());
  CHECK(h.b.screen == Screen::plan);
  CHECK(h.b.plan.name == "Not yet");
  CHECK(h.b.plan.wanted == 12);
  CHECK_FALSE(is_listed(h, batch));
  CHECK(h.b.discarded.empty());
  h.tap("begin");
  CHECK(h.b.batch != batch);
  CHECK(h.b.folded->name == "Not yet");
  CHECK(is_listed(h, h.b.batch));
}

TEST_CASE("a beginning is not taken back while anything of it stands") {
  Hands h;
  h.begin();
  h.tap("undo"); // the powder
  h.tap("felt right");
  h.tap("add gum_12");
  h.tap("undo");
  CHECK_FALSE(h.b.batch.empty());
  h.tap("undo");
  CHECK(h.b.batch.empty());
}

TEST_CASE("a batch gets another name, everywhere, and none is no name") {
  Hands h;
  const std::string batch = make_one(h);
  open_in_book(h, batch);
  h.tap("rename");
  h.give(Text{*pad_named("name_text"), ""});
  const auto lines = h.lines.size();
  h.tap("keep");
  CHECK(h.lines.size() == lines);
  CHECK(h.shows("name_text"));
  h.give(Text{*pad_named("name_text"), "Weir blue"});
  h.tap("keep");
  CHECK_FALSE(h.shows("name_text"));
  CHECK(h.b.index.of.at(batch).name == "Weir blue");
  CHECK(std::get<BookView>(view(h.b, h.now()).screen).batch->name == "Weir blue");
  CHECK(batches_found(h.b, "weir") == std::vector{batch});
  h.tap("rename");
  h.tap("keep"); // as it is
  CHECK(std::holds_alternative<session::Corrected>(h.lines.back().event));
  CHECK(h.count<session::Corrected>() == 1);
  h.tap("rename");
  h.tap("leave");
  CHECK_FALSE(h.shows("name_text"));
}

TEST_CASE("a discarded batch leaves the lists and teaches nothing, but its powder stays used up") {
  Hands h;
  const std::string kept = make_one(h), gone = make_one(h);
  learn(h);
  CHECK(h.b.learning.training.size() == 2);
  const auto used = h.b.index.used_ug.at("pb28");
  open_in_book(h, gone);
  h.tap("discard");
  learn(h);
  CHECK_FALSE(is_listed(h, gone));
  CHECK(is_listed(h, kept));
  CHECK(h.b.learning.training.size() == 1);
  CHECK(h.b.index.used_ug.at("pb28") == used);
  CHECK_FALSE(h.shows("make_again"));
  CHECK_FALSE(h.shows("take_up"));

  h.tap("to_list");
  CHECK_FALSE(h.shows("batch " + gone));
  h.tap("discarded");
  CHECK_FALSE(h.shows("batch " + kept));
  h.tap("batch " + gone);
  h.tap("have_back");
  learn(h);
  CHECK(is_listed(h, gone));
  CHECK(h.b.learning.training.size() == 2);
  CHECK(h.b.discarded.empty());
  CHECK(h.shows("make_again"));
  h.tap("to_list");
  CHECK(h.shows("batch " + gone));
  CHECK_FALSE(h.shows("discarded"));
}

TEST_CASE("the batch on the slab is discarded from the Book, and the slab is free") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  const std::string batch = h.b.batch;
  open_in_book(h, batch);
  h.tap("discard");
  CHECK(h.b.batch.empty());
  CHECK_FALSE(h.b.folded);
  h.tap("have_back");
  h.tap("take_up");
  CHECK(h.b.batch == batch);
  CHECK(drops_of(h, "gum_12") == 1);
}

TEST_CASE("a batch that two devices discarded comes back whole") {
  Hands h;
  const std::string batch = make_one(h);
  session::Log other;
  other.session = "d52f19e60002";
  other.lines.push_back({0, 0, h.wall + 1000, batch, session::Discarded{}});
  h.give(Arrived{{other}, {}, {"a-d52f19e60002.jsonl"}, {}});
  CHECK_FALSE(is_listed(h, batch));
  h.tap("book");
  h.tap("discarded");
  h.tap("batch " + batch);
  h.tap("have_back");
  CHECK(is_listed(h, batch));
}

TEST_CASE("made again with another pigment it is another paint; with the first again the same") {
  Hands h;
  const std::string batch = make_one(h);
  open_in_book(h, batch);
  const std::string first = h.b.index.of.at(batch).name;
  h.tap("make_again");
  CHECK(h.b.plan.name == first + ", 2");
  h.choose("pb28");
  h.choose("pw6");
  const auto plan = [&] { return std::get<PlanView>(view(h.b, h.now()).screen); };
  CHECK(plan().again_of.empty());
  CHECK(plan().name.find(first) == std::string::npos);
  CHECK_FALSE((planned(h.b) && *planned(h.b) && (*planned(h.b))->as_made));
  h.choose("pw6");
  h.choose("pb28");
  CHECK(plan().again_of == first);
  CHECK(plan().name == first + ", 2");
  h.choose("pb28");
  h.choose("pw6");
  h.tap("begin");
  CHECK(h.b.folded->again_of.empty());
}

TEST_CASE("drops in a row are one line of the list, which opens to each of them") {
  Hands h;
  h.begin();
  for (int i = 0; i < 23; ++i) {
    h.tap("add gum_12");
    h.wait(5);
  }
  h.tap("felt too_sticky");
  h.tap("add water");
  open_lines(h);
  auto lines = h.slab().lines;
  REQUIRE(lines.size() == 4); // water, feel note, the drops, the powder
  const LineView& run = lines[2];
  CHECK(std::get<session::Added>(run.event).amount == 23);
  CHECK(run.took_ms > 110'000);
  CHECK(run.took_ms < 130'000);
  h.tap(name_of(run.pad));
  lines = h.slab().lines;
  CHECK(lines.size() == 23);
  CHECK_FALSE(h.shows("later"));
  int pages = 1;
  for (; h.shows("earlier"); ++pages) h.tap("earlier");
  CHECK(pages == 6);
  CHECK(h.shows("later"));
  h.tap(name_of(lines.back().pad));
  h.tap("take_back");
  CHECK(drops_of(h, "gum_12") == 22);
  h.tap("undo");
  CHECK(drops_of(h, "gum_12") == 23);
}

TEST_CASE("the list turns both ways, and from a run back to all") {
  Hands h;
  h.begin();
  for (int i = 0; i < 6; ++i) {
    h.tap("felt too_sticky");
    h.tap("add gum_12");
  }
  open_lines(h);
  const auto first = layout(h.b);
  h.tap("earlier");
  CHECK(layout(h.b).pads != first.pads);
  h.tap("later");
  CHECK(layout(h.b).pads == first.pads);
  for (int i = 0; i < 3; ++i) h.tap("add gum_12");
  open_lines(h);
  h.tap(name_of(h.slab().lines[0].pad));
  CHECK(h.slab().lines.size() == 4);
  h.tap("lines");
  CHECK(h.slab().lines.size() > 4);
}

TEST_CASE("a line keeps the time of day that the clock showed when summer time has ended") {
  Hands h;
  h.begin();
  h.tap("add water");
  Now later = h.now();
  later.wall_ms += 3600000;
  later.run_ms += 3600000;
  later.utc_offset_min = 0;
  step(h.b, Tick{}, later);
  step(h.b, Tap{*pad_named("add gum_12")}, later);
  REQUIRE(std::holds_alternative<session::ClockJumped>(
      h.b.logs.front().lines[h.b.logs.front().lines.size() - 2].event));
  step(h.b, Tap{*pad_named("more")}, later);
  step(h.b, Tap{*pad_named("lines")}, later);
  const auto lines = std::get<SlabView>(view(h.b, later).screen).lines;
  REQUIRE(lines.size() == 3); // the powder too
  CHECK(lines[0].offset_min == 0);
  CHECK(lines[1].offset_min == 60);
}

}
