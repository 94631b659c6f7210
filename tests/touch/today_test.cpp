// Today at the real window: where the program opens, and where its pads lead.
#include "touch/hand.hpp"

namespace today_test {

namespace {

using namespace touch;
using bench::Screen;

void begin(Hand& hand) {
  hand.tap("new_paint");
  hand.tap("pigment pb29");
  hand.tap("weigh");
  hand.type("12");
  hand.tap("begin");
}

void make(Hand& hand) {
  begin(hand);
  hand.tap("another");
  hand.tap("amount weigh");
  hand.tap("add gum_12");
  hand.type("9");
  for (int i = 0; i < 3; ++i) hand.tap("pass");
  hand.tap("gather");
}

// What it pours there is of the batch that the line named.
void leads_to_pans(const Look& look) {
  Glass glass(look.w, look.h);
  const Home home;
  Hand hand(glass, home, look, {}, {}, Hand::Begin::where_it_opens);
  CHECK(hand.mirror.screen == Screen::today);
  make(hand);
  const std::string first = hand.mirror.batch;
  hand.tap("today");
  make(hand);
  hand.tap("today");
  hand.tap("due jar " + first);
  hand.tap("new_pan");
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  const auto lines = only_session(home);
  check_same(lines, hand.lines);
  std::string opened_first, poured; // in the program's own ids
  for (const session::Line& line : lines) {
    if (opened_first.empty() && std::holds_alternative<session::Opened>(line.event))
      opened_first = line.batch;
    if (std::holds_alternative<session::Poured>(line.event)) poured = line.batch;
  }
  CHECK(opened_first != "");
  CHECK(poured == opened_first);
}

}

TEST_CASE("a line of Today leads to where it is dealt with, lying") { leads_to_pans(lying); }
TEST_CASE("a line of Today leads to where it is dealt with, upright") { leads_to_pans(upright); }

TEST_CASE("the program opens on Slab, where a hand was a moment ago") {
  Glass glass(lying.w, lying.h);
  const Home home;
  Hand before(glass, home, lying, {}, {}, Hand::Begin::where_it_opens);
  begin(before);
  CHECK(before.close().number == 0);
  const std::string session = std::get<session::Began>(only_session(home)[0].event).session;
  Hand hand(glass, home, lying, {}, {}, Hand::Begin::where_it_opens);
  REQUIRE(hand.mirror.screen == Screen::slab);
  hand.tap("add gum_12");
  CHECK(hand.close().number == 0);
  check_same(only_session(home, {session}), hand.lines);
}

}
