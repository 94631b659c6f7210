// A pigment's range, said in grams of one binder.
#include "bench/binder_range.hpp"
#include "bench/choices.hpp"
#include "bench/planning.hpp"
#include "hands.hpp"
#include "session/amounts.hpp"
#include "session/make.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace binder_range_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;

namespace {

session::Card gum(double water) {
  return {"gum", "Gum", session::LiquidCard{session::CardKind::binder, {.gum = 1, .water = water}}};
}

double dry_gum(const session::Card& binder) {
  return session::dry_gum_of(*session::material_of(binder));
}

// The cobalt blue of the shelf, felt three times over in one binder.
void teach(Bench& bench, const session::Card& binder) {
  const session::Card& blue = *shelf_card(bench, "pb28");
  paint::LearnProblem p;
  p.pigments = {session::range_question(session::untrained_ranges(), {{&blue, 1}})
                    .batch.pigments.front()
                    .facts};
  session::RangeNames names;
  names.pigments = {"pb28"};
  for (int b = 0; b < 3; ++b) {
    p.batches.push_back({0.01});
    p.segments.push_back({b, {{0, 1}}});
    for (const auto& [ln_mL, felt] : {std::pair{0.5, 1}, {0.7, 2}, {1.0, 3}}) {
      p.notes.push_back({b, ln_mL, 0.01, {}, felt, dry_gum(binder)});
      ++names.notes["pb28"];
      names.dry_gum["pb28"] = {dry_gum(binder), dry_gum(binder)};
    }
  }
  bench.learning.ranges = {*paint::learn(p), names};
}

BinderRange blue_in(Bench& bench, const session::Card& binder) {
  const auto range = binder_range(bench, {{shelf_card(bench, "pb28"), 1}}, binder);
  REQUIRE(range);
  return *range;
}

}

TEST_CASE("what a pigment wants is said in grams of the binder to ten grams") {
  Hands h;
  teach(h.b, gum(2));
  const BinderRange range = blue_in(h.b, gum(2));
  const auto material = *session::material_of(gum(2));
  const double g_per_mL = pigment_of(*shelf_card(h.b, "pb28")).pigment.g_per_mL;
  CHECK(range.binder == "Gum");
  const double felt = std::exp(0.7);
  const double dries_off =
      put_in_for_each(h.b, {{shelf_card(h.b, "pb28"), 1}}, material, felt) * felt;
  CHECK(dries_off > 1.03 * felt);
  CHECK(dries_off < 1.25 * felt);
  CHECK(range.g * paint::mL_per_g(material.parts) * g_per_mL / 10 ==
        Approx(dries_off).epsilon(0.1));
  CHECK(range.low_g < range.g);
  CHECK(range.g < range.high_g);
  CHECK(range.than == BinderRange::as_taught);
}

TEST_CASE("in a binder that it was not felt in, it is known less well, and that is said") {
  Hands h;
  teach(h.b, gum(2));
  const auto width = [](const BinderRange& r) { return std::log(r.high_g / r.low_g); };
  const BinderRange taught = blue_in(h.b, gum(2)), thinner = blue_in(h.b, gum(4)),
                    stronger = blue_in(h.b, gum(1.2));
  CHECK(thinner.than == BinderRange::thinner);
  CHECK(stronger.than == BinderRange::stronger);
  CHECK(width(thinner) > width(taught) * 1.1);
  CHECK(width(stronger) > width(taught) * 1.1);
  CHECK(thinner.g < taught.g);
  // Taught in that one, it is the other way round.
  teach(h.b, gum(4));
  CHECK(blue_in(h.b, gum(4)).than == BinderRange::as_taught);
  CHECK(blue_in(h.b, gum(2)).than == BinderRange::stronger);
  CHECK(width(blue_in(h.b, gum(4))) < width(blue_in(h.b, gum(2))));
}

TEST_CASE("of nobody's notes nothing is stronger or thinner, and a blend is one range") {
  Hands h;
  CHECK(blue_in(h.b, gum(4)).than == BinderRange::never_felt);
  teach(h.b, gum(2));
  const session::Card* blue = shelf_card(h.b, "pb28");
  const BinderRange one = blue_in(h.b, gum(2));
  const auto two = binder_range(h.b, {{blue, 0.4}, {blue, 0.6}}, gum(2));
  REQUIRE(two);
  CHECK(two->g == Approx(one.g));
  CHECK_FALSE(binder_range(h.b, {}, gum(2)));
  CHECK(range_of_card(h.b, *blue));
}

