// What dry paint teaches of honey, glycerin and gum: said on the pigment's card and in Plan.
#include "bench/choices.hpp"
#include "bench/known.hpp"
#include "bench/learning.hpp"
#include "bench/rewetting.hpp"
#include "bench/softening.hpp"
#include "hands.hpp"
#include "session/amounts.hpp"

#include <algorithm>

namespace rewetting_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;
using session::Became;

namespace {

void study_all(Hands& h) {
  for (int i = 0; wants_to_study(h.b) && i < 100; ++i) step(h.b, Study{}, h.now());
  h.give(Tick{});
}

// 12 g of cobalt blue in so much of that binder, poured, and judged three days later.
std::string batch_that_became(Hands& h, const std::string& as, const std::string& binder = "gum_12",
                              const char* g = "9", int drops_of_honey = 0) {
  h.tap("plan");
  h.tap("pigment pb28");
  h.tap("binder " + binder);
  h.tap("weigh");
  h.type("12");
  h.tap("begin");
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add " + binder);
  h.type(g);
  for (int i = 0; i < drops_of_honey; ++i) h.tap("add honey_11");
  for (const char* pad : {"pass", "pass", "pass", "gather", "pans", "pour_all"}) h.tap(pad);
  h.wait(3 * 24 * 3600);
  h.tap("judge");
  h.tap("became " + as);
  study_all(h);
  return h.b.batch;
}

PlanView planned_with(Hands& h, const std::string& binder) {
  h.tap("plan");
  h.tap("pigment pb28");
  h.tap("binder " + binder);
  h.tap("weigh");
  h.type("12");
  return std::get<PlanView>(view(h.b, h.now()).screen);
}

SoftWanted of_card(Hands& h) { return soft_wanted(h.b, *shelf_card(h.b, "pb28")); }

}

TEST_CASE("paint that would not re-wet: so many drops of honey more, and those are enough") {
  Hands h;
  CHECK_FALSE(planned_with(h, "gum_12").last_time);
  h.tap("plan");
  h.tap("pigment pb28"); // off again
  batch_that_became(h, "wont_rewet");
  const PlanView plan = planned_with(h, "gum_12");
  REQUIRE(plan.last_time);
  const LastTime& last = *plan.last_time;
  CHECK(last.as == Became::wont_rewet);
  CHECK_FALSE(last.enough);
  CHECK(last.g > 0.1);
  const session::Card& honey = *shelf_of(h.b, session::CardKind::honey).front();
  CHECK(last.card == honey.name);
  // Put in, it has about as much as paint usually has; more is asked for once that was too little.
  const auto parts = session::material_of(*shelf_card(h.b, "gum_12"))->parts;
  paint::Wet dry{.gum_g = plan.planned->binder_g * parts.gum};
  dry.honey_g = last.g * session::material_of(honey)->parts.honey;
  const double index = *paint::tack_index(dry, {h.b.plan.celsius, h.b.plan.humidity});
  CHECK(dry.honey_g == Approx(usual_honey_solids_g(plan.planned->binder_g)).epsilon(0.05));
  CHECK(index < caution_mark(paint::TackMark{}));
}

TEST_CASE("Plan says where its binder brings too little gum, as Slab will") {
  Hands h;
  const PlanView plan = planned_with(h, "gum_12");
  REQUIRE(plan.planned);
  CHECK_FALSE(plan.is_short_of_gum);
  Planned less = *plan.planned;
  less.binder_g /= 3;
  CHECK(is_short_of_gum(h.b, less));
}

TEST_CASE("air too damp to dry in is not called dry") {
  Hands h;
  h.b.plan.humidity = 0.99;
  CHECK(of_card(h).damp);
  CHECK_FALSE(of_card(h).honey);
  h.b.plan.humidity = 0.03;
  CHECK_FALSE(of_card(h).damp);
}

