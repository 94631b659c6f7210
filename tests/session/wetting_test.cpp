// What is felt before the powder is wetted out, or when paint has dried out, is kept and not
// counted.
#include "session/feelings.hpp"
#include "session/ranges.hpp"
#include "wetting.hpp"

#include <doctest/doctest.h>

namespace wetting_test {

using namespace session;
using doctest::Approx;
using make::wetting_out;

namespace {

RangeProblem of(const make::Writer& w) {
  const auto training = training_of(make::folded({w.log}, "a"));
  return range_problem({&*training});
}

}

TEST_CASE("stiff while the powder is wetted out is kept, and says nothing of the range") {
  make::Writer w = wetting_out();
  const auto before = band_of(make::folded({w.log}, "a"));
  w.wait(37);
  w.put("a", Felt{Feel::wont_move, By::knife});
  const Batch stiff = make::folded({w.log}, "a");
  REQUIRE(stiff.feelings.size() == 1);
  CHECK(stiff.feelings[0].unwetted);
  CHECK(range_question(untrained_ranges(), stiff).notes.empty());
  CHECK(band_of(stiff)->middle == Approx(before->middle).epsilon(0.05));
  CHECK_FALSE(has_training_notes(*training_of(make::folded({w.log}, "a"))));
  w.wait(120);
  w.put("a", Felt{Feel::wont_move, By::knife}); // now it is meant, and no repetition
  const Batch worked_in = make::folded({w.log}, "a");
  REQUIRE(worked_in.feelings.size() == 2);
  CHECK_FALSE(worked_in.feelings[1].unwetted);
  CHECK_FALSE(worked_in.feelings[1].repeats);
  CHECK(range_question(untrained_ranges(), worked_in).notes.size() == 1);
  CHECK(of(w).problem.notes.size() == 1);
}

TEST_CASE("right or looser counts at once") {
  make::Writer w = wetting_out();
  w.put("a", Felt{Feel::right, By::knife});
  CHECK_FALSE(make::folded({w.log}, "a").feelings.at(0).unwetted);
}

TEST_CASE("what nobody timed counts as soon as it may be wetted out") {
  make::Writer w("c41e08d5");
  w.card(make::pigment("pb28", 4, 30));
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.put("a", Opened{"Blue"});
  w.put("a", Added{"pb28", Unit::g, 12, ""});
  w.wait(600);
  w.put("a", Added{"gum", Unit::g, 4, ""});
  w.wait(20);
  w.put("a", Felt{Feel::too_sticky, By::knife});
  CHECK(make::folded({w.log}, "a").feelings.back().unwetted);
  w.wait(100);
  w.put("a", Felt{Feel::too_sticky, By::knife});
  CHECK_FALSE(make::folded({w.log}, "a").feelings.back().unwetted);
}

TEST_CASE("once the knife was put away the powder is wetted out") {
  make::Writer w = wetting_out();
  w.wait(60);
  w.put("a", StageBegan{Stage::resting});
  w.put("a", Felt{Feel::too_sticky, By::knife});
  CHECK_FALSE(make::folded({w.log}, "a").feelings.at(0).unwetted);
}

TEST_CASE("a pass that the program's end cut short wets no more than its seconds did") {
  make::Writer w = wetting_out();
  w.wait(38);
  w.put("", Left{});
  make::Writer again("c41e08d6");
  again.at0 = w.at0 + w.t + 3'600'000;
  const auto stiff = [&] { again.put("a", Felt{Feel::wont_move, By::knife}); };
  stiff();
  const auto folded = [&] { return make::folded({w.log, again.log}, "a"); };
  REQUIRE(folded().feelings.size() == 1);
  CHECK(folded().feelings.at(0).unwetted);
  CHECK_FALSE(is_worked_in(folded()));
  again.put("a", StageBegan{Stage::wetting_out}); // goes on where it was
  again.wait(60);
  stiff();
  CHECK(folded().feelings.at(1).unwetted);
  again.wait(30);
  stiff();
  CHECK_FALSE(folded().feelings.at(2).unwetted);
  CHECK(is_worked_in(folded()));
}

TEST_CASE("who comes back to a pass cut short, and works untimed, is believed after as long") {
  make::Writer w = wetting_out();
  w.wait(38);
  w.put("", Left{});
  make::Writer again("c41e08d6");
  again.at0 = w.at0 + w.t + 3'600'000;
  again.put("a", Noted{"on with it"});
  again.wait(100);
  again.put("a", Felt{Feel::wont_move, By::knife});
  CHECK(make::folded({w.log, again.log}, "a").feelings.back().unwetted);
  again.wait(20);
  again.put("a", Felt{Feel::wont_move, By::knife});
  CHECK_FALSE(make::folded({w.log, again.log}, "a").feelings.back().unwetted);
}

TEST_CASE("stiff as a dry cake says nothing of the range, until water has soaked into it") {
  make::Writer w = wetting_out();
  w.card(make::liquid("water", CardKind::water, {.water = 1}));
  w.put("a", StageBegan{Stage::mulling});
  w.put("a", Felt{Feel::too_sticky, By::muller});
  w.wait(1200);
  const auto folded = [&] { return make::folded({w.log}, "a"); };
  const auto before = range_question(untrained_ranges(), folded());
  REQUIRE(before.notes.size() == 1);
  const auto stiff = [&] {
    w.put("a", Felt{Feel::too_sticky, By::muller});
    return folded().feelings.back().unwetted;
  };
  w.put("a", Found{State::dry});
  CHECK(stiff());
  const auto dry = range_question(untrained_ranges(), folded());
  CHECK(dry.notes.size() == 1);
  CHECK(dry.batch.shared_sd == before.batch.shared_sd);
  CHECK(of(w).problem.batches.at(0).shared_sd < 0.1);
  w.put("a", Added{"water", Unit::g, 8, ""});
  w.wait(300);
  CHECK(stiff());
  w.wait(300);
  CHECK_FALSE(stiff());
  CHECK(range_question(untrained_ranges(), folded()).notes.size() == 2);
}

}
