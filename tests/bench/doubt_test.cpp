// Weighings that what was counted contradicts: asked about at once, and of no effect until somebody
// says which is right.
#include "bench/corrections.hpp"
#include "bench/doubt.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/recalibration.hpp"
#include "bench/shelf.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"
#include "words/paint_says.hpp"
#include "words/session_says.hpp"

namespace doubt_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;

namespace {

void weigh_bottle(Hands& h, const std::string& g) {
  h.tap("more");
  h.tap("bottle");
  h.tap("bottle_of gum_12");
  h.type(g);
}

void drop(Hands& h, int tens) {
  for (int i = 0; i < tens; ++i) {
    h.tap("another");
    h.tap("amount 10 drops");
    h.tap("add gum_12");
  }
}

double binder_g(const Hands& h) {
  for (const session::Total& t : h.b.folded->totals)
    if (t.card.id == "gum_12") return t.grams.value;
  return 0;
}

// Ten drops of binder weigh 0.365 g by the usual dropper; the bottle's second weight is a slip.
struct Mistyped : Hands {
  explicit Mistyped(const std::string& before = "92.4", const std::string& after = "8.4") {
    begin();
    weigh_bottle(*this, before);
    drop(*this, 1);
    by_count = binder_g(*this);
    weigh_bottle(*this, after);
  }
  double by_count = 0;
};

bool is_asked(const Hands& h) { return is_open<LinePanel>(h.b.panel); }

}

TEST_CASE("pigment that begin has counted is asked about where it is weighed once more") {
  Hands h;
  h.begin(); // with its 12 g
  h.tap("add pb28");
  h.type("12");
  REQUIRE(h.b.number);
  REQUIRE(h.b.number->error);
  CHECK(h.b.number->error->what == words::BenchSay::past_what_counts);
  CHECK(h.b.folded->standing.pigment_g.value == Approx(12));
}

TEST_CASE("a bottle's weight that the drops contradict is asked about at once and moves nothing") {
  Mistyped h("92.4", "9.2");
  CHECK(binder_g(h) == h.by_count);
  CHECK(h.by_count == Approx(0.365).epsilon(0.01));
  REQUIRE(is_asked(h));
  const auto doubt = h.slab().doubt;
  REQUIRE(doubt);
  CHECK(doubt->why.what == words::PaintSay::bottle_contradicts);
  CHECK(doubt->g == 9.2);
  CHECK(doubt->meant == 92.0);
  CHECK(h.count<session::BottleWeighed>() == 2); // nothing is lost
  CHECK(h.slab().warnings.size() == 1);
  CHECK_FALSE(dropper_found(h.b));
  h.tap("leave");
  CHECK(h.slab().warnings.size() == 1); // still not in the sums, and said
}

TEST_CASE("beside the question a material's pad adds a drop, as ever") {
  Mistyped h("92.4", "9.2");
  h.tap("add water");
  CHECK(std::get<session::Added>(h.lines.back().event).of == "water");
  CHECK(h.count<session::Corrected>() == 0);
  CHECK(h.slab().warnings.size() == 1);
}

TEST_CASE("the weight that was meant is one tap away") {
  Mistyped h("92.4", "9.2");
  h.tap("was_meant 92");
  CHECK(binder_g(h) == Approx(0.4));
  CHECK(h.slab().warnings.empty());
  CHECK(h.slab().dropper_found.has_value()); // and now it tells of the dropper
  h.tap("leave");
  h.tap("undo");
  CHECK(binder_g(h) == h.by_count);
  CHECK(h.slab().warnings.size() == 1);
}

TEST_CASE("a weight that is confirmed counts; taken back, it is doubted again") {
  Mistyped h("92.4", "88.4"); // ten drops that weigh 4 g: a bottle was poured from, say
  REQUIRE(is_asked(h));
  h.tap("it_is");
  CHECK(h.count<session::Confirmed>() == 1);
  CHECK(binder_g(h) == Approx(4));
  CHECK(h.slab().warnings.empty());
  CHECK_FALSE(is_asked(h));
  h.tap("undo");
  CHECK(binder_g(h) == h.by_count);
  CHECK(h.slab().warnings.size() == 1);
}

