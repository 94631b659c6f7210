#include "bench/pads_slab.hpp"
#include "bench/touch.hpp"
#include "hands.hpp"

using namespace bench;
using hands::Hands;

namespace {

struct Case {
  const char* name;
  std::vector<Pointer> events;
  int taps;
  std::optional<NotCounted> said;
};

// Two pads of 30 x 22 mm side by side with a gap of 2 mm.
Layout two_pads() {
  Layout l;
  l.pads = {{{SlabPad::add, "left"}, {0, 0, 30, 22}}, {{SlabPad::add, "right"}, {32, 0, 30, 22}}};
  return l;
}

constexpr Point left{15, 11}, right{47, 11}, gap{31, 11}, edge{29.9, 21.9};
constexpr auto down = Pointer::down, move = Pointer::move, up = Pointer::up, lost = Pointer::lost;

}

TEST_CASE("what counts as a tap on wet glass") {
  const std::vector<Case> cases{
      {"a plain tap", {{down, left, 0, 1}, {up, left, 90, 2}}, 1, {}},
      {"press and release in one poll", {{down, left, 0, 1}, {up, left, 0, 1}}, 1, {}},
      {"released at the pad's edge",
       {{down, left, 0, 1}, {move, edge, 50, 2}, {up, edge, 90, 3}},
       1,
       {}},
      {"slid off", {{down, left, 0, 1}, {move, gap, 40, 2}, {up, gap, 90, 3}}, 0, NotCounted::slid},
      {"slid off and back",
       {{down, left, 0, 1}, {move, right, 40, 2}, {move, left, 60, 3}, {up, left, 90, 4}},
       0,
       NotCounted::slid},
      {"slid to another pad without a move event",
       {{down, left, 0, 1}, {up, right, 90, 2}},
       0,
       NotCounted::slid},
      {"rested on", {{down, left, 0, 1}, {up, left, 1600, 2}}, 0, NotCounted::rested},
      {"held just not too long", {{down, left, 0, 1}, {up, left, 1500, 2}}, 1, {}},
      {"between the pads", {{down, gap, 0, 1}, {up, gap, 90, 2}}, 0, {}},
      {"from the gap into a pad",
       {{down, gap, 0, 1}, {move, left, 50, 2}, {up, left, 90, 3}},
       0,
       {}},
      {"the same pad again at once",
       {{down, left, 0, 1}, {up, left, 60, 2}, {down, left, 120, 3}, {up, left, 150, 4}},
       1,
       NotCounted::bounced},
      {"the same pad again in time",
       {{down, left, 0, 1}, {up, left, 60, 2}, {down, left, 140, 3}, {up, left, 200, 4}},
       2,
       {}},
      {"the other pad at once",
       {{down, left, 0, 1}, {up, left, 60, 2}, {down, right, 70, 3}, {up, right, 100, 4}},
       2,
       {}},
      {"three taps drained in one poll after a stall",
       {{down, left, 900, 7},
        {up, left, 900, 7},
        {down, left, 900, 7},
        {up, left, 900, 7},
        {down, left, 900, 7},
        {up, left, 900, 7}},
       3,
       {}},
      {"a second finger",
       {{down, left, 0, 1, 0},
        {down, right, 20, 2, 1},
        {up, right, 60, 3, 1},
        {up, left, 90, 4, 0}},
       1,
       NotCounted::other_finger},
      {"a second finger, beside a hand that was laid down",
       {{down, left, 0, 1, 0},
        {down, right, 1501, 2, 1},
        {up, right, 1560, 3, 1},
        {up, left, 1700, 4, 0},
        {down, right, 1800, 5, 1},
        {up, right, 1860, 6, 1}},
       2,
       {}},
      {"a second finger, beside one that is still a tap",
       {{down, left, 0, 1, 0},
        {down, right, 1500, 2, 1},
        {up, right, 1500, 3, 1},
        {up, left, 1500, 4, 0}},
       1,
       NotCounted::other_finger},
      {"taken away by the system",
       {{down, left, 0, 1}, {lost, left, 50, 2}, {up, left, 90, 3}},
       0,
       {}},
      {"a release nobody pressed", {{up, left, 0, 1}}, 0, {}},
      {"two presses of one finger, the release lost",
       {{down, left, 0, 1}, {down, right, 400, 2}, {up, right, 480, 3}},
       1,
       {}},
  };
  for (const Case& c : cases) {
    CAPTURE(c.name);
    Touch touch;
    int taps = 0;
    std::optional<NotCounted> said;
    for (const Pointer& p : c.events) {
      const Recognised r = recognise(touch, two_pads(), p);
      taps += r.tap.has_value();
      if (r.not_counted) said = r.not_counted;
    }
    CHECK(taps == c.taps);
    CHECK(said == c.said);
  }
}

TEST_CASE("a tap belongs to the pad under the finger when it went down") {
  Touch touch;
  recognise(touch, two_pads(), {down, left, 0, 1});
  Layout moved = two_pads();
  std::swap(moved.pads[0].id, moved.pads[1].id); // the pads changed while the finger was down
  const Recognised r = recognise(touch, moved, {up, left, 90, 2});
  CHECK(r.tap->arg == "left");
}

TEST_CASE("wiped glass: no pad answers until the unlocking pad was held") {
  Hands h;
  h.begin();
  h.tap("wipe");
  const auto lines = h.lines.size();
  const Layout locked = layout(h.b);
  REQUIRE(locked.pads.size() == 1);
  for (double x = 1; x < 218; x += 9)
    for (double y = 1; y < 136; y += 9) {
      h.point(Pointer::down, {x, y});
      h.pass_ms(200);
      h.point(Pointer::up, {x, y});
    }
  CHECK(h.lines.size() == lines);
  CHECK(h.b.locked);
  h.down("unlock");
  h.wait(0.6);
  CHECK(h.b.locked);
  CHECK(*h.slab().unlocking == doctest::Approx(0.5));
  h.wait(0.7);
  CHECK_FALSE(h.b.locked);
  h.point(Pointer::up, {100, 60});
  CHECK(h.lines.size() == lines);
}

TEST_CASE("what was not counted is said for a while") {
  Hands h;
  h.begin();
  h.down("felt right");
  h.point(Pointer::move, {1, 1});
  h.point(Pointer::up, {1, 1});
  CHECK(h.slab().notice.not_counted == NotCounted::slid);
  CHECK(h.count<session::Felt>() == 0);
  h.wait(5);
  CHECK_FALSE(h.slab().notice.not_counted);
}

TEST_CASE("a pointer that passes over the glass draws nothing anew; a press does") {
  Hands h;
  h.begin();
  const auto drawn = [&](Pointer::Phase phase, Point at) {
    return step(h.b, Pointer{phase, at, h.run, ++h.poll, 0}, h.now()).redraw;
  };
  const Point pad = h.box("felt right").centre();
  CHECK_FALSE(drawn(Pointer::move, pad));
  CHECK(drawn(Pointer::down, pad));
  CHECK_FALSE(drawn(Pointer::move, pad));
  CHECK(drawn(Pointer::move, {1, 1}));
  CHECK(drawn(Pointer::up, {1, 1}));
}
