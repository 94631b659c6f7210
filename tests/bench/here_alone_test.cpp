// What lies in a browser's store and nowhere else: Today asks for a pack of it.
#include "bench/due.hpp"
#include "bench/here_alone.hpp"
#include "hands.hpp"

#include <algorithm>

namespace here_alone_test {

using namespace hands;

namespace {

constexpr double a_day_s = session::a_day_ms / 1000.0;

Hands in_a_browser() {
  Hands h;
  h.b.hands_on = true;
  h.give(Loaded{});
  return h;
}

bool is_asked_for(Hands& h) {
  const auto all = due(h.b, h.now());
  return std::any_of(all.begin(), all.end(),
                     [](const Due& one) { return one.what == Due::What::hand_on; });
}

}

TEST_CASE("what lies here alone is asked for after a week, until it is handed on") {
  Hands h = in_a_browser();
  CHECK_FALSE(is_asked_for(h));
  h.begin();
  const std::int64_t begun = h.wall;
  h.wait(6.9 * a_day_s);
  CHECK_FALSE(is_asked_for(h));
  h.wait(0.2 * a_day_s);
  CHECK(is_asked_for(h));
  h.wait(200 * a_day_s);
  h.tap("today");
  const auto waits = std::get<TodayView>(view(h.b, h.now()).screen).waits;
  REQUIRE_FALSE(waits.empty());
  const auto one = std::find_if(waits.begin(), waits.end(), [](const auto& wait) {
    return wait.due.what == Due::What::hand_on;
  });
  REQUIRE(one != waits.end());
  CHECK(one->days == (h.wall - begun) / session::a_day_ms);
  h.tap("due hand_on all");
  CHECK(h.b.screen == Screen::tablet);

  h.give(HandedOn{h.wall});
  CHECK_FALSE(is_asked_for(h));
  h.wait(30 * a_day_s);
  CHECK_FALSE(is_asked_for(h));
  h.tap("today");
  h.tap("due slab " + h.b.batches.back());
  h.tap("add water");
  CHECK_FALSE(is_asked_for(h));
  h.wait(8 * a_day_s);
  CHECK(is_asked_for(h));
}

TEST_CASE("what came from elsewhere, a goodbye, and what lies in a folder are not asked for") {
  Hands h = in_a_browser();
  h.begin();
  h.give(HandedOn{h.wall});
  h.wait(1);
  session::Log other;
  other.session = "0ther";
  other.device = "abcd";
  other.lines.push_back({0, 0, h.wall, "b", session::Noted{"from elsewhere"}});
  h.give(Arrived{{other}, {}, {}, {}});
  h.give(Leaving{});
  h.wait(30 * a_day_s);
  CHECK_FALSE(is_asked_for(h));

  Hands folder;
  folder.give(Loaded{});
  folder.begin();
  folder.wait(30 * a_day_s);
  CHECK_FALSE(is_asked_for(folder));
}

TEST_CASE("a tablet remembers until when all was handed on") {
  Hands h = in_a_browser();
  const Effects effects = step(h.b, HandedOn{1795617120000}, h.now());
  CHECK(effects.keep_tablet);
  CHECK(read_tablet(written(h.b.tablet))->handed_on == 1795617120000);
  CHECK(*read_tablet(R"({"handed_on": "lately"})") == Tablet{});
  CHECK(*read_tablet(R"({"handed_on": -3})") == Tablet{});
}

}
