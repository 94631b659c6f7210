#include "bench/pads_shared.hpp"
#include "hands.hpp"

using namespace bench;
using hands::Hands;

TEST_CASE("what is searched for is emptied by one tap, on every screen that searches") {
  for (const char* screen : {"plan", "shelf", "book"}) {
    CAPTURE(screen);
    Hands h;
    h.tap(screen);
    CHECK_FALSE(h.shows("clear"));
    const Layout before = layout(h.b);
    h.give(Text{{SharedPad::search, ""}, "no such powder"});
    CHECK(layout(h.b).pads != before.pads);
    h.tap("clear");
    CHECK(layout(h.b).pads == before.pads);
  }
}

TEST_CASE("a batch is found by any name of its pigment") {
  Hands h;
  h.tap("plan");
  h.give(Text{{SharedPad::search, ""}, "limonite"});
  h.tap("pigment py43");
  h.tap("weigh");
  h.type("12");
  h.tap("begin");
  h.tap("book");
  h.give(Text{{SharedPad::search, ""}, "Limonite"});
  CHECK(h.shows("batch " + h.b.batch));
  h.give(Text{{SharedPad::search, ""}, "indigo"});
  CHECK_FALSE(h.shows("batch " + h.b.batch));
}
