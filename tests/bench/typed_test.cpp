// Numbers that are typed: what is refused, what is asked about, whatever pad or correction they
// come by; and what undo does meanwhile.
#include "bench/corrections.hpp"
#include "bench/typed.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"

namespace typed_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;
using words::BenchSay;

namespace {

bool says(const Hands& h, BenchSay what) {
  return h.b.number && h.b.number->error && h.b.number->error->what == words::Sentence(what);
}

void weigh_in(Hands& h, const std::string& card, const std::string& g) {
  for (const std::string& pad :
       {std::string("another"), std::string("amount weigh"), "add " + card})
    h.tap(pad);
  h.type(g);
}

// The latest line's amount, to be typed anew.
void correct_latest(Hands& h) {
  h.tap("more");
  h.tap("lines");
  h.tap("line " + arg_of(correctable(h.b).front()->ref));
  h.tap("other_amount");
}

double grams_of(const Hands& h, const std::string& card) {
  for (const session::Total& t : h.b.folded->totals)
    if (t.card.id == card) return t.grams.value;
  return 0;
}

}

TEST_CASE("a correction is asked about as a first entry is, once, and the pad says of what") {
  Hands h;
  h.begin();
  for (const char* pad : {"another", "amount 1 tsp", "add gum_12"}) h.tap(pad);
  const auto lines = h.lines.size();
  correct_latest(h);
  const auto number = h.slab().number;
  REQUIRE(number);
  CHECK(number->of == "Gum 1:2");
  REQUIRE(number->corrects);
  CHECK(std::get<session::Added>(*number->corrects).amount == 1);
  CHECK(std::get<session::Added>(*number->corrects).unit == session::Unit::spoons);
  h.type("900");
  CHECK(says(h, BenchSay::far_too_much));
  CHECK(h.lines.size() == lines);
  h.type("2");
  CHECK_FALSE(h.b.number);
  CHECK(h.count<session::Corrected>() == 1);
  correct_latest(h);
  h.type("900");
  REQUIRE(h.b.number);
  h.tap("enter"); // it is so
  CHECK_FALSE(h.b.number);
  CHECK(h.count<session::Corrected>() == 2);
}

TEST_CASE("a line that another device left out meanwhile has no amount to correct") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  const session::Ref line = correctable(h.b).front()->ref;
  correct_latest(h);
  session::Log other;
  other.session = "0ther";
  session::Line said;
  said.at = h.wall + 1000;
  said.batch = h.b.batch;
  said.event = session::Withdrawn{line};
  other.lines.push_back(said);
  h.give(Arrived{{other}, {}, {}, {}});
  REQUIRE(h.b.number);
  const auto lines = h.lines.size();
  h.type("3");
  CHECK(says(h, BenchSay::line_taken_back));
  CHECK(h.lines.size() == lines);
}

TEST_CASE("a correction to less is never asked about") {
  Hands h;
  h.begin();
  weigh_in(h, "gum_12", "300");
  h.tap("enter");
  correct_latest(h);
  h.type("200");
  CHECK_FALSE(h.b.number);
  CHECK(grams_of(h, "gum_12") == Approx(200));
}

TEST_CASE("more powder than twice what was planned is asked about, added or corrected") {
  Hands h;
  h.begin(); // 12 g planned
  h.tap("add pb28");
  h.type("120");
  CHECK(says(h, BenchSay::past_what_counts));
  h.type("12.0");
  const double before = grams_of(h, "pb28");
  correct_latest(h);
  h.type("120");
  CHECK(says(h, BenchSay::past_the_plan));
  CHECK(grams_of(h, "pb28") == before);
  h.tap("enter");
  CHECK_FALSE(h.b.number);
  CHECK(grams_of(h, "pb28") == Approx(before + 108));
}

TEST_CASE("a plan for more slabs than an evening has is asked about") {
  Hands h;
  h.choose("pb28");
  h.tap("weigh");
  h.type("1200");
  CHECK(says(h, BenchSay::so_many_portions));
  CHECK(h.b.plan.wanted == 0);
  h.type("120");
  CHECK_FALSE(h.b.number);
  CHECK(h.b.plan.wanted == 120);
}

TEST_CASE("more cannot be spilt than is there, and it is said how much that is") {
  Hands h;
  h.begin();
  weigh_in(h, "gum_12", "9");
  const auto spill = [&](const char* g) {
    h.tap("more");
    h.tap("spilt");
    h.type(g);
  };
  spill("60");
  CHECK(says(h, BenchSay::spilt_more));
  CHECK(words::message(*h.b.number->error).find("Only 2") == 0); // some 20 g
  CHECK(h.count<session::Lost>() == 0);
  h.type("2");
  CHECK(h.count<session::Lost>() == 1);
  CHECK(h.slab().warnings.empty());
  correct_latest(h); // as much again may be said of the same line
  h.type("3");
  CHECK_FALSE(h.b.number);
  correct_latest(h);
  h.type("90");
  CHECK(says(h, BenchSay::spilt_more_than_all));
}

TEST_CASE("what was spilt on the slab can be corrected when the paint is gathered") {
  Hands h;
  h.begin();
  weigh_in(h, "gum_12", "9");
  h.tap("more");
  h.tap("spilt");
  h.type("2");
  for (const char* pad : {"pass", "pass", "pass", "gather"}) h.tap(pad);
  const auto lines = correctable(h.b);
  const auto spilt = std::find_if(lines.begin(), lines.end(), [](const auto* line) {
    return std::holds_alternative<session::Lost>(line->event);
  });
  REQUIRE(spilt != lines.end());
  const std::string line = "line " + arg_of((*spilt)->ref);
  h.tap("more");
  h.tap("lines");
  while (!h.shows(line)) h.tap("earlier");
  h.tap(line);
  h.tap("other_amount");
  h.type("3");
  CHECK_FALSE(h.b.number);
}

