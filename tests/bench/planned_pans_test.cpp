// Pans as they were planned, and what is to follow the first helping.
#include "at_pans.hpp"
#include "bench/again.hpp"
#include "bench/pans.hpp"
#include "bench/pours.hpp"
#include "paint/pans.hpp"
#include "planned.hpp"
#include "words/numbers.hpp"

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

TEST_CASE(
    "planned in grams, the first layer goes into as many pans as Plan said, and they end full") {
  for (const char* grams : {"12", "20", "30"}) {
    CAPTURE(grams);
    Hands h;
    h.tap("pigment pb28");
    while (h.b.plan.want != Want::pigment_g) h.tap("want");
    h.tap("weigh");
    h.type(grams);
    const Planned plan = hands::planned_now(h);
    h.tap("begin");
    h.tap("add pb28");
    h.type(grams);
    h.tap("another");
    h.tap("amount weigh");
    h.tap("add gum_12");
    h.type(words::invariant(plan.binder_g, 1));
    for (const char* pad : {"pass", "pass", "pass", "gather", "pans"}) h.tap(pad);
    CHECK(shown(h).all == plan.pans);
    const session::Batch& batch = *h.b.pans.folded;
    const auto fills =
        paint::pans_of(to_pour_mL(batch), shown(h).card_mL, dry_share_to_pour(batch), planned_fill);
    REQUIRE(fills);
    CHECK(shown(h).all == fills->pans);
    for (int evening = 0; evening < 12; ++evening) {
      if (shown(h).all > 0) h.tap("pour_all");
      if (evening == 0) CHECK(shown(h).layers_in_all == fills->layers);
      h.wait(4 * hands::day);
    }
    REQUIRE(static_cast<int>(h.b.pans.folded->pans.size()) == fills->pans);
    for (const session::Pan& pan : h.b.pans.folded->pans)
      CHECK(session::dry_mL(pan) > 0.8 * shown(h).card_mL);
  }
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
  h.type("18"); // more than was asked for
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("13");
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

TEST_CASE("one pan that was planned is poured at the first tap, though there is paint for more") {
  Hands h;
  h.tap("pigment pb28");
  while (h.b.plan.want != Want::pans) h.tap("want");
  h.tap("weigh");
  h.type("1");
  h.tap("pan_size"); // full pans
  const std::string pan = h.b.plan.pan;
  h.tap("begin");
  h.tap("add pb28");
  h.type("6");
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("6");
  for (const char* pad : {"pass", "pass", "pass", "gather", "pans"}) h.tap(pad);
  CHECK(shown(h).all == 1);
  h.tap("pour_all");
  CHECK(last_pour(h) == session::Poured{1, 1, pan, std::nullopt});
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
