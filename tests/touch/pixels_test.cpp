// What the eyes see under a finger: a pad turns over while it is pressed, and a finger that slides
// off counts as nothing.
#include "touch/hand.hpp"

namespace pixels_test {

namespace {

using namespace touch;

void begin(Hand& hand) {
  hand.tap("pigment pb29");
  hand.tap("weigh");
  hand.type("10");
  hand.tap("begin");
}

std::vector<std::string> pads_shown(const Hand& hand) {
  std::vector<std::string> names;
  for (const bench::Pad& pad : bench::layout(hand.mirror).pads)
    names.push_back(bench::name_of(pad.id));
  return names;
}

// Pressed, it changes; slid off, it is as before; let go on another pad, neither has counted.
void slide_off(Hand& hand, const std::string& pad, const std::string& onto) {
  CAPTURE(pad);
  const Area area = hand.middle_of(pad);
  hand.drawn();
  const Pixels before = hand.look(area);
  hand.press(hand.centre(pad));
  wait_until("the flash of a pad", [&] { return hand.look(area) != before; });
  hand.slide(hand.centre(onto));
  wait_until("a pad as it was", [&] { return hand.look(area) == before; });
  hand.release();
  hand.drawn();
  CHECK(hand.look(area) == before);
}

// Pressed, it changes; let go, it flashes no more, and counts.
void tap_and_look(Hand& hand, const std::string& pad) {
  CAPTURE(pad);
  const Area area = hand.middle_of(pad);
  hand.drawn();
  const Pixels before = hand.look(area);
  hand.put_down(pad);
  hand.drawn();
  const Pixels pressed = hand.look(area);
  CHECK(pressed != before);
  hand.lift(pad);
  hand.drawn();
  CHECK(hand.look(area) != pressed);
}

void slide_off_all(Hand& hand) {
  const std::vector<std::string> pads = pads_shown(hand);
  CHECK(pads.size() > 15);
  for (std::size_t i = 0; i < pads.size(); ++i)
    slide_off(hand, pads[i], pads[(i + 1) % pads.size()]);
}

void pressed_and_slid(const std::vector<std::string>& options) {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home, lying, options);
  begin(hand);
  slide_off_all(hand);
  for (const char* pad : {"add water", "felt right", "add gum_12", "undo"}) tap_and_look(hand, pad);
  CHECK(*hand.reported() == hand.lines.back().n); // and not more
  CHECK(hand.close().number == 0);
  check_same(only_session(home), hand.lines);
}

}

TEST_CASE("a pad flashes, and sliding off counts as nothing, by day") { pressed_and_slid({}); }
TEST_CASE("a pad flashes, and sliding off counts as nothing, by night") {
  pressed_and_slid({"--night"});
}

TEST_CASE("a hand laid down, and a finger that another window takes away, count as nothing") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  begin(hand);

  hand.press(hand.centre("add water"));
  hand.seen();
  std::this_thread::sleep_for(std::chrono::milliseconds(1800)); // the longest touch is 1500
  hand.release();
  hand.seen();

  hand.press(hand.centre("add gum_12"));
  hand.seen();
  glass.focus_nothing();
  hand.seen();
  hand.release();
  hand.seen();

  hand.tap("felt right");
  CHECK(hand.close().number == 0);
  check_same(only_session(home), hand.lines);
}

}