TEST_CASE("nothing is no amount, where it makes no sense") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  const auto lines = h.lines.size();
  SUBCASE("added") {
    weigh_in(h, "gum_12", "0");
    CHECK(says(h, BenchSay::nothing_typed));
  }
  SUBCASE("drops that are corrected") {
    correct_latest(h);
    h.type("0");
    CHECK(says(h, BenchSay::none_went_in));
  }
  SUBCASE("spilt") {
    h.tap("more");
    h.tap("spilt");
    h.type("0");
    CHECK(says(h, BenchSay::nothing_typed));
  }
  SUBCASE("a bottle") {
    for (const char* pad : {"more", "bottle", "bottle_of gum_12"}) h.tap(pad);
    h.type("0");
    CHECK(says(h, BenchSay::weighs_nothing));
  }
  SUBCASE("the paint") {
    for (const char* pad : {"more", "weigh_paint"}) h.tap(pad);
    h.type("0.0");
    CHECK(says(h, BenchSay::paint_weighs_nothing));
  }
  CHECK(h.lines.size() == lines);
}

TEST_CASE("nothing left in a jar is an answer") {
  Hands h;
  for (const char* pad : {"shelf", "kind_of binder", "card gum_12", "jars", "left_g"}) h.tap(pad);
  h.type("0");
  CHECK_FALSE(h.b.number);
  CHECK(h.count<session::StockWeighed>() == 1);
}

TEST_CASE("a pan lighter than the powder in it is asked about, and one of no weight refused") {
  Hands h;
  h.gather();
  h.tap("pans");
  h.tap("new_pan");
  h.tap("weigh_pan");
  h.type("0");
  CHECK(says(h, BenchSay::weighs_nothing));
  h.type("0.3");
  CHECK(says(h, BenchSay::pan_lighter));
  CHECK(h.count<session::PanWeighed>() == 0);
  h.tap("enter");
  CHECK(h.count<session::PanWeighed>() == 1);
}

TEST_CASE("undo closes a number that is being typed, and takes nothing back") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  weigh_in(h, "gum_12", "900");
  REQUIRE(says(h, BenchSay::far_too_much));
  const auto lines = h.lines.size();
  CHECK(h.slab().undo.question);
  h.tap("undo");
  CHECK_FALSE(h.b.number);
  CHECK(is_open<TrailPanel>(h.b.panel));
  CHECK(h.lines.size() == lines);
  REQUIRE(h.b.notice.error);
  CHECK(h.b.notice.error->what == words::Sentence(BenchSay::question_closed));
  CHECK_FALSE(h.slab().undo.question);
  h.tap("undo");
  CHECK(h.count<session::Withdrawn>() == 1);
}

TEST_CASE("undo closes what is asked of paint that was left") {
  Hands left;
  left.begin();
  left.tap("add gum_12");
  left.b.panel = FoundPanel{3600000};
  left.tap("undo");
  CHECK(is_open<TrailPanel>(left.b.panel));
  CHECK(left.count<session::Withdrawn>() == 0);
}

TEST_CASE("undo takes back the weighing that is asked about, which the pad names") {
  Hands h;
  h.begin();
  for (const char* g : {"92.4", "9.2"}) {
    for (const char* pad : {"more", "bottle", "bottle_of gum_12"}) h.tap(pad);
    h.type(g);
    if (!h.slab().doubt) weigh_in(h, "gum_12", "1");
  }
  REQUIRE(h.slab().doubt);
  CHECK_FALSE(h.slab().undo.question);
  h.tap("undo");
  CHECK(h.count<session::Withdrawn>() == 1);
  CHECK(h.slab().warnings.empty());
}

TEST_CASE("paint that weighs more than was written down may be so: more of the same went in") {
  Hands h;
  h.begin();
  weigh_in(h, "gum_12", "9");
  const double ratio = h.b.folded->standing.binder_ratio->value;
  for (const char* pad : {"more", "weigh_paint"}) h.tap(pad);
  h.type("60");
  REQUIRE(h.slab().doubt);
  h.tap("it_is");
  CHECK(h.slab().warnings.empty());
  const auto& slab = h.b.folded->places.at.at(session::Place::slab).paint;
  CHECK(paint::grams_of(slab, h.b.folded->places.bench).value == Approx(60).epsilon(1e-3));
  CHECK(h.b.folded->standing.binder_ratio->value == Approx(ratio));
  CHECK(grams_of(h, "pb28") > 12);
  h.tap("undo"); // confirmed no more
  CHECK(grams_of(h, "pb28") == Approx(12));
  CHECK(h.slab().warnings.size() == 1);
}

TEST_CASE("after far too much was confirmed, the advice says what it is good for") {
  Hands h;
  h.begin();
  weigh_in(h, "gum_12", "300");
  h.tap("enter");
  CHECK(h.slab().advice.kind == Advice::a_wash);
  h.tap("pass");
  CHECK(h.slab().advice.kind == Advice::a_wash);
  h.tap("felt too_runny");
  CHECK(h.slab().advice.kind == Advice::a_wash);
}

TEST_CASE("upright the name and the clock stand beside the digits too") {
  Hands h(Display{{136, 218}});
  h.begin();
  h.tap("add pb28");
  REQUIRE(h.b.number);
  const Layout l = layout(h.b);
  CHECK(l.title.w > 20);
  CHECK(l.clock.w >= 13);
  CHECK(l.title.bottom() <= l.main.y + 0.01);
}

}
