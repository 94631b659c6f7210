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

}
