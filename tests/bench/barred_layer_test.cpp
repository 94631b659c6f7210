#include "at_pans.hpp"
#include "bench/due.hpp"

namespace barred_layer_test {

using namespace bench;
using namespace hands;

TEST_CASE("no layer is asked for on paint that stays tacky; what was said too early stops none") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(hour);
  h.tap("judge");
  h.tap("became sticky"); // still wet
  h.wait(10 * day);
  CHECK(pans_shown(h).all > 0);
  CHECK(layer_due(h.b, h.b.batch, h.now()));
  h.tap("became sticky");
  REQUIRE_FALSE(pans_shown(h).said->early);
  CHECK(pans_shown(h).next.barred_by == session::Became::sticky);
  CHECK(pans_shown(h).all == 0);
  CHECK_FALSE(layer_due(h.b, h.b.batch, h.now()));
  h.tap("became good");
  CHECK_FALSE(pans_shown(h).next.barred_by);
}

TEST_CASE("what is said of pans that are still wet ends no wait for their next layer") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(hour);
  for (const char* pad : {"judge", "became good"}) h.tap(pad);
  h.wait(10 * day);
  CHECK(layer_due(h.b, h.b.batch, h.now()));
  h.tap("became good");
  CHECK_FALSE(layer_due(h.b, h.b.batch, h.now()));
}

TEST_CASE("nor on paint that rubs off, until what is left has more binder") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(10 * day);
  h.tap("judge");
  h.tap("became rubs_off");
  CHECK(pans_shown(h).next.barred_by == session::Became::rubs_off);
  CHECK(pans_shown(h).all == 0);
  for (const char* pad : {"judge", "new_pan"}) h.tap(pad); // of the same paint
  CHECK(pans_shown(h).next.barred_by == session::Became::rubs_off);
  for (const char* pad : {"slab", "back_on_slab", "add gum_12", "pans"}) h.tap(pad);
  CHECK(pans_shown(h).next.barred_by == session::Became::rubs_off); // a drop, and not worked in
  for (const char* pad : {"slab", "another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("1.5");
  for (const char* pad : {"pass", "pass", "gather"}) h.tap(pad);
  h.tap("pans");
  CHECK_FALSE(pans_shown(h).next.barred_by);
}

TEST_CASE("nor on paint that will not re-wet, until what is left has honey") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(10 * day);
  for (const char* pad : {"judge", "became wont_rewet"}) h.tap(pad);
  CHECK(pans_shown(h).next.barred_by == session::Became::wont_rewet);
  CHECK(pans_shown(h).all == 0);
  CHECK_FALSE(layer_due(h.b, h.b.batch, h.now()));
  for (const char* pad : {"slab", "back_on_slab", "add honey_11"}) h.tap(pad);
  for (const char* pad : {"pass", "pass", "gather"}) h.tap(pad);
  h.tap("pans");
  CHECK_FALSE(pans_shown(h).next.barred_by);
}

TEST_CASE("what was poured from and lies on the slab again waits there, and not when gathered") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(10 * day);
  for (const char* pad :
       {"judge", "became rubs_off", "slab", "back_on_slab", "add gum_12", "today"})
    h.tap(pad);
  const auto waits = [&] {
    const auto all = due(h.b, h.now());
    return std::any_of(all.begin(), all.end(),
                       [](const Due& one) { return one.what == Due::What::on_slab; });
  };
  CHECK(waits());
  for (const char* pad : {"slab", "pass", "pass", "gather", "today"}) h.tap(pad);
  CHECK_FALSE(waits());
}

}
