// A fold that goes on gives what a fold from nothing gives, whatever was written meanwhile.
#include "session/exactly.hpp"
#include "session/folding.hpp"
#include "session/make.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <random>
#include <string>
#include <utility>

namespace folding_test {

using namespace session;

namespace {

constexpr const char* batch = "7f3a91c2";

// One thing after the other that a hand may do, on either of two devices.
struct Evening {
  std::mt19937 random;
  std::vector<Log> logs;
  std::vector<make::Writer> writers;
  std::vector<Ref> done;

  explicit Evening(unsigned seed) : random(seed) {
    for (const char* session : {"c41e08d5", "19aa20f7"}) {
      writers.emplace_back(session);
      make::Writer& w = writers.back();
      w.card(make::pigment("pb28", 4.2, 30));
      w.card(make::pigment("py43", 3.4, 40));
      w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
      w.card(make::liquid("water", CardKind::water, {.water = 1}));
      w.card(make::dropper("bulb", 0.048, 0.004, CardKind::binder));
      w.card(make::dropper("pipette", 0.03, 0.002, CardKind::water));
      w.card(make::pan("half", 1.7));
    }
    put(0, Opened{"Blue"});
    put(0, Added{"pb28", Unit::g, 12, ""});
    put(0, Added{"gum", Unit::g, 9, ""});
  }
  bool only_first = true; // has written since it was asked
  int below(int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); }
  void put(int who, Event event) {
    done.push_back(writers[static_cast<std::size_t>(who)].put(batch, std::move(event)));
  }
  Ref any() {
    return done[done.size() - 1 -
                static_cast<std::size_t>(below(std::min<int>(12, static_cast<int>(done.size()))))];
  }
  static Card pan_as_deep_as(double mm) {
    Card pan = make::pan("half", 1.7);
    std::get<PanCard>(pan.facts).depth_mm = mm;
    return pan;
  }
  // Lines of no batch, between those of this one.
  void of_the_shelf(int who) {
    make::Writer& w = writers[static_cast<std::size_t>(who)];
    RecipeCard sky;
    sky.pigments = {{"pb28", SaidIn::spoons, 1, "tsp"}};
    const Card recipe{"sky", "Sky", sky};
    switch (below(4)) {
    case 0: w.put("", Bought{"pb28", 100, 42.0, "crowns"}); break;
    case 1: w.put("", StockWeighed{"pb28", 60.0 + below(20)}); break;
    case 2: w.card(recipe); break;
    default: w.card(pan_as_deep_as(4.0 + below(8)));
    }
  }
  void one_thing() {
    const int who = below(8) == 0 ? 1 : 0;
    only_first = only_first && who == 0;
    for (make::Writer& w : writers) w.wait(below(20) == 0 ? 2400 : below(90));
    const Added drop{below(3) ? "gum" : "water", Unit::drops, 1.0 + below(3),
                     below(3) ? "bulb" : "pipette"};
    switch (below(30)) {
    case 0: return put(who, StageBegan{static_cast<Stage>(below(3))});
    case 1:
    case 2: return put(who, Felt{static_cast<Feel>(below(5)), By::muller});
    case 3:
    case 4: return put(who, Withdrawn{any()});
    case 5: return put(who, Corrected{any(), Corrected::Says{drop}, {}});
    case 6: return put(who, Corrected{any(), {}, -1000 * below(400)});
    case 7: return put(who, BottleWeighed{"gum", 120.0 - static_cast<double>(done.size()) / 10});
    case 8: return put(who, CountLost{"gum"});
    case 9: return put(who, Moved{Place::slab, Place::jar, {below(2) ? 0.5 : 1.0, {}}});
    case 10: return put(who, Moved{Place::jar, Place::slab, {}});
    case 11: return put(who, Weighed{below(2) ? Place::slab : Place::jar, 10.0 + below(12), 0});
    case 12: return put(who, AsBefore{any()});
    case 13: return put(who, Found{below(2) ? State::wet : State::dry});
    case 14: return put(who, Poured{1, 1 + below(3), "half", {}});
    case 15: return put(who, SetAside{any()});
    case 16: return put(who, Added{"py43", Unit::g, 0.5 + below(3), ""});
    case 17: return put(who, Lost{Place::slab, {0.1, {}}, ""});
    case 18: return put(who, RoomSet{18.0 + below(8), 0.3 + 0.05 * below(8), false});
    case 19: return void(writers[static_cast<std::size_t>(who)].put("", PutAway{"nothing"}));
    case 20: return put(who, GoesOn{});
    case 21: return put(who, Confirmed{any(), 120.0 - below(20) / 10.0});
    case 22: return of_the_shelf(who);
    case 23: return put(who, LaidOut{pan_as_deep_as(4.0 + below(8))});
    case 24: return put(who, Planned{4, "half", {{"pb28", 12.0}}, below(2) ? "sky" : ""});
    default: return put(who, drop);
    }
  }
  const std::vector<Log>& read() {
    logs.clear();
    for (const make::Writer& w : writers) logs.push_back(w.log);
    return logs;
  }
};

}

