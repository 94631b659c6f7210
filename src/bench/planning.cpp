#include "bench/planning.hpp"

#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "bench/measures.hpp"
#include "bench/recipes.hpp"
#include "bench/rewetting.hpp"
#include "bench/stock.hpp"
#include "paint/measure.hpp"
#include "paint/pans.hpp"
#include "session/amounts.hpp"
#include "words/bench_says.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using words::Result;

// What 1 g of the blend's pigment wants.
struct OfOneGram {
  std::vector<PlannedPigment> pigments;
  std::vector<session::BatchPigment> shares; // of the same, in their order
  double said_g = 0;                         // of the recipe as it stands
  double pigment_mL = 0;
  double liquid_mL = 0; // live, when it is right
  double binder_g = 0;  // to put in
  double dry_share = 0; // of both
  paint::Helping first; // flows
  paint::Material binder;
  bool as_made = false;
};

// As two jars made by one recipe are.
bool are_alike(const session::Card* one, const session::Card* other) {
  constexpr double nearly = 0.02; // of the mass
  if (!one || !other) return false;
  const auto a = session::material_of(*one), b = session::material_of(*other);
  if (!a || !b) return false;
  using Part = double paint::Parts::*;
  constexpr Part parts[] = {&paint::Parts::gum,   &paint::Parts::water,   &paint::Parts::glycerin,
                            &paint::Parts::honey, &paint::Parts::alcohol, &paint::Parts::other};
  return std::all_of(std::begin(parts), std::end(parts),
                     [&](Part part) { return std::abs(a->parts.*part - b->parts.*part) < nearly; });
}

// What the batch made again took, while its blend is that of the plan, and its binder too.
const AsMade* as_made(const Bench& bench) {
  const PlanState& plan = bench.plan;
  const auto& made = plan.as_made;
  if (!made || made->blend != plan.blend || plan.by_volume) return nullptr;
  const bool same = made->binder == plan.binder ||
                    are_alike(shelf_card(bench, made->binder), shelf_card(bench, plan.binder));
  return same ? &*made : nullptr;
}

// Of what was said: grams, or parts of them.
std::optional<paint::Amount> said(const Bench& bench, const BlendPart& part,
                                  const session::Card& card, bool& guess) {
  if (part.in == session::SaidIn::parts)
    return paint::exact(part.parts *
                        (bench.plan.by_volume ? pigment_of(card).pigment.g_per_mL : 1));
  const auto grams = grams_said(bench, part);
  if (!grams || !(grams->g.value > 0)) return std::nullopt;
  guess = grams->guess;
  return grams->g;
}

Result<OfOneGram> pigments_of_one_gram(const Bench& bench) {
  OfOneGram one;
  double sum = 0;
  for (const BlendPart& part : bench.plan.blend) {
    const session::Card* card = shelf_card(bench, part.card);
    if (!card) continue;
    if (!(pigment_of(*card).pigment.g_per_mL > 0))
      return words::failure(words::PaintSay::density_not_known, {card->name});
    bool guess = false;
    const auto grams = said(bench, part, *card, guess);
    if (!grams)
      return words::failure(shelf_card(bench, part.with)
                                ? words::Sentence(words::PaintSay::powder_not_weighed)
                                : words::BenchSay::spoon_gone,
                            {card->name});
    one.pigments.push_back({part.card, grams->value, paint::uncertainty(*grams), guess});
    sum += grams->value;
  }
  for (PlannedPigment& p : one.pigments) {
    p.grams /= sum;
    p.u /= sum;
    const session::Card* card = shelf_card(bench, p.card);
    const double mL = p.grams / pigment_of(*card).pigment.g_per_mL;
    one.shares.push_back({card, mL});
    one.pigment_mL += mL;
  }
  for (session::BatchPigment& p : one.shares) p.volume_share /= one.pigment_mL;
  one.said_g = sum;
  return one;
}

Result<paint::Material> binder_of(const Bench& bench) {
  const session::Card* binder = shelf_card(bench, bench.plan.binder);
  return binder ? session::material_of(*binder)
                : paint::Material{paint::Kind::binder, {.gum = 1}, {}};
}

