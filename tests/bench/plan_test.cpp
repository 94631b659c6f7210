// What Plan makes of pigments, parts and pans.
#include "bench/again.hpp"
#include "bench/choices.hpp"
#include "bench/measures.hpp"
#include "bench/planning.hpp"
#include "planned.hpp"
#include "words/bench_says.hpp"

#include <cmath>
#include <map>

namespace plan_test {

using namespace bench;
using doctest::Approx;
using hands::Hands, hands::planned_now;

namespace {

words::Sentence error_of(Hands& h) {
  REQUIRE(h.b.number);
  REQUIRE(h.b.number->error);
  return h.b.number->error->what;
}

void want(Hands& h, Want what, const std::string& number) {
  while (h.b.plan.want != what) h.tap("want");
  h.tap("weigh");
  h.type(number);
}

}

TEST_CASE("a blend by weight and by volume") {
  Hands h;
  h.choose("pb28");
  h.choose("pb29");
  CHECK(h.b.plan.name == "Cobalt blue, Ultramarine blue");
  h.tap("parts pb28");
  h.type("3");
  want(h, Want::pigment_g, "12");
  Planned p = planned_now(h);
  CHECK(p.pigments[0].grams == Approx(9));
  CHECK(p.pigments[1].grams == Approx(3));
  h.tap("by_volume");
  p = planned_now(h);
  CHECK(p.pigments[0].grams + p.pigments[1].grams == Approx(12));
  double mL[2];
  for (int i = 0; i < 2; ++i)
    for (const session::Card& card : h.b.shelf)
      if (card.id == p.pigments[i].card)
        mL[i] = p.pigments[i].grams / pigment_of(card).pigment.g_per_mL;
  CHECK(mL[0] / mL[1] == Approx(3));
}

TEST_CASE("a second tap takes a pigment out; there are at most four") {
  Hands h;
  h.tap("pigment pb28");
  h.tap("pigment pb28");
  CHECK(h.b.plan.blend.empty());
  for (const char* id : {"pw6", "pw4", "pb28"}) h.choose(id);
  h.tap("another_pigment");
  for (const char* id : {"pb29", "pb35"}) h.tap(std::string("pigment ") + id);
  CHECK(h.b.plan.blend.size() == most_pigments);
  REQUIRE(h.b.notice.error);
  CHECK(h.b.notice.error->what == words::BenchSay::blend_full);
}

TEST_CASE("a blend begins with each pigment weighed, and one pad that asks which") {
  Hands h;
  h.choose("pb28");
  h.choose("pb29");
  want(h, Want::pigment_g, "12");
  h.tap("begin");
  CHECK(h.b.folded->standing.pigment_g.value == Approx(12));
  CHECK(h.shows("pigments"));
  CHECK_FALSE(h.shows("add pb28"));
  h.tap("pigments");
  h.tap("add pb29");
  h.type("2");
  CHECK(h.b.folded->standing.pigment_g.value == Approx(14));
}

// n pours of a brim each, of which a share f stays, leave C (1 - (1 - f)^n) dry; they take
// C (1 + (1 - f) + ...) of wet paint.
TEST_CASE("so many pans come to grams, and those grams to so many pans") {
  Hands h;
  h.tap("pigment pb29");
  want(h, Want::pans, "6");
  const Planned p = planned_now(h);
  const double leaves = 1 - p.dry_share;
  int layers = 1;
  while (1 - std::pow(leaves, layers) < planned_fill) ++layers;
  CHECK(p.layers == layers);
  CHECK(p.pans == 6);
  CHECK(p.wet_mL == Approx(6 * 1.7 * (1 - std::pow(leaves, layers)) / p.dry_share).epsilon(1e-6));
  Hands other;
  other.tap("pigment pb29");
  want(other, Want::wet_mL, std::to_string(p.wet_mL).substr(0, 4));
  CHECK(planned_now(other).pigment_g == Approx(p.pigment_g).epsilon(0.01));
}

TEST_CASE("each paint keeps a share of its own when dry, as the fold has it") {
  std::map<std::string, double> shares;
  for (const char* id : {"pr108", "pb29", "pg7", "pbk6"}) {
    Hands h;
    h.choose(id);
    want(h, Want::pigment_g, "10");
    shares[id] = planned_now(h).dry_share;
    CHECK(shares[id] > 0.4);
    CHECK(shares[id] < 0.75);
  }
  CHECK(std::abs(shares["pr108"] - shares["pg7"]) > 0.02);
}

TEST_CASE("the binder of a plan makes up for what dries off until the paint is right") {
  Hands h;
  h.tap("pigment pb28");
  want(h, Want::pigment_g, "12");
  const Planned p = planned_now(h);
  const session::Card* binder = shelf_card(h.b, h.b.plan.binder);
  const double per_mL = measures_of(h.b, *binder).g_per_mL;
  const double live_g =
      (p.wet_mL - 12 / pigment_of(*shelf_card(h.b, "pb28")).pigment.g_per_mL) * per_mL;
  CHECK(p.binder_g / live_g - 1 > 0.05);
  CHECK(p.binder_g / live_g - 1 < 0.25);
  CHECK(p.first_helping.high_g <= 0.7 * live_g * 1.001);
}

TEST_CASE("Plan and Slab ask for the same first helping, of a blend too") {
  for (const bool blend : {false, true}) {
    Hands h;
    h.choose("pr108");
    if (blend) h.choose("pv19");
    want(h, Want::pigment_g, "30");
    const Planned p = planned_now(h);
    h.tap("begin");
    const Advice advice = h.slab().advice;
    CHECK(advice.kind == Advice::first_helping);
    CHECK(advice.low_g == Approx(p.first_helping.low_g).epsilon(0.02));
    CHECK(advice.high_g == Approx(p.first_helping.high_g).epsilon(0.02));
    CHECK(advice.amount.spoons == p.first_helping.amount.spoons);
    CHECK(advice.amount.drops == p.first_helping.amount.drops);
  }
}

TEST_CASE("what follows the first helping is said in spoons, and counted where it is little") {
  Hands h;
  h.choose("pv19");
  want(h, Want::pigment_g, "20");
  const Planned much = planned_now(h);
  CHECK(much.rest_spoons > 1);
  CHECK(much.drops == 0);
  want(h, Want::pigment_g, "0.3");
  const Planned little = planned_now(h);
  CHECK(little.rest_spoons == 0);
  CHECK(little.drops > 0);
  CHECK(little.drops <= most_counted);
}

TEST_CASE("what was worked out from pans is not yet weighed") {
  Hands h;
  h.tap("pigment pb29");
  want(h, Want::pans, "6");
  h.tap("begin");
  CHECK(h.b.folded->standing.pigment_g.value == 0);
}

TEST_CASE("dried paint weighs more than its pigment and less than wet") {
  Hands h;
  h.tap("pigment pb29");
  want(h, Want::dried_g, "20");
  const Planned p = planned_now(h);
  CHECK(p.pigment_g < 20);
  CHECK(p.pigment_g + p.binder_g > 20);
}

TEST_CASE("numbers that make no plan are refused with words, and nothing changes") {
  Hands h;
  h.choose("pb29");
  h.choose("pb28");
  h.tap("want"); // pans
  for (const char* number : {"0", "2.5", "99999"}) {
    h.tap("weigh");
    h.type(number);
    CHECK(error_of(h) != words::Sentence{});
    h.tap("leave");
  }
  CHECK(h.b.plan.wanted == 0);
  h.tap("parts pb29");
  h.type("0");
  CHECK(error_of(h) == words::BenchSay::parts_out_of_range);
}

TEST_CASE("cautions are opened by one tap, and reading them is recorded") {
  Hands h;
  h.tap("pigment pb28");
  CHECK_FALSE(h.shows("cautions_read"));
  h.tap("cautions");
  h.tap("cautions_read");
  h.tap("begin");
  CHECK(h.b.folded->cautions_seen);
}

TEST_CASE("again: the same pigments and binder, scaled, and whose child it is") {
  Hands h;
  h.choose("pb28");
  h.choose("pb29");
  h.tap("parts pb28");
  h.type("2");
  h.tap("binder gum_12_honey");
  want(h, Want::pigment_g, "12");
  h.tap("begin");
  h.tap("add gum_12_honey");
  const std::string first = h.b.batch;
  make_again(h.b, first, h.now());
  CHECK(h.b.screen == Screen::plan);
  CHECK(h.b.plan.binder == "gum_12_honey");
  CHECK(planned_now(h).pigment_g == Approx(12));
  want(h, Want::pigment_g, "24");
  CHECK(planned_now(h).pigments[0].grams == Approx(16));
  h.tap("begin");
  CHECK(h.b.folded->again_of == first);
}

TEST_CASE(
    "made again, a plan takes the binder that the batch took, scaled, until its pigments change") {
  Hands h;
  h.tap("pigment pb28");
  h.tap("weigh");
  h.type("12");
  h.tap("begin");
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add " + h.b.plan.binder);
  h.type("4.2");
  for (int i = 0; i < 3; ++i) h.tap("pass");
  h.tap("felt right");
  const std::string made = h.b.batch;
  h.tap("gather");
  h.tap("close");
  h.tap("make_again");
  const auto plan = [&] { return std::get<PlanView>(view(h.b, h.now()).screen).planned; };
  REQUIRE(plan());
  CHECK(plan()->as_made);
  CHECK(plan()->binder_g == doctest::Approx(4.2));
  CHECK(plan()->first_helping.high_g < plan()->binder_g);
  h.tap("weigh");
  h.type("24");
  CHECK(plan()->binder_g == doctest::Approx(8.4));
  h.choose("pw4");
  CHECK_FALSE(plan()->as_made);
}

TEST_CASE("whole pans are asked for by the two that are near") {
  Hands h;
  h.tap("pigment pb28");
  h.tap("want");
  h.tap("weigh");
  h.type("2.5");
  const auto v = std::get<PlanView>(view(h.b, h.now()).screen);
  REQUIRE(v.number);
  using words::Number;
  CHECK(v.number->error == words::Error{words::BenchSay::pans_not_whole,
                                        {Number(2, 0), Number(3, 0), Number(2.5, 1)}});
}

TEST_CASE("a batch left open lately is offered on Plan, and a tap goes on with it") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  const std::string id = h.b.batch;
  h.wait(2 * 86400);
  Hands later;
  later.open_after(h, 0, Screen::plan);
  REQUIRE(later.shows("go_on " + id));
  CHECK(std::get<PlanView>(view(later.b, later.now()).screen).go_on == h.b.folded->name);
  later.tap("pigment pb28"); // another batch is being planned
  CHECK_FALSE(later.shows("go_on " + id));
  later.tap("pigment pb28");
  later.tap("go_on " + id);
  CHECK(later.b.screen == Screen::slab);
  CHECK(later.b.batch == id);
  CHECK_FALSE(later.slab().undo.target);
  later.tap("found wet");
  later.tap("plan");
  CHECK_FALSE(later.shows("go_on " + id));
}