TEST_CASE("the word taken back, another after it, or the batch discarded: nothing is asked for") {
  Hands h;
  const std::string batch = batch_that_became(h, "wont_rewet");
  REQUIRE(h.b.rewetting.of.count(batch) == 1);
  h.tap("became wont_rewet"); // a bouncing thumb
  CHECK(h.b.rewetting.of.size() == 1);
  h.wait(2);
  h.tap("became wont_rewet"); // taken back
  study_all(h);
  CHECK(h.b.rewetting.of.empty());
  h.tap("became wont_rewet");
  h.tap("became good");
  study_all(h);
  CHECK(h.b.rewetting.of.at(batch).as == Became::good);
  CHECK_FALSE(planned_with(h, "gum_12").last_time);
  h.tap("book");
  h.tap("batch " + batch);
  h.tap("discard");
  study_all(h);
  CHECK(h.b.rewetting.of.empty());
}

TEST_CASE("a plan with honey in its binder asks for less of it, and for none where it is enough") {
  Hands h;
  batch_that_became(h, "wont_rewet");
  const double plain_g = planned_with(h, "gum_12").last_time->g;
  h.tap("plan");
  h.tap("pigment pb28"); // off again
  const PlanView with_honey = planned_with(h, "gum_12_honey");
  REQUIRE(with_honey.last_time);
  CHECK(with_honey.last_time->g < 0.7 * plain_g);
  Planned sweet = *with_honey.planned;
  sweet.extras.push_back({shelf_of(h.b, session::CardKind::honey).front()->id, plain_g});
  CHECK(last_time(h.b, sweet)->enough);
}

TEST_CASE("paint that stayed tacky: how much honey at most; that rubbed off: more binder") {
  Hands tacky;
  batch_that_became(tacky, "sticky", "gum_12_honey");
  const auto less = planned_with(tacky, "gum_12_honey").last_time;
  REQUIRE(less);
  CHECK(less->as == Became::sticky);
  CHECK(less->card.empty());
  CHECK_FALSE(less->enough);
  CHECK(less->most_honey_g > 0);
  Hands dusty;
  batch_that_became(dusty, "rubs_off", "gum_12", "4");
  const PlanView more = planned_with(dusty, "gum_12");
  REQUIRE(more.last_time);
  CHECK(more.last_time->as == Became::rubs_off);
  CHECK((more.last_time->enough || more.last_time->card == shelf_card(dusty.b, "gum_12")->name));
}

TEST_CASE("what the last dry paint lacked stands in the plan of the next, and on Slab") {
  Hands h;
  batch_that_became(h, "wont_rewet");
  const PlanView plan = planned_with(h, "gum_12");
  REQUIRE(plan.last_time);
  CHECK(plan.last_time->in_plan);
  Hands first;
  const double without_mL = planned_with(first, "gum_12").planned->wet_mL;
  CHECK(plan.planned->wet_mL > without_mL + plan.last_time->g / 1.5);
  const auto lacked = std::find_if(plan.lines.begin(), plan.lines.end(), [](const auto& line) {
    return line.why == PlanView::Step::lacked;
  });
  REQUIRE(lacked != plan.lines.end());
  CHECK(lacked->name == plan.last_time->card);
  CHECK(lacked->g == Approx(plan.last_time->g));
  h.tap("begin");
  const auto to_come = h.slab().to_come;
  REQUIRE(to_come.size() == 1);
  CHECK(to_come[0].name == plan.last_time->card);
}

TEST_CASE("of paint that stayed tacky, made again, less honey is planned; water for a night none") {
  Hands h;
  h.tap("plan");
  h.tap("pigment pb28");
  h.tap("binder gum_12");
  h.tap("weigh");
  h.type("12");
  h.tap("begin");
  for (const auto& [what, g] : {std::pair{"gum_12", "4"}, {"honey_11", "6"}}) {
    for (const char* pad : {"another", "amount weigh"}) h.tap(pad);
    h.tap(std::string("add ") + what);
    h.type(g);
  }
  for (const char* pad : {"pass", "pass", "pass"}) h.tap(pad);
  h.wait(14 * 3600);
  h.tap("found dry");
  for (int i = 0; i < 12; ++i) h.tap("add water");
  h.tap("felt right");
  for (const char* pad : {"gather", "pans", "pour_all"}) h.tap(pad);
  const std::string batch = h.b.batch;
  h.wait(3 * 24 * 3600);
  h.tap("judge");
  h.tap("became sticky");
  study_all(h);
  h.tap("book");
  h.tap("batch " + batch);
  h.tap("make_again");
  const PlanView again = std::get<PlanView>(view(h.b, h.now()).screen);
  REQUIRE(again.last_time);
  CHECK(again.last_time->in_plan);
  CHECK(again.last_time->sweet_share < 1);
  for (const PlannedPigment& extra : again.planned->extras) {
    CHECK(extra.card != "water");
    if (extra.card == "honey_11") CHECK(extra.grams < 5);
  }
}

