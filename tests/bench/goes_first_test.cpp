// What of the plan goes in before the drops that are advised.
#include "bench/again.hpp"
#include "hands.hpp"

namespace goes_first_test {

using namespace bench;
using hands::Hands;
using session::CardKind;

namespace {

std::vector<CardKind> first_of(const Advice& advice, bool binder_is_in) {
  std::vector<ToComeView> to_come;
  for (const CardKind kind :
       {CardKind::glycerin, CardKind::honey, CardKind::water, CardKind::other})
    to_come.push_back({kind, "", 1, {}, false});
  put_first(to_come, advice, binder_is_in);
  std::vector<CardKind> out;
  for (const ToComeView& one : to_come)
    if (one.first) out.push_back(one.kind);
  return out;
}

void weigh(Hands& h, const std::string& card, const std::string& grams) {
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add " + card);
  h.type(grams);
}

}

TEST_CASE("what loosens goes in before drops, water only where the binder is all there") {
  const std::vector<CardKind> sweet{CardKind::glycerin, CardKind::honey};
  const std::vector<CardKind> all{CardKind::glycerin, CardKind::honey, CardKind::water};
  Advice advice;
  advice.kind = Advice::add_drops;
  CHECK(first_of(advice, false) == sweet);
  CHECK(first_of(advice, true) == all);
  advice.water = true; // they are drops of water
  CHECK(first_of(advice, true).empty());
  advice = {};
  for (const auto kind : {Advice::test_dot, Advice::keep_mulling}) {
    advice.kind = kind;
    CHECK(first_of(advice, true) == sweet);
  }
  advice.kind = Advice::first_helping;
  CHECK(first_of(advice, true).empty());
}

TEST_CASE("with as much binder as last time the water of last time comes before more of it") {
  Hands h;
  h.begin();
  weigh(h, "gum_12", "3");
  weigh(h, "water", "1");
  for (const char* pad : {"pass", "pass", "pass", "gather", "close"}) h.tap(pad);
  make_again(h.b, h.b.batches.back(), h.now());
  h.give(Tick{});
  h.tap("begin");
  h.tap("add pb28");
  h.type("12");
  const auto water_first = [&] {
    h.tap("pass");
    h.wait(150);
    h.tap("felt too_sticky");
    REQUIRE(h.slab().advice.kind == Advice::add_drops);
    REQUIRE(h.slab().to_come.size() == 1);
    return h.slab().to_come[0].first;
  };
  weigh(h, "gum_12", "2");
  CHECK_FALSE(water_first());
  weigh(h, "gum_12", "1");
  CHECK(water_first());
  const SlabView slab = h.slab(); // the ring lies where that leads
  CHECK(*slab.trail.next ==
        doctest::Approx(h.b.folded->standing.flow_now->value +
                        slab.to_come[0].mL / h.b.folded->standing.pigment_mL.value));
}

}