TEST_CASE("a batch gathered, or left open for longer, is not offered") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  const std::string id = h.b.batch;
  h.wait(3.5 * 86400);
  Hands late;
  late.open_after(h, 0, Screen::plan);
  CHECK_FALSE(late.shows("go_on " + id));
  h.tap("pass");
  h.tap("pass");
  for (const char* pad : {"pass", "gather"}) h.tap(pad);
  Hands gathered;
  gathered.open_after(h, 0, Screen::plan);
  CHECK_FALSE(gathered.shows("go_on " + id));
}

namespace {

const session::Planned& plan_of(Hands& h) {
  REQUIRE(h.b.folded->plan);
  return h.b.folded->plan->of;
}

}

TEST_CASE("the plan goes with the batch: what is to be weighed, for which pans") {
  Hands h;
  for (const char* id : {"pb28", "pb29"}) h.choose(id);
  want(h, Want::pans, "6");
  const Planned p = planned_now(h);
  const std::string pan = h.b.plan.pan;
  h.tap("begin");
  CHECK(h.count<session::Planned>() == 1);
  CHECK(plan_of(h).pans == 6);
  CHECK(plan_of(h).in == pan);
  REQUIRE(plan_of(h).takes.size() == 3);
  CHECK(plan_of(h).takes[0] == session::Planned::Take{"pb28", p.pigments[0].grams});
  CHECK(plan_of(h).takes[2] == session::Planned::Take{"gum_12", std::nullopt});
  REQUIRE(h.slab().to_come.size() == 2);
  CHECK(h.slab().to_come[0].g == Approx(p.pigments[0].grams));
  for (const char* pad : {"pigments", "add pb28"}) h.tap(pad);
  h.type("99");
  h.tap("enter"); // much more than was planned is asked about
  REQUIRE(h.slab().to_come.size() == 1);
  CHECK(h.slab().to_come[0].name == "Ultramarine blue");
  h.tap("undo");
  CHECK(h.slab().to_come.size() == 2); // nothing is lost with what was taken back
}