TEST_CASE("of paint that rubbed off, planned anew, more binder is in the plan and kept with it") {
  Hands h;
  batch_that_became(h, "rubs_off", "gum_12", "9");
  const PlanView plan = planned_with(h, "gum_12");
  REQUIRE(plan.last_time);
  REQUIRE_FALSE(plan.last_time->enough);
  CHECK(plan.last_time->in_plan);
  CHECK(plan.last_time->g > 0.1);
  Planned less = *plan.planned;
  less.binder_g -= plan.last_time->g;
  CHECK(last_time(h.b, less)->g == Approx(plan.last_time->g));
  CHECK(last_time(h.b, *plan.planned)->enough);
  h.tap("begin");
  REQUIRE(h.b.folded->plan);
  const auto& takes = h.b.folded->plan->of.takes;
  const auto binder =
      std::find_if(takes.begin(), takes.end(), [](const auto& t) { return t.of == "gum_12"; });
  REQUIRE(binder != takes.end());
  REQUIRE(binder->g);
  CHECK(*binder->g == Approx(plan.planned->binder_g));
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("7"); // right sooner than by the plan
  for (const char* pad : {"pass", "pass"}) h.tap(pad);
  h.wait(200);
  for (const char* pad : {"felt right", "pass", "dot", "specks none"}) h.tap(pad);
  REQUIRE(h.slab().advice.kind == Advice::there);
  REQUIRE(h.slab().to_come.size() == 1);
  CHECK(h.slab().to_come[0].kind == session::CardKind::binder);
}

namespace {

// Looked at, and taken out of the plan again.
Planned glance(Hands& h, const std::string& binder) {
  const Planned planned = *planned_with(h, binder).planned;
  h.tap("pigment pb28");
  return planned;
}

}

TEST_CASE("no plan goes back to the most gum that rubbed off") {
  Hands h;
  batch_that_became(h, "rubs_off", "gum_12", "9");
  const double more = glance(h, "gum_12").binder_g;
  batch_that_became(h, "rubs_off", "gum_12", "6");
  CHECK(glance(h, "gum_12").binder_g == Approx(more).epsilon(0.01));
}

TEST_CASE("what once helped is asked for again, and nothing where the plan is like what was good") {
  Hands h;
  batch_that_became(h, "wont_rewet");
  const auto failed = glance(h, "gum_12").last_time;
  REQUIRE(failed);
  CHECK_FALSE(failed->earlier);
  batch_that_became(h, "good", "gum_12_honey");
  const auto again = glance(h, "gum_12").last_time;
  REQUIRE(again);
  CHECK(again->as == Became::wont_rewet);
  CHECK(again->earlier);
  CHECK(again->in_plan);
  CHECK_FALSE(glance(h, "gum_12_honey").last_time);
}

TEST_CASE("once some honey was good and less was too little, as much as was good is planned") {
  Hands h;
  const std::string good = batch_that_became(h, "good", "gum_12", "9", 30);
  batch_that_became(h, "wont_rewet", "gum_12", "9", 5);
  const PlanView plan = planned_with(h, "gum_12");
  REQUIRE(plan.last_time);
  const auto parts = session::material_of(*shelf_card(h.b, "gum_12"))->parts;
  const session::Card& honey = *shelf_of(h.b, session::CardKind::honey).front();
  paint::Wet dry{.gum_g = plan.planned->binder_g * parts.gum};
  dry.honey_g = plan.last_time->g * session::material_of(honey)->parts.honey;
  const double index = *paint::tack_index(dry, {h.b.plan.celsius, h.b.plan.humidity});
  CHECK(index == Approx(h.b.rewetting.of.at(good).index).epsilon(0.02));
}

