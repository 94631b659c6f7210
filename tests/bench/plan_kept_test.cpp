// What of a plan goes into the batch that is begun.
#include "bench/choices.hpp"
#include "bench/pads_shared.hpp"
#include "hands.hpp"

namespace plan_kept_test {

using namespace bench;
using hands::Hands;

TEST_CASE("a batch has so many pans at most as its file can say") {
  Hands h;
  h.tap("pigment pb28");
  h.tap("want");
  h.tap("weigh");
  h.type("1001");
  const auto v = std::get<PlanView>(view(h.b, h.now()).screen);
  REQUIRE(v.number);
  using words::Number;
  CHECK(v.number->error ==
        words::Error{words::BenchSay::pans_too_many, {Number(1001, 0), Number(1000, 0)}});
}

TEST_CASE("more pans than a batch has are refused at once, and that many are not asked about") {
  for (const char* many : {"1001", "5000", "9999"}) {
    Hands h;
    h.tap("pigment pb28");
    h.tap("want");
    h.tap("weigh");
    h.type(many);
    REQUIRE(h.b.number);
    CHECK(h.b.number->error->what == words::Sentence(words::BenchSay::pans_too_many));
    CHECK(h.b.number->asked.empty());
  }
}

TEST_CASE("a tap more than the most pans is none") {
  Hands h;
  h.tap("pigment pb28");
  h.tap("want");
  h.b.plan.wanted = session::Planned::most_pans - 1;
  h.tap("more_of_it");
  h.tap("more_of_it");
  CHECK(h.b.plan.wanted == session::Planned::most_pans);
}

TEST_CASE("a blend of which nobody said how much is begun with its pigments in the plan") {
  Hands h;
  for (const char* pad : {"pigment pb28", "another_pigment"}) h.tap(pad);
  h.give(Text{{SharedPad::search, ""}, "ultramarine"});
  h.tap("pigment pb29");
  h.tap("begin");
  const auto to_come = h.slab().to_come;
  REQUIRE(to_come.size() == 2);
  for (const ToComeView& one : to_come) CHECK_FALSE(one.g);
}

TEST_CASE("more than the jar holds is no pigment that was weighed: it is to come") {
  Hands h;
  for (const char* pad : {"shelf", "card pb28", "jars", "left_g"}) h.tap(pad);
  h.type("4");
  for (const char* pad : {"to_card", "plan", "pigment pb28", "weigh"}) h.tap(pad);
  h.type("12");
  h.wait(120);
  h.tap("begin");
  CHECK(h.b.folded->standing.pigment_g.value == 0);
  const auto to_come = h.slab().to_come;
  REQUIRE(to_come.size() == 1);
  CHECK(to_come[0].g == doctest::Approx(12));
}

namespace {

// 3 : 1 : 1 parts of three pigments.
void begin_in_parts(Hands& h, bool by_volume) {
  for (const char* pigment : {"pb28", "pb29", "pw4"}) h.choose(pigment);
  if (by_volume) h.tap("by_volume");
  h.tap("parts pb28");
  h.type("3");
  h.tap("begin");
}

void weigh(Hands& h, const char* pigment, const char* g) {
  h.tap("pigments");
  h.tap(std::string("add ") + pigment);
  h.type(g);
}

}

TEST_CASE("a blend in parts asks for the others as soon as one of it was weighed") {
  Hands h;
  begin_in_parts(h, false);
  CHECK(h.slab().to_come.size() == 3);
  weigh(h, "pb28", "3.5");
  const auto to_come = h.slab().to_come;
  REQUIRE(to_come.size() == 2);
  for (const ToComeView& one : to_come) CHECK(one.g.value_or(0) == doctest::Approx(3.5 / 3));
  h.tap("pigments");
  h.tap("add pb29");
  const auto number = h.slab().number;
  REQUIRE(number);
  CHECK(number->planned_g == doctest::Approx(3.5 / 3));
  h.type("11.7"); // a point at the wrong place
  REQUIRE(h.b.number);
  CHECK(h.b.number->error->what == words::Sentence(words::BenchSay::past_the_plan));
}

TEST_CASE("parts by volume ask for as much as that weighs") {
  Hands h;
  begin_in_parts(h, true);
  weigh(h, "pb28", "6");
  const auto density = [&](const char* card) {
    return pigment_of(*shelf_card(h.b, card)).pigment.g_per_mL;
  };
  for (const ToComeView& one : h.slab().to_come) {
    const char* card = one.name == shelf_card(h.b, "pw4")->name ? "pw4" : "pb29";
    CHECK(one.g.value_or(0) == doctest::Approx(6 / density("pb28") / 3 * density(card)));
  }
}

}
