#include "bench/pan_said.hpp"

#include "bench/pan_times.hpp"

#include <algorithm>
#include <limits>
#include <set>

namespace bench {

namespace {

std::int64_t poured_at(const session::Batch& batch, int number) {
  std::int64_t at = 0;
  for (const session::Pan& pan : batch.pans)
    if (number == 0 || pan.number == number) at = std::max(at, pan.layers.back().at);
  return at;
}

using Kinds = std::set<session::CardKind>;

double grams_of(const Kinds& kinds, const session::Batch& batch, std::int64_t from,
                std::int64_t to) {
  double g = 0;
  for (const session::Entry& e : batch.entries) {
    const auto* added = std::get_if<session::Added>(&e.event);
    if (!added || e.withdrawn || !e.grams || e.at <= from || e.at > to) continue;
    const auto card = batch.cards.find(added->of);
    if (card != batch.cards.end() && kinds.count(card->second.kind())) g += e.grams->value;
  }
  return g;
}

// More than a drop too many would be, and mulled in: it is off the slab.
bool got_since(const Kinds& kinds, const session::Batch& batch, std::int64_t at) {
  constexpr double worth_it = 0.05; // of what was in it: own choice
  constexpr std::int64_t ever = std::numeric_limits<std::int64_t>::max();
  const double since = grams_of(kinds, batch, at, ever);
  return batch.progress != session::Progress::open && since > 0 &&
         since >= worth_it * grams_of(kinds, batch, 0, at);
}

bool lacks_still(const session::Batch& batch, const session::Judged& said) {
  using session::CardKind;
  switch (said.verdict.as) {
  case session::Became::sticky: return !said_early(batch, said);
  case session::Became::rubs_off: return !got_since({CardKind::binder}, batch, said.at);
  case session::Became::wont_rewet:
    return !got_since({CardKind::honey, CardKind::glycerin}, batch, said.at);
  case session::Became::good:
  case session::Became::full:
  case session::Became::sunken:
  case session::Became::cracked:
  case session::Became::mould: return false;
  }
  return false;
}

// A pan that was begun since says nothing of the others.
bool is_poured_over(const session::Batch& batch, std::int64_t at) {
  return std::any_of(batch.pans.begin(), batch.pans.end(), [&](const session::Pan& pan) {
    return pan.layers.front().at <= at && pan.layers.back().at > at;
  });
}

std::optional<session::Judged> last_of_all(const session::Batch& batch) {
  std::optional<session::Judged> out;
  for (const session::Judged& judged : batch.verdicts)
    if (judged.verdict.pan == 0) out = judged;
  return out;
}

}

std::optional<session::Judged> said_of(const session::Batch& batch, int pan) {
  std::optional<session::Judged> out;
  for (const session::Judged& judged : batch.verdicts) {
    const bool meant = judged.verdict.pan == 0 || judged.verdict.pan == pan;
    if (meant && judged.at >= poured_at(batch, pan)) out = judged;
  }
  return out;
}

std::vector<int> said_apart(const session::Batch& batch) {
  std::vector<int> out;
  for (const session::Pan& pan : batch.pans)
    if (const auto said = said_of(batch, pan.number); said && said->verdict.pan == pan.number)
      out.push_back(pan.number);
  std::sort(out.begin(), out.end());
  return out;
}

bool said_early(const session::Batch& batch, const session::Judged& said) {
  if (said.verdict.as != session::Became::sticky) return false;
  return std::any_of(batch.pans.begin(), batch.pans.end(), [&](const session::Pan& pan) {
    const bool meant = said.verdict.pan == 0 || said.verdict.pan == pan.number;
    return meant && said.at >= pan.layers.back().at && still_wet(batch, pan, said.at);
  });
}

std::optional<session::Became> bars_layer(const session::Batch& batch) {
  const auto said = last_of_all(batch);
  if (!said || is_poured_over(batch, said->at)) return std::nullopt;
  return lacks_still(batch, *said) ? std::optional(said->verdict.as) : std::nullopt;
}

}
