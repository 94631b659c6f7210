// How much is asked for, and what becomes of paint whose maker does what the screen says.
#include "advice_slab.hpp"
#include "obeying.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace obeyed_test {

using namespace advised;
using obeying::do_what_is_said, obeying::felt_by_hand;

TEST_CASE("what nobody would count in drops is said in spoons, and weighed where there is none") {
  Slab s;
  s.of.spoon_mL = 5;
  s.add("p", 348);
  s.add("gum", 75);
  s.feel(Feel::too_sticky);
  const Advice advice = s.advice();
  REQUIRE(advice.kind == Advice::add_drops);
  CHECK(advice.amount.spoons > 0);
  CHECK(advice.amount.spoons <= 1);
  CHECK(advice.amount.g == 0);
  CHECK(bench::advised_mL(advice, s.of) == advice.amount.spoons * 5 + advice.amount.drops * 0.033);
  s.of.spoon_mL = 0;
  CHECK(s.advice().amount.spoons == 0);
  CHECK(s.advice().amount.drops == 0);
  CHECK(s.advice().amount.g > advice.amount.spoons * 5 * 1.1);
  CHECK(bench::advised_mL(s.advice(), s.of) == doctest::Approx(s.advice().amount.g / 1.1));
}

TEST_CASE("what would fill no quarter of a spoon is counted, as far as anybody counts") {
  Slab s;
  s.of.spoon_mL = 15;
  s.add("gum", 2.5);
  s.feel(Feel::too_sticky);
  REQUIRE(s.advice().kind == Advice::add_drops);
  CHECK(s.advice().amount.spoons == 0);
  CHECK(s.advice().amount.drops > 0);
  CHECK(s.advice().amount.drops <= bench::most_counted);
  CHECK(s.advice().amount.g == 0);
}

TEST_CASE("before the powder was worked in no drop is asked for") {
  Slab s;
  s.add("gum", 5);
  CHECK(s.advice().kind == Advice::work_in);
  s.w.put(batch, StageBegan{Stage::wetting_out});
  s.w.wait(90);
  CHECK(s.advice().kind == Advice::work_in);
  s.w.wait(60);
  s.w.put(batch, Felt{Feel::too_sticky, By::knife});
  CHECK(s.advice().kind == Advice::add_drops);
}

TEST_CASE("what is asked for before a pass is no less than the pass dries off, and a step") {
  for (const double gum : {4.5, 5.0, 5.5, 6.0}) {
    CAPTURE(gum);
    Slab s;
    s.add("gum", gum);
    s.mull(200);
    s.feel(Feel::too_sticky);
    if (std::log(s.flow()) >= s.expected()->band.middle) continue;
    const double felt = s.flow();
    const Advice advice = s.advice();
    REQUIRE(advice.kind == Advice::add_drops);
    s.add("gum", 1.1 * bench::advised_mL(advice, s.of));
    CHECK(s.advice().kind == Advice::mull_and_judge);
    s.w.put(batch, StageBegan{Stage::mulling});
    s.w.wait(s.known.pass_s);
    CHECK(s.advice().kind == Advice::mull_and_judge); // no drops in the middle of it
    CHECK(s.flow() > 1.01 * felt);
  }
}

// Who does what the screen says, with a hand that finds right where `wants` is, and no amount
// between: how many passes it takes, and how far the paint is then from what it wants.
namespace {
struct Obeyed {
  std::vector<int> soon = {}; // passes made, when it was not said that it may take several
  int passes = 0;
  Feel last = Feel::wont_move;
  double off = 0;
};

void put_in(Slab& s, const Advice& advice) {
  const double mL = bench::advised_mL(advice, s.of, s.known);
  s.add(advice.water ? "water" : "gum", advice.water ? mL : 1.1 * mL);
}

Obeyed obey(Slab& s, double wants) {
  Obeyed end;
  const auto felt = [&](By by) {
    end.off = std::log(s.flow() / wants);
    end.last = felt_by_hand(end.off);
    s.w.put(batch, Felt{end.last, by});
  };
  const Advice first = s.advice();
  s.add("gum", (first.low_g + first.high_g) / 2);
  s.w.put(batch, StageBegan{Stage::wetting_out});
  s.w.wait(150);
  felt(By::knife);
  for (int line = 0; line < 100 && end.last < Feel::right; ++line) {
    const Advice advice = s.advice();
    if (advice.kind == Advice::add_drops) {
      if (!advice.several) end.soon.push_back(end.passes);
      put_in(s, advice);
    } else {
      REQUIRE(advice.kind == Advice::mull_and_judge);
      s.w.put(batch, StageBegan{Stage::mulling});
      s.w.wait(s.known.pass_s);
      felt(By::muller);
      s.w.put(batch, StageBegan{Stage::resting});
      ++end.passes;
    }
  }
  return end;
}
}

