// What a batch's feel notes are kept with, so that something may be learnt from them.
#include "make.hpp"
#include "session/ranges.hpp"

#include <doctest/doctest.h>

namespace feelings_test {

using namespace session;
using doctest::Approx;

namespace {

constexpr const char* batch = "7f3a91c2";

// 12 g of one pigment, 3 g of another, 6 g of binder by weight and 40 drops of it.
make::Writer evening() {
  make::Writer w("c41e08d5");
  w.card(make::pigment("pb28", 4, 30));
  w.card(make::pigment("pg18", 3, 50));
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.card(make::dropper("bulb", 0.05, 0.005, CardKind::binder));
  w.put(batch, Opened{"Blue"});
  w.put(batch, RoomSet{22, 0.45, false});
  w.put(batch, Added{"pb28", Unit::g, 12, ""});
  w.put(batch, Added{"gum", Unit::g, 6, ""});
  w.put(batch, Added{"gum", Unit::drops, 40, "bulb"});
  return w;
}

Batch folded(const make::Writer& w) { return make::folded({w.log}, batch); }

}

TEST_CASE("a feel note is kept with the paint it was felt in") {
  make::Writer w = evening();
  const Ref first = w.put(batch, Felt{Feel::too_sticky, By::knife});
  w.put(batch, Added{"pg18", Unit::g, 3, ""});
  w.put(batch, Felt{Feel::wont_move, By::muller});
  const Batch b = folded(w);
  REQUIRE(b.feelings.size() == 2);
  const Feeling& sticky = b.feelings[0];
  CHECK(sticky.line == first);
  CHECK(sticky.as == Feel::too_sticky);
  CHECK(sticky.flow > b.feelings[1].flow);
  REQUIRE(sticky.pigments.size() == 1);
  CHECK(sticky.pigments[0].first == "pb28");
  CHECK(sticky.pigments[0].second == Approx(3));
  REQUIRE(b.feelings[1].pigments.size() == 2);
  CHECK(b.feelings[1].pigments[1].second == Approx(1));
}

TEST_CASE("a dropper's error is its share of the liquid, and no more") {
  make::Writer w = evening();
  w.put(batch, Felt{Feel::right, By::muller});
  const Feeling f = folded(w).feelings.at(0);
  REQUIRE(f.tools.count("bulb"));
  // 40 drops of 0.05 mL, uncertain by a tenth, in those and 6 g of binder of 0.884 mL/g.
  const double dropped = 40 * 0.05, all = dropped + 6 * 0.884;
  CHECK(f.tools.at("bulb") == Approx(0.1 * dropped / all).epsilon(0.01));
  CHECK(f.scatter > 0);
  CHECK(f.scatter < 0.02);
  CHECK(f.pigment_sd < 0.01);
}

TEST_CASE("what has dried off is kept with the note") {
  make::Writer w = evening();
  w.put(batch, StageBegan{Stage::mulling});
  w.put(batch, Felt{Feel::right, By::muller});
  w.wait(1200);
  w.put(batch, Felt{Feel::too_sticky, By::muller});
  const Batch b = folded(w);
  REQUIRE(b.feelings.size() == 2);
  CHECK(b.feelings[0].dried_off < b.feelings[1].dried_off);
  CHECK(b.feelings[1].flow < b.feelings[0].flow);
}

TEST_CASE("the same word again says nothing new until something was done") {
  make::Writer w = evening();
  w.wait(121); // wetted out
  for (int i = 0; i < 3; ++i) w.put(batch, Felt{Feel::too_sticky, By::knife});
  w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  w.put(batch, Felt{Feel::too_sticky, By::knife});
  const Batch b = folded(w);
  REQUIRE(b.feelings.size() == 4);
  CHECK_FALSE(b.feelings[0].repeats);
  CHECK(b.feelings[1].repeats);
  CHECK(b.feelings[2].repeats);
  CHECK_FALSE(b.feelings[3].repeats);
  CHECK(range_question(untrained_ranges(), b).notes.size() == 1); // one drop is not felt
  w.put(batch, Added{"gum", Unit::drops, 20, "bulb"});
  w.put(batch, Felt{Feel::too_sticky, By::knife});
  CHECK(range_question(untrained_ranges(), folded(w)).notes.size() == 2);
}

TEST_CASE("a note that is set aside teaches nothing until that is withdrawn") {
  make::Writer w = evening();
  const Ref felt = w.put(batch, Felt{Feel::too_runny, By::knife});
  w.put(batch, Added{"gum", Unit::drops, 1, "bulb"});
  w.put(batch, Felt{Feel::right, By::knife});
  const auto guess = band_of(folded(w));
  const Ref aside = w.put(batch, SetAside{felt});
  const Batch without = folded(w);
  CHECK(without.feelings.at(0).set_aside);
  CHECK(range_question(untrained_ranges(), without).notes.size() == 1);
  CHECK(band_of(without)->middle > guess->middle);
  w.put(batch, Withdrawn{aside});
  CHECK(range_question(untrained_ranges(), folded(w)).notes.size() == 2);
}

TEST_CASE("notes that were withdrawn, or felt where there was no paint, are not kept") {
  make::Writer w("c41e08d5");
  w.put(batch, Opened{"Blue"});
  w.put(batch, Felt{Feel::right, By::knife});
  CHECK(folded(w).feelings.empty());
  make::Writer e = evening();
  const Ref felt = e.put(batch, Felt{Feel::right, By::knife});
  e.put(batch, Withdrawn{felt});
  CHECK(folded(e).feelings.empty());
}

}
