// Making binder at the real window: its steps and a jar's strength, kept as they were tapped.
#include "touch/hand.hpp"

namespace binder_test {

namespace {

using namespace touch;
using bench::Screen;

void makes_binder(const Look& look) {
  Glass glass(look.w, look.h);
  const Home home;
  Hand hand(glass, home, look, {}, {}, Hand::Begin::where_it_opens);
  hand.tap("my_binder");
  CHECK(hand.mirror.screen == Screen::binder);
  hand.tap("recipe_of_binder");
  hand.tap("more_gum");
  hand.tap("gum");
  hand.type("42");
  for (const char* pad : {"step gum", "step steep", "take_step_back", "step steep", "step strain",
                          "step preserve", "step jar", "onto_shelf"})
    hand.tap(pad);
  CHECK(hand.mirror.screen == Screen::shelf);
  hand.tap("strength");
  hand.tap("weaker");
  hand.tap("put_in");
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  check_same(only_session(home), hand.lines);
}

}

TEST_CASE("binder is made step by step, lying") { makes_binder(lying); }
TEST_CASE("binder is made step by step, upright") { makes_binder(upright); }

}
