#include "bench/making.hpp"

#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "bench/shelf.hpp"
#include "bench/stock.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"
#include "words/say.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Card;
using session::CardKind;
using Say = words::BenchSay;

constexpr std::int64_t bell_late_ms = 60000; // nobody is told an hour later

std::int64_t began_at(const Bench& bench, const std::string& of) {
  const auto& steps = bench.makings.at(of).steps;
  return steps.empty() ? 0 : steps.front().at;
}

// What the gum would be, were all of it taken that is left.
double gum_to_begin_with(const Bench& bench) {
  constexpr double usual = 60, most = 100;
  const Card* gum = gum_of_shelf(bench);
  const auto left = gum ? stock_of(bench, *gum) : std::nullopt;
  if (!left || left->g < 1) return usual;
  return std::min(most, std::floor(left->g));
}

// The next month's same day, or its last where it is shorter.
std::int64_t months_later(std::int64_t day, int months) {
  const std::string date = words::date_of(day);
  const int month = std::stoi(date.substr(5, 2)) - 1 + months;
  const std::string year = std::to_string(std::stoi(date.substr(0, 4)) + month / 12);
  const std::string in = std::to_string(100 + month % 12 + 1).substr(1);
  for (int of_month = std::stoi(date.substr(8)); of_month > 0; --of_month)
    if (const auto found =
            words::days_of(year + "-" + in + "-" + std::to_string(100 + of_month).substr(1)))
      return *found;
  return day;
}

}

std::vector<std::string> open_makings(const Bench& bench) {
  std::vector<std::string> out;
  for (const auto& [of, making] : bench.makings) out.push_back(of);
  std::sort(out.begin(), out.end(), [&](const std::string& a, const std::string& b) {
    return std::pair(began_at(bench, b), b) < std::pair(began_at(bench, a), a);
  });
  return out;
}

const session::BinderMaking* making_in_hand(const Bench& bench) {
  const auto making = bench.makings.find(bench.binder.of);
  return making == bench.makings.end() ? nullptr : &making->second;
}

void plan_making(Bench& bench, const std::string& by) {
  bench.binder = {};
  const Card* card = shelf_card(bench, by);
  const auto binders = shelf_of(bench, CardKind::binder);
  if (!card || card->kind() != CardKind::binder) card = binders.empty() ? nullptr : binders.front();
  if (card) bench.binder.by = card->id;
  bench.binder.gum_g = gum_to_begin_with(bench);
}

void show_making(Bench& bench, const std::string& of) {
  bench.binder = {};
  bench.binder.of = of;
  const auto* making = making_in_hand(bench);
  if (!making) return;
  bench.binder.by = making->plan.start->by;
  bench.binder.dose_in_g = making->dose_g > 0;
  bench.binder.dose = bench.binder.dose_in_g ? making->dose_g : making->dose_drops;
}

void open_making(Bench& bench, const std::string& by) {
  for (const std::string& of : open_makings(bench))
    if (bench.makings.at(of).plan.start->by == by) return show_making(bench, of);
  plan_making(bench, by);
}

void open_strength(Bench& bench, const std::string& jar) {
  bench.binder = {};
  bench.binder.jar = jar;
  const auto stock = bench.stock.find(jar);
  if (stock != bench.stock.end() && stock->second.weighed)
    bench.binder.tare_g = stock->second.weighed->tare_g;
}

const Card* made_by(const Bench& bench) {
  if (const auto* making = making_in_hand(bench))
    return card_anywhere(bench, making->plan.start->by);
  return card_anywhere(bench, bench.binder.by.empty() ? bench.plan.binder : bench.binder.by);
}

const Card* gum_of_shelf(const Bench& bench) {
  for (const Card& card : bench.shelf)
    if (makes_binder(card)) return &card;
  return nullptr;
}

namespace {

Sweetener syrup_of_shelf(const Bench& bench, double honey_g) {
  for (const Card& card : bench.shelf) {
    const paint::Recipe& r = recipe_of(card);
    const bool syrup =
        r.honey > 0 && r.water > 0 && r == paint::Recipe{.water = r.water, .honey = r.honey};
    if (!session::is_liquid(card.kind()) || !syrup) continue;
    if (const auto left = stock_of(bench, card); !left || !(left->g > 0)) continue;
    const double water_g = honey_g * r.water / r.honey;
    return {&card, honey_g + water_g, water_g};
  }
  return {};
}

}

Sweetener sweet_of_shelf(const Bench& bench, bool honey, double g) {
  const auto alone = [&](const paint::Recipe& r) {
    return honey ? r.honey > 0 && r == paint::Recipe{.honey = r.honey}
                 : r.glycerin > 0 && r == paint::Recipe{.glycerin = r.glycerin};
  };
  for (const Card& card : bench.shelf)
    if (session::is_liquid(card.kind()) && alone(recipe_of(card))) return {&card, g};
  return honey ? syrup_of_shelf(bench, g) : Sweetener{};
}