TEST_CASE("large drops, confirmed, are offered to the dropper's card") {
  Hands h;
  h.begin();
  weigh_bottle(h, "250");
  drop(h, 10);
  weigh_bottle(h, "241"); // 0.09 g a drop, more than twice what is usual
  REQUIRE(is_asked(h));
  CHECK_FALSE(dropper_found(h.b));
  h.tap("it_is");
  const auto found = h.slab().dropper_found;
  REQUIRE(found);
  CHECK(found->found_g == Approx(1.8).epsilon(0.02));
}

TEST_CASE("another weight, as wrong, is asked about again; a right one is not") {
  Mistyped h("92.4", "9.2");
  h.tap("other_amount");
  h.type("80");
  REQUIRE(is_asked(h));
  CHECK(h.slab().doubt->g == 80);
  h.tap("other_amount");
  h.type("92.1");
  CHECK_FALSE(is_asked(h));
  CHECK(binder_g(h) == Approx(0.3));
}

TEST_CASE("a confirmed weight that is corrected has to be confirmed anew") {
  Mistyped h("92.4", "88.4");
  h.tap("it_is");
  const std::string line = arg_of(correctable(h.b)[1]->ref);
  h.tap("more");
  h.tap("lines");
  h.tap("line " + line);
  h.tap("other_amount");
  h.type("68.4");
  CHECK(is_asked(h));
  CHECK(binder_g(h) == h.by_count);
}

TEST_CASE("weighed once more, a bottle is compared with the weighing that it agrees with") {
  Mistyped h("92.4", "9.2");
  h.tap("leave");
  weigh_bottle(h, "92");
  CHECK_FALSE(is_asked(h));
  CHECK(binder_g(h) == Approx(0.4));
  drop(h, 1);
  weigh_bottle(h, "91.6");
  CHECK(binder_g(h) == Approx(0.8));
}

TEST_CASE("a bottle of which nothing was counted is asked about") {
  Hands h;
  h.begin();
  weigh_bottle(h, "92.4");
  weigh_bottle(h, "92.4");
  CHECK_FALSE(is_asked(h));
  weigh_bottle(h, "82.4");
  REQUIRE(is_asked(h));
  CHECK(h.slab().doubt->why.what == words::SessionSay::bottle_uncounted);
  CHECK(h.slab().doubt->meant == 92.4);
  h.tap("it_is");
  CHECK(h.slab().warnings.empty());
}

TEST_CASE("a bottle that weighs more may have been filled, or mistyped") {
  Mistyped h("92.4", "920");
  REQUIRE(is_asked(h));
  CHECK(h.slab().doubt->meant == 92.0);
  CHECK_FALSE(h.shows("it_is"));
  h.tap("leave");
  drop(h, 1);
  weigh_bottle(h, "919.6"); // it was filled
  CHECK_FALSE(is_asked(h));
  CHECK(binder_g(h) == Approx(h.by_count + 0.4));
}

TEST_CASE("a jar's weight that is far off is asked about; confirmed, the rest is lost") {
  Hands h;
  h.begin();
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("19.5");
  for (int i = 0; i < 3; ++i) h.tap("pass");
  h.tap("gather");
  const auto weigh = [&](const std::string& g) {
    h.tap("more");
    h.tap("weigh_paint");
    h.type(g);
  };
  const auto in_jar = [&] {
    return paint::grams_of(h.b.folded->places.at.at(session::Place::jar).paint,
                           h.b.folded->places.bench)
        .value;
  };
  weigh("290");
  REQUIRE(is_asked(h));
  CHECK(h.slab().doubt->meant == 29.0);
  h.tap("take_back");
  const double ratio = h.b.folded->standing.binder_ratio->value;
  weigh("12");
  REQUIRE(is_asked(h));
  CHECK(in_jar() == Approx(29.14).epsilon(2e-3));
  h.tap("it_is");
  CHECK(h.slab().warnings.empty());
  CHECK(in_jar() == Approx(12).epsilon(1e-3));
  CHECK(h.b.folded->standing.binder_ratio->value == Approx(ratio));
}

