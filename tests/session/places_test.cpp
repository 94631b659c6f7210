// Paint that moves between slab, jar and pans, is lost, weighed, and brought back to where it was.
#include "make.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace places_test {

using namespace session;
using doctest::Approx;

namespace {

constexpr const char* batch = "7f3a91c2";

// 12 g of pigment and 6 g of binder on the slab.
make::Writer evening(std::string session = "c41e08d5") {
  make::Writer w(std::move(session));
  w.card(make::pigment("pb28", 4.2, 30));
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.card(make::liquid("water", CardKind::water, {.water = 1}));
  w.card(make::dropper("bulb", 0.05, 0.004, CardKind::water));
  w.put(batch, Opened{"Blue"});
  w.put(batch, RoomSet{22, 0.45, false});
  w.put(batch, Added{"pb28", Unit::g, 12, ""});
  w.put(batch, Added{"gum", Unit::g, 6, ""});
  return w;
}

Batch folded(const make::Writer& w) { return make::folded({w.log}, batch); }

double grams(const Batch& b, Place place) {
  const auto there = b.places.at.find(place);
  return there == b.places.at.end() ? 0 : grams_of(there->second.paint, b.places.bench).value;
}

bool warned(const Batch& b, WarningKind kind) {
  return std::any_of(b.warnings.begin(), b.warnings.end(),
                     [&](const Warning& w) { return w.kind == kind; });
}

}

TEST_CASE("half into the jar, the rest goes on drying on the slab") {
  auto w = evening();
  w.put(batch, Moved{Place::slab, Place::jar, {0.5, {}}});
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(300);
  w.put(batch, Felt{Feel::right, By::muller});
  const Batch b = folded(w);
  CHECK(b.progress == Progress::open);
  CHECK(grams(b, Place::jar) == Approx(9));
  CHECK(grams(b, Place::slab) < 8.9);
  const auto jar = stand(b.places.at.at(Place::jar).paint);
  CHECK(b.standing.flow_now->value < jar.flow_now->value);
  CHECK(b.standing.binder_ratio->value == Approx(5));
  CHECK(jar.binder_ratio->value == Approx(5));
  CHECK(b.totals[0].grams.value == 12);
}

TEST_CASE("what is added goes to the paint in hand, and all of it meets again") {
  auto w = evening();
  w.put(batch, Moved{Place::slab, Place::jar, {1, 9}});
  w.put(batch, Added{"gum", Unit::g, 1, ""});
  Batch b = folded(w);
  CHECK(grams(b, Place::slab) == Approx(10));
  CHECK(b.standing.binder_ratio->value == Approx(4.0 / 6 * 10));
  w.put(batch, Moved{Place::jar, Place::slab, {}});
  b = folded(w);
  CHECK(grams(b, Place::jar) == 0);
  CHECK(grams(b, Place::slab) == Approx(19));
  CHECK(b.standing.binder_ratio->value == Approx(7.0 / 12 * 10));
  CHECK(b.warnings.empty());
}

TEST_CASE("gathered is all into the jar; a stage takes it onto the slab again") {
  auto w = evening();
  w.put(batch, Gathered{});
  w.put(batch, Added{"water", Unit::g, 1, ""});
  Batch b = folded(w);
  CHECK(b.progress == Progress::gathered);
  CHECK(in_hand(b.places) == Place::jar);
  CHECK(grams(b, Place::jar) == Approx(18 * 0.925 + 1)); // the rest stayed on the tools
  w.wait(100000);
  w.put(batch, StageBegan{Stage::mulling});
  b = folded(w);
  CHECK(b.progress == Progress::open);
  CHECK(grams(b, Place::slab) == Approx(19));
}

