#include "make.hpp"
#include "session/in_words.hpp"
#include "words/paint_says.hpp"
#include "words/speaking.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace batch_test {

using namespace session;
using doctest::Approx;

namespace {

constexpr const char* batch = "7f3a91c2";

// 12.0 g of a pigment of 4.2 g/mL and 30 g oil; 5 g of binder weighed, 10 drops of it from a
// dropper calibrated with binder at 0.048 (0.004) mL, 0.5 g of water weighed.
make::Writer worked_example() {
  make::Writer w;
  w.card(make::pigment("pb28", 4.2, 30));
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.card(make::liquid("water", CardKind::water, {.water = 1}));
  w.card(make::dropper("bulb", 0.048, 0.004, CardKind::binder));
  w.put(batch, Opened{"Blue"});
  w.put(batch, RoomSet{22, 0.45, false});
  w.put(batch, Added{"pb28", Unit::g, 12, ""});
  w.put(batch, Added{"gum", Unit::g, 5, ""});
  for (int i = 0; i < 10; ++i) w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  w.put(batch, Added{"water", Unit::g, 0.5, ""});
  return w;
}

// |a - b| below a share of b.
bool near(double a, double b, double share) { return std::abs(a - b) <= share * std::abs(b); }

}

// By hand. Binder: gum as sold holds 12 % water, so dry gum 0.88/3 = 0.293333, water
// 2.12/3 = 0.706667; 1 g takes 0.293333 * 0.60 + 0.706667 / 0.99821 = 0.883934 mL.
//   pigment     12 / 4.2                       = 2.857143 mL
//   ten drops   0.48 mL / 0.883934             = 0.543027 g
//   binder      5 + 0.543027                   = 5.543027 g, 4.899670 mL
//   water       0.5 / 0.99821                  = 0.500897 mL
//   ratio       5.543027 / 12 * 10             = 4.619189
//   flow        (4.899670 + 0.500897)/2.857143 = 1.890198
//   oil point   30 * 4.2 / 93.5                = 1.347594, flow over it 1.402647
//   u(ratio)    scale 0.1/sqrt(12) = 0.028868 each; drops 5 % each: 0.0543027 * 0.05 * sqrt(10)
//               = 0.008586; dropper 0.543027 * 0.004/0.048 = 0.045252
//               u(binder) = sqrt(0.028868^2 + 0.008586^2 + 0.045252^2) = 0.054358
//               4.619189 * sqrt((0.054358/5.543027)^2 + (0.028868/12)^2) = 0.046641
// Tolerance: the six digits written here.
TEST_CASE("a batch computed by hand") {
  const auto b = make::folded({worked_example().log}, batch);
  CHECK(b.name == "Blue");
  CHECK(b.warnings.empty());
  REQUIRE(b.standing.binder_ratio);
  CHECK(near(b.standing.binder_ratio->value, 4.619189, 2e-6));
  CHECK(near(paint::uncertainty(*b.standing.binder_ratio), 0.046641, 5e-5));
  CHECK(near(b.standing.pigment_mL.value, 2.857143, 2e-6));
  CHECK(near(b.standing.flow_put_in->value, 1.890198, 2e-6));
  CHECK(near(b.standing.flow_now->value, 1.890198, 2e-6));
  CHECK(near(b.standing.over_oil_point->value, 1.402647, 2e-6));
  REQUIRE(b.totals.size() == 3);
  CHECK(b.totals[1].drops == 10);
  CHECK(b.totals[1].weighed_g == 5);
  CHECK(b.totals[1].grams.shares.at("bulb") == Approx(0.045252).epsilon(1e-4));
}

