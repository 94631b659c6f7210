// Pans as they were planned.
#include "bench/pans.hpp"
#include "hands.hpp"

using namespace bench;
using hands::Hands;

namespace {

PansView shown(Hands& h) { return std::get<PansView>(view(h.b, h.now()).screen); }

const session::Poured& last_pour(const Hands& h) {
  const session::Poured* last = nullptr;
  for (const session::Line& line : h.lines)
    if (const auto* poured = std::get_if<session::Poured>(&line.event)) last = poured;
  REQUIRE(last);
  return *last;
}

}

TEST_CASE("where grams were asked for no pans were planned") {
  Hands h;
  h.begin();
  h.tap("another");
  h.tap("amount 1 tsp");
  h.tap("add gum_12");
  for (const char* pad : {"pass", "pass", "pass", "gather", "pans"}) h.tap(pad);
  CHECK(shown(h).planned.pans == 0);
  CHECK(shown(h).all > 0);
}

TEST_CASE("the pans that were planned are offered, not as many as the paint would fill") {
  Hands h;
  h.tap("pigment pb28");
  while (h.b.plan.want != Want::pans) h.tap("want");
  h.tap("weigh");
  h.type("3");
  h.tap("pan_size"); // full pans
  const std::string pan = h.b.plan.pan;
  h.tap("begin");
  h.tap("add pb28");
  h.type("12"); // more than was asked for
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("9");
  for (const char* pad : {"pass", "pass", "pass", "gather", "pans"}) h.tap(pad);
  CHECK(shown(h).planned.pans == 3);
  CHECK(shown(h).planned.layers > 1);
  CHECK(shown(h).all == 3);
  h.tap("pour_all");
  CHECK(last_pour(h) == session::Poured{1, 3, pan, std::nullopt});
  h.tap("undo");
  h.tap("pan_card"); // of another size nothing was planned
  CHECK(shown(h).planned.pans == 0);
  CHECK(shown(h).all > 3);
}

TEST_CASE("upright too the room can be read while a pan is chosen, and while it is judged") {
  Hands h(Display{{136, 218}, Hand::left});
  h.begin();
  h.tap("another");
  h.tap("amount 1 tsp");
  h.tap("add gum_12");
  for (const char* pad : {"pass", "pass", "pass", "gather", "pans", "pour_all"}) h.tap(pad);
  CHECK(h.shows("room_of_pans"));
  h.tap("pan 1");
  CHECK(h.shows("room_of_pans"));
  h.tap("judge");
  CHECK(h.shows("room_of_pans"));
}