GumMeasured gum_measured(const Bench& bench) {
  const BinderState& state = bench.binder;
  const Card* spoon = shelf_card(bench, state.spoon);
  if (state.spoons <= 0 || !spoon) return {paint::exact(state.gum_g), nullptr};
  const auto g = paint::gum_in_spoons(state.spoons, volume_of(*spoon).mL);
  return {g ? *g : paint::exact(0), spoon};
}

words::Result<paint::Recipe> to_put_in(const Bench& bench) {
  if (const auto* making = making_in_hand(bench)) return making->plan.start->parts;
  const Card* card = made_by(bench);
  if (!card) return words::failure(Say::making_no_recipe);
  return paint::scaled_to_gum(recipe_of(*card), gum_measured(bench).g.value);
}

double binder_in_jar(const Bench& bench) {
  if (bench.binder.jar_g > 0) return bench.binder.jar_g;
  const auto parts = to_put_in(bench);
  return parts ? std::round(paint::gets_into_jar(paint::sum_of(*parts))) : 0;
}

std::string name_of_jar(const Bench& bench) {
  const Card* card = made_by(bench);
  return card ? card->name : words::say(Say::making_nameless);
}

std::string lot_of_jar(const Bench& bench) {
  int before = 0;
  for (const auto* cards : {&bench.shelf, &bench.away})
    before += static_cast<int>(std::count_if(cards->begin(), cards->end(), [&](const Card& card) {
      return card.kind() == CardKind::binder && !card.made_on.empty() &&
             card.name == name_of_jar(bench);
    }));
  return words::say(Say::making_jar, {std::to_string(before + 1)});
}

Dose dose_of(const Bench& bench) {
  const auto* making = making_in_hand(bench);
  const auto* step = making ? session::begun(*making, session::MakingStep::preserve) : nullptr;
  if (!step) return {bench.binder.dose, bench.binder.dose_in_g};
  return step->g > 0 ? Dose{step->g, true} : Dose{step->drops, false};
}

double grams_of(const Dose& dose) {
  constexpr double a_drop_g = 0.05; // a supplier's dropper was never weighed: as is usual
  return dose.in_g ? dose.amount : dose.amount * a_drop_g;
}

bool is_preserved(const Bench& bench) {
  if (bench.binder.preserved) return *bench.binder.preserved;
  const auto* making = making_in_hand(bench);
  const bool ticked = making && session::begun(*making, session::MakingStep::preserve);
  return ticked && dose_of(bench).amount > 0; // ticked without an amount: it may be none
}

// From the day on which the gum came into its water: it goes off while it steeps, too.
std::string keep_until(const Bench& bench, const Now& now) {
  constexpr int cold_days = 14, preserved_months = 3;
  const auto* making = making_in_hand(bench);
  const std::int64_t from = making ? std::min(making->steps.front().at, now.wall_ms) : now.wall_ms;
  const std::int64_t day = words::day_number(from, now.utc_offset_min);
  return words::date_of(is_preserved(bench) ? months_later(day, preserved_months)
                                            : day + cold_days);
}

std::optional<std::int64_t> making_bell_at(const Bench& bench) {
  std::optional<std::int64_t> first;
  for (const auto& [of, making] : bench.makings) {
    const std::int64_t ends = session::ends_at(making);
    if (ends > bench.making_rung_at && (!first || ends < *first)) first = ends;
  }
  return first;
}

bool making_rings(Bench& bench, const Now& now) {
  bool rings = false;
  for (const auto& [of, making] : bench.makings) {
    const std::int64_t ends = session::ends_at(making);
    rings |=
        ends > bench.making_rung_at && ends <= now.wall_ms && now.wall_ms - ends < bell_late_ms;
  }
  bench.making_rung_at = now.wall_ms;
  return rings;
}

const Card* jar_in_hand(const Bench& bench) { return shelf_card(bench, bench.binder.jar); }

JarWeighed jar_weighed(const Bench& bench) {
  JarWeighed out;
  const Card* jar = jar_in_hand(bench);
  const auto left = jar ? stock_of(bench, *jar) : std::nullopt;
  if (left) out.counted_g = std::max(0.0, left->g);
  out.weighed_g = bench.binder.net_g;
  return out;
}

double wanted_strength(const Bench& bench) {
  if (bench.binder.percent > 0) return bench.binder.percent / 100.0;
  const Card* jar = jar_in_hand(bench);
  return jar ? paint::strength_of(recipe_of(*jar)) : 0;
}

words::Result<paint::PutIn> put_in_for(const Bench& bench) {
  const Card* jar = jar_in_hand(bench);
  const double grams = jar_weighed(bench).left_g();
  if (!jar || !(grams > 0)) return words::failure(Say::strength_weigh_first);
  return paint::to_strength(recipe_of(*jar), grams, wanted_strength(bench));
}

bool is_nothing(const paint::PutIn& in) {
  constexpr double least_g = 0.1;
  return in.water_g < least_g && in.gum_g < least_g;
}

}
