#include "bench/binder_range.hpp"

#include "bench/choices.hpp"
#include "bench/planning.hpp"
#include "bench/recipes.hpp"
#include "session/amounts.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

// Dry gum's share that is another binder: 1 : 2 and 1 : 2.3 differ by so much, and demand by 8 %.
// Own choice.
constexpr double another = 0.02;

// What binder the pigments were felt in so far, by their shares; absent where one never was.
std::optional<session::DryGums> taught_in(const session::RangeNames& names,
                                          const std::vector<session::BatchPigment>& mL) {
  session::DryGums sum{0, 0};
  double all = 0;
  for (const session::BatchPigment& p : mL) {
    const auto felt_in = names.dry_gum.find(p.card->id);
    if (felt_in == names.dry_gum.end()) return std::nullopt;
    sum.least += p.volume_share * felt_in->second.least;
    sum.most += p.volume_share * felt_in->second.most;
    all += p.volume_share;
  }
  if (!(all > 0)) return std::nullopt;
  return session::DryGums{sum.least / all, sum.most / all};
}

BinderRange::Than than(const std::optional<session::DryGums>& taught, double dry_gum) {
  if (!taught) return BinderRange::never_felt;
  if (dry_gum > taught->most + another) return BinderRange::stronger;
  if (dry_gum < taught->least - another) return BinderRange::thinner;
  return BinderRange::as_taught;
}

// Paint is felt when some of its water has left, so that the range may be known best for a binder
// that nobody has used: it is called no surer there than in the nearest that was.
std::optional<paint::LnSpread> wanted_in(const session::Ranges& ranges,
                                         session::RangeQuestion question,
                                         const std::optional<session::DryGums>& taught) {
  const auto meant = session::foreseen(ranges, question);
  if (!meant) return std::nullopt;
  paint::LnSpread wanted = paint::spread_of(*meant);
  double& dry_gum = question.batch.dry_gum;
  if (!taught || than(taught, dry_gum) == BinderRange::as_taught) return wanted;
  dry_gum = std::clamp(dry_gum, taught->least, taught->most);
  if (const auto used = session::foreseen(ranges, question))
    wanted.sd = std::max(wanted.sd, paint::spread_of(*used).sd);
  return wanted;
}

}

const session::Card* binder_meant(const Bench& bench) {
  if (const session::Card* planned = shelf_card(bench, bench.plan.binder)) return planned;
  const auto all = shelf_of(bench, session::CardKind::binder);
  return all.empty() ? nullptr : all.front();
}

double dry_gum_meant(const Bench& bench) {
  const session::Card* binder = binder_meant(bench);
  if (!binder) return paint::usual_dry_gum;
  const auto material = session::material_of(*binder);
  return material ? session::dry_gum_of(*material) : paint::usual_dry_gum;
}

std::optional<BinderRange> binder_range(const Bench& bench,
                                        const std::vector<session::BatchPigment>& mL,
                                        const session::Card& binder) {
  const auto material = session::material_of(binder);
  const session::Ranges& ranges = bench.learning.ranges;
  double pigment_g = 0, pigment_mL = 0;
  for (const session::BatchPigment& p : mL) {
    pigment_g += p.volume_share * pigment_of(*p.card).pigment.g_per_mL;
    pigment_mL += p.volume_share;
  }
  if (!material || !(pigment_g > 0)) return std::nullopt;
  const double dry_gum = session::dry_gum_of(*material);
  const session::RangeQuestion question = session::range_question(ranges, mL, dry_gum);
  const auto taught = taught_in(ranges.names, mL);
  const auto wanted = wanted_in(ranges, question, taught);
  if (!wanted) return std::nullopt;
  const auto [low, middle, high] = session::nine_in_ten(*wanted);
  const double g_per_mL = put_in_for_each(bench, mL, *material, middle / pigment_mL) * 10 /
                          pigment_g / paint::mL_per_g(material->parts);
  return BinderRange{binder.name,          middle * g_per_mL,     low * g_per_mL,
                     high * g_per_mL,      than(taught, dry_gum), question.told,
                     g_per_mL * pigment_mL};
}

std::optional<BinderRange> range_of_plan(const Bench& bench) {
  const session::Card* binder = shelf_card(bench, bench.plan.binder);
  std::vector<session::BatchPigment> mL;
  for (const BlendPart& part : bench.plan.blend)
    if (const session::Card* card = shelf_card(bench, part.card)) {
      const double g_per_mL = pigment_of(*card).pigment.g_per_mL;
      if (!(g_per_mL > 0)) return std::nullopt;
      const auto said = grams_said(bench, part);
      const double g = said ? said->g.value : part.parts;
      mL.push_back({card, bench.plan.by_volume && !said ? g : g / g_per_mL});
    }
  return binder ? binder_range(bench, mL, *binder) : std::nullopt;
}

std::optional<BinderRange> range_of_card(const Bench& bench, const session::Card& pigment) {
  const session::Card* binder = binder_meant(bench);
  if (!binder || !(pigment_of(pigment).pigment.g_per_mL > 0)) return std::nullopt;
  return binder_range(bench, {{&pigment, 1}}, *binder);
}

}
