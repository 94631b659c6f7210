// The room: remembered with its age, and given anew wherever it matters.
#include "bench/choices.hpp"
#include "hands.hpp"

namespace room_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;

namespace {

PlanView plan(Hands& h) { return std::get<PlanView>(view(h.b, h.now()).screen); }

session::Log read_before(const Hands& h, std::int64_t ago_ms, bool guessed = false) {
  session::Log log;
  log.session = "d52f19e60002";
  log.lines.push_back({0, 0, h.wall - ago_ms, "x", session::RoomSet{17, 0.62, guessed}});
  return log;
}

constexpr std::int64_t hour_ms = 3600000;

}

TEST_CASE("the last room that was read stands in Plan with its age; old, it is a guess") {
  Hands h;
  CHECK(plan(h).room_guessed);
  h.give(Loaded{{read_before(h, 72 * hour_ms), read_before(h, 1000, true)}, {}, {}});
  CHECK(plan(h).celsius == 17);
  CHECK(plan(h).humidity == Approx(0.62));
  CHECK_FALSE(plan(h).room_guessed);
  CHECK(plan(h).room_age_ms == 72 * hour_ms);
  h.begin();
  CHECK(h.b.folded->places.room.celsius == 17);
  CHECK(h.b.folded->room_guessed);
}

TEST_CASE("read an hour ago it is no guess, and what is typed counts more") {
  Hands h;
  h.give(Loaded{{read_before(h, hour_ms)}, {}, {}});
  CHECK_FALSE(room_is_guess(h.b.plan, h.now()));
  h.tap("celsius");
  h.type("23.5");
  session::Log older = read_before(h, 2 * hour_ms);
  older.session = "e63f2af70003";
  h.give(Arrived{{older}, {}, {"a"}, {}});
  CHECK(plan(h).celsius == 23.5);
  h.begin();
  CHECK_FALSE(h.b.folded->room_guessed);
}

TEST_CASE("the room is given at the slab: degrees, then the humidity; one alone stays a guess") {
  Hands h;
  h.begin();
  CHECK(h.b.folded->room_guessed);
  h.tap("more");
  h.tap("room");
  h.type("24");
  CHECK(h.b.folded->places.room.celsius == 24);
  CHECK(h.b.folded->room_guessed);
  CHECK(h.b.number->target == PadId{pad_named("room")->kind, "humidity"});
  h.type("38");
  CHECK(h.b.folded->places.room.humidity == Approx(0.38));
  CHECK_FALSE(h.b.folded->room_guessed);
  CHECK_FALSE(h.b.number);
  CHECK(h.count<session::RoomSet>() == 3);
}

TEST_CASE("a room that cannot be is refused, and why is said") {
  Hands h;
  h.begin();
  h.tap("more");
  h.tap("room");
  h.type("24");
  const auto lines = h.lines.size();
  h.type("140");
  CHECK(h.b.number->error);
  CHECK(h.lines.size() == lines);
  h.tap("leave");
  CHECK_FALSE(h.b.number);
}

TEST_CASE("the room is given at the pans, for the batch that dries there") {
  Hands h;
  h.begin();
  for (int i = 0; i < 5; ++i) h.tap("add gum_12");
  h.tap("pass");
  h.tap("pass");
  h.tap("pass");
  h.tap("gather");
  h.tap("pans");
  CHECK(std::get<PansView>(view(h.b, h.now()).screen).room_guessed);
  h.tap("room_of_pans");
  h.type("19");
  h.type("70");
  const auto pans = std::get<PansView>(view(h.b, h.now()).screen);
  CHECK(pans.celsius == 19);
  CHECK(pans.humidity == Approx(0.7));
  CHECK_FALSE(pans.room_guessed);
}

}
