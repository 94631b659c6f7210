#include "bench/again.hpp"

#include "bench/advice.hpp"
#include "bench/planning.hpp"
#include "session/amounts.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using Blend = std::vector<session::BatchPigment>;

bool same_blend(const Blend& of_a, const Blend& of_b) {
  constexpr double same_share = 0.02; // as two weighings differ
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
  const bool same = made && bench.folded &&
                    same_blend(session::pigments(*made), session::pigments(*bench.folded));
  return same ? made : nullptr;
}

// Cards that it knows of.
std::set<std::string> binders(const session::Batch& batch) {
  std::set<std::string> ids;
  for (const auto& [id, card] : batch.cards)
    if (card.kind() == session::CardKind::binder) ids.insert(id);
  return ids;
}

}

namespace {

// Of its plan: what is to be weighed of each pigment, in mL, and of the one binder.
struct MeantMixture {
  Blend pigments;
  double pigment_g = 0, pigment_mL = 0;
  const session::Card* binder = nullptr;
  double binder_g = 0; // 0: not said
};

MeantMixture meant(const session::Batch& batch) {
  MeantMixture m;
  if (!batch.plan) return m;
  for (const session::Planned::Take& take : batch.plan->of.takes) {
    const auto card = batch.cards.find(take.of);
    if (card == batch.cards.end()) continue;
    if (card->second.kind() == session::CardKind::binder)
      m.binder = &card->second, m.binder_g = take.g.value_or(0);
    const double g_per_mL = session::pigment_of(card->second).pigment.g_per_mL;
    if (card->second.kind() != session::CardKind::pigment || !(g_per_mL > 0) || !take.g) continue;
    m.pigments.push_back({&card->second, *take.g / g_per_mL});
    m.pigment_g += *take.g;
    m.pigment_mL += *take.g / g_per_mL;
  }
  for (session::BatchPigment& p : m.pigments) p.volume_share /= m.pigment_mL;
  return m;
}

// Absent where none was meant, or its card cannot say what it is.
std::optional<paint::Material> binder_in(const MeantMixture& m) {
  if (!m.binder) return std::nullopt;
  const auto material = session::material_of(*m.binder);
  return material ? std::optional(*material) : std::nullopt;
}

}

PlannedBinder planned_in_all(const Bench& bench) {
  if (!bench.folded) return {};
  const session::Batch& batch = *bench.folded;
  const MeantMixture m = meant(batch);
  const auto material = binder_in(m);
  const double there_g = batch.standing.pigment_g.value;
  const bool of_this = m.binder_g > 0 && there_g > 0 && material &&
                       binders(batch) == std::set<std::string>{m.binder->id} &&
                       same_blend(m.pigments, session::pigments(batch));
  if (!of_this) return {};
  const double g = m.binder_g * there_g / m.pigment_g;
  return {g, g * paint::mL_per_g(material->parts) / batch.standing.pigment_mL.value};
}

int portions_planned(const Bench& bench) {
  if (!bench.folded) return 1;
  const MeantMixture m = meant(*bench.folded);
  const auto material = binder_in(m);
  if (m.pigments.empty() || (m.binder_g > 0 && !material)) return 1;
  if (m.binder_g > 0)
    return portions_of(m.pigment_mL + m.binder_g * paint::mL_per_g(material->parts));
  const auto& ranges = bench.learning.ranges;
  const double dry_gum = material ? session::dry_gum_of(*material) : paint::usual_dry_gum;
  const auto wanted =
      session::foreseen(ranges, session::range_question(ranges, m.pigments, dry_gum));
  return wanted ? portions_of(m.pigment_mL * (1 + paint::mL_at_share(*wanted, 0.5))) : 1;
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
