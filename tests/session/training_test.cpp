// From what batches felt to a problem, and back to what a batch wants.
#include "session/narrowing.hpp"
#include "wetting.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace training_test {

using namespace session;
using doctest::Approx;
using make::wetting_out;

namespace {

Card blue() { return make::pigment("pb28", 4, 30); }

// Felt sticky, right and loose at flows around `right`.
make::Writer evening(const std::string& session, const std::string& batch, double right,
                     double dropper_mL = 0.05) {
  make::Writer w(session);
  w.card(blue());
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.card(make::dropper("bulb", dropper_mL, 0.1 * dropper_mL, CardKind::binder));
  w.put(batch, Opened{"Blue"});
  w.put(batch, Added{"pb28", Unit::g, 12, ""}); // 3 mL
  const double mL_of_gum = 0.884;               // of 1 g
  w.put(batch, Added{"gum", Unit::g, std::round(0.8 * right * 3 / mL_of_gum * 10) / 10, ""});
  w.put(batch, Felt{Feel::too_sticky, By::muller});
  w.put(batch, Added{"gum", Unit::drops, std::round(0.2 * right * 3 / dropper_mL), "bulb"});
  w.put(batch, Felt{Feel::right, By::muller});
  w.put(batch, Added{"gum", Unit::drops, std::round(0.2 * right * 3 / dropper_mL), "bulb"});
  w.put(batch, Felt{Feel::too_loose, By::muller});
  return w;
}

std::vector<TrainingBatch> training(const std::vector<make::Writer>& writers) {
  std::vector<TrainingBatch> out;
  for (const make::Writer& w : writers) {
    const Logs logs{&w.log};
    for (const std::string& id : batch_ids(logs))
      if (auto t = training_of(*fold(logs, id))) out.push_back(*std::move(t));
  }
  return out;
}

std::vector<const TrainingBatch*> all(const std::vector<TrainingBatch>& of) {
  std::vector<const TrainingBatch*> out;
  for (const TrainingBatch& t : of) out.push_back(&t);
  return out;
}

Ranges fit(const std::vector<TrainingBatch>& from) {
  RangeProblem asked = range_problem(all(from));
  auto found = paint::learn(asked.problem);
  REQUIRE(found);
  REQUIRE(found->end == paint::LearnEnd::found);
  return {*std::move(found), std::move(asked.names)};
}

}

TEST_CASE("a dropper calibrated anew is another tool") {
  const auto both = training({evening("c41e08d5", "a", 2), evening("c41e08d6", "b", 2, 0.1)});
  const RangeProblem asked = range_problem(all(both));
  CHECK(asked.names.tools == std::vector<std::string>{"bulb 0.0500 mL", "bulb 0.1000 mL"});
  CHECK(asked.names.pigments == std::vector<std::string>{"pb28"});
  CHECK(asked.problem.notes.size() == 6);
  CHECK(asked.names.batches.at("pb28") == 2);
  CHECK(asked.names.notes.at("pb28") == 6);
  // The share of the tool and its sd are known by their product.
  const paint::LearnNote& last = asked.problem.notes[2];
  REQUIRE(last.tools.size() == 1);
  CHECK(last.tools[0].second * asked.problem.tools[0].sd ==
        Approx(both[0].notes[2].tools.at("bulb 0.0500 mL")));
}

TEST_CASE("paint felt with another batch's paint in it teaches nothing; so does nothing at all") {
  CHECK_FALSE(training_of(Batch{}));
  make::Writer w = evening("c41e08d5", "a", 2);
  const Card old{"paint-b", "",
                 PaintCard{pigment_of(blue()), {.pigment = 5, .gum = 1, .water = 3}}};
  w.card(old);
  w.put("a", Added{"paint-b", Unit::g, 5, ""});
  w.put("a", Felt{Feel::too_runny, By::muller});
  CHECK(training({w}).at(0).notes.size() == 3);
}

