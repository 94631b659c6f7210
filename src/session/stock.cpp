#include "session/stock.hpp"

#include "words/calendar.hpp"

#include <algorithm>
#include <numeric>
#include <utility>

namespace session {

namespace {

constexpr std::int64_t minute_ms = 60000;

// By the clock on the wall: its maker's days are what dates on cards name.
std::int64_t day_of(const Jar& jar) {
  const auto said = words::days_of(jar.of.on);
  return said ? *said : words::day_number(jar.at, jar.offset_min);
}

// Else it was entered later, and batches may have taken from it before.
bool entered_as_bought(const Jar& jar) {
  return day_of(jar) == words::day_number(jar.at, jar.offset_min);
}

std::int64_t beginning_of(std::int64_t day, int offset_min) {
  return day * a_day_ms - offset_min * minute_ms;
}

// From when batches take from it. Of the day on which it was entered nothing before that moment.
std::int64_t opened_at(const Jar& jar) {
  return entered_as_bought(jar) ? use_moment(Unit::drops, jar.at)
                                : beginning_of(day_of(jar), jar.offset_min);
}

std::int64_t day_of(const Stock::Weighing& weighed) {
  return words::day_number(weighed.at, weighed.offset_min);
}

double grams(std::int64_t ug) { return static_cast<double>(ug) * 1e-6; }

double used_from(const Stock& stock, const Uses& uses, std::int64_t at) {
  std::int64_t ug = 0;
  for (const Uses* of : {&uses, &stock.taken})
    for (auto use = of->lower_bound(at); use != of->end(); ++use) ug += use->second;
  return grams(ug);
}

double largest_jar(const Stock& stock) {
  double g = 0;
  for (const Jar& jar : stock.jars) g = std::max(g, jar.of.g);
  return g;
}

template <class Counts>
double bought(const Stock& stock, Counts counts) {
  double g = 0;
  for (const Jar& jar : stock.jars)
    if (counts(jar)) g += jar.of.g;
  return g;
}

Remaining since_weighed(const Stock& stock, const Uses& uses) {
  const Stock::Weighing& last = *stock.weighed;
  const std::int64_t day = day_of(last);
  const double there = last.g + bought(stock, [&](const Jar& jar) {
                         const std::int64_t of = day_of(jar);
                         return entered_as_bought(jar) || of == day ? jar.at > last.at : of > day;
                       });
  return {there - used_from(stock, uses, last.at + 1), std::max(there, largest_jar(stock))};
}

}

std::int64_t use_moment(Unit unit, std::int64_t at) {
  return unit == Unit::drops ? at - at % minute_ms : at;
}

std::optional<Remaining> left_of(const Card& card, const Stock& stock, const Uses& uses) {
  const std::int64_t made = words::days_of(card.made_on).value_or(0);
  const bool is_made = card.made_g > 0;
  if (stock.weighed && !(is_made && made > day_of(*stock.weighed)))
    return since_weighed(stock, uses);
  if (!is_made && stock.jars.empty()) return std::nullopt;
  std::int64_t day = made, from = beginning_of(made, stock.made_offset_min);
  if (!is_made) {
    const auto first = std::min_element(stock.jars.begin(), stock.jars.end(), [](auto& a, auto& b) {
      return std::pair(day_of(a), opened_at(a)) < std::pair(day_of(b), opened_at(b));
    });
    day = day_of(*first);
    from = opened_at(*first);
  }
  const double there =
      card.made_g + bought(stock, [&](const Jar& jar) { return day_of(jar) >= day; });
  return Remaining{there - used_from(stock, uses, from), there};
}

std::optional<double> pace(const Uses& uses, std::int64_t now_ms) {
  constexpr std::int64_t most_days = 90, least_days = 28;
  const auto first = uses.lower_bound(now_ms - most_days * a_day_ms);
  double g = 0;
  for (auto use = first; use != uses.end() && use->first <= now_ms; ++use) g += grams(use->second);
  if (!(g > 0)) return std::nullopt;
  const std::int64_t ms =
      std::clamp(now_ms - uses.begin()->first, least_days * a_day_ms, most_days * a_day_ms);
  return g * static_cast<double>(a_day_ms) / static_cast<double>(ms);
}

std::optional<double> days_left(const Remaining& left, const Uses& uses, std::int64_t now_ms) {
  const auto a_day = pace(uses, now_ms);
  return a_day ? std::optional(std::max(0.0, left.g) / *a_day) : std::nullopt;
}

std::optional<double> taken_by_a_batch(const std::vector<double>& latest_first) {
  constexpr std::size_t of = 3;
  const auto count = std::min(of, latest_first.size());
  if (count == 0) return std::nullopt;
  const auto end = latest_first.begin() + static_cast<std::ptrdiff_t>(count);
  return std::accumulate(latest_first.begin(), end, 0.0) / static_cast<double>(count);
}

std::vector<ToBuy> to_buy(const std::vector<Wanted>& wanted,
                          const std::map<std::string, double>& left_g) {
  constexpr double rounding_g = 0.005; // all that is left, scaled, is not too little
  std::map<std::string, double> sums;
  for (const Wanted& want : wanted) sums[want.card] += want.g;
  std::vector<ToBuy> out;
  for (const auto& [card, g] : sums) {
    const auto left = left_g.find(card);
    if (left != left_g.end() && left->second + rounding_g < g)
      out.push_back({card, g, left->second});
  }
  return out;
}

}
