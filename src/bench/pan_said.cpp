#include "bench/pan_said.hpp"

#include "bench/pan_times.hpp"

#include <algorithm>

namespace bench {

namespace {

std::int64_t poured_at(const session::Batch& batch, int number) {
  std::int64_t at = 0;
  for (const session::Pan& pan : batch.pans)
    if (number == 0 || pan.number == number) at = std::max(at, pan.layers.back().at);
  return at;
}

bool got_binder_since(const session::Batch& batch, std::int64_t at) {
  return std::any_of(batch.entries.begin(), batch.entries.end(), [&](const session::Entry& e) {
    const auto* added = std::get_if<session::Added>(&e.event);
    if (!added || e.withdrawn || e.at <= at) return false;
    const auto card = batch.cards.find(added->of);
    return card != batch.cards.end() && card->second.kind() == session::CardKind::binder;
  });
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
  const auto said = said_of(batch, 0);
  if (!said) return std::nullopt;
  const session::Became as = said->verdict.as;
  const bool bars = (as == session::Became::sticky && !said_early(batch, *said)) ||
                    (as == session::Became::rubs_off && !got_binder_since(batch, said->at));
  return bars ? std::optional(as) : std::nullopt;
}

}
