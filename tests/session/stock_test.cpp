// Stock and cost, by hand.
#include "session/cost.hpp"
#include "session/make.hpp"
#include "session/shelf.hpp"
#include "words/calendar.hpp"

#include <doctest/doctest.h>

namespace stock_test {

using doctest::Approx;

namespace {

using namespace make;

const std::int64_t nov_25 = *words::days_of("2026-11-25");

std::int64_t at(std::int64_t day, int hour) { return day * a_day_ms + hour * 3600000LL; }

Jar jar(double g, std::string on, std::int64_t entered) {
  return {{"a", 1}, entered, Bought{"pb28", g, {}, "", "", std::move(on)}};
}

// g at an hour of a day.
Uses used(std::initializer_list<std::tuple<std::int64_t, int, double>> all) {
  Uses uses;
  for (const auto& [day, hour, g] : all) uses[at(day, hour)] += static_cast<std::int64_t>(g * 1e6);
  return uses;
}

Card blue() { return pigment("pb28", 4, 30); }

Bought paid(std::string of, double g, double price, std::string currency = "crowns") {
  return {std::move(of), g, price, std::move(currency), "", ""};
}

Stocks stocks_of(const std::vector<Bought>& all) {
  Writer w;
  for (const Bought& bought : all) {
    w.wait(60);
    w.put("", bought);
  }
  return shelf_of(all_of({w.log})).stock;
}

}

TEST_CASE("of a card nobody counted nothing is said") {
  CHECK_FALSE(left_of(blue(), {}, used({{nov_25, 9, 5}})));
}

// 100 g on the 20th, 50 g on the 24th; 12 g before the first jar came, 30 g and 8 g after.
TEST_CASE("what was bought, less what batches took since the first jar") {
  Stock stock;
  stock.jars = {jar(100, "2026-11-20", at(nov_25, 10)), jar(50, "2026-11-24", at(nov_25, 11))};
  const auto left =
      left_of(blue(), stock, used({{nov_25 - 6, 9, 12}, {nov_25 - 5, 9, 30}, {nov_25, 9, 8}}));
  REQUIRE(left);
  CHECK(left->g == Approx(112));
  CHECK(left->of == Approx(150));
}

// Weighed at noon: 40 g. A jar of the day before was in it, though it is entered later; one of the
// same day counts where it was entered after; one of the day after counts. 3 g went before noon, 5
// g after it.
TEST_CASE("a weighing takes the place of everything that was counted before") {
  Stock stock;
  stock.weighed = Stock::Weighing{{"a", 2}, at(nov_25, 12), 40};
  stock.jars = {jar(100, "2026-11-24", at(nov_25, 15)), jar(20, "2026-11-25", at(nov_25, 9)),
                jar(10, "2026-11-25", at(nov_25, 13)), jar(30, "2026-11-26", at(nov_25 + 1, 9))};
  const auto left = left_of(blue(), stock, used({{nov_25, 9, 3}, {nov_25, 16, 5}}));
  REQUIRE(left);
  CHECK(left->g == Approx(40 + 10 + 30 - 5));
  CHECK(left->of == Approx(100)); // the largest jar: how little is left shows beside it
}

// Drops are counted at the beginning of their minute: those of the weighing's own are in it.
TEST_CASE("what is weighed out of a jar within the minute that it was weighed in is off it") {
  const std::int64_t weighed = at(nov_25, 12) + 10000;
  Stock stock;
  stock.weighed = Stock::Weighing{{"a", 2}, weighed, 40};
  const auto after = [&](Unit unit) {
    return left_of(blue(), stock, {{use_moment(unit, weighed + 20000), 5'000'000}})->g;
  };
  CHECK(after(Unit::g) == Approx(35));
  CHECK(after(Unit::spoons) == Approx(35));
  CHECK(after(Unit::drops) == Approx(40));
  CHECK(left_of(blue(), stock, {{use_moment(Unit::g, weighed - 5000), 5'000'000}})->g ==
        Approx(40));
}

TEST_CASE("what was made counts from its day, and a later making ends an older weighing") {
  Card gum = liquid("gum", CardKind::binder, {.gum = 1, .water = 2});
  gum.made_g = 180;
  gum.made_on = "2026-11-25";
  Stock stock;
  stock.jars = {jar(50, "2026-11-01", at(nov_25 - 20, 9))}; // used up, or thrown away
  const Uses uses = used({{nov_25 - 1, 9, 40}, {nov_25, 9, 30}});
  CHECK(left_of(gum, stock, uses)->g == Approx(150));
  stock.weighed = Stock::Weighing{{"a", 2}, at(nov_25 - 1, 12), 7};
  CHECK(left_of(gum, stock, uses)->g == Approx(150));
  stock.weighed->at = at(nov_25, 12);
  CHECK(left_of(gum, stock, uses)->g == Approx(7));
}

// In the morning ten hours east of Greenwich it is still the day before there; in the evening five
// hours west of it, the day after.
TEST_CASE("a jar, a weighing and a making are of the day that the clock on the wall shows") {
  const auto local = [](std::int64_t day, int hour, int offset_min) {
    return at(day, hour) - offset_min * 60000LL;
  };
  const auto jar_of = [](double g, std::int64_t entered, int offset_min) {
    Jar out = jar(g, "2026-11-25", entered);
    out.offset_min = offset_min;
    return out;
  };
  Stock east;
  east.jars = {jar_of(50, local(nov_25, 7, 600), 600)};
  east.weighed = Stock::Weighing{{"a", 2}, local(nov_25, 8, 600), 30, 0, 600};
  CHECK(left_of(blue(), east, {})->g == Approx(30));

  Stock west;
  west.weighed = Stock::Weighing{{"a", 2}, local(nov_25, 20, -300), 5, 0, -300};
  west.jars = {jar_of(50, local(nov_25, 21, -300), -300)};
  CHECK(left_of(blue(), west, {})->g == Approx(55));

  Card gum = liquid("gum", CardKind::binder, {.gum = 1, .water = 2});
  gum.made_g = 180;
  gum.made_on = "2026-11-25";
  Stock made;
  made.made_offset_min = 600;
  const Uses uses{{local(nov_25 - 1, 23, 600), 7'000'000}, {local(nov_25, 1, 600), 30'000'000}};
  CHECK(left_of(gum, made, uses)->g == Approx(150));
  made.weighed = Stock::Weighing{{"a", 2}, local(nov_25, 8, 600), 120, 0, 600};
  CHECK(left_of(gum, made, {})->g == Approx(120));
}

// Twenty minutes later, but by a clock an hour further west: still the day before.
TEST_CASE("of one day and the next a jar entered as it was bought goes by its moment") {
  Jar bought = jar(50, "2026-11-25", at(nov_25, 0) + (20 - 120) * 60000LL);
  bought.offset_min = 120;
  Stock stock;
  stock.jars = {bought};
  stock.weighed = Stock::Weighing{{"a", 2}, bought.at + 20 * 60000LL, 40, 0, 60};
  CHECK(left_of(blue(), stock, {})->g == Approx(40));
}

// Entered at noon: 3 g went before, 5 g after. Entered as of the day before: 8 g went since.
TEST_CASE("nothing goes off a jar before the moment that it was entered, on its own day") {
  const Uses uses = used({{nov_25, 9, 3}, {nov_25, 16, 5}});
  for (const auto& [on, left_g] : {std::pair{"", 45}, {"2026-11-25", 45}, {"2026-11-24", 42}}) {
    const std::string day = on; // a name that what CAPTURE makes may hold
    CAPTURE(day);
    Stock stock;
    stock.jars = {jar(50, on, at(nov_25, 12))};
    CHECK(left_of(blue(), stock, uses)->g == Approx(left_g));
    stock.jars.push_back(jar(20, "2026-11-25", at(nov_25, 17)));
    CHECK(left_of(blue(), stock, uses)->g == Approx(left_g + 20));
  }
}

TEST_CASE("where it was entered says whose day it was") {
  Writer w;
  w.put("", Bought{"pb28", 50});
  w.put("", StockWeighed{"pb28", 30});
  const Stock stock = shelf_of(all_of({w.log}), {{{w.log.session, 0}, 600}}).stock.at("pb28");
  CHECK(stock.jars.at(0).offset_min == 600);
  CHECK(stock.weighed->offset_min == 600);
}

TEST_CASE("more taken than was there is told as less than nothing") {
  Stock stock;
  stock.jars = {jar(10, "2026-11-24", at(nov_25, 10))};
  CHECK(left_of(blue(), stock, used({{nov_25, 9, 12}}))->g == Approx(-2));
}

// 45 g in the last 90 days are 0.5 g a day: 20 g last 40 days. Older uses are no pace. 14 g since
// two days ago are 14 g in 28 days.
TEST_CASE("how long it lasts at the pace of the last 90 days") {
  const Uses uses = used({{nov_25 - 200, 9, 500}, {nov_25 - 80, 9, 25}, {nov_25 - 3, 9, 20}});
  CHECK(*pace(uses, at(nov_25, 9)) == Approx(0.5));
  CHECK(*days_left({20, 100}, uses, at(nov_25, 9)) == Approx(40));
  CHECK(*days_left({-2, 100}, uses, at(nov_25, 9)) == 0);
  CHECK(*pace(used({{nov_25 - 2, 9, 14}}), at(nov_25, 9)) == Approx(0.5));
  CHECK_FALSE(pace({}, at(nov_25, 9)));
  CHECK_FALSE(pace(used({{nov_25 - 200, 9, 500}}), at(nov_25, 9)));
}

TEST_CASE("a batch takes what the last three took in the mean") {
  CHECK(*taken_by_a_batch({12, 10, 8, 100}) == Approx(10));
  CHECK(*taken_by_a_batch({12}) == Approx(12));
  CHECK_FALSE(taken_by_a_batch({}));
}

TEST_CASE("what must be bought for what is planned, each card once") {
  const auto buy =
      to_buy({{"pb28", 12}, {"gum", 8}, {"pb28", 20}, {"pw6", 5}}, {{"pb28", 30}, {"gum", 8}});
  REQUIRE(buy.size() == 1);
  CHECK(buy[0].card == "pb28");
  CHECK(buy[0].wanted_g == Approx(32));
  CHECK(buy[0].left_g == Approx(30));
  CHECK(to_buy({{"pb28", 3.5000001}}, {{"pb28", 3.5}}).empty()); // all of it, as a computer divides
  CHECK(to_buy({{"pb28", 3.51}}, {{"pb28", 3.5}}).size() == 1);
}

TEST_CASE("jars and weighings of all sessions are folded, but those taken back") {
  Writer a("aaaaaaaa"), b("bbbbbbbb");
  a.put("", paid("pb28", 100, 42));
  b.wait(5);
  b.put("", paid("pb28", 50, 21));
  b.wait(5);
  b.put("", StockWeighed{"pb28", 120});
  b.wait(5);
  const Ref slip = b.put("", StockWeighed{"pb28", 12});
  b.put("", Withdrawn{slip});
  const Stock stock = shelf_of(all_of({a.log, b.log})).stock.at("pb28");
  CHECK(stock.jars.size() == 2);
  REQUIRE(stock.weighed);
  CHECK(stock.weighed->g == 120);
}

// Blue: 100 g for 42. Gum: 1000 g for 30. Honey let down with as much water: 500 g for 4, so 8 for
// 500 g of honey: 0.016 a gram. The binder is 4 gum, 8 water, 1 honey: of 13 g 4 x 0.03 + 0.016 =
// 0.136. 12 g of blue and 13 g of binder: 5.04 + 0.12 + 0.016 = 5.176.
TEST_CASE("a batch costs what its jars did, a binder what it is made of") {
  const std::vector<Card> cards{
      blue(), liquid("gum_arabic", CardKind::other, {.gum = 1}),
      liquid("honey_11", CardKind::honey, {.water = 1, .honey = 1}),
      liquid("binder", CardKind::binder, {.gum = 4, .water = 8, .honey = 1, .other = 0.01}),
      liquid("water", CardKind::water, {.water = 1})};
  const Prices prices = prices_of(
      cards,
      stocks_of({paid("pb28", 100, 42), paid("gum_arabic", 1000, 30), paid("honey_11", 500, 4)}));
  CHECK(prices.currency == "crowns");
  const Cost cost = cost_of({{&cards[0], 12}, {&cards[3], 13.01}, {&cards[4], 5}}, prices);
  CHECK(cost.pigment == Approx(5.04));
  CHECK(cost.gum == Approx(0.12));
  CHECK(cost.honey == Approx(0.016));
  CHECK(cost.sum() == Approx(5.176));
  CHECK(cost.unknown.empty());
  CHECK(*a_gram_of(cards[3], prices) == Approx(0.136 / 13.01));
  CHECK(*a_gram_of(cards[4], prices) == 0);
}

TEST_CASE("the last jar's price counts, a gift costs nothing, no price is not known") {
  const std::vector<Card> cards{blue()};
  const auto a_gram = [&](const std::vector<Bought>& jars) {
    return a_gram_of(cards[0], prices_of(cards, stocks_of(jars)));
  };
  CHECK(*a_gram({paid("pb28", 100, 42), paid("pb28", 50, 30)}) == Approx(0.6));
  CHECK(*a_gram({paid("pb28", 100, 42), Bought{"pb28", 50}}) == Approx(0.42));
  CHECK(*a_gram({paid("pb28", 100, 42), paid("pb28", 50, 0)}) == 0);
  CHECK_FALSE(a_gram({Bought{"pb28", 50}}));
  CHECK_FALSE(a_gram({}));
}

TEST_CASE(
    "what was paid in another currency is not reckoned with, and what has no price is named") {
  const std::vector<Card> cards{blue(), liquid("gum_arabic", CardKind::other, {.gum = 1}),
                                liquid("binder", CardKind::binder, {.gum = 1, .water = 2})};
  const Prices prices = prices_of(
      cards, stocks_of({paid("pb28", 100, 42, "marks"), paid("gum_arabic", 100, 3, "crowns")}));
  CHECK(prices.currency == "crowns");
  const Cost cost = cost_of({{&cards[0], 12}, {&cards[2], 9}}, prices);
  CHECK(cost.sum() == Approx(9.0 / 3 * 0.03));
  REQUIRE(cost.unknown.size() == 1);
  CHECK(cost.unknown[0].id == "pb28");
}

// 12 g of blue for 5.04 and 8 g of binder for 0.08: 5.12. Half of it is poured into four pans, the
// other half lies in the jar.
TEST_CASE("a pan costs its share of what is still there") {
  Writer w;
  w.put("b", Opened{"Blue"});
  w.put("b", LaidOut{blue()});
  w.put("b", LaidOut{liquid("gum", CardKind::binder, {.gum = 1, .water = 2})});
  w.put("b", LaidOut{pan("half", 1.7)});
  w.put("b", Added{"pb28", Unit::g, 12, ""});
  w.put("b", Added{"gum", Unit::g, 8, ""});
  w.put("b", Moved{Place::slab, Place::jar, {0.5, {}}});
  w.put("b", Poured{1, 4, "half", 0.5});
  const Batch before = folded({w.log}, "b");
  CHECK_FALSE(cost_of_a_pan(Batch{}, Cost{}));
  Cost cost;
  cost.pigment = 5.04;
  cost.gum = 0.08;
  const auto of_a_pan = cost_of_a_pan(before, cost);
  REQUIRE(of_a_pan);
  // 2 g of the 20 g are in pans, and nothing was lost on the way.
  CHECK(*of_a_pan == Approx(5.12 * 2 / 20 / 4).epsilon(0.02));
}

}
