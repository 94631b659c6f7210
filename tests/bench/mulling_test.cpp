// What a studio's own mulling teaches: the timer, the plan and what is still to come.
#include "bench/learning.hpp"
#include "bench/mulling.hpp"
#include "bench/pads_shared.hpp"
#include "hands.hpp"

#include <cmath>

namespace mulling_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;

namespace {

void study_all(Hands& h) {
  for (int i = 0; wants_to_study(h.b) && i < 100; ++i) step(h.b, Study{}, h.now());
  h.give(Tick{});
}

void dot(Hands& h, const std::string& specks) {
  h.tap("dot");
  h.tap("specks " + specks);
}

// Cobalt blue, so many passes of so many seconds, a dot after each: few, and none after the last.
void mull(Hands& h, int passes, double seconds) {
  h.tap("add gum_12");
  h.tap("pass"); // wetting out
  for (int pass = 1; pass <= passes; ++pass) {
    h.tap("pass");
    h.wait(seconds);
    h.tap("pass");
    dot(h, pass < passes ? "few" : "none");
  }
}

void batch_of_cobalt(Hands& h, int passes, double seconds) {
  h.tap("plan");
  h.begin();
  mull(h, passes, seconds);
  h.tap("gather");
  h.tap("close");
  study_all(h);
}

PlanView plan(Hands& h) { return std::get<PlanView>(view(h.b, h.now()).screen); }

}

TEST_CASE("the plan's minutes come from this studio, and from what is usual before") {
  Hands h;
  h.tap("pigment pb28");
  REQUIRE(plan(h).mulling);
  CHECK(plan(h).mulling->batches == 0);
  const double usual = plan(h).mulling->minutes.middle;
  CHECK(usual == Approx(10).epsilon(0.1));
  h.tap("pigment pb28");
  for (int batch = 0; batch < 3; ++batch) batch_of_cobalt(h, 8, 240);
  h.tap("plan");
  h.tap("pigment pb28");
  REQUIRE(plan(h).mulling);
  CHECK(plan(h).mulling->batches == 3);
  CHECK(plan(h).mulling->minutes.middle > 20);
  CHECK(plan(h).mulling->minutes.middle < 36);
  CHECK(plan(h).mulling->passes.middle >= 5);
  CHECK(plan(h).mulling->passes.middle <= 9);
  h.tap("pigment pb28");
  h.choose("pb35"); // another mineral, never made
  CHECK(plan(h).mulling->batches == 0);
  CHECK(plan(h).mulling->minutes.middle > usual);
  h.tap("pigment pb35");
  CHECK_FALSE(plan(h).mulling);
}

TEST_CASE("the timer's target is a pass as this studio makes them") {
  Hands h;
  h.begin();
  CHECK(h.slab().pass.target_s == paint::usual_pass_s);
  h.tap("undo");
  for (int batch = 0; batch < 3; ++batch) batch_of_cobalt(h, 6, 360);
  h.tap("plan");
  h.begin();
  CHECK(h.slab().pass.target_s > 270);
  CHECK(h.slab().pass.target_s < 360);
  CHECK(std::fmod(h.slab().pass.target_s, 15) == 0);
}

TEST_CASE("where grains stayed to the last dot, the next plan says what to do about them") {
  for (const auto& [pigment, then] :
       {std::pair{"pb28", SpecksStay::coarse}, {"pv19", SpecksStay::as_it_is}}) {
    Hands h;
    const auto choose = [&, named = std::string(pigment)] {
      h.give(Text{{SharedPad::search, ""}, named});
      h.tap("pigment " + named);
    };
    choose();
    h.tap("weigh");
    h.type("12");
    h.tap("begin");
    h.tap("add gum_12");
    for (const char* pad : {"pass", "pass"}) h.tap(pad);
    h.wait(240);
    h.tap("pass");
    dot(h, "many");
    for (const char* pad : {"gather", "close"}) h.tap(pad);
    study_all(h);
    h.tap("plan");
    CHECK(plan(h).specks_last == SpecksStay::no);
    choose();
    CHECK(plan(h).specks_last == then);
  }
}

