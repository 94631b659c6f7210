// What was poured into which pan, what became of it, and how paint was found after a time away.
#include "session/in_words.hpp"
#include "session/make.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace pans_test {

namespace {

using namespace make;

const std::string batch = "7f3a91c2";

// 12 g of pigment and 14 g of binder, mulled and gathered.
Writer mulled() {
  Writer w;
  w.put(batch, Opened{"Kiln blue"});
  w.put(batch, RoomSet{21, 0.5, false});
  w.put(batch, LaidOut{pigment("pb28", 4.2, 30)});
  w.put(batch, LaidOut{liquid("gum", CardKind::binder, {.gum = 1, .water = 2, .honey = 0.2})});
  w.put(batch, LaidOut{pan("half", 1.7)});
  w.put(batch, Added{"pb28", Unit::g, 12, ""});
  w.put(batch, Added{"gum", Unit::g, 14, ""});
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(200);
  w.put(batch, Gathered{});
  return w;
}

double all_g(const Batch& b) {
  double sum = 0;
  for (const auto& [place, lying] : b.places.at)
    sum += paint::grams_of(lying.paint, b.places.bench).value;
  return sum;
}

}

TEST_CASE("a pan filled to its brim takes its capacity, and the next layer what is free above it") {
  Writer w = mulled();
  const Batch before = folded({w.log}, batch);
  w.put(batch, Poured{1, 2, "half", {}});
  w.wait(86400);
  w.put(batch, Poured{1, 1, "half", {}});
  const Batch b = folded({w.log}, batch);
  REQUIRE(b.pans.size() == 2);
  REQUIRE(b.pans[0].layers.size() == 2);
  CHECK(b.pans[0].layers[0].wet_mL == doctest::Approx(1.7));
  CHECK(b.pans[1].layers[0].wet_mL == doctest::Approx(1.7));
  CHECK(b.pans[0].layers[1].wet_mL == doctest::Approx(1.7 - b.pans[0].layers[0].dry_mL));
  CHECK(dry_mL(b.pans[0]) < 1.7);
  CHECK(all_g(b) == doctest::Approx(all_g(before)).epsilon(1e-9));
  const double went = before.pans.empty() ? wet_mL(before.places, Place::jar) : 0;
  CHECK(wet_mL(b.places, Place::jar) ==
        doctest::Approx(went - 1.7 - 1.7 - b.pans[0].layers[1].wet_mL).epsilon(1e-6));
  CHECK(b.warnings.empty());
}

TEST_CASE("what a dry layer keeps lies within its bounds") {
  Writer w = mulled();
  const Batch b = folded({w.log}, batch);
  const auto share = dry_share(b.places, Place::jar);
  REQUIRE(share);
  CHECK(share->low > 0.2);
  CHECK(share->low <= share->middle);
  CHECK(share->middle <= share->high);
  CHECK(share->high < 1);
  CHECK_FALSE(dry_share(b.places, Place::pans));
}

TEST_CASE("no pan gets more than there is") {
  Writer w = mulled();
  const double there = wet_mL(folded({w.log}, batch).places, Place::jar);
  w.put(batch, Poured{1, 40, "half", {}});
  const Batch b = folded({w.log}, batch);
  CHECK(static_cast<double>(b.pans.size()) == std::ceil(there / 1.7));
  double poured = 0;
  for (const Pan& p : b.pans) poured += p.layers.at(0).wet_mL;
  CHECK(poured == doctest::Approx(there));
  CHECK(b.places.at.count(Place::jar) == 0);
  w.put(batch, Poured{1, 1, "half", {}});
  const Batch after = folded({w.log}, batch);
  REQUIRE(after.warnings.size() == 1);
  CHECK(after.warnings[0].kind == WarningKind::not_poured);
}

TEST_CASE("weighed into each pan, off the slab, which is then done") {
  Writer w = mulled();
  w.put(batch, StageBegan{Stage::resting}); // back on the slab
  const double g = all_g(folded({w.log}, batch));
  w.put(batch, Poured{1, 3, "half", 2.0});
  Batch b = folded({w.log}, batch);
  CHECK(b.progress == Progress::open);
  CHECK(paint::grams_of(b.places.at.at(Place::pans).paint, b.places.bench).value ==
        doctest::Approx(6).epsilon(0.01));
  w.put(batch, Poured{4, 9, "half", g});
  b = folded({w.log}, batch);
  CHECK(b.pans.size() == 4);
  CHECK(b.progress == Progress::gathered);
}

