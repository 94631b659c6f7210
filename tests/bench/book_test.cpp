#include "bench/ghost.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "hands.hpp"

#include <algorithm>

namespace book_test {

using namespace bench;
using hands::Hands;

namespace {

BookView shown(Hands& h) { return std::get<BookView>(view(h.b, h.now()).screen); }

std::string make(Hands& h, const std::string& pigment, const std::string& name, int water = 0) {
  h.tap("plan");
  h.give(Text{{SharedPad::search, ""}, pigment});
  h.tap("pigment " + pigment);
  h.give(Text{{PlanPad::name, ""}, name});
  h.tap("weigh");
  h.type("12");
  h.tap("begin");
  h.tap("another");
  h.tap("amount 1 tsp");
  h.tap("add gum_12");
  for (int i = 0; i < water; ++i) h.tap("add water");
  h.tap("pass");
  h.tap("pass");
  h.wait(120);
  h.tap("felt right");
  h.tap("pass");
  return h.b.batch;
}

void judge(Hands& h, const std::string& became) {
  h.tap("gather");
  h.tap("pans");
  h.tap("new_pan");
  h.wait(86400);
  h.tap("pans");
  if (!h.shows("became " + became)) h.tap("judge"); // still wet, by the curve
  h.tap("became " + became);
}

std::vector<std::string> found(Hands& h, const std::string& text) {
  h.tap("book");
  h.give(Text{{SharedPad::search, ""}, text});
  std::vector<std::string> out;
  for (const auto& row : shown(h).rows) out.push_back(row.name);
  return out;
}

using Names = std::vector<std::string>;

}

TEST_CASE("the Book finds by name, pigment, index name, date and verdict, whatever the case") {
  Hands h;
  make(h, "pb28", "Weir blue");
  judge(h, "cracked");
  make(h, "py43", "Quarry");
  judge(h, "good");
  h.b.book = {};
  CHECK(found(h, "") == Names{"Quarry", "Weir blue"});
  CHECK(found(h, "weir") == Names{"Weir blue"});
  CHECK(found(h, "OCHRE") == Names{"Quarry"});
  CHECK(found(h, "pb28") == Names{"Weir blue"});
  CHECK(found(h, "cracked") == Names{"Weir blue"});
  CHECK(found(h, "good") == Names{"Quarry"});
  CHECK(found(h, "2026-11") == Names{"Quarry", "Weir blue"});
  CHECK(found(h, "25 nov") == Names{"Weir blue"});
  CHECK(found(h, "26 Nov") == Names{"Quarry"});
  CHECK(found(h, "cobalt cracked") == Names{"Weir blue"});
  CHECK(found(h, "cobalt good").empty());
  CHECK(shown(h).search == "cobalt good");
}

// What is read from the lines agrees with the fold of the batch.
TEST_CASE("the index follows withdrawals and corrections") {
  Hands h;
  const std::string id = make(h, "pb28", "Weir blue");
  judge(h, "cracked");
  CHECK(found(h, "cracked").size() == 1);
  h.tap("pans");
  h.tap("undo");
  CHECK(found(h, "cracked").empty());
  CHECK(h.b.index.of.at(id).verdicts.empty());
  const auto folded = session::fold(session::all_of(h.b.logs), id);
  REQUIRE(folded);
  CHECK(folded->verdicts.empty());
  CHECK(h.b.index.of.at(id).opened_at == folded->opened_at);
  CHECK(h.b.index.of.at(id).poured_at == folded->pans.at(0).layers.at(0).at);
}

TEST_CASE("what another device wrote is found too") {
  Hands h;
  Hands other;
  other.b.sitting.session = other.b.logs.front().session = "0ther";
  make(other, "pb28", "From afar");
  h.give(Arrived{{other.b.logs.front()}, {}, {}, {}});
  CHECK(found(h, "afar").size() == 1);
}

TEST_CASE("notes are kept with their batch and shown there") {
  Hands h;
  const std::string id = make(h, "pb28", "Weir blue");
  h.tap("book");
  h.tap("batch " + id);
  h.tap("note");
  h.give(Text{{BookPad::note_text, ""}, "less water"});
  CHECK(*shown(h).note == "less water");
  h.tap("keep");
  CHECK_FALSE(shown(h).note);
  CHECK(std::get<session::Noted>(h.lines.back().event).text == "less water");
  CHECK(h.lines.back().batch == id);
  const auto lines = h.lines.size();
  h.tap("note");
  h.tap("keep"); // of nothing
  h.tap("note");
  h.tap("leave");
  CHECK(h.lines.size() == lines);
}

TEST_CASE("what is typed on a batch's page is kept by every way off it, but for cancel") {
  for (const std::string way : {"to_list", "book", "compare", "slab", "plan"}) {
    CAPTURE(way);
    Hands h;
    const auto open_again = [&](const std::string& id) {
      h.b.screen = Screen::book;
      h.b.book = {};
      h.tap("batch " + id);
    };
    make(h, "pr108", "Kiln red");
    const std::string id = make(h, "pb28", "Weir blue");
    h.tap("book");
    h.tap("batch " + id);
    h.tap("note");
    h.give(Text{{BookPad::note_text, ""}, "less water"});
    h.tap(way);
    CHECK(std::get<session::Noted>(h.lines.back().event).text == "less water");
    open_again(id);
    h.tap("rename");
    h.give(Text{{BookPad::name_text, ""}, "Weir, dark"});
    h.tap(way);
    CHECK(h.b.index.of.at(id).name == "Weir, dark");
    open_again(id);
    h.tap("rename");
    h.give(Text{{BookPad::name_text, ""}, ""}); // a batch has a name
    h.tap(way);
    CHECK(h.b.index.of.at(id).name == "Weir, dark");
  }
}

TEST_CASE("make again names the batch it goes back to, on both pages") {
  Hands h;
  const std::string first = make(h, "pb28", "Weir blue");
  h.tap("book");
  h.tap("batch " + first);
  h.tap("make_again");
  CHECK(h.b.screen == Screen::plan);
  h.tap("begin");
  const std::string second = h.b.batch;
  REQUIRE(second != first);
  h.b.book = {};
  h.tap("book");
  h.tap("batch " + second);
  CHECK(shown(h).again_of == "Weir blue");
  h.tap("to_list");
  h.tap("batch " + first);
  CHECK(shown(h).made_again == Names{h.b.folded->name});
}

TEST_CASE("two batches compared: what differs is marked, what is the same is not") {
  Hands h;
  const std::string a = make(h, "pb28", "A");
  const std::string b = make(h, "pb28", "B");
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add water");
  h.type("5");
  h.tap("book");
  h.tap("batch " + a);
  h.tap("compare");
  CHECK(shown(h).compared == "A");
  h.tap("batch " + a); // itself is no answer
  CHECK(std::holds_alternative<ChoicePage>(h.b.book.page));
  h.tap("batch " + b);
  const auto both = std::get<CompareView>(view(h.b, h.now()).screen);
  CHECK(both.name_a == "A");
  CHECK(both.name_b == "B");
  CHECK_FALSE(both.trail.points.empty());
  CHECK_FALSE(both.trail.beside.empty());
  const auto row = [&](CompareView::What what) {
    return *std::find_if(both.rows.begin(), both.rows.end(),
                         [&](const auto& r) { return r.what == what; });
  };
  CHECK(row(CompareView::pigment).name == "Cobalt blue");
  CHECK_FALSE(row(CompareView::pigment).differs);
  CHECK_FALSE(row(CompareView::ratio).differs); // one spoon, the same spoon
  CHECK(row(CompareView::flow).differs);
  CHECK_FALSE(row(CompareView::celsius).differs);
  CHECK_FALSE(row(CompareView::became).differs);
  h.tap("to_list");
  CHECK(shown(h).batch->name == "A");
}

TEST_CASE("the range stands behind two trails where both are of the same pigments") {
  for (const std::string other : {"pb28", "pr108"}) {
    CAPTURE(other);
    Hands h;
    const std::string a = make(h, "pb28", "A"), b = make(h, other, "B");
    h.tap("book");
    h.tap("batch " + a);
    h.tap("compare");
    h.tap("batch " + b);
    CHECK(std::get<CompareView>(view(h.b, h.now()).screen).trail.band.has_value() ==
          (other == "pb28"));
  }
}

TEST_CASE("the ghost is a batch judged good before one not judged, and never one judged bad") {
  Hands h;
  const auto ghost = [&] { return ghost_of(h.b, *h.b.folded); };
  make(h, "pb28", "unjudged");
  h.tap("gather");
  const auto unjudged = h.b.folded->trail;
  const std::string bad = make(h, "pb28", "bad", 3);
  judge(h, "rubs_off");
  make(h, "pb28", "today");
  REQUIRE_FALSE(ghost().empty());
  CHECK(ghost().back().flow == unjudged.back().flow); // the bad one lies nearer
  h.tap("gather");
  const std::string good = make(h, "pb28", "good", 6);
  judge(h, "good");
  const auto judged_good = session::fold(session::all_of(h.b.logs), good)->trail;
  make(h, "pb28", "unjudged too");
  h.tap("gather");
  make(h, "pb28", "tomorrow");
  CHECK(ghost().back().flow == judged_good.back().flow);
  CHECK(judged_good.back().flow > unjudged.back().flow + 0.05);
}

}