TEST_CASE("moving the last of it off the slab gathers it, moving some back opens it") {
  auto w = evening();
  w.put(batch, StageBegan{Stage::mulling});
  w.put(batch, Moved{Place::slab, Place::jar, {}});
  CHECK(folded(w).progress == Progress::gathered);
  CHECK_FALSE(running(folded(w)));
  w.put(batch, Moved{Place::jar, Place::slab, {0.3, {}}});
  CHECK(folded(w).progress == Progress::open);
  CHECK(grams(folded(w), Place::slab) == Approx(0.3 * 18 * 0.925 + 18 * 0.075));
}

TEST_CASE("lost paint is gone from its place, not from what went in") {
  auto w = evening();
  w.put(batch, Lost{Place::slab, {0.25, {}}});
  const Batch b = folded(w);
  CHECK(grams(b, Place::slab) == Approx(13.5));
  CHECK(b.totals[0].grams.value == 12);
  CHECK(b.standing.binder_ratio->value == Approx(5));
}

TEST_CASE("what cannot be moved is said, and nothing moves") {
  auto w = evening();
  w.put(batch, Moved{Place::jar, Place::slab, {}});
  w.put(batch, Moved{Place::slab, Place::jar, {1, 400}});
  const Batch b = folded(w);
  CHECK(b.warnings.size() == 2);
  CHECK(b.warnings[0].kind == WarningKind::not_moved);
  CHECK(b.warnings[1].kind == WarningKind::not_moved);
  CHECK(grams(b, Place::slab) == Approx(18));
}

TEST_CASE("the jar weighed corrects backwards what was dropped") {
  auto w = evening();
  for (int i = 0; i < 60; ++i) w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  const Batch counted = folded(w);
  w.put(batch, Gathered{});
  // As much as expected less what stays on tools, and half a gram less.
  const double all = grams(counted, Place::slab);
  w.put(batch, Weighed{Place::jar, 120 + all * 0.925 - 0.5, 120});
  const Batch b = folded(w);
  CHECK(b.warnings.empty());
  CHECK(b.totals[1].grams.value < counted.totals[1].grams.value - 0.05);
  CHECK(uncertainty(b.totals[1].grams) < uncertainty(counted.totals[1].grams));
  CHECK(b.standing.binder_ratio->value < counted.standing.binder_ratio->value);
  CHECK(grams(b, Place::jar) == Approx(all * 0.925 - 0.5).epsilon(1e-3));
}

// 12 g of pigment and 19.5 g of binder, all weighed: 31.5 g.
TEST_CASE("the jar holds what did not stay on the tools, and a weighing of just that is taken") {
  auto w = evening();
  w.put(batch, Added{"gum", Unit::g, 13.5, ""});
  w.put(batch, Gathered{});
  const Batch gathered = folded(w);
  const double shown = grams(gathered, Place::jar);
  CHECK(shown == Approx(31.5 * 0.925));
  w.put(batch, Weighed{Place::jar, shown, 0});
  const Batch b = folded(w);
  CHECK(b.warnings.empty());
  CHECK(grams(b, Place::jar) == Approx(shown));
  for (std::size_t i = 0; i < b.totals.size(); ++i) {
    CHECK(b.totals[i].grams.value == Approx(gathered.totals[i].grams.value));
    CHECK(uncertainty(b.totals[i].grams) <= uncertainty(gathered.totals[i].grams) * (1 + 1e-9));
  }
  CHECK(b.standing.binder_ratio->value == Approx(gathered.standing.binder_ratio->value));
}

TEST_CASE("a jar that weighs all that went in is no contradiction: nothing stayed behind") {
  auto w = evening();
  w.put(batch, Added{"gum", Unit::g, 13.5, ""});
  w.put(batch, Gathered{});
  w.put(batch, Weighed{Place::jar, 31.5, 0});
  const Batch b = folded(w);
  CHECK(b.warnings.empty());
  CHECK(grams(b, Place::jar) == Approx(31.5).epsilon(1e-3));
  CHECK(b.totals[1].grams.value == Approx(19.5).epsilon(1e-3));
}

