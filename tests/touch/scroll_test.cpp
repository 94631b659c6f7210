// A list under a finger at the real window: what is tapped after a drag is what lay there then.
#include "bench/pads_shelf.hpp"
#include "commands/clock.hpp"
#include "touch/hand.hpp"

namespace scroll_test {

namespace {

using namespace touch;

// The same for the mirror, by its own clock: with motion off a drag's end does not hang on time.
void tell_mirror(Hand& hand, bench::Pointer::Phase phase, Pixel at, const Look& look,
                 std::int64_t ms) {
  const double px_per_mm = look.w / look.mm.w;
  const bench::Point mm{at.x / px_per_mm, at.y / px_per_mm};
  bench::step(hand.mirror, bench::Pointer{phase, mm, ms, static_cast<std::uint64_t>(ms), 0},
              commands::real_now());
}

void drag(Hand& hand, const Look& look, Pixel from, int px) {
  constexpr int steps = 12;
  std::int64_t ms = commands::real_now().run_ms;
  hand.press(from);
  tell_mirror(hand, bench::Pointer::down, from, look, ms);
  for (int i = 1; i <= steps; ++i) {
    const Pixel to{from.x, from.y + px * i / steps};
    hand.slide(to);
    tell_mirror(hand, bench::Pointer::move, to, look, ms += 10);
  }
  hand.release();
  hand.seen();
  tell_mirror(hand, bench::Pointer::up, {from.x, from.y + px}, look, ms += 10);
}

std::string first_row(const Hand& hand) {
  for (const bench::Pad& pad : bench::layout(hand.mirror).pads)
    if (pad.id.kind == bench::ShelfPad::own) return name_of(pad.id);
  return "";
}

// What is one's own is ticked off a list: each tap on a row is a line.
void drags_and_ticks(const Look& look) {
  Glass glass(look.w, look.h);
  const Home home;
  Hand hand(glass, home, look, {}, {}, Hand::Begin::where_it_opens);
  hand.tap("tablet");
  hand.tap("motion");
  hand.tap("today");
  hand.tap("have");
  const std::string top = first_row(hand);
  const Pixel at = hand.centre(top);
  hand.tap(top);
  const int row = hand.pad_area(top).h;
  drag(hand, look, {at.x, at.y + 2 * row}, -3 * row);
  const std::string below = first_row(hand);
  REQUIRE(below != top);
  hand.tap(below);
  drag(hand, look, {at.x, at.y + row}, 2 * row);
  REQUIRE(first_row(hand) != below);
  hand.tap(first_row(hand));
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  CHECK(hand.lines.size() > 3);
  check_same(only_session(home), hand.lines);
}

}

TEST_CASE("a list is dragged, and rows are tapped where they lie then, lying") {
  drags_and_ticks(lying);
}
TEST_CASE("a list is dragged, and rows are tapped where they lie then, upright") {
  drags_and_ticks(upright);
}

}
