// Pans as they were planned, and what is to follow the first helping.
#include "bench/again.hpp"
#include "bench/pans.hpp"
#include "hands.hpp"

namespace planned_pans_test {

using namespace bench;
using doctest::Approx;
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

TEST_CASE("made again where all of its binder went in at first, nothing is to follow") {
  Hands h;
  h.begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("2.4"); // less than is too loose by chance
  for (const char* pad : {"pass", "pass", "pass", "gather", "close"}) h.tap(pad);
  make_again(h.b, h.b.batches.back(), h.now());
  h.give(Tick{});
  h.tap("weigh");
  h.type("24");
  const auto plan = std::get<PlanView>(view(h.b, h.now()).screen);
  REQUIRE(plan.planned);
  CHECK(plan.planned->binder_g == Approx(4.8));
  CHECK(plan.planned->first_helping.high_g == Approx(4.8).epsilon(0.01));
  CHECK(plan.planned->rest_g == 0);
  for (const auto& line : plan.lines) CHECK(line.why != PlanView::Step::rest);
}

}