// So much pigment and binder on the slab of this bench, in this room.
session::Places on_the_slab(const Bench& bench, const OfOneGram& one, double grams,
                            double binder_g) {
  session::Places places;
  places.room = {bench.plan.celsius, bench.plan.humidity};
  if (!bench.lessons.empty()) places.bench = bench.lessons.back().after;
  for (std::size_t i = 0; i < one.pigments.size(); ++i)
    if (const auto material = session::material_of(*one.shares[i].card))
      session::put_in(places, one.pigments[i].card, *material,
                      paint::exact(one.pigments[i].grams * grams));
  session::put_in(places, bench.plan.binder, one.binder, paint::exact(binder_g));
  return places;
}

// At the slab until it is right: minutes under the knife and under the muller, own choice by ten
// batches as makers say they make them.
constexpr double knife_min = 2, mulling_min = 8;

void work(session::Places& places) {
  places.spread = paint::Spread::knife;
  session::dry(places, 60 * knife_min);
  places.spread = paint::Spread::mulling;
  session::dry(places, 60 * mulling_min);
}

// g of binder to put in, so that what has not dried off when the paint is right is what it wants;
// with how it lies there then.
struct PutIn {
  double binder_g = 0;
  session::Places places;
};
PutIn put_in_for(const Bench& bench, const OfOneGram& one, double grams) {
  constexpr int rounds = 4; // each leaves a tenth or so of what the one before was off by
  const double per_g = paint::mL_per_g(one.binder.parts);
  PutIn put;
  put.binder_g = one.liquid_mL * grams / per_g;
  for (int i = 0; i < rounds; ++i) {
    put.places = on_the_slab(bench, one, grams, put.binder_g);
    work(put.places);
    const double there = session::live(put.places).liquid_mL;
    put.binder_g += (one.liquid_mL * grams - there) / per_g;
  }
  return put;
}

// A heap that the slab takes at once: what a plan is reckoned by before its size is known.
double grams_of_a_portion(const OfOneGram& one) {
  return portion_mL / (one.pigment_mL + one.liquid_mL);
}

}

double put_in_for_each(const Bench& bench, const std::vector<session::BatchPigment>& mL,
                       const paint::Material& binder, double flow) {
  constexpr double said_of_g = 10;
  OfOneGram one;
  one.shares = mL;
  double pigment_g = 0;
  for (const session::BatchPigment& p : mL)
    pigment_g += p.volume_share * pigment_of(*p.card).pigment.g_per_mL;
  for (const session::BatchPigment& p : mL) {
    one.pigments.push_back(
        {p.card->id, p.volume_share * pigment_of(*p.card).pigment.g_per_mL / pigment_g});
    one.pigment_mL += p.volume_share / pigment_g;
  }
  one.binder = binder;
  one.liquid_mL = flow * one.pigment_mL;
  const double grams = said_of_g / portions_of(said_of_g * (one.pigment_mL + one.liquid_mL));
  return put_in_for(bench, one, grams).binder_g * paint::mL_per_g(binder.parts) /
         (one.liquid_mL * grams);
}

