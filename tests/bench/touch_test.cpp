#include "bench/pads_slab.hpp"
#include "bench/touch.hpp"
#include "hands.hpp"

namespace touch_test {

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
      {"the same pad again at once, by its name",
       {{down, left, 0, 1, 99},
        {up, left, 0, 2, 99},
        {down, left, 66, 3, 99},
        {up, left, 66, 4, 99}},
       2,
       {}},
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

namespace {

// Rows of 12 mm from the top down, each a pad of its own; beside them a pad that is none of them.
Layout rows(bool runs = false) {
  Layout l;
  for (int i = 0; i < 8; ++i)
    l.pads.push_back({{SlabPad::add, "row " + std::to_string(i)}, {0, 13.5 * i, 100, 12}});
  l.pads.push_back({{SlabPad::add, "beside"}, {110, 0, 30, 22}});
  l.list = {{0, 0, 100, 106.5}, 13.5, 8, 40, 4, runs};
  return l;
}

struct Pull {
  const char* name;
  std::vector<Pointer> events;
  int taps = 0;
  double mm = 0; // dragged, all in all
  std::optional<NotCounted> said = {};
  bool let_go = false;
};

constexpr Point row{50, 46}, beside{125, 11};
constexpr Point by(double down_mm, double across_mm = 0) {
  return {row.x + across_mm, row.y + down_mm};
}

void check(const Pull& c, bool runs = false) {
  CAPTURE(c.name);
  Touch touch;
  int taps = 0;
  double mm = 0;
  bool let_go = false;
  std::optional<NotCounted> said;
  for (const Pointer& p : c.events) {
    const Recognised r = recognise(touch, rows(runs), p);
    taps += r.tap.has_value();
    if (r.not_counted) said = r.not_counted;
    if (r.dragged) mm += r.dragged->mm, let_go |= r.dragged->let_go_at.has_value();
  }
  CHECK(taps == c.taps);
  CHECK(mm == doctest::Approx(c.mm));
  CHECK(said == c.said);
  CHECK(let_go == c.let_go);
}

}

TEST_CASE("what drags a list, and what wet glass and hands do on one") {
  const std::vector<Pull> cases{
      {"a tap", {{down, row, 0, 1}, {up, row, 90, 2}}, 1},
      {"a tap that rolls by less than the slop",
       {{down, row, 0, 1}, {move, by(-3), 40, 2}, {up, by(-5), 90, 3}},
       1},
      {"a drag",
       {{down, row, 0, 1}, {move, by(-5), 30, 2}, {move, by(-15), 60, 3}, {up, by(-20), 90, 4}},
       0,
       -20,
       {},
       true},
      {"a drag that comes back to where it began taps nothing",
       {{down, row, 0, 1},
        {move, by(8), 30, 2},
        {move, by(16), 60, 3},
        {move, by(1), 90, 4},
        {up, row, 120, 5}},
       0,
       0,
       {},
       true},
      {"from between two rows",
       {{down, by(7), 0, 1}, {move, by(0), 30, 2}, {move, by(-9), 60, 3}, {up, by(-9), 90, 4}},
       0,
       -16,
       {},
       true},
      {"across the list",
       {{down, row, 0, 1},
        {move, by(2, 8), 30, 2},
        {move, by(20, 60), 60, 3},
        {up, by(20, 60), 90, 4}},
       0,
       0,
       NotCounted::slid},
      {"from a pad beside the list onto it",
       {{down, beside, 0, 1}, {move, by(0), 30, 2}, {move, by(30), 60, 3}, {up, by(30), 90, 4}},
       0,
       0,
       NotCounted::slid},
      {"a drop that wanders about",
       {{down, row, 0, 1},
        {move, by(3), 20, 2},
        {move, by(-3, 2), 40, 3},
        {move, by(4, -1), 60, 4},
        {move, by(-2), 80, 5},
        {move, by(7), 100, 6},
        {move, by(14), 120, 7},
        {up, by(14), 140, 8}},
       0,
       0,
       NotCounted::slid},
      {"a touch that leaps, as coupled rows of wet glass make it",
       {{down, row, 0, 1}, {move, by(-40), 8, 2}, {move, by(-44), 16, 3}, {up, by(-44), 24, 4}},
       0,
       0,
       NotCounted::slid},
      {"a hand that was laid down and slides",
       {{down, row, 0, 1},
        {move, by(-10), 1600, 2},
        {move, by(-30), 1700, 3},
        {up, by(-30), 1800, 4}},
       0,
       0,
       NotCounted::slid},
      {"two at once, the second beside the first",
       {{down, row, 0, 1, 0},
        {down, by(20), 10, 2, 1},
        {move, by(-10), 40, 3, 0},
        {move, by(8), 40, 3, 1},
        {move, by(-20), 80, 4, 0},
        {up, by(-20), 90, 5, 0},
        {up, by(8), 90, 5, 1}},
       0,
       0,
       NotCounted::slid},
      {"two at once, the first on no pad at all",
       {{down, {105, 60}, 0, 1, 0},
        {down, row, 10, 2, 1},
        {move, by(-10), 40, 3, 1},
        {move, by(-20), 80, 4, 1},
        {up, by(-20), 90, 5, 1},
        {up, {105, 60}, 95, 6, 0}},
       0,
       0,
       NotCounted::slid},
      {"two at once, the second while the first drags: it ends there, and neither taps",
       {{down, row, 0, 1, 0},
        {move, by(-10), 30, 2, 0},
        {down, by(20), 50, 3, 1},
        {move, by(-30), 80, 4, 0},
        {up, by(20), 100, 5, 1},
        {up, by(-30), 120, 6, 0}},
       0,
       -10,
       NotCounted::other_finger},
      {"a finger after the other was lifted",
       {{down, beside, 0, 1, 0},
        {up, beside, 90, 2, 0},
        {down, row, 120, 3, 1},
        {move, by(-10), 150, 4, 1},
        {up, by(-10), 180, 5, 1}},
       1,
       -10,
       {},
       true},
      {"a finger whose lifting nobody reported, long before",
       {{down, beside, 0, 1, 7},
        {down, row, 10100, 3, 8},
        {move, by(-10), 10150, 4, 8},
        {up, by(-10), 10200, 5, 8}},
       0,
       -10,
       {},
       true},
      {"taken away by the system",
       {{down, row, 0, 1}, {move, by(-10), 30, 2}, {lost, by(-10), 50, 3}, {up, by(-30), 90, 4}},
       0,
       -10},
  };
  for (const Pull& c : cases) check(c);
}

TEST_CASE("a list that runs is stopped by what would be a tap on any other") {
  check({"a tap", {{down, row, 0, 1}, {up, row, 90, 2}}, 0}, true);
  check({"beside it", {{down, beside, 0, 1}, {up, beside, 90, 2}}, 1}, true);
  check({"taken hold of",
         {{down, row, 0, 1}, {move, by(-10), 30, 2}, {up, by(-10), 60, 3}},
         0,
         -10,
         {},
         true},
        true);
}

TEST_CASE("the speed of a finger that lets go: of its last way, none of a poll after a stall") {
  const auto speed = [](const std::vector<Pointer>& events) {
    Touch touch;
    double out = -1;
    for (const Pointer& p : events)
      if (const auto r = recognise(touch, rows(), p); r.dragged && r.dragged->let_go_at)
        out = *r.dragged->let_go_at;
    return out;
  };
  CHECK(speed({{down, row, 0, 1},
               {move, by(8), 20, 2},
               {move, by(16), 40, 3},
               {move, by(24), 60, 4},
               {up, by(24), 65, 5}}) == doctest::Approx(400));
  CHECK(
      speed(
          {{down, row, 0, 1}, {move, by(8), 20, 2}, {move, by(16), 40, 3}, {up, by(16), 140, 4}}) ==
      0);
  CHECK(
      speed(
          {{down, row, 50, 1}, {move, by(8), 50, 1}, {move, by(16), 50, 1}, {up, by(24), 50, 1}}) ==
      0);
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

}