TEST_CASE("whoever does what is said arrives, in rounds that anybody would make, never too loose") {
  for (const int of_studio : {0, 3})
    for (const double share : {0.75, 0.9, 1.0, 1.1, 1.3, 1.5}) { // of what was guessed
      Slab s;
      s.of_studio = of_studio;
      const double wants = share * s.middle();
      const Obeyed end = obey(s, wants);
      CAPTURE(of_studio);
      CAPTURE(share);
      MESSAGE(share << ": " << end.passes << " passes, off " << end.off);
      CHECK(end.last == Feel::right);
      CHECK(end.passes <= 9);
      for (const int made : end.soon) CHECK(end.passes - made <= 3);
    }
}

// The same with the pads of the screen alone: whatever is said has one.
TEST_CASE("a whole batch by the pads alone, as the screen says, ends right and smooth") {
  for (const double share : {0.8, 1.0, 1.3}) {
    CAPTURE(share);
    hands::Hands h;
    h.begin();
    const double wants = share * std::exp(h.b.expected.answer->band.middle);
    Feel last = Feel::wont_move;
    int steps = 0;
    while (++steps < 60 && h.slab().advice.kind != Advice::there && last < Feel::too_loose)
      last = do_what_is_said(h, wants);
    CHECK(h.slab().advice.kind == Advice::there);
    CHECK(std::abs(std::log(h.b.folded->standing.flow_now->value / wants)) < 0.17);
    MESSAGE(h.b.folded->passes.size() << " passes, " << steps << " sentences obeyed");
    CHECK(h.b.folded->passes.size() <= 9);
  }
}

namespace {

void too_sticky_by_knife(Slab& s, double gum_g, int after_s) {
  s.add("gum", gum_g);
  s.w.put(batch, StageBegan{Stage::wetting_out});
  s.w.wait(after_s);
  s.w.put(batch, Felt{Feel::too_sticky, By::knife});
}

}

TEST_CASE("a pass that was begun is judged at its end: until then no other amount is said") {
  Slab s;
  too_sticky_by_knife(s, 5, 130);
  REQUIRE(s.advice().kind == Advice::add_drops);
  s.w.put(batch, StageBegan{Stage::mulling});
  CHECK(s.advice().kind == Advice::mull_and_judge);
  CHECK_FALSE(s.advice().sticky_now);
  s.w.wait(200);
  s.feel(Feel::too_sticky);
  CHECK(s.advice().kind == Advice::add_drops);
}

TEST_CASE(
    "felt before it was wetted out and mulled nevertheless: the pass is judged, by no knife") {
  Slab s;
  too_sticky_by_knife(s, 4, 60);
  REQUIRE(s.advice().kind == Advice::work_in);
  s.w.put(batch, StageBegan{Stage::mulling});
  CHECK(s.advice().kind == Advice::mull_and_judge);
  CHECK_FALSE(s.advice().sticky_now);
}

TEST_CASE("too sticky after five minutes of the knife: a pass is mulled and judged") {
  Slab s;
  too_sticky_by_knife(s, 4, 150);
  CHECK(s.advice().by_knife);
  s.add("gum", 0.3);
  s.w.wait(160);
  s.w.put(batch, Felt{Feel::wont_move, By::knife});
  CHECK(s.advice().kind == Advice::add_drops);
  CHECK(s.advice().by_knife); // so stiff nothing can be mulled
  s.add("gum", 0.3);
  s.w.put(batch, Felt{Feel::too_sticky, By::knife});
  CHECK(s.advice().kind == Advice::mull_and_judge);
  CHECK_FALSE(s.advice().by_knife);
  CHECK_FALSE(s.advice().sticky_now);
}

}
