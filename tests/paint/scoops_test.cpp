#include "paint/material.hpp"
#include "paint/measure.hpp"
#include "paint/scoops.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace scoops_test {

using namespace paint;
using doctest::Approx;

namespace {

constexpr double alike_g = 1e-8;

struct Error {
  double excess = 0;
  int scoops = 0;
  double off = 0;
};

bool less(const Error& a, const Error& b) {
  if (std::abs(a.excess - b.excess) > alike_g) return a.excess < b.excess;
  if (a.scoops != b.scoops) return a.scoops < b.scoops;
  return a.off < b.off - alike_g;
}

// Every count of every scoop within the limits, none left out.
struct All {
  double wanted, near;
  const std::vector<Scoop>& scoops;
  std::optional<Error> best = {};

  void look(double grams, int used) {
    const double off = std::abs(grams - wanted);
    const Error here{std::max(0.0, off - near), used, off};
    if (!best || less(here, *best)) best = here;
  }
  void go(std::size_t at, int spoonfuls, bool quartered, bool dropped, double grams, int used) {
    if (at == scoops.size()) return look(grams, used);
    const double each = scoops[at].grams.value;
    if (scoops[at].drops) {
      for (int n = 0; n <= (dropped ? 0 : most_drops_in_a_row); ++n)
        go(at + 1, spoonfuls, quartered, dropped || n > 0, grams + n * each, used + n);
      return;
    }
    for (int whole = 0; whole + spoonfuls <= most_spoonfuls; ++whole)
      for (int quarter = 0; quarter < (quartered || !scoops[at].quarters ? 1 : 4); ++quarter) {
        const int begun = whole + (quarter > 0);
        if (begun + spoonfuls > most_spoonfuls) continue;
        const int ways[] = {0, 1, 1, 2};
        go(at + 1, spoonfuls + begun, quartered || quarter > 0, dropped,
           grams + (whole + quarter / 4.0) * each, used + whole + ways[quarter]);
      }
  }
};

Scoop whole(const char* tool, double grams) { return {tool, exact(grams)}; }
Scoop spoon(const char* tool, double grams) { return {tool, exact(grams), false, true}; }
Scoop dropper(const char* tool, double grams) { return {tool, exact(grams), true}; }

double count_of(const ScoopSet& set, const std::string& tool) {
  for (const Scooped& one : set.of)
    if (one.tool == tool) return one.count;
  return 0;
}

words::Sentence fault(double wanted, double near, const std::vector<Scoop>& scoops) {
  const auto set = best_scoops(wanted, near, scoops);
  REQUIRE_FALSE(set);
  return set.error().what;
}

}

TEST_CASE("the best set of a thousand random cases is that of looking at all") {
  std::mt19937 random(20261127);
  const auto draw = [&](double low, double high) {
    return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
  };
  for (int i = 0; i < 1000; ++i) {
    std::vector<Scoop> scoops;
    const int spoons = static_cast<int>(random() % 3), droppers = static_cast<int>(random() % 3);
    for (int k = 0; k < spoons; ++k) {
      // Some of them are each other's multiples, as kitchen spoons are.
      scoops.push_back(spoon(k ? "b" : "a", random() % 2 ? draw(0.2, 12) : 1.25 * (k ? 3 : 1)));
      scoops.back().quarters = random() % 2 == 0;
    }
    for (int k = 0; k < droppers; ++k)
      scoops.insert(scoops.begin() + static_cast<int>(random() % (scoops.size() + 1)),
                    dropper(k ? "d" : "c", draw(0.02, 0.08)));
    if (scoops.empty()) scoops.push_back(spoon("a", draw(0.2, 12)));
    const double wanted = draw(0, random() % 4 ? 12 : 60), near = random() % 3 ? draw(0, 0.5) : 0;
    const auto set = best_scoops(wanted, near, scoops);
    All all{wanted, near, scoops};
    all.go(0, 0, false, false, 0, 0);
    if (!set) {
      REQUIRE(set.error().what == words::PaintSay::amount_too_large);
      REQUIRE(all.best->excess > 0);
      continue;
    }
    CAPTURE(i);
    REQUIRE(std::abs(set->off_g) == Approx(all.best->off).epsilon(1e-6));
    REQUIRE(set->scoops == all.best->scoops);
    double sum = 0;
    for (const Scoop& one : scoops) sum += count_of(*set, one.tool) * one.grams.value;
    REQUIRE(set->grams.value == Approx(sum));
  }
}

