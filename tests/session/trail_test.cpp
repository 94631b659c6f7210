// How long the trail is.
#include "make.hpp"
#include "session/trail.hpp"

#include <doctest/doctest.h>

namespace trail_test {

using namespace session;

TEST_CASE("what is said of a batch when it has left the slab makes its trail no longer") {
  constexpr const char* batch = "7f3a91c2";
  make::Writer w;
  w.put(batch, Opened{"Blue"});
  w.put(batch, LaidOut{make::pigment("blue", 4, 30)});
  w.put(batch, Added{"blue", Unit::g, 12, ""});
  w.wait(60);
  w.put(batch, StageBegan{Stage::mulling});
  w.wait(240);
  w.put(batch, Gathered{});
  const Clock before = trail_view(make::folded({w.log}, batch)).to;
  CHECK(before == doctest::Approx(300).epsilon(0.01));
  w.wait(3 * 24 * 3600);
  w.put(batch, Noted{"dried well"});
  CHECK(trail_view(make::folded({w.log}, batch)).to == before);
}

TEST_CASE("a batch that waited a day before anything went in is of the day on which it was made") {
  constexpr const char* batch = "7f3a91c2";
  constexpr double a_day_s = 24 * 3600;
  make::Writer w;
  w.card(make::pigment("p", 4.2, 30));
  w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
  w.put(batch, Opened{"Blue"});
  const std::int64_t opened = w.log.lines.back().at;
  CHECK(made_at(make::folded({w.log}, batch)) == opened);
  w.wait(a_day_s);
  w.put(batch, Added{"p", Unit::g, 10, ""});
  const std::int64_t first = w.log.lines.back().at;
  w.put(batch, Added{"gum", Unit::g, 6, ""});
  w.wait(300);
  w.put(batch, Felt{Feel::right, By::muller});
  const Batch made = make::folded({w.log}, batch);
  CHECK(made_at(made) == first);
  const TrailView trail = trail_view(made);
  CHECK(trail.to - trail.from < 600);
  CHECK(trail.from <= trail.points.front().clock);
}

}
