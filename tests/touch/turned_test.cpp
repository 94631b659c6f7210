// A tablet that is turned, and a window that fills its display.
#include "touch/hand.hpp"

namespace turned_test {

namespace {

using namespace touch;

void begin(Hand& hand) {
  hand.tap("pigment pb29");
  hand.tap("binder gum_12");
  hand.tap("weigh");
  hand.type("12");
  hand.tap("begin");
}

}

TEST_CASE("turned in the middle of a pass and of a number, nothing is lost") {
  Glass glass(1280, 1280);
  const Home home;
  Hand hand(glass, home);
  begin(hand);
  hand.tap("pass");
  hand.tap("another");
  hand.tap("amount weigh");
  hand.tap("add gum_12");
  hand.tap("digit 5");
  hand.turn(upright);
  hand.tap("point");
  hand.tap("digit 2");
  hand.turn(lying);
  hand.tap("digit 5");
  hand.tap("enter");
  hand.turn(upright);
  hand.tap("felt too_sticky");
  hand.tap("pass");
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  check_same(only_session(home), hand.lines);
}

TEST_CASE("full screen by a pad, back by the same, and at once at the next start") {
  const Look all{1440, 900};
  Glass glass(all.w, all.h);
  const Home home;
  {
    Hand hand(glass, home);
    hand.tap("tablet");
    for (const Look& look : {all, lying, all}) {
      hand.tap("full_screen");
      wait_until("its new size", [&] { return hand.window().w == look.w; });
      hand.fills(look);
    }
    CHECK(hand.close().number == 0);
    CHECK(hand.program.err() == "");
  }
  Hand hand(glass, home, lying, {}, {}, Hand::Begin::where_it_opens);
  wait_until("all of the display", [&] { return hand.window().w == all.w; });
  hand.mirror.full_screen = true;
  hand.fills(all);
  hand.tap("plan");
  begin(hand);
  CHECK(hand.close().number == 0);
  check_same(only_session(home), hand.lines);
}

}