TEST_CASE("what was good is enough, and what stayed tacky is not asked for again") {
  Hands h;
  batch_that_became(h, "wont_rewet");
  const auto first = glance(h, "gum_12").last_time;
  REQUIRE(first);
  batch_that_became(h, "sticky", "gum_12_honey");
  const auto less = glance(h, "gum_12").last_time;
  REQUIRE(less);
  CHECK(less->as == Became::wont_rewet);
  CHECK(less->earlier);
  const auto tacky = glance(h, "gum_12_honey");
  REQUIRE(tacky.last_time);
  CHECK(tacky.last_time->as == Became::sticky);
  CHECK(less->g < 0.75 * first->g);
}

TEST_CASE("of paint that rubbed off, made again, more binder is planned") {
  Hands h;
  const std::string batch = batch_that_became(h, "rubs_off", "gum_12", "4");
  h.tap("plan");
  h.tap("book");
  h.tap("batch " + batch);
  h.tap("make_again");
  const PlanView again = std::get<PlanView>(view(h.b, h.now()).screen);
  REQUIRE(again.last_time);
  REQUIRE(again.last_time->in_plan);
  CHECK(again.planned->binder_g == Approx(4 + again.last_time->g).epsilon(0.02));
  h.tap("begin");
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("4");
  for (const char* pad : {"pass", "pass"}) h.tap(pad);
  h.wait(200);
  CHECK(h.slab().to_come.empty()); // until it is right the advice leads there
  for (const char* pad : {"felt right", "pass", "dot", "specks none"}) h.tap(pad);
  REQUIRE(h.slab().advice.kind == Advice::there);
  REQUIRE(h.slab().to_come.size() == 1);
  CHECK(h.slab().to_come[0].kind == session::CardKind::binder);
}

TEST_CASE("the pigment's card: a guess, then what its own paint and its class have taught") {
  Hands h;
  const SoftWanted guess = of_card(h);
  REQUIRE(guess.honey);
  REQUIRE(guess.glycerin);
  REQUIRE(guess.gum);
  CHECK(guess.verdicts == 0);
  CHECK(guess.of_class == 0);
  CHECK_FALSE(guess.last);
  CHECK(guess.honey->low_g < guess.honey->high_g);
  CHECK(guess.glycerin->high_g < guess.honey->high_g); // it holds more water
  CHECK(guess.gum->low_g < guess.gum->high_g);
  batch_that_became(h, "wont_rewet", "gum_12_honey");
  const SoftWanted taught = of_card(h);
  CHECK(taught.verdicts == 1);
  CHECK(taught.last == Became::wont_rewet);
  CHECK(taught.honey->low_g > guess.honey->low_g);
  h.tap("shelf");
  h.tap("card pb28");
  CHECK(std::get<ShelfView>(view(h.b, h.now()).screen).soft->verdicts == 1);
  // Others of its class start where it led, those of another class do not.
  const auto other = [&](const char* id) { return soft_wanted(h.b, *shelf_card(h.b, id)); };
  CHECK(other("pb29").of_class + other("py43").of_class >= 1);
  CHECK(other("pv19").of_class == 0);
  CHECK(other("pv19").honey->low_g == Approx(guess.honey->low_g));
}

TEST_CASE("what stayed tacky moves where Slab and Pans begin to warn of it") {
  Hands h;
  const auto begins = [&] { return caution_mark(known_of(h.b).tack); };
  const double untaught = caution_mark(paint::TackMark{});
  CHECK(begins() == untaught);
  for (int i = 0; i < 3; ++i) batch_that_became(h, "sticky", "gum_12_honey");
  planned_with(h, "gum_12_honey");
  h.tap("begin");
  CHECK(begins() < 0.9 * untaught);
  CHECK(caution_mark(h.b.pans.tack) < 0.9 * untaught);
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12_honey");
  h.type("9");
  h.give(Tick{});
  const auto& s = h.b.folded->standing;
  const auto index = paint::tack_index(s.gum_g, s.glycerin_g, s.honey_g, h.b.folded->places.room);
  REQUIRE(index);
  CHECK(paint::tack(*index) == paint::Tack::dries); // by our own guess
  const auto slab = std::get<SlabView>(view(h.b, h.now()).screen);
  CHECK(slab.advice.sticky);
}

}
