// How a sitting ends: as it should, or by what nobody asked for.
#include "commands/clock.hpp"
#include "touch/hand.hpp"

#include <csignal>

namespace endings_test {

namespace {

using namespace touch;
using namespace std::chrono_literals;

void begin(Hand& hand) {
  hand.tap("pigment pb29");
  hand.tap("weigh");
  hand.type("10");
  hand.tap("begin");
}

void drop_by_drop(Hand& hand, int drops) {
  for (int i = 0; i < drops; ++i)
    hand.flick(i % 3 == 2 ? "add water" : i % 3 == 1 ? "add honey_11" : "add gum_12", 20ms);
}

// Every line said to be saved is there once; the rest is what was tapped, as far as it got.
void check_beginning_of(const std::vector<session::Line>& file, Hand& hand) {
  REQUIRE(hand.reported());
  CHECK(file.size() > *hand.reported());
  REQUIRE(file.size() <= hand.lines.size());
  check_same(file,
             {hand.lines.begin(), hand.lines.begin() + static_cast<std::ptrdiff_t>(file.size())});
}

void check_reads(const Home& home) {
  for (const session::File& file : home.files())
    for (const session::Damage& damage : file.damage) CHECK(damage.ordinary);
}

// The display goes, and with it the program; it says why.
void shatter(Glass& glass, Hand& hand) {
  glass.shatter();
  const Ending ending = hand.program.wait();
  CHECK_FALSE(ending.by_signal);
  CHECK(ending.number == 3);
  CHECK_MESSAGE(hand.program.err().find("display") != std::string::npos, hand.program.err());
}

}

TEST_CASE("the display goes away with taps still on their way") {
  for (const int drops : {1, 17, 40}) {
    Glass glass(1280, 800);
    const Home home;
    Hand hand(glass, home);
    begin(hand);
    drop_by_drop(hand, drops);
    shatter(glass, hand);
    check_reads(home);
    check_beginning_of(only_session(home), hand);
  }
}

TEST_CASE("the display goes away while lines wait for the disk: they are saved") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home, lying, {"--fault", "slow:300"});
  begin(hand);
  drop_by_drop(hand, 12);
  hand.seen();
  shatter(glass, hand);
  check_reads(home);
  check_same(only_session(home), hand.lines);
}

TEST_CASE("the window is closed at once, with nothing done") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home, lying, {}, {}, Hand::Begin::where_it_opens);
  CHECK(hand.close().number == 0);
  CHECK(hand.program.out().rfind("ready\nclosed\n", 0) == 0);
  CHECK_FALSE(std::filesystem::exists(home.studio));
}

TEST_CASE("nothing is drawn while nothing changes") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home, lying, {}, {}, Hand::Begin::where_it_opens);
  std::this_thread::sleep_for(std::chrono::seconds(4));
  CHECK(hand.close().number == 0);
  const std::string out = hand.program.out();
  const std::size_t drawn = out.find("drawn ");
  REQUIRE_MESSAGE(drawn != std::string::npos, out);
  // What is left of the first ones, the minute of the clock, and goodbye: at 60 a second it would
  // be 240.
  CHECK(std::stoi(out.substr(drawn + 6)) <= 12);
}

TEST_CASE("the window is closed in the middle of a batch") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  begin(hand);
  drop_by_drop(hand, 5);
  CHECK(hand.close().number == 0);
  const auto lines = only_session(home);
  check_same(lines, hand.lines);
  CHECK(std::holds_alternative<session::Left>(lines.back().event));
  for (const session::File& file : home.files()) CHECK(file.damage.empty());
}

TEST_CASE("the window is closed in the middle of a note, right behind its last letters") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  begin(hand);
  hand.tap("book");
  hand.tap("batch " + hand.mirror.batches[0]);
  hand.tap("note");
  hand.write("note_text", "less ");
  const std::string last = "water";
  for (const char c : last)
    for (const bool down : {true, false}) glass.key(static_cast<std::uint32_t>(c), down);
  bench::step(hand.mirror, bench::Text{*bench::pad_named("note_text"), "less " + last},
              commands::real_now());
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  const auto lines = only_session(home);
  check_same(lines, hand.lines);
  REQUIRE(lines.size() > 2);
  const auto* noted = std::get_if<session::Noted>(&lines[lines.size() - 2].event);
  REQUIRE(noted);
  CHECK(noted->text == "less water");
}

TEST_CASE("killed, and taken up again at the next start") {
  Glass glass(1280, 800);
  const Home home;
  Hand killed(glass, home);
  begin(killed);
  drop_by_drop(killed, 6);
  killed.saved();
  killed.program.kill(SIGKILL);
  CHECK(killed.program.wait().by_signal);
  const auto before = only_session(home);
  check_beginning_of(before, killed);
  const std::string first_session = std::get<session::Began>(before[0].event).session;

  Hand hand(glass, home);
  hand.tap("book");
  REQUIRE(hand.mirror.batches.size() == 1);
  const std::string batch = hand.mirror.batches[0];
  hand.tap("batch " + batch);
  hand.tap("take_up");
  hand.tap("add gum_12");
  hand.tap("felt right");
  hand.tap("undo");
  hand.tap("add gum_12");
  CHECK(hand.close().number == 0);
  const auto after = only_session(home, {first_session});
  check_same(after, hand.lines);
  CHECK(after[1].batch == batch);
  const std::string second = std::get<session::Began>(after[0].event).session;
  check_same(only_session(home, {second}), before);
}

}