// 0.14 kg/(m2 h) at 22 °C and 45 %; mulling spreads over 0.032 m2; ten minutes take
// 0.14 * 0.032 / 6 = 0.7467 g while the paint's water activity is 1. It may fall a little on the
// way: 6 % less are allowed, no more than rounding above.
TEST_CASE("ten minutes under the muller let water go, a covered jar none") {
  auto w = worked_example();
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(600);
  w.put(batch, Gathered{});
  w.wait(86400);
  w.put(batch, Closed{});
  const auto b = make::folded({w.log}, batch);
  CHECK(b.dried_mL.value * 0.99821 < 0.74675);
  CHECK(b.dried_mL.value * 0.99821 > 0.7467 * 0.94);
  CHECK(b.standing.flow_now->value < b.standing.flow_put_in->value);
  CHECK(b.progress == Progress::closed);
  REQUIRE(b.passes.size() == 1);
  CHECK(*b.passes[0].end - b.passes[0].start == 600);
  CHECK(seconds_of(b, Stage::mulling) == 600);
}

TEST_CASE("what was withdrawn counts nowhere, and a withdrawal can itself be withdrawn") {
  auto w = worked_example();
  const auto before = make::folded({w.log}, batch);
  const Ref drop = w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  const auto with_drop = make::folded({w.log}, batch);
  const Ref undo = w.put(batch, Withdrawn{drop});
  const auto undone = make::folded({w.log}, batch);
  CHECK(undone.standing.binder_ratio->value == before.standing.binder_ratio->value);
  CHECK(undone.totals[1].drops == 10);
  w.put(batch, Withdrawn{undo});
  const auto again = make::folded({w.log}, batch);
  CHECK(again.standing.binder_ratio->value == with_drop.standing.binder_ratio->value);
}

TEST_CASE("withdrawing a line that is not there is a warning, not a sum") {
  auto w = worked_example();
  w.put(batch, Withdrawn{{"beefbeef", 4}});
  const auto b = make::folded({w.log}, batch);
  REQUIRE(b.warnings.size() == 1);
  CHECK(b.warnings[0].kind == WarningKind::withdrawn_missing);
  CHECK(near(b.standing.binder_ratio->value, 4.619189, 2e-6));
}

TEST_CASE("an addition of a card nobody laid out is left out and said") {
  auto w = worked_example();
  w.put(batch, Added{"mystery", Unit::g, 3, ""});
  w.put(batch, Added{"gum", Unit::drops, 1, "mystery"});
  w.put(batch, Unknown{"sniffed", "{}"});
  const auto b = make::folded({w.log}, batch);
  REQUIRE(b.warnings.size() == 3);
  CHECK(b.warnings[0].kind == WarningKind::unknown_card);
  CHECK(b.warnings[1].kind == WarningKind::amount_unreadable);
  CHECK(b.warnings[2].kind == WarningKind::unknown_event);
  CHECK(near(b.standing.binder_ratio->value, 4.619189, 2e-6));
}

TEST_CASE("a warning is facts: the fold is the same in every language, its words are not") {
  auto w = worked_example();
  w.put(batch, Added{"mystery", Unit::g, 3, ""});
  w.put(batch, Added{"gum", Unit::g, -2.5, ""});
  const auto b = make::folded({w.log}, batch);
  const words::Speaking other(words::Language::pseudo);
  const auto again = make::folded({w.log}, batch);
  REQUIRE(b.warnings.size() == 2);
  REQUIRE(again.warnings.size() == 2);
  for (std::size_t i = 0; i < 2; ++i) {
    CHECK(again.warnings[i].of == b.warnings[i].of);
    CHECK(again.warnings[i].why == b.warnings[i].why);
  }
  CHECK(b.warnings[0].of == "mystery");
  REQUIRE(b.warnings[1].why);
  CHECK(b.warnings[1].why->what == words::PaintSay::negative_amount);
  CHECK(warning_words(b.warnings[1]).find("-2,5") != std::string::npos);
}

TEST_CASE("no pigment: no ratio; no liquid: a ratio of nothing") {
  make::Writer w;
  w.card(make::pigment("pb28", 4.2, 30));
  w.put(batch, Opened{"Empty"});
  CHECK_FALSE(make::folded({w.log}, batch).standing.binder_ratio);
  CHECK_FALSE(make::folded({w.log}, batch).standing.flow_now);
  w.put(batch, Added{"pb28", Unit::g, 12, ""});
  const auto b = make::folded({w.log}, batch);
  REQUIRE(b.standing.binder_ratio);
  CHECK(b.standing.binder_ratio->value == 0);
  CHECK(b.trail.empty());
  CHECK(b.powder_is_dry);
}

