// Whether a batch is of the colour of the last good one, and what differs that may be why.
#include "bench/blame.hpp"
#include "bench/match.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "hands.hpp"

#include <cmath>

namespace match_test {

using namespace bench;
using hands::Hands;
using Blame = MatchView::Blame;

namespace {

// Cobalt blue with so much binder, mulled so long, each time.
struct Workshop : Hands {
  std::string make(const std::string& binder_g, double minutes, const std::string& name,
                   const std::string& pigment = "pb28") {
    tap("plan");
    give(Text{{SharedPad::search, ""}, pigment});
    tap("pigment " + pigment);
    give(Text{{PlanPad::name, ""}, name});
    tap("weigh");
    type("12");
    tap("begin");
    for (const char* pad : {"another", "amount weigh", "add gum_12"}) tap(pad);
    type(binder_g);
    tap("pass");
    tap("pass");
    wait(60 * minutes);
    tap("pass");
    tap("gather");
    wait(3600);
    return b.batches.back();
  }
  void read(const std::string& batch, char photo, double l, double a, double bb) {
    const session::Photo of{std::string(64, photo), "jpg"};
    give(SwatchRead{batch, of, SwatchReading{{0x2040a0, l, a, bb, 0.6, 0.6, 0.6}}, {}});
    wait(60);
  }
  void judge(const std::string& batch, session::Became as) {
    Effects effects;
    record(b, batch, session::Verdict{as}, now(), effects);
    wait(60);
  }
  BookView page(const std::string& batch) {
    tap("book");
    b.book.page = BatchPage{batch, {}};
    give(Tick{});
    return std::get<BookView>(view(b, now()).screen);
  }
};

const Blame* find(const std::vector<Blame>& all, Blame::What what) {
  for (const Blame& one : all)
    if (one.what == what) return &one;
  return nullptr;
}
// What it points into would be gone.
const Blame* find(std::vector<Blame>&&, Blame::What) = delete;

}

TEST_CASE("a batch is held against the last good one of its paint that was read") {
  Workshop h;
  const std::string first = h.make("8", 10, "Weir blue"), ill = h.make("8", 10, "Weir blue, 2");
  const std::string unread = h.make("8", 10, "Weir blue, 3"), last = h.make("9", 20, "Weir, 4");
  h.read(first, 'a', 40, 10, -45);
  h.read(ill, 'b', 40, 10, -45);
  for (const std::string& good : {first, unread, last}) h.judge(good, session::Became::good);
  h.judge(ill, session::Became::cracked);
  CHECK_FALSE(h.page(last).match); // its own was not read
  h.read(last, 'c', 44, 10, -45);
  const auto match = h.page(last).match;
  REQUIRE(match);
  CHECK(match->a.batch == first);
  CHECK(match->b.batch == last);
  CHECK(match->match.lightness.by > 0);
  CHECK_FALSE(h.page(first).match); // nothing was before it
  CHECK(h.page(ill).match->a.batch == first);
}

TEST_CASE("on one photo the doubt about its white is common to both swatches") {
  const auto of = [](const session::DoubtParts& parts) {
    session::Photo photo{std::string(64, 'a'), "jpg"};
    photo.measured = session::Measured{0x2040a0, 40, 10, -45, 2.1, 2.4, 2.5, parts};
    return photo;
  };
  const session::Photo known = of({0.04, 0.04, 0.06, 1.9, 2.1, 2.3});
  session::Measured in_all = *known.measured;
  in_all.parts.reset();
  session::Photo unknown = known;
  unknown.measured = in_all;
  CHECK(compared(known, known, {}).taken == colour::Taken::one_photo);
  CHECK(compared(known, known, {}).match.high < 0.3);
  CHECK(compared(unknown, unknown, {}).match.high > 1);
}

TEST_CASE("a binder is as old as the days are by the clock of who made it") {
  const auto batch = [](std::int64_t opened_at) {
    session::Batch b;
    b.opened_at = opened_at;
    session::Card binder;
    binder.id = "gum", binder.facts = session::blank_facts(session::CardKind::binder);
    binder.made_on = "2026-11-01";
    session::Total total;
    total.card = binder;
    total.grams = paint::exact(8);
    b.totals.push_back(total);
    return b;
  };
  constexpr std::int64_t noon = 1794830400000, day = session::a_day_ms; // 2026-11-16, 12:00 UTC
  const session::Batch first = batch(noon), last = batch(noon + 13 * day + day / 2 - 60'000);
  const std::vector<Blame> in_utc = blame({&first, 0}, {&last, 0}, {});
  CHECK(find(in_utc, Blame::age) == nullptr); // 13 days: no word
  const std::vector<Blame> there = blame({&first, 60}, {&last, 60}, {});
  const Blame* age = find(there, Blame::age);
  REQUIRE(age);
  CHECK(age->by == 14); // it was past midnight
}

TEST_CASE("another pigment is another paint, unless it was made again") {
  Workshop h;
  const std::string blue = h.make("8", 10, "Blue"), ochre = h.make("8", 10, "Ochre", "py43");
  h.judge(blue, session::Became::good);
  h.read(blue, 'a', 40, 10, -45);
  h.read(ochre, 'b', 60, 20, 40);
  CHECK_FALSE(h.page(ochre).match);
}

TEST_CASE("by a tap the two colours, their trails and back; the earlier one is made again") {
  Workshop h;
  const std::string first = h.make("8", 10, "Weir blue"), last = h.make("9", 20, "Weir blue, 2");
  h.judge(first, session::Became::good);
  h.read(first, 'a', 40, 10, -45);
  h.read(last, 'b', 44, 8, -42);
  h.page(last);
  h.tap("match " + first);
  const auto both = [&] { return std::get<CompareView>(view(h.b, h.now()).screen); };
  CHECK_FALSE(both().trails);
  REQUIRE(both().match);
  CHECK(both().match->a.batch == first);
  h.tap("trails");
  CHECK(both().trails);
  CHECK_FALSE(both().rows.empty());
  h.tap("trails");
  CHECK_FALSE(both().trails);
  h.tap("make_again " + first);
  CHECK(h.b.screen == Screen::plan);
}

TEST_CASE("compared from the other side, the later one is still the second") {
  Workshop h;
  const std::string first = h.make("8", 10, "Weir blue"), last = h.make("9", 20, "Weir blue, 2");
  h.read(first, 'a', 40, 10, -45);
  h.read(last, 'b', 44, 8, -42);
  h.page(first);
  const auto one = match_of(h.b, first, last), other = match_of(h.b, last, first);
  REQUIRE((one && other));
  CHECK(one->a.batch == first);
  CHECK(other->a.batch == first);
  CHECK(one->match.lightness.by == other->match.lightness.by);
}

TEST_CASE("both on one photo are told apart more surely than on two") {
  Workshop h;
  const std::string first = h.make("8", 10, "Weir blue"), last = h.make("8", 10, "Weir blue, 2");
  h.read(first, 'a', 40, 10, -45);
  h.read(last, 'b', 42, 9, -44);
  const auto apart = match_of(h.b, first, last);
  REQUIRE(apart);
  CHECK(apart->taken == colour::Taken::two_photos);
  h.read(first, 'c', 40, 10, -45);
  h.read(last, 'c', 42, 9, -44);
  const auto together = match_of(h.b, first, last);
  REQUIRE(together);
  CHECK(together->taken == colour::Taken::one_photo);
  CHECK(together->match.high - together->match.low < apart->match.high - apart->match.low);
}

TEST_CASE("a paint that is photographed again says how far two photos are to be trusted") {
  Workshop h;
  const std::string first = h.make("8", 10, "Weir blue"), last = h.make("8", 10, "Weir blue, 2");
  h.read(first, 'a', 40, 10, -45);
  h.read(last, 'b', 42, 9, -44);
  const auto before = match_of(h.b, first, last);
  REQUIRE(before);
  CHECK(before->repeats == 0);
  for (const char photo : {'c', 'd', 'e'}) h.read(first, photo, 40.1, 10.1, -45);
  const auto after = match_of(h.b, first, last);
  REQUIRE(after);
  CHECK(after->repeats == 3);
  CHECK(after->match.high < before->match.high);
}

TEST_CASE("what differs, the most unusual first") {
  Workshop h;
  const std::string first = h.make("8", 10, "Weir blue"), last = h.make("10", 12, "Weir blue, 2");
  h.read(first, 'a', 40, 10, -45);
  h.read(last, 'b', 42, 9, -44);
  h.page(last);
  const auto match = match_of(h.b, first, last);
  REQUIRE(match);
  REQUIRE_FALSE(match->blame.empty());
  const Blame* binder = find(match->blame, Blame::binder);
  REQUIRE(binder);
  CHECK(binder->by == doctest::Approx(0.25).epsilon(0.03));
  CHECK_FALSE(find(match->blame, Blame::gum)); // it came with the binder
  const Blame* minutes = find(match->blame, Blame::minutes);
  REQUIRE(minutes);
  CHECK(minutes->by == doctest::Approx(2).epsilon(0.1));
  CHECK(binder->unusual > minutes->unusual);
  for (std::size_t i = 1; i < match->blame.size(); ++i)
    CHECK(match->blame[i - 1].unusual >= match->blame[i].unusual);
}

TEST_CASE("where a number differs from batch to batch anyway, another difference is no wonder") {
  Workshop h;
  const std::string first = h.make("8", 10, "Weir blue"), last = h.make("10", 10, "Weir blue, 2");
  h.read(first, 'a', 40, 10, -45);
  h.read(last, 'b', 42, 9, -44);
  h.page(last);
  const auto at_first = match_of(h.b, first, last);
  const double before = find(at_first->blame, Blame::binder)->unusual;
  for (const char* grams : {"6", "11", "7", "12"}) h.make(grams, 10, "Weir blue");
  h.page(last);
  const auto in_the_end = match_of(h.b, first, last);
  const Blame* after = find(in_the_end->blame, Blame::binder);
  REQUIRE(after);
  CHECK(after->unusual < before);
}

}
