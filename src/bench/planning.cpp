#include "bench/planning.hpp"

#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "paint/film.hpp"
#include "paint/measure.hpp"
#include "paint/pans.hpp"
#include "session/amounts.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using words::Result;

// What 1 g of the blend's pigment wants.
struct OfOneGram {
  std::vector<PlannedPigment> pigments;
  std::vector<session::BatchPigment> shares;
  double pigment_mL = 0;
  double liquid_mL = 0;
  double binder_g = 0;
  paint::Parts binder;
  bool as_made = false;
};

// What the batch made again took, while its blend and its binder are those of the plan.
const AsMade* as_made(const PlanState& plan) {
  const bool same = plan.as_made && plan.as_made->blend == plan.blend &&
                    plan.as_made->binder == plan.binder && !plan.by_volume;
  return same ? &*plan.as_made : nullptr;
}

double g_per_part(const session::Card& card, bool by_volume) {
  return by_volume ? pigment_of(card).pigment.g_per_mL : 1;
}

Result<OfOneGram> of_one_gram(const Bench& bench) {
  OfOneGram one;
  double sum = 0;
  for (const BlendPart& part : bench.plan.blend) {
    const session::Card* card = shelf_card(bench, part.card);
    if (!card) continue;
    if (!(pigment_of(*card).pigment.g_per_mL > 0))
      return words::failure(words::PaintSay::density_not_known, {card->name});
    one.pigments.push_back({part.card, part.parts * g_per_part(*card, bench.plan.by_volume)});
    sum += one.pigments.back().grams;
  }
  for (PlannedPigment& p : one.pigments) {
    p.grams /= sum;
    const session::Card* card = shelf_card(bench, p.card);
    const double mL = p.grams / pigment_of(*card).pigment.g_per_mL;
    one.shares.push_back({card, mL});
    one.pigment_mL += mL;
  }
  const session::Card* binder = shelf_card(bench, bench.plan.binder);
  const auto material =
      binder ? session::material_of(*binder) : paint::Material{paint::Kind::binder, {.gum = 1}, {}};
  if (!material) return tl::make_unexpected(material.error());
  one.binder = material->parts;
  one.liquid_mL =
      session::wanted_mL(bench.learning.ranges, one.shares,
                         binder ? session::dry_gum_of(*material) : paint::usual_dry_gum);
  one.binder_g = one.liquid_mL / paint::mL_per_g(one.binder);
  if (const AsMade* made = as_made(bench.plan)) {
    one.binder_g = made->binder_g;
    one.liquid_mL = made->liquid_mL;
    one.as_made = true;
  }
  return one;
}

// g of dried paint: the room's share of water is that of the gum as it is sold (12 %).
double dried_g(const OfOneGram& one) {
  const paint::Parts& b = one.binder;
  return 1 + one.binder_g * (b.gum / 0.88 + b.honey + b.glycerin + b.other);
}

Result<paint::PanPlan> pans_wanted(const Bench& bench, double pan_mL) {
  return paint::batch_for(static_cast<int>(bench.plan.wanted), pan_mL, planned_dry_share,
                          planned_fill);
}

double pan_mL(const Bench& bench) {
  const session::Card* pan = shelf_card(bench, bench.plan.pan);
  return pan ? volume_of(*pan).mL : 0;
}

Result<double> pigment_wanted(const Bench& bench, const OfOneGram& one) {
  const PlanState& plan = bench.plan;
  switch (plan.want) {
  case Want::pigment_g: return plan.wanted;
  case Want::wet_mL: return plan.wanted / (one.pigment_mL + one.liquid_mL);
  case Want::dried_g: return plan.wanted / dried_g(one);
  case Want::pans: break;
  }
  const auto pans = pans_wanted(bench, pan_mL(bench));
  if (!pans) return tl::make_unexpected(pans.error());
  return pans->wet_mL / (one.pigment_mL + one.liquid_mL);
}

// By what is usual for each class, by mass.
paint::Helping helping_of(const Bench& bench, const std::vector<PlannedPigment>& pigments) {
  paint::Helping sum;
  for (const PlannedPigment& p : pigments) {
    const session::Card& card = *shelf_card(bench, p.card);
    const paint::Helping usual = paint::first_helping(pigment_of(card).pigment.family);
    sum.low += usual.low * p.grams / 10;
    sum.high += usual.high * p.grams / 10;
  }
  return sum;
}

int drops_between(const Bench& bench, double grams, const paint::Parts& binder) {
  const session::Card* card = shelf_card(bench, bench.plan.binder);
  const auto drop = card ? mL_of(bench, *card, TapAmount{}) : std::nullopt;
  if (!drop || grams <= 0) return 0;
  return static_cast<int>(std::lround(grams * paint::mL_per_g(binder) / *drop));
}

}

std::optional<Result<Planned>> planned(const Bench& bench) {
  if (bench.plan.blend.empty()) return std::nullopt;
  const auto one = of_one_gram(bench);
  if (!one) return tl::make_unexpected(one.error());
  if (!(bench.plan.wanted > 0)) return words::failure(words::BenchSay::nothing_wanted);
  const auto grams = pigment_wanted(bench, *one);
  if (!grams) return tl::make_unexpected(grams.error());
  if (const auto weighed = paint::grams_weighed(*grams); !weighed)
    return tl::make_unexpected(weighed.error());
  Planned p;
  p.pigments = one->pigments;
  for (PlannedPigment& pigment : p.pigments) pigment.grams *= *grams;
  p.pigment_g = *grams;
  p.binder_g = one->binder_g * *grams;
  p.wet_mL = (one->pigment_mL + one->liquid_mL) * *grams;
  p.as_made = one->as_made;
  if (const AsMade* made = as_made(bench.plan))
    for (const auto& [card, g] : made->extras)
      if (shelf_card(bench, card)) p.extras.push_back({card, g * *grams});
  p.first_helping = p.as_made ? paint::first_helping(p.binder_g) : helping_of(bench, p.pigments);
  p.drops = drops_between(bench, p.binder_g - (p.first_helping.low + p.first_helping.high) / 2,
                          one->binder);
  p.portions = std::max(1, static_cast<int>(std::ceil(p.wet_mL / portion_mL)));
  if (const auto pans = paint::pans_of(p.wet_mL, pan_mL(bench), planned_dry_share, planned_fill)) {
    p.pans = bench.plan.want == Want::pans ? static_cast<int>(bench.plan.wanted) : pans->pans;
    p.layers = pans->layers;
  }
  return p;
}

std::optional<double> left_of(const Bench& bench, const session::Card& card) {
  if (!(card.made_g > 0)) return std::nullopt;
  const auto used = bench.index.used_ug.find(card.id);
  if (used == bench.index.used_ug.end()) return card.made_g;
  const std::int64_t since = words::days_of(card.made_on).value_or(0);
  std::int64_t ug = 0;
  for (auto day = used->second.lower_bound(since); day != used->second.end(); ++day)
    ug += day->second;
  return card.made_g - static_cast<double>(ug) * 1e-6;
}

}