TEST_CASE("what is left of mulling falls with each pass, and is nothing without specks") {
  Hands h;
  CHECK_FALSE(mulling_left(h.b));
  h.begin();
  const auto whole = mulling_left(h.b);
  REQUIRE(whole);
  CHECK(whole->batches == 0);
  h.tap("add gum_12");
  h.tap("pass");
  h.tap("pass");
  h.wait(240);
  h.tap("pass");
  dot(h, "few");
  const auto some = mulling_left(h.b);
  REQUIRE(some);
  CHECK(some->minutes.low > 0);
  CHECK(some->minutes.middle < whole->minutes.middle);
  CHECK(some->passes.middle >= 1);
  CHECK(mulling_left(h.b, paint::SpeckWord::few)->minutes.high == 0);
  h.tap("pass");
  h.wait(240);
  dot(h, "none");
  CHECK(mulling_left(h.b)->passes.high == 0);
}

TEST_CASE("a first batch with specks hears how long its kind usually takes") {
  Hands h;
  h.begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("8");
  for (const char* pad : {"pass", "pass"}) h.tap(pad);
  h.wait(240);
  h.tap("felt right");
  h.tap("pass");
  dot(h, "many");
  const Advice advice = h.slab().advice;
  REQUIRE(advice.kind == Advice::keep_mulling);
  REQUIRE(advice.mulling);
  CHECK(advice.mulling->batches == 0);
  CHECK(advice.mulling->minutes.middle == mulling_left(h.b)->minutes.middle);
  CHECK(advice.specks == SpecksStay::no);
}

TEST_CASE("pigment added later is to be mulled anew") {
  Hands h;
  h.begin();
  mull(h, 3, 240);
  CHECK(mulling_left(h.b)->minutes.high == 0);
  h.tap("add pb28");
  h.type("2");
  CHECK(mulling_left(h.b)->minutes.low > 1);
}

TEST_CASE("a batch teaches when it is off the slab, once, and not while it lies there") {
  Hands h;
  h.begin();
  mull(h, 3, 240);
  study_all(h);
  CHECK(h.b.mulling.of.empty());
  h.tap("gather");
  study_all(h);
  CHECK(h.b.mulling.of.size() == 1);
  const int version = h.b.mulling.version;
  study_all(h);
  CHECK(h.b.mulling.version == version);
  h.tap("back_on_slab");
  study_all(h);
  CHECK(h.b.mulling.of.empty());
}

TEST_CASE("a dot taken back, or put right, teaches what stands") {
  Hands h;
  h.begin();
  mull(h, 2, 240);
  const auto smooth = mulling_left(h.b);
  REQUIRE(smooth);
  CHECK(smooth->minutes.high == 0);
  h.tap("undo");
  CHECK(mulling_left(h.b)->minutes.middle > 0);
}

TEST_CASE("a pass that nobody ended in an hour tells nothing") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  h.tap("pass");
  h.tap("pass");
  h.wait(9000);
  h.tap("pass");
  dot(h, "none");
  const session::Mulled told = session::mulled(*h.b.folded);
  CHECK(told.dots.empty());
  CHECK(told.passes_s.empty());
}

TEST_CASE("flakes are not mulled: nothing is said of it") {
  Hands h;
  for (const session::Card& card : h.b.shelf)
    if (card.kind() == session::CardKind::pigment &&
        pigment_of(card).pigment.family == paint::PigmentClass::effect) {
      h.tap("search");
      h.give(Text{*pad_named("search"), card.name});
      h.tap("pigment " + card.id);
      CHECK_FALSE(plan(h).mulling);
      return;
    }
  FAIL("no effect pigment ships");
}

}
