// What is due, of entries and cards alone, as days go by.
#include "bench/stock.hpp"
#include "entries.hpp"
#include "words/calendar.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace due_test {

using namespace bench;
using namespace entries;

namespace {

constexpr std::int64_t first = 20000 * day_ms; // a day of 2024, by UTC

std::int64_t on_day(int day) { return day * day_ms; }

int asked_on(int days_dry) { // counted by hand
  if (days_dry < 1) return 0;
  return days_dry < 3 ? 1 : days_dry < 10 ? 3 : days_dry < 30 ? 10 : 30;
}

bool in_order(const std::vector<Due>& all, std::int64_t now) {
  const auto place = [&](const Due& d) {
    const bool of_shelf = d.what == What::use_up || d.what == What::runs_low;
    if (!of_shelf && now - d.since >= 60 * day_ms) return 3;
    if (d.what == What::on_slab) return 0;
    return d.what == What::runs_low ? 2 : 1;
  };
  return std::is_sorted(all.begin(), all.end(), [&](const Due& a, const Due& b) {
    return std::pair(place(a), a.since) < std::pair(place(b), b.since);
  });
}

session::Card binder_until(const std::string& date) {
  session::Card card{"gum", "Gum 1:2", session::LiquidCard{session::CardKind::binder, {}}};
  card.keep_until = date;
  return card;
}

}

TEST_CASE("a year of days: each thing is due from its day until it is dealt with, in order") {
  const BookIndex index = index_of({{"p", poured(first)},
                                    {"s", lying(BookEntry::on_slab, first + 20 * day_ms)},
                                    {"j", lying(BookEntry::in_jar, first)}});
  const std::vector<session::Card> shelf{binder_until(words::date_of(20200))}; // the 200th day
  for (int d = 0; d < 366; ++d) {
    CAPTURE(d);
    const std::int64_t now = first + d * day_ms + 1000;
    const auto all = due(index, shelf, {}, now, 0);
    CHECK(in_order(all, now));
    const Due* verdict = of(all, "p", What::verdict);
    CHECK((verdict ? verdict->day : 0) == asked_on(d));
    CHECK((of(all, "p", What::next_layer) != nullptr) == (d >= 2));
    CHECK(of(all, "j", What::in_jar) != nullptr);
    CHECK(of(all, "s", What::on_slab) != nullptr); // by a clock set back too
    CHECK((of(all, "gum", What::use_up) != nullptr) == (d >= 186));
    if (const Due* slab = of(all, "s", What::on_slab); slab && d < 80) CHECK(slab == &all.front());
  }
}

TEST_CASE("by a clock set back, paint that was left over still waits, from now on") {
  BookEntry left = poured(first + 9 * day_ms);
  left.left_mL = 5;
  const auto all = due(index_of({{"p", left}}), {}, {}, first, 0);
  REQUIRE(all.size() == 1);
  CHECK(all[0].what == What::in_jar);
  CHECK(all[0].since == first);
}

TEST_CASE("what was dealt with is not due: judged, discarded, poured, put away, used up") {
  const std::int64_t now = first + 12 * day_ms;
  BookEntry judged = poured(first);
  judged.verdicts = {{{"s", 1}, first + 11 * day_ms, {session::Became::good, 0}}};
  BookEntry discarded = poured(first);
  discarded.discarded = true;
  BookEntry jar = lying(BookEntry::in_jar, first);
  jar.verdicts = judged.verdicts;
  const auto all = due(index_of({{"a", judged}, {"b", discarded}, {"c", jar}}), {}, {}, now, 0);
  REQUIRE(all.size() == 1); // the day of a layer is another matter
  CHECK(all[0].what == What::next_layer);
  session::Card gum = binder_until(words::date_of(20013));
  CHECK(due({}, {gum}, {}, now, 0).size() == 1);
  CHECK(due({}, {}, {}, now, 0).empty());
  BookIndex used;
  gum.made_g = 50;
  used.used_ug["gum"] = {{on_day(20005), 50'000'000}};
  CHECK(due(used, {gum}, {}, now, 0).empty());
}

TEST_CASE("poured paint is done with when its last verdict was given, sixty days after the pour") {
  BookEntry early = poured(first), last = poured(first);
  early.left_mL = last.left_mL = 0.8;
  early.verdicts = {{{"s", 1}, first + 29 * day_ms, {session::Became::good, 0}}};
  last.verdicts = {{{"s", 1}, first + 31 * day_ms, {session::Became::good, 0}}};
  const BookIndex index = index_of({{"early", early}, {"last", last}});
  for (int d = 32; d < 400; ++d) {
    CAPTURE(d);
    const auto all = due(index, {}, {}, first + d * day_ms + 1000, 0);
    CHECK(of(all, "early", What::verdict) != nullptr);
    CHECK(of(all, "early", What::next_layer) != nullptr);
    CHECK(of(all, "last", What::verdict) == nullptr);
    CHECK((of(all, "last", What::next_layer) != nullptr) == (d < 60));
  }
}