TEST_CASE("a heavier weight that is confirmed is what there is, whatever its share") {
  for (const double times : {1.5, 2.0, 2.5, 4.0, 9.0}) {
    CAPTURE(times);
    auto w = evening();
    const Ref line = w.put(batch, Weighed{Place::slab, 18 * times, 0});
    CHECK(folded(w).warnings.size() == 1);
    w.put(batch, Confirmed{line, 18 * times});
    const Batch b = folded(w);
    CHECK(b.warnings.empty());
    CHECK(grams(b, Place::slab) == Approx(18 * times));
  }
}

TEST_CASE("what stayed on the tools is in a heavier jar whose weight is confirmed") {
  auto w = evening();
  w.put(batch, Gathered{});
  const Ref line = w.put(batch, Weighed{Place::jar, 25, 0});
  w.put(batch, Confirmed{line, 25});
  const Batch b = folded(w);
  double in_all = 0;
  for (const Total& t : b.totals) in_all += t.grams.value;
  CHECK(in_all == Approx(25));
}

TEST_CASE("after a lost count a lighter jar takes gum away, a heavier one adds some") {
  const auto ratio = [](double more) {
    auto w = evening();
    for (int i = 0; i < 40; ++i) w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
    w.put(batch, CountLost{"gum"});
    w.put(batch, Gathered{});
    const Batch counted = folded(w);
    w.put(batch, Weighed{Place::jar, grams(counted, Place::jar) + more, 0});
    const Batch b = folded(w);
    CHECK(b.warnings.empty());
    CHECK(uncertainty(b.totals[1].grams) < uncertainty(counted.totals[1].grams));
    return b.totals[1].grams.value - counted.totals[1].grams.value;
  };
  CHECK(ratio(-0.6) < -0.05);
  CHECK(ratio(0.6) > 0.05);
  CHECK(std::abs(ratio(0)) < 1e-6);
}

TEST_CASE(
    "back on the slab in the same sitting, what stayed on the tools is there; later it is not") {
  auto w = evening();
  w.put(batch, Gathered{});
  auto later = w;
  w.put(batch, StageBegan{Stage::mulling});
  CHECK(grams(folded(w), Place::slab) == Approx(18));
  w.put(batch, Gathered{});
  CHECK(grams(folded(w), Place::jar) == Approx(18 * 0.925).epsilon(1e-3));
  make::Writer next("d52f19e6");
  next.at0 = later.at0 + 86400000;
  next.log.lines[0].at = next.at0;
  next.put(batch, StageBegan{Stage::mulling});
  const Batch b = make::folded({later.log, next.log}, batch);
  CHECK(grams(b, Place::slab) == Approx(18 * 0.925).epsilon(1e-3));
  CHECK(is_empty(b.places.on_tools.paint));
}

TEST_CASE(
    "a jar weighed teaches what stays on the tools once, and the next batch foretells by it") {
  auto w = evening();
  w.put(batch, Gathered{});
  w.put(batch, Weighed{Place::jar, 17.5, 0});
  const Batch once = folded(w);
  CHECK(once.places.loss.observations == 1);
  CHECK(once.places.loss.share < 0.06);
  w.put(batch, Weighed{Place::jar, 17.5, 0});
  CHECK(folded(w).places.loss == once.places.loss);

  make::Writer next("d52f19e6");
  next.at0 = w.at0 + 86400000;
  next.log.lines[0].at = next.at0;
  for (const Line& line : w.log.lines)
    if (line.n > 0 && line.n < 9) next.put(line.batch.empty() ? "" : "next", line.event);
  next.put("next", Gathered{});
  const std::vector<Log> both{w.log, next.log};
  const auto taught = fold(all_of(both), "next", std::nullopt, lessons_of(all_of(both)));
  CHECK(grams(*taught, Place::jar) == Approx(18 * (1 - once.places.loss.share)));
}

