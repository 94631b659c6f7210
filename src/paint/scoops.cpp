#include "paint/scoops.hpp"

#include "paint/material.hpp"
#include "paint/measure.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

namespace paint {

namespace {

using words::Result;
using Say = words::PaintSay;

constexpr std::size_t most_tools = 8, most_spoons = 4;
constexpr double alike_g = 1e-9; // below it two errors are one

// Quarters of each spoon, and drops of one dropper.
struct Counts {
  std::array<int, most_spoons> quarters{}; // by spoon
  std::size_t dropper = 0;
  int drops = 0;
};

struct Found {
  Counts counts;
  double excess_g = 0; // error beyond what counts as none
  int scoops = 0;
  double off_g = 0; // the whole of it, without sign
  bool any = false;
};

int scoops_of_quarters(int quarters) {
  constexpr int by_the_quarter[] = {0, 1, 1, 2};
  return quarters / 4 + by_the_quarter[quarters % 4];
}

struct Search {
  double wanted_g, near_g;
  const std::vector<double>&spoon_g, &drop_g;
  const std::vector<bool>& by_quarters; // of each spoon
  Found best = {};

  bool better(double excess, int scoops, double off) const {
    if (std::abs(excess - best.excess_g) > alike_g) return excess < best.excess_g;
    if (scoops != best.scoops) return scoops < best.scoops;
    return off < best.off_g - alike_g;
  }

  void look(const Counts& counts, double grams, int scoops) {
    const double off = std::abs(grams - wanted_g);
    const double excess = std::max(0.0, off - near_g);
    if (!best.any || better(excess, scoops, off)) best = {counts, excess, scoops, off, true};
  }

  // Of all counts of drops only these two can be the best: the first that is near enough from
  // below, and the last before it.
  void look_with_drops(Counts& counts, double grams, int scoops) {
    look(counts, grams, scoops);
    for (std::size_t i = 0; i < drop_g.size(); ++i) {
      const double first = std::ceil((wanted_g - near_g - grams) / drop_g[i] - alike_g);
      for (const double drops : {first - 1, first}) {
        if (drops < 1) continue;
        counts.dropper = i;
        counts.drops = static_cast<int>(std::min<double>(drops, most_drops_in_a_row));
        look(counts, grams + counts.drops * drop_g[i], scoops + counts.drops);
      }
    }
    counts.drops = 0;
  }

  void fill(std::size_t spoon, int left, bool quartered, double grams, Counts& counts) {
    if (spoon == spoon_g.size()) {
      int scoops = 0;
      for (const int quarters : counts.quarters) scoops += scoops_of_quarters(quarters);
      return look_with_drops(counts, grams, scoops);
    }
    for (int quarters = 0; (quarters + 3) / 4 <= left; ++quarters) {
      const bool split = quarters % 4 != 0;
      if (split && (quartered || !by_quarters[spoon])) continue;
      const double with = grams + spoon_g[spoon] * quarters / 4;
      counts.quarters[spoon] = quarters;
      fill(spoon + 1, left - (quarters + 3) / 4, quartered || split, with, counts);
      // The first that is too much may still be the nearest; more is only further off.
      if (with > wanted_g + near_g) break;
    }
    counts.quarters[spoon] = 0;
  }
};

std::optional<words::Error> fault_of(double wanted_g, double near_g,
                                     const std::vector<Scoop>& scoops) {
  constexpr double most_g = 5000;
  for (const double g : {wanted_g, near_g})
    if (auto fault = fault_of_count(g, most_g)) return fault;
  if (scoops.empty()) return words::Error{Say::nothing_counted, {}};
  for (const Scoop& scoop : scoops) {
    if (auto fault = fault_of(scoop.grams)) return fault;
    if (!(scoop.grams.value > 0))
      return words::Error{Say::measure_not_positive, {words::Number(scoop.grams.value, 3)}};
  }
  const auto spoons =
      std::count_if(scoops.begin(), scoops.end(), [](const Scoop& scoop) { return !scoop.drops; });
  for (const auto& [there, most] : {std::pair{scoops.size(), most_tools},
                                    std::pair{static_cast<std::size_t>(spoons), most_spoons}})
    if (there > most)
      return words::Error{Say::amount_too_large,
                          {words::Number(static_cast<double>(there), 0),
                           words::Number(static_cast<double>(most), 0)}};
  return std::nullopt;
}

// So many of one tool: fillings differ from each other, the tool's error is one.
Amount repeated(const Amount& one, double count) {
  Amount all{one.value * count, one.variance * count, one.shares};
  for (auto& [tool, share] : all.shares) share *= count;
  return all;
}

ScoopSet::From from_share(const std::string& share) {
  if (is_of_composition(share)) return ScoopSet::From::making;
  if (share.rfind("heap:", 0) == 0) return ScoopSet::From::heap;
  if (share.rfind("tension:", 0) == 0) return ScoopSet::From::tension;
  return ScoopSet::From::size;
}

void say_what_dominates(ScoopSet& set) {
  double most = set.off_g * set.off_g;
  if (set.grams.variance > most) {
    most = set.grams.variance;
    set.mostly = ScoopSet::From::filling;
  }
  for (const auto& [share, u] : set.grams.shares) {
    if (u * u <= most) continue;
    most = u * u;
    set.mostly = from_share(share);
    const bool of_tool = set.mostly == ScoopSet::From::size || set.mostly == ScoopSet::From::heap;
    set.by = of_tool ? share.substr(set.mostly == ScoopSet::From::heap ? 5 : 0) : "";
  }
}

}

words::Result<ScoopSet> best_scoops(double wanted_g, double near_g,
                                    const std::vector<Scoop>& scoops) {
  if (auto fault = fault_of(wanted_g, near_g, scoops)) return tl::make_unexpected(*fault);
  std::vector<double> spoon_g, drop_g;
  std::vector<bool> by_quarters;
  double most_spoon = 0, most_drop = 0;
  for (const Scoop& scoop : scoops) {
    (scoop.drops ? drop_g : spoon_g).push_back(scoop.grams.value);
    if (!scoop.drops) by_quarters.push_back(scoop.quarters);
    double& most = scoop.drops ? most_drop : most_spoon;
    most = std::max(most, scoop.grams.value);
  }
  const double most_g = most_spoonfuls * most_spoon + most_drops_in_a_row * most_drop;
  if (wanted_g > most_g + near_g + alike_g)
    return words::failure(Say::amount_too_large,
                          {words::Number(wanted_g, 1), words::Number(most_g, 1)});
  Search search{wanted_g, near_g, spoon_g, drop_g, by_quarters};
  Counts counts;
  search.fill(0, most_spoonfuls, false, 0, counts);
  ScoopSet set;
  const Found& best = search.best;
  set.scoops = best.scoops;
  std::size_t spoon = 0, dropper = 0;
  for (const Scoop& scoop : scoops) {
    const double count = scoop.drops ? (dropper++ == best.counts.dropper ? best.counts.drops : 0)
                                     : best.counts.quarters[spoon++] / 4.0;
    if (count <= 0) continue;
    set.of.push_back({scoop.tool, scoop.drops, count});
    set.grams = set.grams + repeated(scoop.grams, count);
  }
  set.off_g = set.grams.value - wanted_g;
  say_what_dominates(set);
  return set;
}

}