TEST_CASE("a note set aside is kept, marked, and not learnt from") {
  make::Writer w = evening("c41e08d5", "a", 2);
  const Batch b = make::folded({w.log}, "a");
  w.put("a", SetAside{b.feelings.at(2).line});
  const auto of = training({w});
  REQUIRE(of.at(0).notes.size() == 3);
  CHECK(of[0].notes[2].set_aside);
  CHECK(has_training_notes(of[0]));
  CHECK(range_problem(all(of)).problem.notes.size() == 2);
}

TEST_CASE("batches that agree are learnt, and the band knows what it rests on") {
  const auto three = training({evening("c41e08d5", "a", 1.9), evening("c41e08d6", "b", 2.0),
                               evening("c41e08d7", "c", 2.1)});
  const Ranges ranges = fit(three);
  const auto demand = *demand_in(ranges, blue());
  CHECK(std::exp(demand.mean) == Approx(2).epsilon(0.1));
  const Card card = blue();
  const RangeQuestion question = range_question(ranges, std::vector<BatchPigment>{{&card, 1}});
  const auto expected = expectation(ranges, question);
  REQUIRE(expected);
  CHECK(expected->band.batches == 3);
  CHECK(expected->band.of_studio == 3);
  CHECK(expected->band.from < std::log(2.0));
  CHECK(expected->band.to > std::log(2.0));
  const auto guess =
      expectation(untrained_ranges(),
                  range_question(untrained_ranges(), std::vector<BatchPigment>{{&card, 1}}));
  CHECK(expected->band.sd < guess->band.sd / 2);
  CHECK(guess->band.batches == 0);
  const auto wanted = paint::predict(ranges.fit, range_question(ranges, {{&card, 3}}).batch);
  REQUIRE(wanted);
  CHECK(paint::mL_at_share(*wanted, 0.5) == Approx(6).epsilon(0.1));
}

TEST_CASE("what is known of a pigment narrows batch by batch, and ends where it stands now") {
  const auto three = training({evening("c41e08d5", "a", 1.9), evening("c41e08d6", "b", 2.0),
                               evening("c41e08d7", "c", 2.1)});
  const Ranges ranges = fit(three);
  const auto steps = narrowing(ranges, all(three), blue(), 12);
  REQUIRE(steps.size() == 4);
  CHECK(steps[0].batch == nullptr);
  for (std::size_t i = 1; i < steps.size(); ++i)
    CHECK(steps[i].demand.sd < steps[i - 1].demand.sd * 1.02);
  CHECK(steps[1].demand.sd < steps[0].demand.sd / 2);
  CHECK(steps[3].demand.mean == demand_in(ranges, blue())->mean);
  CHECK(narrowing(ranges, all(three), blue(), 2).size() == 3);
  CHECK(narrowing(ranges, all(three), make::pigment("py43", 4, 30), 12).empty());
}

TEST_CASE("all of a studio at once gives the same") {
  const make::Writer a = evening("c41e08d5", "a", 1.9), b = evening("c41e08d6", "b", 2.0);
  const auto ranges = learn_ranges({&a.log, &b.log});
  REQUIRE(ranges);
  CHECK(ranges->fit.theta == fit(training({a, b})).fit.theta);
  CHECK(learn_ranges({})->names.of_studio == 0);
}

TEST_CASE("today's notes move the band of the paint in hand") {
  const make::Writer w = evening("c41e08d5", "a", 3);
  const auto band = band_of(make::folded({w.log}, "a"));
  REQUIRE(band);
  CHECK(std::exp(band->middle) == Approx(3).epsilon(0.15));
  CHECK(band->batches == 0);
}

TEST_CASE("a note under the knife is less sure than one under the muller") {
  make::Writer w = wetting_out();
  w.put("a", Felt{Feel::right, By::knife});
  w.put("a", StageBegan{Stage::mulling});
  w.put("a", Felt{Feel::too_sticky, By::muller});
  const Batch b = make::folded({w.log}, "a");
  const auto notes = range_question(untrained_ranges(), b).notes;
  REQUIRE(notes.size() == 2);
  CHECK(notes[0].sd == Approx(std::hypot(b.feelings[0].scatter, 0.10)));
  CHECK(notes[1].sd == b.feelings[1].scatter);
}