TEST_CASE("three spoons and two droppers, all of them looked at") {
  const std::vector<Scoop> scoops{whole("tbsp", 16.1), spoon("tsp", 5.3), whole("pinch", 0.37),
                                  dropper("fine", 0.031), dropper("wide", 0.057)};
  for (const double wanted : {0.2, 4.444, 17.6, 61.03}) {
    All all{wanted, 0, scoops};
    all.go(0, 0, false, false, 0, 0);
    const auto set = best_scoops(wanted, 0, scoops);
    REQUIRE(set);
    CHECK(std::abs(set->off_g) == Approx(all.best->off).epsilon(1e-6));
    CHECK(set->scoops == all.best->scoops);
  }
}

TEST_CASE("what is near enough is had with the fewest scoops") {
  const std::vector<Scoop> scoops{whole("tbsp", 15), spoon("tsp", 5), dropper("d", 0.04)};
  const auto set = best_scoops(28.9, 0.3, scoops);
  REQUIRE(set);
  CHECK(count_of(*set, "tbsp") == 1);
  CHECK(count_of(*set, "tsp") == 2.75);
  CHECK(set->scoops == 5);
  CHECK(set->off_g == Approx(-0.15));
  // One tablespoon, not three teaspoons.
  CHECK(best_scoops(15, 0, scoops)->scoops == 1);
  const auto none = best_scoops(0, 0, scoops);
  REQUIRE(none);
  CHECK(none->of.empty());
  CHECK(none->scoops == 0);
}

TEST_CASE("what moves the amount most is said") {
  const Material binder{Kind::binder, *parts_of({.gum = 1, .water = 2}), {}};
  const Dropper any{"any", 0.05, 0.0095, Kind::binder};
  const Spoon tsp{"tsp", 5, 0.144};
  const auto drops = best_scoops(1, 0.03, {{"any", *grams_of_drops(1, any, binder), true}});
  REQUIRE(drops);
  CHECK(drops->mostly == ScoopSet::From::size);
  CHECK(drops->by == "any");
  const auto spooned =
      best_scoops(5.6, 0.3, {{"tsp", *grams_of_spoons(1, tsp, binder), false, true}});
  REQUIRE(spooned);
  CHECK(spooned->mostly == ScoopSet::From::filling);
  const auto far = best_scoops(7.6, 0, {{"tsp", *grams_of_spoons(1, tsp, binder), false, true}});
  REQUIRE(far);
  CHECK(far->mostly == ScoopSet::From::off);
  Material powder{Kind::pigment, {.pigment = 1}, {.g_per_mL = 4.2}};
  powder.pigment.heap_g_per_mL = 0.9;
  powder.pigment.heap_g_per_mL_u = 0.3;
  const auto heaped = best_scoops(9, 0.5, {{"tsp", *grams_of_spoons(1, tsp, powder), false, true}});
  REQUIRE(heaped);
  CHECK(heaped->mostly == ScoopSet::From::heap);
  CHECK(heaped->by == "tsp");
  CHECK(uncertainty(heaped->grams) == Approx(9 * 0.3 / 0.9).epsilon(0.05));
}

TEST_CASE("what no scoop can give is refused with its reason") {
  const std::vector<Scoop> tsp{spoon("tsp", 5)};
  const double nan = std::nan("");
  CHECK(fault(1, 0, {}) == words::PaintSay::nothing_counted);
  CHECK(fault(-1, 0, tsp) == words::PaintSay::negative_amount);
  CHECK(fault(1, -1, tsp) == words::PaintSay::negative_amount);
  CHECK(fault(nan, 0, tsp) == words::PaintSay::not_a_number);
  CHECK(fault(1e9, 0, tsp) == words::PaintSay::amount_too_large);
  CHECK(fault(61, 0.5, tsp) == words::PaintSay::amount_too_large);
  CHECK(fault(1, 0, {spoon("flat", 0)}) == words::PaintSay::measure_not_positive);
  CHECK(fault(1, 0, {spoon("nan", nan)}) == words::PaintSay::not_a_number);
  CHECK(fault(1, 0, std::vector<Scoop>(5, tsp[0])) == words::PaintSay::amount_too_large);
  CHECK(best_scoops(60, 0, tsp)->of[0].count == 12);
}

}
