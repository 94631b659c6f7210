#include "bench/blame.hpp"

#include "session/amounts.hpp"
#include "words/calendar.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace bench {

namespace {

using paint::Amount;
using session::Batch;
using Blame = MatchView::Blame;

struct Differs {
  double by = 0;    // relative ones as a logarithm
  bool sure = true; // by more than twice what is not known of it, and enough to be worth a word
};

std::optional<Differs> relative(const std::optional<Amount>& a, const std::optional<Amount>& b) {
  if (!a || !b || !(a->value > 0) || !(b->value > 0)) return std::nullopt;
  const double u = paint::uncertainty(*a - *b);
  const bool sure = std::abs(b->value - a->value) > 2 * u + 1e-9;
  const double by = std::log(b->value / a->value);
  constexpr double worth_a_word = 0.01;
  return Differs{by, sure && std::abs(by) >= worth_a_word};
}

double minutes(const Made& made) {
  return session::seconds_of(*made.batch, session::Stage::mulling) / 60;
}

// A pass is tapped some seconds early or late.
std::optional<Differs> of_minutes(const Made& a, const Made& b) {
  const double before = minutes(a), now = minutes(b);
  if (!(before > 0) || !(now > 0)) return std::nullopt;
  return Differs{std::log((now + 1) / (before + 1)), std::abs(now - before) >= 1};
}

double passes(const Made& made) {
  const auto& all = made.batch->passes;
  return static_cast<double>(std::count_if(
      all.begin(), all.end(), [](const auto& p) { return p.stage == session::Stage::mulling; }));
}

std::optional<Differs> of_passes(const Made& a, const Made& b) {
  const double before = passes(a), now = passes(b);
  if (!(before > 0) || !(now > 0)) return std::nullopt;
  return Differs{now - before, std::abs(now - before) >= 1};
}

// Of what went in, the binder it had most of.
const session::Card* binder_of(const Batch& batch) {
  const session::Total* most = nullptr;
  for (const session::Total& t : batch.totals)
    if (t.card.kind() == session::CardKind::binder && t.grams.value > 0 &&
        (!most || t.grams.value > most->grams.value))
      most = &t;
  return most ? &most->card : nullptr;
}

std::optional<double> age_of_binder(const Made& of) {
  const session::Card* binder = binder_of(*of.batch);
  const auto made = binder ? words::days_of(binder->made_on) : std::nullopt;
  if (!made) return std::nullopt;
  const std::int64_t day = words::day_number(session::made_at(*of.batch), of.offset_min);
  return static_cast<double>(std::max<std::int64_t>(0, day - *made));
}

std::optional<Differs> of_age(const Made& a, const Made& b) {
  const auto before = age_of_binder(a), now = age_of_binder(b);
  if (!before || !now) return std::nullopt;
  constexpr double worth_a_word = 14; // days
  return Differs{*now - *before, std::abs(*now - *before) >= worth_a_word};
}

struct Number {
  Blame::What what;
  std::optional<Differs> (*of)(const Made&, const Made&);
  double usual; // sd of one batch, until it is known
  bool relative;
};

std::optional<Differs> of_binder(const Made& a, const Made& b) {
  return relative(a.batch->standing.binder_ratio, b.batch->standing.binder_ratio);
}
std::optional<Differs> of_gum(const Made& a, const Made& b) {
  return relative(a.batch->standing.gum_per_pigment, b.batch->standing.gum_per_pigment);
}
std::optional<Differs> of_sweet(const Made& a, const Made& b) {
  return relative(a.batch->standing.humectant_to_gum, b.batch->standing.humectant_to_gum);
}

constexpr std::array<Number, 6> numbers{{{Blame::binder, of_binder, 0.05, true},
                                         {Blame::gum, of_gum, 0.05, true},
                                         {Blame::sweet, of_sweet, 0.1, true},
                                         {Blame::minutes, of_minutes, 0.3, false},
                                         {Blame::passes, of_passes, 1, false},
                                         {Blame::age, of_age, 60, false}}};

using Pairs = std::vector<std::pair<Made, Made>>;

double usual_square(const Number& number, const Pairs& others) {
  constexpr double counts_as = 2; // pairs
  double squares = counts_as * 2 * number.usual * number.usual, count = counts_as;
  for (const auto& [before, after] : others)
    if (const auto d = number.of(before, after)) squares += d->by * d->by, count += 1;
  return squares / count;
}

std::optional<Blame> blame_of(const Number& number, const Made& a, const Made& b,
                              const Pairs& others) {
  const auto differs = number.of(a, b);
  if (!differs || !differs->sure) return std::nullopt;
  Blame out;
  out.what = number.what;
  out.by = number.relative                 ? std::exp(differs->by) - 1
           : number.what == Blame::minutes ? minutes(b) - minutes(a)
                                           : differs->by;
  out.unusual = std::abs(differs->by) / std::sqrt(usual_square(number, others));
  return out;
}

// Of all that went in, by the card and by its jar's number.
std::map<std::string, std::string> lots_of(const Batch& batch, session::CardKind kind) {
  std::map<std::string, std::string> out;
  for (const session::Total& t : batch.totals)
    if (t.card.kind() == kind && t.grams.value > 0) out[t.card.id] = t.card.lot;
  return out;
}

constexpr std::array<session::CardKind, 2> with_lots{session::CardKind::pigment,
                                                     session::CardKind::binder};

bool same_lots(const Batch& a, const Batch& b) {
  return std::all_of(with_lots.begin(), with_lots.end(),
                     [&](session::CardKind kind) { return lots_of(a, kind) == lots_of(b, kind); });
}

// Of something that happens in a share p of all pairs: as unusual as a number is that lies so many
// sd off whose likelihood falls as much.
double unusual_change(const Pairs& others) {
  double changed = 1, count = 2;
  for (const auto& [before, after] : others)
    changed += !same_lots(*before.batch, *after.batch), count += 1;
  return std::sqrt(-2 * std::log(changed / count));
}

void add_lots(const Batch& a, const Batch& b, double unusual, std::vector<Blame>& out) {
  for (const session::CardKind kind : with_lots) {
    const auto before = lots_of(a, kind);
    for (const session::Total& t : b.totals) {
      if (t.card.kind() != kind || !(t.grams.value > 0)) continue;
      const auto known = before.find(t.card.id);
      if (known != before.end() && known->second == t.card.lot) continue;
      out.push_back({Blame::lot, t.card.name, 0, unusual});
    }
  }
}

}

namespace {

// One binder as before, in another amount, brings as much more gum: that is one cause.
bool is_by_binder(const Blame& gum, const std::vector<Blame>& others) {
  constexpr double alike = 0.02;
  return std::any_of(others.begin(), others.end(), [&](const Blame& one) {
    return one.what == Blame::binder && std::abs(std::log((1 + gum.by) / (1 + one.by))) < alike;
  });
}

}

std::vector<Blame> blame(const Made& a, const Made& b, const Pairs& others) {
  std::vector<Blame> out;
  for (const Batch* one : {a.batch, b.batch})
    if (one->newer || one->damaged) return out;
  for (const Number& number : numbers)
    if (const auto one = blame_of(number, a, b, others))
      if (one->what != Blame::gum || !is_by_binder(*one, out)) out.push_back(*one);
  add_lots(*a.batch, *b.batch, unusual_change(others), out);
  std::stable_sort(out.begin(), out.end(), [](const Blame& one, const Blame& other) {
    return one.unusual > other.unusual;
  });
  return out;
}

}