TEST_CASE("into what is no pan nothing is poured, and nothing is weighed that was not poured") {
  Writer w = mulled();
  w.put(batch, Poured{1, 1, "gum", {}});
  w.put(batch, Poured{1, 1, "nobody's", {}});
  w.put(batch, PanWeighed{3, 4.2});
  const Batch b = folded({w.log}, batch);
  REQUIRE(b.warnings.size() == 3);
  CHECK(b.warnings[0].kind == WarningKind::not_poured);
  CHECK(b.warnings[1].kind == WarningKind::not_poured);
  CHECK(b.warnings[2].kind == WarningKind::not_weighed);
  using Say = words::SessionSay;
  CHECK(b.warnings[0].why == words::Error{Say::poured_into_no_pan, {"gum"}});
  CHECK(b.warnings[1].why == words::Error{Say::pan_not_laid_out, {"nobody's"}});
  CHECK(b.warnings[2].why == words::Error{Say::pan_never_poured, {"3"}});
  CHECK(b.pans.empty());
  w.put(batch, Poured{1, 1, "", {}});
  CHECK(folded({w.log}, batch).warnings.at(3).why == words::Error{Say::poured_into_nothing, {}});
}

TEST_CASE("weighings and verdicts stand with their pans, until withdrawn") {
  Writer w = mulled();
  w.put(batch, Poured{1, 2, "half", {}});
  w.put(batch, PanWeighed{2, 5.1});
  w.wait(86400);
  const Ref ref = w.put(batch, PanWeighed{2, 4.6});
  w.put(batch, Verdict{Became::sunken, 2});
  const Ref verdict = w.put(batch, Verdict{Became::good, 0});
  Batch b = folded({w.log}, batch);
  REQUIRE(b.pans[1].readings.size() == 2);
  CHECK(b.pans[1].readings[1].clock - b.pans[1].readings[0].clock == doctest::Approx(86400));
  REQUIRE(b.verdicts.size() == 2);
  CHECK(b.verdicts[1].verdict.as == Became::good);
  w.put(batch, Withdrawn{ref});
  w.put(batch, Corrected{verdict, Corrected::Says(Verdict{Became::cracked, 0}), {}});
  b = folded({w.log}, batch);
  CHECK(b.pans[1].readings.size() == 1);
  CHECK(b.verdicts[1].verdict.as == Became::cracked);
}

TEST_CASE("found wet: nothing has left since; found dry: all that the room takes") {
  Writer w = mulled();
  w.put(batch, StageBegan{Stage::resting});
  const double before = folded({w.log}, batch).standing.flow_now->value;
  w.wait(9 * 3600);
  Writer wet = w, dry = w, neither = w;
  wet.put(batch, Found{State::wet});
  dry.put(batch, Found{State::dry});
  neither.put(batch, Felt{Feel::right, By::muller});
  const double as_wet = folded({wet.log}, batch).standing.flow_now->value;
  const double as_dry = folded({dry.log}, batch).standing.flow_now->value;
  const double as_left = folded({neither.log}, batch).standing.flow_now->value;
  CHECK(as_wet == doctest::Approx(before).epsilon(1e-9));
  CHECK(as_dry < as_left + 1e-9);
  CHECK(as_left < before);
  CHECK(as_dry > 0);
}

TEST_CASE("paint of another batch goes in as what it is made of") {
  Writer w = mulled();
  const Batch before = folded({w.log}, batch);
  Card old = paint_of("old", 4.2);
  w.put(batch, LaidOut{old});
  w.put(batch, Added{"old", Unit::g, 13.5, ""});
  const Batch b = folded({w.log}, batch);
  CHECK(b.warnings.empty());
  CHECK(b.standing.pigment_g.value == doctest::Approx(before.standing.pigment_g.value + 5));
  CHECK(b.standing.gum_g.value == doctest::Approx(before.standing.gum_g.value + 2));
  CHECK(b.standing.honey_g.value == doctest::Approx(before.standing.honey_g.value + 0.5));
}

TEST_CASE("a batch knows which one it makes again, and whether its cautions were read") {
  Writer w;
  w.put("b2", Opened{"Kiln blue, 2", batch});
  CHECK(folded({w.log}, "b2").again_of == batch);
  CHECK_FALSE(folded({w.log}, "b2").cautions_seen);
  w.put("b2", CautionsSeen{});
  CHECK(folded({w.log}, "b2").cautions_seen);
}

TEST_CASE("poured paint has one age: since the last pour by then") {
  std::vector<session::Pan> pans(2);
  pans[0].layers = {{{"s", 1}, 0, 1000, 1, 1}, {{"s", 3}, 0, 5000, 1, 1}};
  pans[1].layers = {{{"s", 2}, 0, 3000, 1, 1}};
  CHECK_FALSE(session::last_pour(pans, 999));
  CHECK(session::last_pour(pans, 4000) == 3000);
  CHECK(session::last_pour(pans, 5000) == 5000);
  CHECK(session::since_pour_words(5 * 3'600'000) == "5 h after the last pour");
  CHECK(session::since_pour_words(session::a_day_ms) == "1 day after the last pour");
  CHECK(session::since_pour_words(3 * session::a_day_ms + 1) == session::days_since_pour_words(3));
}

}