TEST_CASE("how long it had been mulled goes with a note") {
  make::Writer w = wetting_out();
  w.wait(150);
  w.put("a", StageBegan{Stage::mulling});
  w.wait(200);
  w.put("a", StageBegan{Stage::resting});
  w.wait(60);
  w.put("a", StageBegan{Stage::mulling});
  w.wait(100);
  w.put("a", Felt{Feel::right, By::muller});
  CHECK(make::folded({w.log}, "a").feelings.at(0).mulled_s == Approx(300));
  CHECK(training({w}).at(0).notes.at(0).mulled_s == Approx(300));
}

TEST_CASE("a note knows the strength of its binder, and honey makes it no stronger") {
  const auto dry_gum = [](paint::Recipe recipe) {
    make::Writer w = wetting_out(recipe);
    w.put("a", Felt{Feel::right, By::knife});
    const auto batch = training({w}).at(0);
    CHECK(range_problem({&batch}).problem.notes.at(0).dry_gum == batch.notes.at(0).dry_gum);
    return batch.notes.at(0).dry_gum;
  };
  CHECK(dry_gum({.gum = 1, .water = 2}) == Approx(0.2933).epsilon(0.01));
  CHECK(dry_gum({.gum = 1, .water = 3}) == Approx(0.22).epsilon(0.01));
  CHECK(dry_gum({.gum = 1, .water = 2, .honey = 0.5}) == Approx(0.88 / 3.5).epsilon(0.01));
}

TEST_CASE("before anything went in, the binder that is laid out says how strong it will be") {
  make::Writer w("c41e08d5");
  w.card(blue());
  w.put("a", Opened{"Blue"});
  w.put("a", LaidOut{make::liquid("gum", CardKind::binder, {.gum = 1, .water = 3})});
  w.put("a", Added{"pb28", Unit::g, 12, ""});
  CHECK(range_question(untrained_ranges(), make::folded({w.log}, "a")).batch.dry_gum ==
        Approx(0.22).epsilon(0.01));
}

TEST_CASE("as water leaves, the band moves up with the gum's strength") {
  make::Writer w = wetting_out();
  w.put("a", StageBegan{Stage::mulling});
  const auto fresh = band_of(make::folded({w.log}, "a"));
  w.wait(1200);
  w.put("a", Noted{"dried a while"});
  const Batch dried = make::folded({w.log}, "a");
  REQUIRE(paint::dry_gum(dried.standing) > paint::dry_gum_put_in(dried.standing) + 0.01);
  const auto band = band_of(dried);
  const double stronger = paint::dry_gum(dried.standing) - paint::dry_gum_put_in(dried.standing);
  CHECK(band->middle - fresh->middle == Approx(3.9 * stronger).epsilon(0.1));
  CHECK(band->to - fresh->to == Approx(3.9 * stronger).epsilon(0.2));
}

TEST_CASE("paint that has dried out moves the band no further than the model reaches") {
  make::Writer w = wetting_out();
  const auto fresh = band_of(make::folded({w.log}, "a"));
  w.wait(60);
  w.put("a", Found{State::dry});
  const Batch dry = make::folded({w.log}, "a");
  REQUIRE(paint::dry_gum(dry.standing) > 0.6);
  CHECK(band_of(dry)->middle - fresh->middle < 3.9 * 0.21);
}

TEST_CASE("a studio's first batches believe a dry word by less") {
  make::Writer w = wetting_out();
  w.put("a", Felt{Feel::right, By::knife});
  const Batch b = make::folded({w.log}, "a");
  CHECK(range_question(untrained_ranges(), b).notes.at(0).late == 0.25);
  Ranges known = untrained_ranges();
  known.names.of_studio = 3;
  CHECK(range_question(known, b).notes.at(0).late == 0);
}

