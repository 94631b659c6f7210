#include "bench/softening.hpp"

#include "bench/advice_parts.hpp"
#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "session/amounts.hpp"
#include "session/plan.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::CardKind;

constexpr double some = 0.05; // g of honey solids and glycerin to 1 g of dry gum
constexpr double honey_solids = 0.82;

struct Usual {
  double low = 0, high = 0;
};
constexpr Usual honey_to_binder{0.05, 0.075}, glycerin_to_gum{0.15, 0.25};

paint::Parts parts_of(const session::Card& card) {
  return session::material_of(card).value_or(paint::Material{}).parts;
}

// What stays when the water has gone, in g.
struct Dry {
  double binder = 0, gum = 0, sweet = 0;
};

// Drops as long as they are counted, and spoons above: what is wanted moves a little with each tap,
// and would turn from one to the other and back wherever a quarter of a spoon just serves.
Tapped in_one_form(double low_mL, double high_mL, Measures of) {
  if (high_mL <= session::most_counted * of.drop_mL) of.spoon_mL = 0;
  return tapped(low_mL, high_mL, of);
}

std::optional<Softening> softening_for(const Bench& bench, const Dry& paint) {
  if (!(paint.gum > 0) || paint.sweet > some * paint.gum) return std::nullopt;
  for (const CardKind kind : {CardKind::honey, CardKind::glycerin}) {
    const auto cards = shelf_of(bench, kind);
    if (cards.empty()) continue;
    const bool honey = kind == CardKind::honey;
    const paint::Parts parts = parts_of(*cards.front());
    const double share = honey ? parts.honey / honey_solids : parts.glycerin;
    if (!(share > 0)) continue;
    const Usual usual = honey ? honey_to_binder : glycerin_to_gum;
    const double of_g = honey ? paint.binder : paint.gum;
    const Measures of = measures_of(bench, *cards.front());
    const auto mL = [&](double part) { return part * of_g / share / of.g_per_mL; };
    const Tapped amount = in_one_form(mL(usual.low), mL(usual.high), of);
    return Softening{cards.front()->name, amount, mL_of(amount, of), {}, kind, of};
  }
  return Softening{};
}

// As much liquid.
Tapped as_water(const Bench& bench, const Softening& softening) {
  if (softening.name.empty()) return {};
  Measures water{any_drop_mL, 0, 1};
  for (const session::Card& card : materials_of(bench))
    if (card.kind() == CardKind::water) water = measures_of(bench, card);
  return tapped(softening.mL, water);
}

}

double usual_honey_solids_g(double binder_g) {
  return honey_solids * honey_to_binder.high * binder_g;
}

std::optional<Softening> softening_of_slab(const Bench& bench) {
  if (!bench.folded || !bench.expected.answer) return std::nullopt;
  const session::Batch& batch = *bench.folded;
  const paint::Standing& s = batch.standing;
  const bool mulled =
      std::any_of(batch.passes.begin(), batch.passes.end(),
                  [](const session::Pass& pass) { return pass.stage == session::Stage::mulling; });
  if (batch.progress != session::Progress::open || !mulled || !s.flow_put_in) return std::nullopt;
  const LastNote note = last_note(batch);
  if (note.feel && *note.feel > session::Feel::right && !note.added_since) return std::nullopt;
  for (const session::ToCome& one : session::to_come(batch))
    if (is_sweet(*one.card)) return std::nullopt;
  const session::Expectation& expected = *bench.expected.answer;
  if (is_far_too_loose(batch, expected)) return std::nullopt; // it becomes no such paint
  const double wants =
      std::exp(expected.band.middle - expected.prediction.drying * expected.stronger);
  const double more = std::max(1.0, wants / s.flow_put_in->value); // what dried off is no binder
  auto softening = softening_for(
      bench, {more * s.binder_g.value, more * s.gum_g.value, s.honey_g.value + s.glycerin_g.value});
  if (softening) softening->loosens = as_water(bench, *softening);
  return softening;
}

std::optional<Softening> softening_of(const Bench& bench, const Planned& planned) {
  Dry dry{planned.binder_g, 0, 0};
  const auto put = [&](const std::string& id, double g) {
    const session::Card* card = shelf_card(bench, id);
    if (!card) return;
    const paint::Parts parts = parts_of(*card);
    dry.gum += g * parts.gum;
    dry.sweet += g * (parts.honey + parts.glycerin);
  };
  put(bench.plan.binder, planned.binder_g);
  for (const PlannedPigment& extra : planned.extras) put(extra.card, extra.grams);
  return softening_for(bench, dry);
}

}