TEST_CASE("the card's band is that of the binder whose grams stand beside it") {
  for (const double water : {2.0, 3.0}) {
    Hands h;
    teach(h.b, gum(2));
    h.b.shelf.push_back(gum(water));
    h.b.plan.binder = "gum";
    h.b.plan.binder_chosen = true;
    for (const char* pad : {"shelf", "card pb28"}) h.tap(pad);
    const auto read = std::get<ShelfView>(view(h.b, h.now()).screen);
    REQUIRE(read.range);
    REQUIRE(read.reading.band);
    const double flow = read.range->g / read.range->g_per_flow;
    CHECK(std::log(flow) == Approx(read.reading.band->middle).epsilon(0.02));
  }
}

TEST_CASE("a card says the grams that Plan says, of any blend, and with what dries off") {
  Hands h;
  teach(h.b, gum(2));
  h.b.shelf.push_back(gum(2));
  h.b.plan.binder = "gum";
  h.b.plan.binder_chosen = true;
  h.choose("pb28");
  h.tap("weigh");
  h.type("10");
  const auto plan = std::get<PlanView>(view(h.b, h.now()).screen);
  REQUIRE(plan.range);
  const auto card = range_of_card(h.b, *shelf_card(h.b, "pb28"));
  REQUIRE(card);
  CHECK(card->g == Approx(plan.range->g).epsilon(0.002));
  CHECK(card->low_g == Approx(plan.range->low_g).epsilon(0.002));
  h.b.plan.humidity = 85;
  CHECK(range_of_card(h.b, *shelf_card(h.b, "pb28"))->g < card->g);
  const session::Card *blue = shelf_card(h.b, "pb28"), *red = shelf_card(h.b, "pb29");
  REQUIRE(red);
  const auto once = binder_range(h.b, {{blue, 0.4}, {red, 0.6}}, gum(2));
  const auto more = binder_range(h.b, {{blue, 2}, {red, 3}}, gum(2));
  REQUIRE(once);
  CHECK(once->g == Approx(more->g));
}

TEST_CASE("paint dries while it is felt: its binder stays the one that it was made with") {
  Hands h;
  const session::Card blue = *shelf_card(h.b, "pb28");
  std::vector<session::Log> logs;
  for (const char* session : {"c41e08d1", "c41e08d2", "c41e08d3"}) {
    make::Writer w(session);
    w.at0 += 86'400'000 * static_cast<std::int64_t>(logs.size());
    w.card(blue);
    w.card(gum(2));
    w.put(session, session::Opened{"Blue"});
    w.put(session, session::RoomSet{27, 0.25, false});
    w.put(session, session::Added{"pb28", session::Unit::g, 12, ""});
    w.put(session, session::Added{"gum", session::Unit::g, 9, ""});
    w.put(session, session::StageBegan{session::Stage::mulling});
    w.wait(600);
    w.put(session, session::Felt{session::Feel::right, session::By::muller});
    w.wait(420);
    w.put(session, session::Felt{session::Feel::right, session::By::muller});
    logs.push_back(w.log);
  }
  const auto dried = session::trainings_of(session::all_of(logs));
  REQUIRE(dried.at(0).notes.back().dry_gum > dry_gum(gum(2)) + 0.03);
  h.b.learning.ranges = *session::learn_ranges(session::all_of(logs));
  const auto width = [](const BinderRange& r) { return std::log(r.high_g / r.low_g); };
  const BinderRange used = blue_in(h.b, gum(2));
  CHECK(used.than == BinderRange::as_taught);
  // As strong as the paint was when it was felt, and yet another binder.
  const BinderRange own = blue_in(h.b, gum(1.6));
  CHECK(own.than == BinderRange::stronger);
  CHECK(width(own) >= width(used));
  CHECK(blue_in(h.b, gum(4)).than == BinderRange::thinner);
  CHECK(width(blue_in(h.b, gum(4))) > width(used));
}

TEST_CASE("a binder between those that a pigment was felt in is none that it was not felt in") {
  Hands h;
  teach(h.b, gum(2));
  h.b.learning.ranges.names.dry_gum["pb28"] = {dry_gum(gum(3)), dry_gum(gum(2))};
  for (const double water : {2.0, 2.5, 3.0})
    CHECK(blue_in(h.b, gum(water)).than == BinderRange::as_taught);
  CHECK(blue_in(h.b, gum(1.2)).than == BinderRange::stronger);
  CHECK(blue_in(h.b, gum(4)).than == BinderRange::thinner);
}

}