TEST_CASE("powder is dry until it was worked in, and again when more is added") {
  auto w = worked_example();
  const auto is_dry = [&] { return make::folded({w.log}, batch).powder_is_dry; };
  CHECK(is_dry());
  w.put(batch, StageBegan{Stage::wetting_out});
  CHECK(is_dry());
  w.put(batch, StageBegan{Stage::mulling}); // a tap wets nothing
  CHECK(is_dry());
  w.wait(90);
  w.put(batch, StageBegan{Stage::resting});
  CHECK_FALSE(is_dry());
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(80);
  w.put(batch, Added{"pb28", Unit::g, 1, ""});
  CHECK(is_dry());
  w.wait(20);
  w.put(batch, StageBegan{Stage::resting}); // the new powder was not worked so long
  CHECK(is_dry());
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(70);
  w.put(batch, StageBegan{Stage::resting});
  CHECK_FALSE(is_dry());
}

TEST_CASE(
    "whoever feels the paint says that the powder is wet, but not stiff in the first minutes") {
  auto w = worked_example();
  const auto is_dry = [&] { return make::folded({w.log}, batch).powder_is_dry; };
  w.put(batch, StageBegan{Stage::wetting_out});
  w.wait(20);
  w.put(batch, Felt{Feel::wont_move, By::knife});
  CHECK(is_dry());
  w.put(batch, Felt{Feel::right, By::knife});
  CHECK_FALSE(is_dry());
}

TEST_CASE("two devices: the order stamps decide, whatever order the files come in") {
  make::Writer a("aaaaaaaa"), b("bbbbbbbb");
  for (make::Writer* w : {&a, &b}) {
    w->card(make::pigment("pb28", 4.2, 30));
    w->card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  }
  a.put(batch, Opened{"Blue"});
  a.put(batch, Added{"pb28", Unit::g, 10, ""});
  b.wait(60);
  b.put(batch, Added{"gum", Unit::g, 4, ""});
  a.wait(120);
  a.put(batch, Added{"gum", Unit::g, 1, ""});
  const auto one = make::folded({a.log, b.log}, batch);
  const auto two = make::folded({b.log, a.log}, batch);
  CHECK(one.standing.binder_ratio->value == 5);
  CHECK(two.standing.binder_ratio->value == one.standing.binder_ratio->value);
  REQUIRE(one.entries.size() == two.entries.size());
  for (std::size_t i = 0; i < one.entries.size(); ++i)
    CHECK(one.entries[i].ref == two.entries[i].ref);
  CHECK(one.clock == 120);
}

TEST_CASE("a pass ends with its session") {
  make::Writer a("aaaaaaaa"), b("bbbbbbbb");
  a.put(batch, Opened{"Blue"});
  a.put(batch, StageBegan{Stage::mulling});
  a.wait(30);
  a.put(batch, Felt{Feel::right, By::muller});
  b.wait(7200);
  b.put(batch, Felt{Feel::right, By::muller});
  const auto folded = make::folded({a.log, b.log}, batch);
  REQUIRE(folded.passes.size() == 1);
  CHECK(*folded.passes[0].end == 30);
  CHECK(folded.clock == 7200);
}

// The evening's last line is of no batch, or of another one: the muller went on until then.
TEST_CASE("a pass that was left running for the night has ended with what was told last") {
  make::Writer w = worked_example();
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(300);
  w.put(batch, Dot{Specks::few});
  for (int i = 0; i < 150; ++i) w.wait(240), w.put(batch, GoesOn{}); // nobody kills the program
  w.put(batch, Felt{Feel::wont_move, By::muller});
  const Batch b = make::folded({w.log}, batch);
  CHECK(seconds_of(b, Stage::mulling) == Approx(300));
  CHECK(running(b) == nullptr);
  CHECK(b.passes.back().cut_short);
  CHECK(b.passes.back().left_running);
}