TEST_CASE("a fold that goes on is a fold from nothing, to the last digit") {
  for (unsigned seed = 1; seed <= 5; ++seed) {
    Evening evening(seed);
    Folding going;
    for (int i = 0; i < 100; ++i) {
      evening.one_thing();
      const std::vector<Log>& logs = evening.read();
      const Moment now{evening.writers[0].at0 + evening.writers[0].t + 40'000, "c41e08d5",
                       evening.writers[0].t + 40'000};
      Lessons lessons;
      if (i > 70) lessons.push_back({"other", 1, {0.2, 0.1, 3}});
      going.read(all_of(logs), batch, lessons);
      CAPTURE(seed);
      CAPTURE(i);
      REQUIRE(
          exactly::same(going.at(std::nullopt), fold(all_of(logs), batch, std::nullopt, lessons)));
      if (i % 5 == 0)
        REQUIRE(exactly::same(going.at(now), fold(all_of(logs), batch, now, lessons)));
    }
  }
}

namespace {

// As the program does it: line by line where only its own session has grown.
void read_on(Folding& going, Evening& evening) {
  const std::vector<Log>& logs = evening.read();
  if (std::exchange(evening.only_first, true))
    going.read_on(logs.front(), all_of(logs), batch, {});
  else
    going.read(all_of(logs), batch, {});
}

bool as_from_nothing(const Folding& going, const Evening& evening) {
  return exactly::same(going.at(std::nullopt), fold(all_of(evening.logs), batch));
}

// More of them where somebody wants to be sure: 100000 take ten minutes.
const char* wanted() { return std::getenv("SLABSIDE_EVENINGS"); }
unsigned evenings() { return wanted() ? static_cast<unsigned>(std::stoul(wanted())) : 100; }

void say_how_far(unsigned seed) {
  if (wanted() && seed % 1000 == 0) MESSAGE(seed << " evenings, each to the last digit");
}

}

TEST_CASE("a fold that is told of each line is a fold from nothing, to the last digit") {
  for (unsigned seed = 1; seed <= evenings(); ++seed) {
    Evening evening(seed);
    Folding going;
    for (int i = 0; i < 30; ++i) {
      evening.one_thing();
      if (evening.below(4) > 0) read_on(going, evening);
    }
    read_on(going, evening);
    CAPTURE(seed);
    REQUIRE(as_from_nothing(going, evening));
    say_how_far(seed);
  }
}

TEST_CASE("a long evening, told line by line") {
  Evening evening(77);
  Folding going;
  for (int i = 0; i < 400; ++i) {
    evening.one_thing();
    read_on(going, evening);
    CAPTURE(i);
    if (i % 19 == 0) REQUIRE(as_from_nothing(going, evening));
  }
}

TEST_CASE("lines are added behind those that are there, where they alter nothing before them") {
  Evening evening(5);
  Folding going;
  read_on(going, evening);
  going.changed_from();
  const auto first_changed = [&](Event event) {
    evening.put(0, std::move(event));
    read_on(going, evening);
    REQUIRE(as_from_nothing(going, evening));
    return going.changed_from();
  };
  const Added drop{"gum", Unit::drops, 1, "bulb"};
  for (std::size_t i = 0; i < 100; ++i) REQUIRE(first_changed(drop) == i + 3);
  const Ref one = evening.done[90];
  CHECK(first_changed(Felt{Feel::right, By::muller}) == 103);
  CHECK(first_changed(Withdrawn{one}) == 90);
  CHECK(first_changed(Withdrawn{one}) == 105);
  CHECK(first_changed(Corrected{
            evening.done[80], Corrected::Says{Added{"water", Unit::g, 2, ""}}, {}}) == 80);
  CHECK(first_changed(drop) == 107);
}

TEST_CASE("a fold goes to another batch, and to none") {
  Evening one(1), two(2);
  for (int i = 0; i < 80; ++i) one.one_thing(), two.one_thing();
  Folding going;
  going.read(all_of(one.read()), batch, {});
  going.read(all_of(two.read()), batch, {});
  CHECK(exactly::same(going.at(std::nullopt), fold(all_of(two.logs), batch)));
  going.read(all_of(one.logs), "nobody", {});
  CHECK_FALSE(going.at(std::nullopt));
  going.read(all_of(one.logs), batch, {});
  CHECK(exactly::same(going.at(std::nullopt), fold(all_of(one.logs), batch)));
}

}