namespace {

Result<OfOneGram> of_one_gram(const Bench& bench) {
  auto one = pigments_of_one_gram(bench);
  const auto binder = one ? binder_of(bench) : tl::make_unexpected(one.error());
  if (!binder) return tl::make_unexpected(binder.error());
  one->binder = *binder;
  const AsMade* made = as_made(bench);
  const auto& ranges = bench.learning.ranges;
  const double dry_gum = shelf_card(bench, bench.plan.binder) ? session::dry_gum_of(one->binder)
                                                              : paint::usual_dry_gum;
  const auto wanted =
      session::foreseen(ranges, session::range_question(ranges, one->shares, dry_gum));
  if (!wanted) return tl::make_unexpected(wanted.error());
  const double all_mL = made ? made->binder_g * paint::mL_per_g(one->binder.parts) : 0;
  one->first = paint::first_helping(*wanted, made ? made->first : 0, all_mL / one->pigment_mL);
  one->as_made = made;
  one->liquid_mL = made && made->liquid_mL > 0 ? made->liquid_mL
                                               : paint::mL_at_share(*wanted, 0.5) * one->pigment_mL;
  const double grams = grams_of_a_portion(*one);
  PutIn put = put_in_for(bench, *one, grams);
  if (made && made->by_recipe) {
    put.places = on_the_slab(bench, *one, grams, made->binder_g * grams);
    work(put.places);
    one->liquid_mL = session::live(put.places).liquid_mL / grams;
  }
  one->binder_g = made ? made->binder_g : put.binder_g / grams;
  one->dry_share = session::dry_share(put.places, session::Place::slab)->middle;
  return one;
}

// g of dried paint: the room's share of water is that of the gum as it is sold (12 %).
double dried_g(const OfOneGram& one) {
  const paint::Parts& b = one.binder.parts;
  return 1 + one.binder_g * (b.gum / 0.88 + b.honey + b.glycerin + b.other);
}

double pan_mL(const Bench& bench) {
  const session::Card* pan = shelf_card(bench, bench.plan.pan);
  return pan ? volume_of(*pan).mL : 0;
}

// As far as the pigment lasts that gives out first.
Result<double> grams_left(const Bench& bench, const OfOneGram& one) {
  std::optional<double> least;
  for (const PlannedPigment& p : one.pigments)
    if (const auto left = left_of(bench, *shelf_card(bench, p.card)))
      least = std::min(least.value_or(*left / p.grams), *left / p.grams);
  if (!least || !(*least > 0)) return words::failure(words::BenchSay::nothing_left);
  return *least;
}

Result<double> pigment_wanted(const Bench& bench, const OfOneGram& one, double wanted) {
  const PlanState& plan = bench.plan;
  switch (plan.want) {
  case Want::pigment_g: return wanted;
  case Want::wet_mL: return wanted / (one.pigment_mL + one.liquid_mL);
  case Want::dried_g: return wanted / dried_g(one);
  case Want::as_it_stands: return one.said_g;
  case Want::all_left: return grams_left(bench, one);
  case Want::pans: break;
  }
  const auto pans =
      paint::batch_for(static_cast<int>(wanted), pan_mL(bench), one.dry_share, planned_fill);
  if (!pans) return tl::make_unexpected(pans.error());
  return pans->wet_mL / (one.pigment_mL + one.liquid_mL);
}

// How the binder goes in: at once, and what follows.
void say_binder(const Bench& bench, const OfOneGram& one, Planned& p) {
  const session::Card* card = shelf_card(bench, bench.plan.binder);
  const double per_g = paint::mL_per_g(one.binder.parts);
  const double pigment_mL = one.pigment_mL * p.pigment_g;
  const double low = one.first.low * pigment_mL, high = one.first.high * pigment_mL;
  p.first_helping = {low / per_g, high / per_g};
  p.rest_g = std::max(0.0, p.binder_g - (low + high) / 2 / per_g);
  if (!card) return;
  const Measures of = measures_of(bench, *card);
  p.first_helping.amount = at_once(low, high, of);
  if (!is_nothing(p.first_helping.amount)) {
    const double g = session::mL_of(p.first_helping.amount, of) / per_g;
    p.first_helping.low_g = std::min(p.first_helping.low_g, g);
    p.rest_g = std::max(0.0, p.binder_g - g);
  }
  constexpr double nothing = 0.05; // of what was made before: as much less as a spoon may hold
  if (p.rest_g * per_g < of.drop_mL / 2 || (p.as_made && p.rest_g < nothing * p.binder_g))
    p.rest_g = 0;
  p.rest_spoons = spoons_in(p.rest_g * per_g, of);
  const long drops = std::lround(p.rest_g * per_g / of.drop_mL);
  constexpr long a_five = 5;
  if (p.rest_spoons <= 0 && drops <= most_counted + a_five)
    p.drops = drops_by_fives(0, static_cast<int>(drops));
}

void put_in_less_sweet(const Bench& bench, LastTime& last, Planned& p) {
  for (PlannedPigment& extra : p.extras) {
    const session::Card* card = shelf_card(bench, extra.card);
    if (!card || !is_sweet(*card)) continue;
    extra.grams *= last.sweet_share;
    last.in_plan = true;
  }
  constexpr double least_g = 0.005; // less than half a drop
  std::erase_if(p.extras, [](const PlannedPigment& extra) { return extra.grams < least_g; });
}

// Last time's dry paint lacked it, or had too much: of what is made again so much more, or less. A
// recipe stays as it is.
void put_in_what_lacked(const Bench& bench, Planned& p) {
  p.last_time = last_time(bench, p);
  if (!p.last_time || p.by_recipe) return;
  LastTime& last = *p.last_time;
  if (last.sweet_share < 1) put_in_less_sweet(bench, last, p);
  if (last.of.empty()) return;
  last.in_plan = true;
  if (last.of == bench.plan.binder) {
    p.binder_g += last.g;
    return;
  }
  const auto extra = std::find_if(p.extras.begin(), p.extras.end(),
                                  [&](const PlannedPigment& e) { return e.card == last.of; });
  if (extra != p.extras.end())
    extra->grams += last.g;
  else
    p.extras.push_back({last.of, last.g});
}

double mL_of(const Bench& bench, const std::vector<PlannedPigment>& extras) {
  double mL = 0;
  for (const PlannedPigment& extra : extras)
    if (const session::Card* card = shelf_card(bench, extra.card))
      if (const auto material = session::material_of(*card))
        mL += extra.grams * paint::mL_per_g(material->parts);
  return mL;
}

}

