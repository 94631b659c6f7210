// What of a plan goes with the batch that is begun by it.
#include "planned.hpp"
#include "words/bench_says.hpp"

#include <utility>

namespace plan_begun_test {

using namespace bench;
using doctest::Approx;
using hands::Hands, hands::on_shelf, hands::planned_now;

TEST_CASE("digits that stand in the plan's number are entered by begin too, or it says why not") {
  Hands h;
  h.choose("pb28");
  while (h.b.plan.want != Want::pans) h.tap("want");
  h.tap("weigh");
  h.tap("digit 1");
  h.tap("digit 2");
  h.tap("begin");
  REQUIRE(h.b.folded);
  CHECK(h.b.folded->plan->of.pans == 12);
  Hands none;
  none.choose("pb28");
  none.tap("weigh");
  none.tap("digit 0");
  none.tap("begin");
  CHECK_FALSE(none.b.folded);
  REQUIRE(none.b.number);
  REQUIRE(none.b.number->error);
  CHECK(none.b.number->error->what == words::BenchSay::nothing_wanted);
}

TEST_CASE("a jar of the same mixture takes what the batch took, another strength does not") {
  Hands h;
  h.gather();
  const std::string first = h.b.batch;
  for (const auto& [id, water] : {std::pair{"jar_12", 2.0}, {"jar_13", 3.0}}) {
    const session::LiquidCard facts{session::CardKind::binder, {.gum = 1, .water = water}};
    on_shelf(h, {id, id, facts});
  }
  h.tap("book");
  h.tap("batch " + first);
  h.tap("make_again");
  REQUIRE(planned_now(h).as_made);
  const double g = planned_now(h).binder_g;
  h.b.plan.binder = "jar_12";
  CHECK(planned_now(h).as_made);
  CHECK(planned_now(h).binder_g == Approx(g));
  h.b.plan.binder = "jar_13";
  CHECK_FALSE(planned_now(h).as_made);
}

}
