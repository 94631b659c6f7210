// Two tablets at one slab: each writes its own session, and sees of the other's file what a
// synchroniser has brought so far, which may end anywhere.
#include "bench/hands.hpp"
#include "session/bytes.hpp"
#include "session/shelf.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <cmath>

namespace two_devices_test {

using namespace hands;

namespace {

struct Device {
  Hands hands;
  std::string bytes; // its own file
  std::uint32_t check = 0;
  std::size_t written = 0;

  explicit Device(const std::string& session) {
    hands.b = start(session, session.substr(0, 4), Display{}, hands.now());
    hands.ids = static_cast<std::uint32_t>(session[0]) << 24;
    hands.give(Loaded{});
  }

  void write() {
    for (; written < hands.lines.size(); ++written) {
      const auto& began = std::get<session::Began>(hands.lines.front().event);
      const auto encoded = session::encode(hands.lines[written], check, session::seed_of(began));
      REQUIRE(encoded);
      bytes += encoded->bytes;
      check = encoded->check;
    }
  }
  std::string name() const { return "a-" + hands.b.sitting.session + ".jsonl"; }

  // Of the other's file everything but the last bytes.
  void see(const Device& other, std::size_t but = 0) {
    const std::string_view seen(other.bytes.data(),
                                other.bytes.size() - std::min(but, other.bytes.size()));
    session::Joined joined = session::join({session::read_file(other.name(), seen)});
    hands.give(Arrived{std::move(joined.logs), std::move(joined.damage), {other.name()}, {}});
  }
  void tap(const std::string& pad) {
    hands.tap(pad);
    write();
  }
  session::Batch batch(const std::string& id) const {
    return *session::fold(session::all_of(hands.b.logs), id);
  }
};

struct Two {
  Device first{"c41e08d50001"}, second{"d52f19e60002"};
  std::string id;

  Two() {
    first.hands.begin();
    first.tap("add gum_12");
    id = first.hands.b.batch;
    second.hands.wall = first.hands.wall;
    second.see(first);
    second.tap("book");
    second.tap("batch " + id);
    second.tap("take_up");
  }