TEST_CASE("a weighing that cannot be is said, and changes nothing") {
  auto w = evening();
  const Batch before = folded(w);
  w.put(batch, Weighed{Place::slab, 40, 0});
  w.put(batch, Weighed{Place::jar, 10, 0});
  w.put(batch, Weighed{Place::slab, 10, 20});
  const Batch b = folded(w);
  REQUIRE(b.warnings.size() == 3);
  CHECK(warned(b, WarningKind::not_weighed));
  CHECK(b.warnings[2].why ==
        words::Error{words::SessionSay::weighed_below_tare, {words::Number(10, 1)}});
  CHECK(b.standing.binder_ratio == before.standing.binder_ratio);
}

TEST_CASE("water brought back teaches the bench, and the next batch dries by it") {
  auto w = evening();
  const Ref felt = w.put(batch, Felt{Feel::right, By::knife});
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(900);
  w.put(batch, Felt{Feel::too_sticky, By::muller});
  const double usual = folded(w).standing.water_lost_mL.value;
  w.put(batch, Added{"water", Unit::g, 2 * usual, ""});
  w.put(batch, AsBefore{felt});
  const Batch b = folded(w);
  CHECK(b.warnings.empty());
  CHECK(b.places.bench.observations == 1);
  CHECK(b.places.bench.ln_factor > 0.1);
  CHECK(b.places.bench.ln_u < paint::BenchRate{}.ln_u);
  CHECK(b.standing.water_lost_mL.value == Approx(2 * usual / 0.99821));
  const auto named = std::find_if(b.entries.begin(), b.entries.end(),
                                  [&](const Entry& e) { return e.ref == felt; });
  CHECK(b.standing.flow_now->value == Approx(*named->flow).epsilon(1e-3));

  make::Writer next("d52f19e6");
  next.at0 = w.at0 + 86400000;
  next.log.lines[0].at = next.at0;
  for (const Line& line : w.log.lines)
    if (line.n > 0 && line.n < 9) next.put(line.batch.empty() ? "" : "next", line.event);
  next.put("next", StageBegan{Stage::mulling});
  next.wait(900);
  next.put("next", Felt{Feel::right, By::muller});
  const std::vector<Log> both{w.log, next.log};
  const Lessons lessons = lessons_of(all_of(both));
  REQUIRE(lessons.size() == 1);
  const auto training = fold(all_of(both), "next", std::nullopt, lessons);
  const auto untaught = fold(all_of(both), "next");
  CHECK(training->standing.water_lost_mL.value > 1.1 * untaught->standing.water_lost_mL.value);
  // A lesson does not reach back.
  const auto again = fold(all_of(both), batch, std::nullopt, lessons);
  CHECK(again->places.bench == b.places.bench);
}

TEST_CASE("as it was at a line that is not there, or after more than water, is said") {
  auto w = evening();
  w.put(batch, AsBefore{{"c41e08d5", 99}});
  const Ref felt = w.put(batch, Felt{Feel::right, By::knife});
  w.put(batch, Added{"gum", Unit::g, 1, ""});
  w.put(batch, AsBefore{felt});
  const Batch b = folded(w);
  REQUIRE(b.warnings.size() == 2);
  CHECK(warned(b, WarningKind::not_weighed));
  CHECK(b.warnings[0].why == words::Error{words::SessionSay::as_before_nothing, {"c41e08d5 99"}});
}

TEST_CASE("alcohol flows at first and is gone after minutes under the muller") {
  auto w = evening();
  w.card(make::liquid("spirit", CardKind::wetting_aid, {.water = 0.3, .alcohol = 0.7}));
  w.put(batch, Added{"spirit", Unit::g, 2, ""});
  const double first = folded(w).standing.alcohol_g.value;
  CHECK(first == Approx(1.4));
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(1800);
  w.put(batch, Felt{Feel::right, By::muller});
  CHECK(folded(w).standing.alcohol_g.value < 0.05);
}

}
