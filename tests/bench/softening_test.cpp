// Paint of gum alone: that it may re-wet badly is said before it is gathered, and not once some
// honey or glycerin is in.
#include "bench/choices.hpp"
#include "bench/softening.hpp"
#include "obeying.hpp"
#include "session/amounts.hpp"

namespace softening_test {

using namespace bench;
using hands::Hands;

namespace {

std::optional<Softening> planned_softening(Hands& h, const std::string& binder) {
  h.b.plan.binder = binder;
  const auto p = planned(h.b);
  REQUIRE(p);
  REQUIRE(*p);
  return softening_of(h.b, **p);
}

// g of honey solids in so much of the shelf's honey.
double solids(Hands& h, const Tapped& amount) {
  for (const session::Card& card : h.b.shelf)
    if (card.kind() == session::CardKind::honey) {
      const Measures of = measures_of(h.b, card);
      return mL_of(amount, of) * of.g_per_mL * session::material_of(card)->parts.honey;
    }
  return 0;
}

}

TEST_CASE("a plan with gum alone names how much honey is usual, one with honey nothing") {
  Hands h;
  h.choose("pb28");
  h.tap("weigh");
  h.type("12");
  const auto soft = planned_softening(h, "gum_12");
  REQUIRE(soft);
  CHECK_FALSE(soft->name.empty());
  const double binder_g = (*planned(h.b))->binder_g;
  const double honey_g = solids(h, soft->amount) / 0.82;
  CHECK(honey_g >= 0.05 * binder_g * 0.99);
  CHECK(honey_g <= 0.10 * binder_g);
  CHECK_FALSE(planned_softening(h, "gum_12_honey"));
  CHECK_FALSE(planned_softening(h, "gum_12_glycerin"));
}

TEST_CASE("as more is wanted it turns from drops to spoons once, and never back") {
  Hands h;
  h.choose("pb28");
  h.tap("weigh");
  h.type("12");
  h.b.plan.binder = "gum_12";
  bool in_spoons = false, in_drops = false;
  Planned plan = **planned(h.b);
  for (plan.binder_g = 4; plan.binder_g < 60; plan.binder_g += 0.25) {
    const auto soft = softening_of(h.b, plan);
    REQUIRE(soft);
    INFO("binder, g: " << plan.binder_g);
    if (in_spoons) CHECK(soft->amount.spoons > 0);
    in_spoons = soft->amount.spoons > 0;
    in_drops |= !in_spoons;
  }
  CHECK(in_drops);
  CHECK(in_spoons);
}

TEST_CASE("on the slab it is said from the first pass on, until some is in or it is gathered") {
  Hands h;
  h.begin();
  CHECK_FALSE(h.slab().softening);
  obeying::tap_amount(h, "1 tsp", "gum_12");
  h.tap("pass");
  h.wait(130);
  CHECK_FALSE(h.slab().softening); // it is worked in
  h.tap("pass");
  h.wait(60);
  REQUIRE(h.slab().softening);
  Hands loose = h;
  loose.tap("felt too_loose"); // no more liquid of any kind
  CHECK_FALSE(loose.slab().softening);
  const Softening soft = *h.slab().softening;
  Hands gathered = h;
  gathered.tap("pass");
  gathered.tap("gather");
  CHECK_FALSE(gathered.slab().softening);
  obeying::put_in(h, soft.amount, "honey_11");
  CHECK_FALSE(h.slab().softening);
}

// It loosens as water does: at the end it would make paint that was right too loose.
TEST_CASE("where water is asked for, what softens goes in first, and no more of it than water") {
  Hands h;
  h.begin();
  obeying::tap_amount(h, "1 tsp", "gum_12");
  h.tap("pass");
  h.wait(130);
  for (int i = 0; i < 12 && !(h.slab().advice.water && h.slab().softening); ++i) {
    h.tap("pass");
    h.wait(200);
    h.tap("felt too_sticky");
    if (!h.slab().advice.water) obeying::put_in(h, h.slab().advice.amount, "gum_12");
  }
  const SlabView slab = h.slab();
  REQUIRE(slab.advice.kind == Advice::add_drops);
  REQUIRE(slab.advice.water);
  REQUIRE(slab.softening);
  REQUIRE(slab.to_come.size() == 1);
  const ToComeView& first = slab.to_come.front();
  CHECK(first.first);
  CHECK(first.kind == session::CardKind::honey);
  CHECK(first.mL <= mL_of(slab.advice.amount, measures_of(h.b, *shelf_card(h.b, "water"))) + 1e-9);
  CHECK(first.mL <= slab.softening->mL + 1e-9);
  obeying::put_in(h, first.amount, "honey_11");
  for (const ToComeView& one : h.slab().to_come) CHECK_FALSE(one.first);
}

TEST_CASE("where neither honey nor glycerin is on the shelf it is said without an amount") {
  Hands h;
  std::erase_if(h.b.shelf, [](const session::Card& card) {
    return card.kind() == session::CardKind::honey || card.kind() == session::CardKind::glycerin;
  });
  h.choose("pb28");
  h.tap("weigh");
  h.type("12");
  const auto soft = planned_softening(h, "gum_12");
  REQUIRE(soft);
  CHECK(soft->name.empty());
}

}