int portions_of(double wet_mL) {
  return std::max(1, static_cast<int>(std::ceil(wet_mL / portion_mL)));
}

std::optional<Result<Planned>> planned(const Bench& bench) {
  if (bench.plan.blend.empty()) return std::nullopt;
  const auto one = of_one_gram(bench);
  if (!one) return tl::make_unexpected(one.error());
  if (asks_how_much(bench.plan.want) && !(bench.plan.wanted > 0))
    return words::failure(words::BenchSay::nothing_wanted);
  const auto grams = pigment_wanted(bench, *one, bench.plan.wanted);
  if (!grams) return tl::make_unexpected(grams.error());
  if (const auto weighed = paint::grams_weighed(*grams); !weighed)
    return tl::make_unexpected(weighed.error());
  Planned p;
  p.pigments = one->pigments;
  for (PlannedPigment& pigment : p.pigments) pigment.grams *= *grams, pigment.u *= *grams;
  p.pigment_g = *grams;
  p.wet_mL = (one->pigment_mL + one->liquid_mL) * *grams;
  const AsMade* made = as_made(bench);
  if (made)
    for (const auto& [card, g] : made->extras)
      if (shelf_card(bench, card)) p.extras.push_back({card, g * *grams});
  p.dry_share = one->dry_share;
  p.as_made = one->as_made;
  const double put_in_mL = one->binder_g * *grams * paint::mL_per_g(one->binder.parts);
  p.portions = portions_of(p.as_made ? one->pigment_mL * *grams + put_in_mL : p.wet_mL);
  p.by_recipe = made && made->by_recipe;
  p.binder_g = p.as_made ? one->binder_g * *grams
                         : p.portions * put_in_for(bench, *one, *grams / p.portions).binder_g;
  const double extras_mL = mL_of(bench, p.extras), binder_g = p.binder_g;
  put_in_what_lacked(bench, p);
  p.wet_mL += mL_of(bench, p.extras) - extras_mL +
              (p.binder_g - binder_g) * paint::mL_per_g(one->binder.parts);
  say_binder(bench, *one, p);
  if (const auto pans = paint::pans_of(p.wet_mL, pan_mL(bench), p.dry_share, planned_fill)) {
    p.pans = bench.plan.want == Want::pans ? static_cast<int>(bench.plan.wanted) : pans->pans;
    p.layers = pans->layers;
  }
  return p;
}

int portions_wanted(const Bench& bench, double wanted) {
  if (bench.plan.blend.empty()) return 1;
  const auto one = of_one_gram(bench);
  const auto grams = one ? pigment_wanted(bench, *one, wanted) : tl::make_unexpected(one.error());
  return grams ? portions_of((one->pigment_mL + one->liquid_mL) * *grams) : 1;
}

bool asks_how_much(Want want) { return want != Want::as_it_stands && want != Want::all_left; }

std::optional<double> left_of(const Bench& bench, const session::Card& card) {
  const auto left = stock_of(bench, card);
  return left ? std::optional(left->g) : std::nullopt;
}

}