TEST_CASE("a slip on a dropper's card is asked about on the number pad, once") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of dropper");
  h.tap("card dropper");
  h.tap("fact drops_20_g");
  h.type("5.2");
  REQUIRE(h.b.number);
  REQUIRE(h.b.number->error);
  CHECK(h.b.number->error->what == words::BenchSay::drops_doubted);
  h.tap("erase");
  h.tap("erase");
  h.tap("erase");
  h.type("1.2"); // within what an unknown dropper may give
  CHECK_FALSE(h.b.number);
  h.tap("fact drops_20_g");
  h.type("5.2");
  REQUIRE(h.b.number);
  h.tap("enter"); // the same once more: it is so
  CHECK_FALSE(h.b.number);
  CHECK(volume_of(*h.b.shelf_page.card).mL == Approx(0.26).epsilon(0.01));
}

TEST_CASE("so much binder that the paint would be soup is asked about on the number pad, once") {
  Hands h;
  h.begin();
  const auto lines = h.lines.size();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("900");
  REQUIRE(h.b.number);
  REQUIRE(h.b.number->error);
  CHECK(h.b.number->error->what == words::BenchSay::far_too_much);
  CHECK(h.lines.size() == lines);
  h.type("9.00");
  CHECK_FALSE(h.b.number);
  CHECK(binder_g(h) == Approx(9));
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("300");
  REQUIRE(h.b.number);
  h.tap("enter"); // it is so
  CHECK_FALSE(h.b.number);
  CHECK(binder_g(h) == Approx(309));
}

TEST_CASE("a pan that grows heavier with nothing poured is asked about; after a layer it is not") {
  Hands h;
  h.gather();
  h.tap("pans");
  h.tap("new_pan");
  h.tap("weigh_pan");
  h.type("4.8");
  h.wait(36000);
  h.tap("weigh_pan");
  h.type("5.1");
  REQUIRE(h.b.number);
  REQUIRE(h.b.number->error);
  CHECK(h.b.number->error->what == words::BenchSay::pan_heavier);
  h.type("4.3");
  CHECK_FALSE(h.b.number);
  h.wait(200 * 3600);
  h.tap("pour_pan");
  h.tap("weigh_pan");
  h.type("5.6");
  CHECK_FALSE(h.b.number);
  CHECK(h.count<session::PanWeighed>() == 3);
}

TEST_CASE("more than a jar had left, typed for the slab, is asked about") {
  Hands h;
  for (const char* pad : {"shelf", "kind_of binder", "card gum_12", "jars", "jar_g"}) h.tap(pad);
  h.type("20");
  h.tap("jar_in");
  h.tap("plan");
  h.begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("30");
  REQUIRE(h.b.number);
  REQUIRE(h.b.number->error);
  CHECK(h.b.number->error->what == words::BenchSay::more_than_left);
  h.type("3");
  CHECK_FALSE(h.b.number);
}

TEST_CASE("an amount of an earlier session is corrected, and what it was of is named here too") {
  Hands h;
  h.begin();
  for (const char* pad : {"another", "amount 1 tsp", "add gum_12"}) h.tap(pad);
  const double one = binder_g(h);
  const int line = static_cast<int>(h.lines.back().n);
  Hands later;
  later.give(Tick{});
  later.open_after(h, 60, Screen::today);
  if (later.b.batch.empty()) later.tap("slab");
  for (const char* pad : {"more", "lines"}) later.tap(pad);
  later.tap("line 0ther " + std::to_string(line));
  later.tap("other_amount");
  later.type("1.5");
  CHECK(later.slab().warnings.empty());
  CHECK(binder_g(later) == Approx(1.5 * one));
}

}