TEST_CASE("the last verdict that gum is a reason of counts, once a batch") {
  make::Writer w = evening("c41e08d5", "a", 2);
  const auto verdict = [&] { return gum_verdict(make::folded({w.log}, "a")); };
  CHECK_FALSE(verdict());
  w.put("a", Verdict{Became::rubs_off, 1});
  REQUIRE(verdict());
  CHECK(verdict()->what == paint::GumVerdict::rubs_off);
  // About 2.4 mL of gum 1:2 to 1 mL of pigment: 29 % of 1.13 g/mL is dry gum.
  CHECK(verdict()->g_per_mL == Approx(2.4 * 1.13 * 0.88 / 3).epsilon(0.05));
  w.put("a", Verdict{Became::good, 0});
  w.put("a", Verdict{Became::mould, 0});
  CHECK(verdict()->what == paint::GumVerdict::holds);
  w.put("a", Verdict{Became::sticky, 0});
  CHECK(verdict()->what == paint::GumVerdict::too_much);
  w.card(make::liquid("glycerin", CardKind::glycerin, {.glycerin = 1}));
  w.put("a", Added{"glycerin", Unit::g, 3, ""});
  CHECK(verdict()->what == paint::GumVerdict::holds); // sticky is the glycerin's doing
  CHECK(training({w}).at(0).gum == verdict());
  const GumVerdicts many{{paint::PigmentClass::mineral,
                          std::vector<paint::GumVerdict>(5, {paint::GumVerdict::rubs_off, 0.6})}};
  CHECK(marks_of(many, paint::PigmentClass::mineral).little >
        marks_of(many, paint::PigmentClass::organic).little * 0.35 / 0.5);
}

TEST_CASE("dry paint teaches by the last verdict that tells of it, and of which pigments") {
  make::Writer w = evening("c41e08d5", "a", 2);
  const auto dried = [&] { return dried_paint(make::folded({w.log}, "a")); };
  CHECK_FALSE(dried());
  w.put("a", Verdict{Became::wont_rewet, 0});
  REQUIRE(dried());
  CHECK(dried()->as == Became::wont_rewet);
  CHECK(dried()->pigments == std::vector<std::string>{"pb28"});
  CHECK(dried()->family == paint::PigmentClass::mineral);
  CHECK(dried()->index > 0.1); // gum alone: 0.13 to 0.15 in the usual air
  CHECK(dried()->index < 0.17);
  CHECK(soft_verdict(*dried())->what == paint::SoftVerdict::wont_rewet);
  CHECK_FALSE(dried()->gum); // gum has no say in it
  w.put("a", Verdict{Became::mould, 0});
  w.put("a", Verdict{Became::full, 0});
  CHECK(dried()->as == Became::wont_rewet);
  const Ref last = w.put("a", Verdict{Became::rubs_off, 2});
  CHECK(dried()->as == Became::rubs_off);
  CHECK(dried()->gum);
  CHECK_FALSE(soft_verdict(*dried()));
  w.put("a", Withdrawn{last});
  CHECK(dried()->as == Became::wont_rewet);
  w.put("a", Discarded{});
  CHECK_FALSE(dried());
}

TEST_CASE("sticky on the day of the pour teaches nothing of dry paint") {
  make::Writer w = evening("c41e08d5", "a", 2);
  w.put("a", LaidOut{make::pan("half", 1.7)});
  w.put("a", Gathered{});
  w.put("a", Poured{1, 1, "half", {}});
  const auto dried = [&] { return dried_paint(make::folded({w.log}, "a")); };
  w.wait(3600);
  w.put("a", Verdict{Became::sticky, 0});
  CHECK_FALSE(dried());
  w.wait(3 * 86400);
  w.put("a", Verdict{Became::sticky, 0});
  REQUIRE(dried());
  CHECK(soft_verdict(*dried())->what == paint::SoftVerdict::sticky);
}

TEST_CASE("the latest batches are learnt from, as many notes as a fit can take in a second") {
  std::vector<TrainingBatch> many = training({evening("c41e08d5", "a", 2)});
  many[0].notes.resize(1);
  many[0].notes.resize(6000, many[0].notes[0]);
  many.resize(3, many[0]);
  for (std::size_t i = 0; i < many.size(); ++i) many[i].opened_at = static_cast<std::int64_t>(i);
  many[2].notes.resize(10);
  const RangeProblem asked = range_problem(all(many));
  CHECK(asked.names.of_studio == 2);
  CHECK(asked.problem.notes.size() == 6010);
}

}
