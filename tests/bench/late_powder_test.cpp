// Powder on paint that had been felt, and paint that nobody timed.
#include "advice_slab.hpp"
#include "bench/told_at_slab.hpp"

#include <doctest/doctest.h>

namespace late_powder_test {
using namespace advised;

TEST_CASE("pigment that is weighed late is wetted with the knife, with binder of its own") {
  Slab s;
  s.add("gum", 4);
  s.wet_out();
  s.mull(200);
  s.feel(Feel::too_sticky);
  s.add("p", 6);
  const Advice advice = s.advice();
  CHECK(advice.kind == Advice::add_drops);
  CHECK(advice.by_knife);
  CHECK(bench::next_stage(s.folded()) == Stage::wetting_out);
  CHECK(bench::is_dusty(s.folded()));
  s.w.put(batch, StageBegan{Stage::resting}); // scraped together it is as dry
  CHECK(s.advice().by_knife);
  s.w.put(batch, StageBegan{Stage::wetting_out});
  s.w.wait(30);
  s.w.put(batch, Noted{"at it"});
  CHECK(s.advice().by_knife);
  s.w.wait(100);
  s.w.put(batch, Noted{"done"});
  CHECK_FALSE(bench::is_late_powder(s.folded()));
}

TEST_CASE("felt right where no pass was ever tapped: what comes next is mulling") {
  Slab s;
  s.add("gum", 8);
  CHECK(bench::next_stage(s.folded()) == Stage::wetting_out);
  s.w.wait(200);
  s.feel(Feel::right);
  CHECK(bench::next_stage(s.folded()) == Stage::mulling);
}

}