  // One moment for both.
  void pass_ms(std::int64_t ms) {
    for (Device* t : {&first, &second}) t->hands.pass_ms(ms);
  }
};

double drops(const session::Batch& batch) {
  double sum = 0;
  for (const session::Total& t : batch.totals) sum += t.drops;
  return sum;
}

std::vector<session::Ref> refs(const session::Batch& batch) {
  std::vector<session::Ref> out;
  for (const session::Entry& e : batch.entries) out.push_back(e.ref);
  return out;
}

}

TEST_CASE("every interleaving of four drops here and four there is one batch of nine") {
  for (unsigned order = 0; order < 256; ++order) {
    if (__builtin_popcount(order) != 4) continue;
    Two two;
    for (unsigned i = 0; i < 8; ++i) {
      Device& hand = order >> i & 1 ? two.first : two.second;
      Device& other = order >> i & 1 ? two.second : two.first;
      if (i % 3 == 0) other.see(hand);
      if (i % 3 == 1) hand.see(other, i * 37); // torn anywhere
      hand.tap("add gum_12");
      two.pass_ms(1700);
    }
    two.first.see(two.second);
    two.second.see(two.first);
    const auto a = two.first.batch(two.id), b = two.second.batch(two.id);
    CHECK(drops(a) == 9);
    CHECK(refs(a) == refs(b));
    CHECK(a.standing.binder_ratio == b.standing.binder_ratio);
    CHECK(a.standing.flow_now == b.standing.flow_now);
    CHECK_FALSE(a.damaged);
    CHECK(a.warnings.empty());
  }
}

TEST_CASE(
    "what arrives for the batch on the slab is counted and said, for another it is only kept") {
  Two two;
  two.first.tap("add gum_12");
  two.second.see(two.first);
  CHECK(drops(*two.second.hands.b.folded) == 2);
  REQUIRE(two.second.hands.b.notice.error);
  CHECK(two.second.hands.b.notice.error->what == words::BenchSay::added_elsewhere);

  two.first.tap("book");
  two.first.tap("batch " + two.id);
  two.first.tap("discard");
  two.second.see(two.first);
  REQUIRE(two.second.hands.b.notice.error);
  CHECK(two.second.hands.b.notice.error->what == words::BenchSay::discarded_elsewhere);
  two.first.tap("have_back");
  two.second.see(two.first);
  CHECK(two.second.hands.b.notice.error->what == words::BenchSay::added_elsewhere);

  two.second.hands.b.notice = {};
  two.second.see(two.first); // a copy of the same
  CHECK_FALSE(two.second.hands.b.notice.error);

  Device third("e63f2af70003");
  third.hands.begin();
  third.write();
  two.second.see(third);
  CHECK_FALSE(two.second.hands.b.notice.error);
  CHECK(two.second.hands.b.batches.size() == 2);
}

TEST_CASE("undo on one tablet never takes back the other's drop") {
  Two two;
  two.second.tap("add gum_12");
  two.first.see(two.second);
  two.first.tap("undo");
  two.second.see(two.first);
  const auto b = two.second.batch(two.id);
  CHECK(drops(b) == 1);
  for (const session::Entry& e : b.entries)
    if (e.withdrawn) CHECK(e.ref.session == two.first.hands.b.sitting.session);
}

TEST_CASE("an hour on the slab seen by two sessions evaporates once") {
  const auto dried = [](bool both) {
    Two two;
    for (int i = 0; i < 60; ++i) two.first.tap("add gum_12");
    two.first.tap("pass"); // wetting out
    for (int minute = 0; minute < 60; ++minute) {
      two.pass_ms(60'000);
      if (both) two.second.tap("felt right");
      if (both) two.first.see(two.second);
    }
    two.first.tap("felt right");
    return two.first.batch(two.id).standing.water_lost_mL.value;
  };
  const double alone = dried(false), both = dried(true);
  CHECK(alone > 0.1);
  // A second session ends the first one's pass, so the paint lies gathered and loses less.
  CHECK(both <= alone);
  CHECK(both > 0);
}

TEST_CASE("clocks that differ by an hour keep each tablet's own order") {
  Two two;
  two.second.hands.wall -= 3'600'000;
  for (int i = 0; i < 3; ++i) {
    two.second.see(two.first);
    two.second.tap("add gum_12");
    two.first.see(two.second);
    two.first.tap("add gum_12");
  }
  two.second.tap("undo");
  two.first.see(two.second);
  const auto b = two.first.batch(two.id);
  CHECK(drops(b) == 6);
  std::map<std::string, std::uint64_t> last;
  for (const session::Entry& e : b.entries) {
    CHECK(e.ref.n >= last[e.ref.session]);
    last[e.ref.session] = e.ref.n;
  }
  CHECK(b.warnings.empty());
}

TEST_CASE("a tablet whose clock is days ahead does not carry the other along") {
  Two two;
  two.first.hands.wall += 40LL * 86'400'000;
  two.first.tap("add gum_12");
  two.second.see(two.first);
  two.second.tap("add gum_12");
  CHECK(two.second.hands.lines.back().at < two.second.hands.wall + 1000);
  CHECK(drops(two.second.batch(two.id)) == 3);
  const auto& warnings = two.second.hands.b.folded->warnings;
  CHECK(std::any_of(warnings.begin(), warnings.end(),
                    [](const auto& w) { return w.kind == session::WarningKind::clock_ahead; }));
}

namespace {

constexpr std::int64_t day_ms = 86'400'000;

// What another start of the program, with that clock, does with a batch begun before it.
void take_up_and_add(Device& device, const Device& before, const std::string& batch) {
  device.see(before);
  device.tap("book");
  device.tap("batch " + batch);
  device.tap("take_up");
  device.tap("add gum_12");
  device.tap("felt too_loose");
}

bool in_the_order_said(const session::Batch& batch, const std::string& later) {
  const auto first_of_later =
      std::find_if(batch.entries.begin(), batch.entries.end(),
                   [&](const session::Entry& e) { return e.ref.session == later; });
  return first_of_later != batch.entries.end() &&
         std::all_of(first_of_later, batch.entries.end(),
                     [&](const session::Entry& e) { return e.ref.session == later; }) &&
         batch.entries.back().flow;
}

}

// By days, and by a dead battery; on the same tablet, and on one that has never had another clock.
TEST_CASE("a batch that is taken up after the clock was set back goes on where it ended") {
  for (const char* session : {"c41e08d50003", "d52f19e60003"})
    for (const std::int64_t back : {5 * day_ms, std::int64_t{0}}) {
      CAPTURE(session);
      CAPTURE(back);
      Device first("c41e08d50001");
      first.hands.begin();
      first.tap("add gum_12");
      first.tap("felt too_sticky");
      const std::string batch = first.hands.b.batch;
      Device later(session);
      later.hands.wall = back > 0 ? later.hands.wall - back : 1000;
      take_up_and_add(later, first, batch);
      CHECK(in_the_order_said(later.batch(batch), session));
      CHECK(drops(later.batch(batch)) == 2);
    }
}

// Of the same tablet, also where a part of the batch lies before the clock that it has now.
TEST_CASE(
    "what a tablet said by a clock days ahead comes before what it says when that is mended") {
  Device first("c41e08d50001");
  first.hands.begin();
  const std::string batch = first.hands.b.batch;
  first.hands.wall += 40 * day_ms;
  first.tap("add gum_12");
  Device later("c41e08d50003");
  take_up_and_add(later, first, batch);
  CHECK(in_the_order_said(later.batch(batch), "c41e08d50003"));
}

TEST_CASE("of two words about a card the later one counts, whatever the clock was set to") {
  const auto told = [](Device& device, double g_per_mL) {
    session::PigmentCard stone;
    stone.pigment.g_per_mL = g_per_mL;
    Effects effects;
    record(device.hands.b, "", session::LaidOut{session::Card{"stone", "Stone", stone}},
           device.hands.now(), effects);
    device.hands.lines.insert(device.hands.lines.end(), effects.append.begin(),
                              effects.append.end());
    device.write();
    const auto shelf = session::shelf_of(session::all_of(device.hands.b.logs));
    const auto& card = shelf.cards.at("stone");
    return std::get<session::PigmentCard>(card.facts).pigment.g_per_mL;
  };
  Device first("c41e08d50001"), later("c41e08d50003");
  CHECK(told(first, 2) == 2);
  first.hands.wall -= 5 * day_ms;
  first.hands.give(Tick{});
  REQUIRE(first.hands.count<session::ClockJumped>() == 1); // and bears the earlier moment
  CHECK(told(first, 3) == 3);
  first.hands.give(Leaving{});
  first.write();
  later.hands.wall -= 9 * day_ms;
  later.see(first);
  CHECK(told(later, 4) == 4);
}

}
