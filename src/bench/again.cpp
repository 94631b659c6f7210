#include "bench/again.hpp"

#include "bench/advice.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

bool same_blend(const session::Batch& a, const session::Batch& b) {
  constexpr double same_share = 0.02; // as two weighings differ
  const auto of_a = session::pigments(a), of_b = session::pigments(b);
  return of_a.size() == of_b.size() &&
         std::all_of(of_a.begin(), of_a.end(), [&](const session::BatchPigment& one) {
           return std::any_of(of_b.begin(), of_b.end(), [&](const session::BatchPigment& other) {
             return one.card->id == other.card->id &&
                    std::abs(one.volume_share - other.volume_share) < same_share;
           });
         });
}

const session::Batch* made_of_this(const Bench& bench) {
  const session::Batch* made = bench.earlier.made.get();
  return made && bench.folded && same_blend(*made, *bench.folded) ? made : nullptr;
}

// Cards that it knows of.
std::set<std::string> binders(const session::Batch& batch) {
  std::set<std::string> ids;
  for (const auto& [id, card] : batch.cards)
    if (card.kind() == session::CardKind::binder) ids.insert(id);
  return ids;
}

}

double made_first(const Bench& bench) {
  const session::Batch* made = made_of_this(bench);
  return made ? took_first(*made) : 0;
}

std::optional<double> made_in_all(const Bench& bench) {
  const session::Batch* made = made_of_this(bench);
  if (!made || !made->standing.binder_ratio || binders(*made) != binders(*bench.folded))
    return std::nullopt;
  const double g = made->standing.binder_ratio->value * bench.folded->standing.pigment_g.value / 10;
  return g > 0 ? std::optional(g) : std::nullopt;
}

}
