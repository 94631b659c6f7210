#include "at_pans.hpp"
#include "bench/due.hpp"

using namespace bench;
using namespace hands;

TEST_CASE("no layer is asked for on paint that stays tacky; what was said too early stops none") {
  Hands h;
  gather(h);
  h.tap("new_pan");
  h.wait(hour);
  h.tap("judge");
  h.tap("became sticky"); // still wet
  h.wait(10 * day);
  CHECK(shown(h).all > 0);
  CHECK(layer_due(h.b, h.b.batch, h.now()));
  h.tap("became sticky");
  REQUIRE_FALSE(shown(h).said->early);
  CHECK(shown(h).next.kind == PansView::Next::tacky);
  CHECK(shown(h).all == 0);
  CHECK_FALSE(layer_due(h.b, h.b.batch, h.now()));
  h.tap("became good");
  CHECK(shown(h).next.kind != PansView::Next::tacky);
}

TEST_CASE("nor on paint that rubs off, until what is left has more binder") {
  Hands h;
  gather(h);
  h.tap("new_pan");
  h.wait(10 * day);
  h.tap("judge");
  h.tap("became rubs_off");
  CHECK(shown(h).next.kind == PansView::Next::rubs_off);
  CHECK(shown(h).all == 0);
  for (const char* pad : {"judge", "new_pan"}) h.tap(pad); // of the same paint
  CHECK(shown(h).next.kind == PansView::Next::rubs_off);
  for (const char* pad : {"slab", "back_on_slab", "add gum_12", "pans"}) h.tap(pad);
  CHECK(shown(h).next.kind == PansView::Next::rubs_off); // a drop, and not worked in
  for (const char* pad : {"slab", "another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("1.5");
  for (const char* pad : {"pass", "pass", "gather"}) h.tap(pad);
  h.tap("pans");
  CHECK(shown(h).next.kind != PansView::Next::rubs_off);
}
