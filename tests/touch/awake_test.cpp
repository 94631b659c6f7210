// The desktop, asked to keep the display awake by the real program.
#include "touch/hand.hpp"
#include "window/desktop.hpp"

#include <csignal>

namespace awake_test {

namespace {

using namespace touch;
using desktop::Calls;

const std::string asked = "inhibit Slabside: a batch lies on the slab";

void begin(Hand& hand) {
  hand.tap("pigment pb29");
  hand.tap("weigh");
  hand.type("10");
  hand.tap("begin");
}

}

TEST_CASE("awake from the batch's beginning until it is gathered, and while it is back") {
  const desktop::Daemon daemon;
  desktop::Desktop desktop;
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  hand.tap("pigment pb29");
  CHECK(desktop.after(0).empty());
  hand.tap("weigh");
  hand.type("10");
  hand.tap("begin");
  CHECK(desktop.after(1) == Calls{asked});
  hand.tap("add gum_12");
  for (int i = 0; i < 3; ++i) hand.tap("pass"); // wetting, mulling, and that ends
  hand.tap("gather");
  CHECK(desktop.after(2) == Calls{asked, "release 77"});
  hand.tap("back_on_slab");
  CHECK(desktop.after(3).back() == asked);
  CHECK(hand.close().number == 0);
  CHECK(desktop.after(5) == Calls{asked, "release 77", asked, "release 77", "gone"});
  CHECK(hand.program.err() == "");
}

TEST_CASE("a program that is killed lets the display sleep") {
  const desktop::Daemon daemon;
  desktop::Desktop desktop;
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  begin(hand);
  desktop.after(1);
  hand.program.kill(SIGKILL);
  CHECK(desktop.after(2) == Calls{asked, "gone"});
}

TEST_CASE("a desktop that refuses is named once, and the batch goes on") {
  const desktop::Daemon daemon;
  desktop::Desktop desktop(desktop::Manner::refuses);
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  begin(hand);
  desktop.after(2);
  hand.tap("add gum_12");
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() ==
        "slabside: The desktop would not keep the display awake: not for tablets\n");
  check_same(only_session(home), hand.lines);
}

}
