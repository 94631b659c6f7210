#include "bench/remedy.hpp"

#include <algorithm>

namespace bench {

namespace {

using session::TroubleKind;

Tapped at_least_a_drop(double mL, const Measures& of) {
  return tapped(std::max(of.drop_mL, mL), of);
}

int times_named(TroubleKind trouble, const session::Batch& batch) {
  return static_cast<int>(
      std::count_if(batch.entries.begin(), batch.entries.end(), [&](const session::Entry& e) {
        const auto* named = std::get_if<session::Trouble>(&e.event);
        return named && !e.withdrawn && named->what == trouble;
      }));
}

}

Remedy remedy_of(TroubleKind trouble, const session::Batch& batch, const Measures& binder,
                 const Measures& water) {
  constexpr Measures any_liquid{any_drop_mL, 0, 1};
  Remedy r{trouble, {}, 0, times_named(trouble, batch) > 1};
  const double pigment_g = batch.standing.pigment_g.value;
  const double liquid_mL = batch.standing.liquid_mL_now.value;
  switch (trouble) {
  case TroubleKind::wont_wet: // wetting aid
    r.amount = at_least_a_drop(pigment_g / 10 * any_drop_mL, any_liquid);
    break;
  case TroubleKind::gelling: r.amount = at_least_a_drop(0.05 * liquid_mL, water); break;
  case TroubleKind::separates: r.amount = at_least_a_drop(0.05 * liquid_mL, binder); break;
  case TroubleKind::foams: r.amount = {.drops = 1}; break; // alcohol
  case TroubleKind::gummy:
    r.g = 0.05 * pigment_g;
    r.amount = at_least_a_drop(0.03 * liquid_mL, water);
    break;
  case TroubleKind::gritty:
  case TroubleKind::smells: break;
  }
  return r;
}

}
