// What is spoken, chosen on the glass.
#include "touch/hand.hpp"

namespace language_test {

TEST_CASE(
    "another language by a pad, the first by the same, and at the next start as it was left") {
  using namespace touch;
  Glass glass(lying.w, lying.h);
  const Home home;
  Pixels german;
  {
    Hand hand(glass, home);
    hand.tap("tablet");
    hand.drawn();
    const Area tab = hand.pad_area("shelf");
    const Pixels english = hand.look(tab);
    hand.tap("language");
    hand.drawn();
    german = hand.look(tab);
    CHECK(german != english);
    hand.tap("language");
    hand.drawn();
    CHECK(hand.look(tab) == english);
    hand.tap("language");
    CHECK(hand.close().number == 0);
    CHECK(hand.program.err() == "");
  }
  Hand hand(glass, home, lying, {}, {}, Hand::Begin::where_it_opens);
  hand.drawn();
  CHECK(hand.look(hand.pad_area("shelf")) == german);
  CHECK(hand.close().number == 0);
}

}