TEST_CASE("what was typed as pigment is weighed already, and a plan of nothing is none") {
  Hands h;
  h.begin();
  CHECK(h.slab().to_come.empty());
  Hands bare;
  bare.tap("pigment pb28");
  bare.tap("begin");
  CHECK(bare.count<session::Planned>() == 0);
  CHECK(bare.slab().to_come.empty());
}

TEST_CASE("made again: honey, water and ox gall as last time, to as much as there will be") {
  Hands h;
  h.begin();
  for (const char* id : {"gum_12", "honey_11", "water"}) {
    h.tap("another");
    h.tap("amount weigh");
    h.tap(std::string("add ") + id);
    h.type(id == std::string("gum_12") ? "5" : "0.4");
  }
  for (const char* pad : {"pass", "pass", "pass", "gather", "close"}) h.tap(pad);
  make_again(h.b, h.b.batches.back(), h.now());
  h.give(Tick{});
  h.tap("weigh");
  h.type("24");
  const auto plan = std::get<PlanView>(view(h.b, h.now()).screen);
  REQUIRE(plan.planned);
  REQUIRE(plan.planned->extras.size() == 2);
  CHECK(plan.planned->extras[0].grams == Approx(0.8));
  CHECK(plan.lines.back().why == PlanView::Step::extra);
  CHECK_FALSE(plan.lines.back().scoops.empty()); // in drops, as nobody weighs so little
  h.tap("begin");
  std::vector<ToComeView> to_come = h.slab().to_come;
  REQUIRE(to_come.size() == 2);
  CHECK(to_come[0].kind == session::CardKind::honey);
  CHECK(to_come[0].amount.drops > 10); // let down with water it drips
  CHECK(to_come[0].g == Approx(0.8));
  CHECK(to_come[1].kind == session::CardKind::water);
  CHECK(to_come[1].amount.drops == 15); // of 16
  for (const session::Planned::Take& take : plan_of(h).takes)
    if (take.of == "gum_12") CHECK(*take.g == Approx(h.slab().last_time_g.value()));
  h.tap("add water");
  CHECK(h.slab().to_come[1].begun);
}

}
