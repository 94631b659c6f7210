// What the trail shows beside its own line: the marker on its way, and the last good batch.
#include "hands.hpp"

namespace trail_test {

using namespace hands;

TEST_CASE("a drop glides the marker for a moment, and not at all where motion is off") {
  Hands h;
  h.begin();
  h.tap("another");
  h.tap("amount 1 tsp");
  h.tap("add gum_12");
  const double before = *h.slab().trail.now;
  const Point at = h.box("add gum_12").centre();
  h.point(Pointer::down, at);
  h.point(Pointer::up, at);
  CHECK(*h.slab().trail.now == doctest::Approx(before));
  CHECK(*h.wake - h.run <= 20); // frames, while it glides
  h.pass_ms(60);
  h.give(Tick{});
  const double half = *h.slab().trail.now;
  CHECK(half > before);
  h.pass_ms(60);
  h.give(Tick{});
  const double there = *h.slab().trail.now;
  CHECK(there > half);
  CHECK(there == doctest::Approx(h.b.folded->standing.flow_now->value));
  CHECK(*h.wake - h.run > 100);
  h.b.tablet.motion = false;
  h.point(Pointer::down, at);
  h.point(Pointer::up, at);
  CHECK(*h.slab().trail.now == doctest::Approx(h.b.folded->standing.flow_now->value));
  CHECK_FALSE(h.b.glide);
}

TEST_CASE("the last good batch of the same paint lies under today's as a ghost") {
  Hands h;
  const auto make = [&](const char* pigment, const char* feel) {
    h.choose(pigment);
    h.tap("weigh");
    h.type("12");
    h.tap("begin");
    h.tap("add gum_12");
    h.tap("pass");
    h.wait(30);
    h.tap("pass");
    h.tap("felt " + std::string(feel));
    h.tap("pass");
  };
  const auto end = [&] {
    h.tap("gather");
    h.tap("close");
    h.tap("plan");
  };
  make("pb28", "right");
  CHECK(h.slab().trail.ghost.empty());
  const auto good = h.slab().trail.points;
  end();
  make("pb29", "right"); // another paint
  CHECK(h.slab().trail.ghost.empty());
  end();
  make("pb28", "too_runny"); // not a good one
  CHECK(h.slab().trail.ghost.size() >= good.size());
  end();
  make("pb28", "right");
  CHECK(h.slab().trail.ghost.size() >= good.size());
  CHECK(h.slab().trail.ghost.front().flow == good.front().flow);
  const std::string batch = h.b.batch;
  end();
  h.b.batch = batch; // looked at, as a picture does
  h.b.screen = Screen::slab;
  h.give(Tick{});
  CHECK(h.slab().trail.ghost.size() >= good.size());
}

TEST_CASE("a pigment that was meant to go in and never did is none of the paint's") {
  Hands h;
  const auto begin = [&](const char* weighed) {
    while (h.b.plan.want != Want::pans) h.tap("want");
    h.tap("weigh");
    h.type("2");
    h.tap("begin");
    if (h.shows("pigments")) h.tap("pigments");
    h.tap("add pb28");
    h.type(weighed);
    h.tap("add gum_12");
  };
  h.choose("pb28");
  h.choose("pb29");
  begin("12");
  h.tap("pass");
  h.wait(30);
  h.tap("pass");
  h.tap("felt right");
  h.tap("pass");
  const auto good = h.slab().trail.points;
  for (const char* pad : {"gather", "close", "plan", "pigment pb28"}) h.tap(pad);
  begin("10");
  CHECK(h.slab().trail.ghost.size() >= good.size());
}

TEST_CASE("the ghost goes when its batch cracks while another is on the slab") {
  Hands h;
  h.begin();
  const std::string good = h.b.batch;
  for (const char* pad : {"add gum_12", "pass", "pass", "felt right", "pass", "gather", "close"})
    h.tap(pad);
  h.tap("plan");
  h.begin();
  REQUIRE_FALSE(h.slab().trail.ghost.empty());
  h.tap("pans");
  h.wait(3 * 86400);
  Effects effects;
  record(h.b, good, session::Verdict{session::Became::cracked}, h.now(), effects);
  h.tap("slab");
  CHECK(h.slab().trail.ghost.empty());
}

}
