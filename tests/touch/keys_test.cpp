// Pedals at the real window: bound by pressing them, heard without a finger, remembered.
#include "touch/hand.hpp"

#include <nlohmann/json.hpp>

#include <fstream>
#include <set>

namespace keys_test {

namespace {

using namespace touch;

constexpr std::uint32_t left = 0xff51, up = 0xff52, right = 0xff53, down = 0xff54,
                        enter = 0xff0d; // X11/keysymdef.h

void bind(Hand& hand, const std::string& pad, char key) {
  hand.tap("bind " + pad);
  hand.key(std::string(1, key), static_cast<std::uint32_t>(key));
}

void begin(Hand& hand, const std::string& name) {
  hand.tap("pigment pb29");
  hand.write("name", name);
  hand.tap("weigh");
  hand.type("10");
  hand.tap("begin");
}

int drops(const Hand& hand) {
  int count = 0;
  for (const session::Line& line : hand.lines)
    if (const auto* added = std::get_if<session::Added>(&line.event))
      count += added->unit == session::Unit::drops;
  return count;
}

}

TEST_CASE("a pedal drops binder and begins a pass, in this sitting and in the next") {
  Glass glass(1280, 800);
  const Home home;
  bench::Tablet kept;
  {
    Hand hand(glass, home);
    hand.tap("tablet");
    bind(hand, "add binder", 'b');
    bind(hand, "pass", 'c');
    hand.tap("plan");
    begin(hand, "bcb"); // letters in a name are no pedal
    CHECK(drops(hand) == 0);
    hand.key("b", 'b');
    hand.key("b", 'b');
    hand.key("c", 'c');
    hand.key("b", 'b');
    CHECK(drops(hand) == 3);
    kept = hand.mirror.tablet;
    CHECK(hand.close().number == 0);
    check_same(only_session(home), hand.lines);
  }
  Hand again(glass, home);
  again.mirror.tablet = kept;
  again.tap("plan"); // it opens on the batch that was touched just now
  begin(again, "later");
  again.key("b", 'b');
  CHECK(drops(again) == 1);
  CHECK(again.close().number == 0);
  CHECK(again.program.err() == "");
}

TEST_CASE("with nothing but arrows and enter a batch begins and gets its drop") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  const std::pair<const char*, std::pair<int, int>> ways[] = {
      {"Right", {1, 0}}, {"Left", {-1, 0}}, {"Down", {0, 1}}, {"Up", {0, -1}}};
  const auto arrow = [&](const std::string& key) {
    hand.key(key, key == "Left" ? left : key == "Right" ? right : key == "Up" ? up : down);
  };
  // Greedily towards a pad, by what the mirror shows; from where it was before, the other way.
  const auto press = [&](const std::string& pad) {
    CAPTURE(pad);
    const auto& ring = hand.mirror.keys.focus;
    if (!ring || !bench::pad_of(bench::layout(hand.mirror), *ring)) arrow("Right");
    std::string way;
    std::set<std::string> seen;
    for (int i = 0; i < 40 && bench::name_of(*hand.mirror.keys.focus) != pad; ++i) {
      way += bench::name_of(*hand.mirror.keys.focus) + ", ";
      const bench::Layout pads = bench::layout(hand.mirror);
      const bench::Point to = bench::pad_of(pads, *bench::pad_named(pad))->box.centre();
      const bench::Point at = bench::pad_of(pads, *hand.mirror.keys.focus)->box.centre();
      const bool first = seen.insert(bench::name_of(*hand.mirror.keys.focus)).second;
      const bool across = (std::abs(to.x - at.x) > std::abs(to.y - at.y)) == first;
      arrow(ways[across ? (to.x > at.x ? 0 : 1) : (to.y > at.y ? 2 : 3)].first);
    }
    CAPTURE(way);
    REQUIRE(bench::name_of(*hand.mirror.keys.focus) == pad);
    hand.key("Enter", enter);
  };
  press("pigment pb28");
  press("weigh");
  for (const char digit : {'1', '2'}) hand.key(std::string(1, digit), digit);
  hand.key("Enter", enter);
  press("begin");
  press("add gum_12");
  CHECK(drops(hand) == 1);
  CHECK(hand.close().number == 0);
  check_same(only_session(home), hand.lines);
}

// Smaller than its picture: a display that is larger than was said, for a smaller one than the
// least is drawn as the least.
TEST_CASE("a card held to the glass is remembered, and the pads are as large as it says") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  hand.tap("tablet");
  hand.drawn();
  const Pixels before = hand.look(hand.pad_area("card_smaller much"));
  hand.tap("card_smaller much");
  wait_until("another layout",
             [&] { return hand.look(hand.pad_area("card_smaller much")) != before; });
  CHECK(hand.close().number == 0);
  std::ifstream file(home.state / "slabside" / "tablet.json");
  const auto tablet = nlohmann::json::parse(file);
  REQUIRE(tablet["scales"].size() == 1);
  CHECK(tablet["scales"].begin().value() == doctest::Approx(1.04));
}

}