TEST_CASE("a pass ends with the last line of its session, of whatever batch that is") {
  const Line last_lines[] = {{0, 0, 0, "", Left{}},
                             {0, 0, 0, "", PutAway{"nothing"}},
                             {0, 0, 0, "another", Felt{Feel::right, By::knife}},
                             {0, 0, 0, batch, GoesOn{}}};
  for (const Line& last : last_lines) {
    auto a = worked_example();
    make::Writer b("bbbbbbbb");
    a.put(batch, StageBegan{Stage::mulling});
    a.wait(1200);
    a.put(last.batch, last.event);
    const auto alone = make::folded({a.log}, batch);
    CHECK(seconds_of(alone, Stage::mulling) == 1200);
    CHECK((running(alone) == nullptr) == std::holds_alternative<Left>(last.event));
    b.wait(1260);
    b.put(batch, Felt{Feel::right, By::muller});
    const auto both = make::folded({a.log, b.log}, batch);
    CHECK(seconds_of(both, Stage::mulling) == 1200);
    REQUIRE(both.feelings.size() == 1);
    CHECK(both.feelings[0].flow < alone.standing.flow_now->value);
    CHECK(both.feelings[0].flow > 0.97 * alone.standing.flow_now->value);
    const auto logs = std::vector{a.log};
    const auto later = fold(all_of(logs), batch, Moment{a.at0 + a.t + 3600000, "bbbbbbbb", 0});
    CHECK(seconds_of(*later, Stage::mulling) == 1200);
  }
}

TEST_CASE("another device ends a pass that runs on this one, at the moment it speaks") {
  auto a = worked_example();
  make::Writer b("bbbbbbbb");
  a.put(batch, StageBegan{Stage::mulling});
  b.wait(300);
  b.put(batch, Added{"water", Unit::g, 0, ""});
  a.wait(1200);
  a.put(batch, Felt{Feel::right, By::muller});
  const auto folded = make::folded({a.log, b.log}, batch);
  CHECK(seconds_of(folded, Stage::mulling) == 300);
}

TEST_CASE("paint that was covered after the pass has lost what the pass took") {
  auto a = worked_example();
  make::Writer b("bbbbbbbb");
  a.put(batch, StageBegan{Stage::mulling});
  a.wait(1200);
  a.put("", Left{});
  b.wait(40000);
  b.put(batch, Found{State::wet});
  const double at_the_end = make::folded({a.log}, batch).standing.flow_now->value;
  CHECK(make::folded({a.log, b.log}, batch).standing.flow_now->value == Approx(at_the_end));
}

TEST_CASE("an answer that was taken back dries nothing where the next one says it was covered") {
  auto a = worked_example();
  a.put("", Left{});
  make::Writer at_once("bbbbbbbb"), after_all("bbbbbbbb");
  for (auto* w : {&at_once, &after_all}) w->wait(50000);
  after_all.put(batch, Withdrawn{after_all.put(batch, Found{State::dry})});
  for (auto* w : {&at_once, &after_all}) w->put(batch, Found{State::wet});
  const double covered = make::folded({a.log, at_once.log}, batch).standing.flow_now->value;
  CHECK(make::folded({a.log, after_all.log}, batch).standing.flow_now->value == Approx(covered));
  // What was tapped and withdrawn before a time away is none of it.
  auto worked = worked_example();
  worked.wait(1200);
  worked.put(batch, Withdrawn{worked.put(batch, Felt{Feel::right, By::knife})});
  const double then = make::folded({worked.log}, batch).standing.flow_now->value;
  worked.wait(50000);
  worked.put(batch, Found{State::wet});
  CHECK(make::folded({worked.log}, batch).standing.flow_now->value == Approx(then));
}

TEST_CASE("an open batch goes on drying up to now; a batch nobody opened is none") {
  auto w = worked_example();
  const Moment later{w.at0 + 3600000, "", 0};
  const auto logs = std::vector{w.log};
  const auto now = fold(all_of(logs), batch, later);
  CHECK(now->clock == 3600);
  CHECK(now->standing.flow_now->value < 1.89);
  CHECK_FALSE(fold(all_of(logs), "nothing"));
  CHECK_FALSE(fold({}, batch));
  CHECK(batch_ids(all_of(logs)) == std::vector<std::string>{batch});
}

}