TEST_CASE("what nobody dealt with for months stands after what came due this week") {
  std::vector<std::pair<std::string, BookEntry>> entries{{"new", poured(first + 395 * day_ms)}};
  for (int i = 0; i < 20; ++i)
    entries.push_back({"old" + std::to_string(i), poured(first + i * day_ms)});
  const auto all = due(index_of(entries), {}, {}, first + 400 * day_ms, 0);
  REQUIRE(all.size() == 42);
  CHECK(all[0].of == "new");
  CHECK(all[1].of == "new");
  CHECK(all[2].of == "old0");
}

TEST_CASE(
    "what was left in the jar waits: until the next layer, or where no pan has room at once") {
  BookEntry some = poured(first), full = poured(first);
  some.left_mL = full.left_mL = 0.8;
  full.layer_at.reset();
  const BookIndex index = index_of({{"some", some}, {"full", full}});
  for (int d = 0; d < 70; ++d) {
    CAPTURE(d);
    const auto all = due(index, {}, {}, first + d * day_ms + 1000, 0);
    CHECK(of(all, "full", What::in_jar) != nullptr);
    CHECK((of(all, "some", What::in_jar) != nullptr) == (d < 2));
    if (const Due* jar = of(all, "some", What::in_jar)) CHECK(jar->since == *some.layer_at);
    CHECK((of(all, "some", What::next_layer) != nullptr) == (d >= 2));
  }
  some.left_mL = 0.05; // on the glass of an empty jar
  CHECK(due(index_of({{"some", some}}), {}, {}, first + 1000, 0).empty());
}

TEST_CASE("what is left in the jar waits on, whatever the verdict on the pans") {
  BookEntry good = poured(first);
  good.left_mL = 2.4;
  good.layer_at.reset();
  good.verdicts = {{{"s", 1}, first + 31 * day_ms, {session::Became::good, 0}}};
  const BookIndex index = index_of({{"good", good}});
  for (const int day : {32, 70, 400}) {
    CAPTURE(day);
    CHECK(of(due(index, {}, {}, first + day * day_ms, 0), "good", What::in_jar) != nullptr);
  }
  good.discarded = true;
  CHECK(due(index_of({{"good", good}}), {}, {}, first + 70 * day_ms, 0).empty());
}

TEST_CASE("a pan that was weighed once is to be weighed again, in its time, and after it no more") {
  BookEntry entry = poured(first);
  entry.layer_at.reset();
  entry.weigh_again = WeighAgain{3, first + day_ms / 4, first + day_ms};
  const BookIndex index = index_of({{"p", entry}});
  for (int h = 0; h < 30; ++h) {
    CAPTURE(h);
    const auto all = due(index, {}, {}, first + h * day_ms / 24, 0);
    const Due* weigh = of(all, "p", What::weigh_pan);
    CHECK((weigh != nullptr) == (h >= 6 && h < 24));
    if (weigh) CHECK(weigh->pan == 3);
  }
}

TEST_CASE("lines from the future are not due before their day") {
  const auto all = due(index_of({{"p", poured(first + 5 * day_ms)}}), {}, {}, first, 0);
  CHECK(all.empty());
}

TEST_CASE("a pigment runs low where two batches like its last ones take more than is left") {
  session::Card ochre{"ochre", "Yellow ochre", session::PigmentCard{}};
  ochre.made_g = 105;
  BookIndex index;
  CHECK(due(index, {ochre}, {}, first, 0).empty()); // never used: nobody knows what a batch takes
  index.used_ug["ochre"] = {{on_day(20000), 20'000'000}, {on_day(20005), 40'000'000}};
  index.took_ug["ochre"] = {{{1, "a"}, 20'000'000}, {{2, "b"}, 40'000'000}};
  CHECK(low_mark(index, "ochre") == doctest::Approx(30));
  CHECK(stock_of(index, {}, ochre)->g == doctest::Approx(45));
  REQUIRE(due(index, {ochre}, {}, first, 0).size() == 1);
  CHECK(due(index, {ochre}, {}, first, 0)[0] == Due{"ochre", What::runs_low, 0, 0});
  session::Stocks jar;
  jar["ochre"].jars = {{{"s", 1}, 20006 * day_ms, {"ochre", 50}}};
  CHECK(due(index, {ochre}, jar, first, 0).empty()); // one more was bought
  ochre.made_on = words::date_of(20004);             // a new jar, that only the last batch was of
  CHECK(due(index, {ochre}, {}, first, 0).empty());
}

}
