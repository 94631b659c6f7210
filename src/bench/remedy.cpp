#include "bench/remedy.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::TroubleKind;

int at_least_one(double drops) { return std::max(1, static_cast<int>(std::lround(drops))); }

int times_named(TroubleKind trouble, const session::Batch& batch) {
  return static_cast<int>(
      std::count_if(batch.entries.begin(), batch.entries.end(), [&](const session::Entry& e) {
        const auto* named = std::get_if<session::Trouble>(&e.event);
        return named && !e.withdrawn && named->what == trouble;
      }));
}

}

Remedy remedy_of(TroubleKind trouble, const session::Batch& batch, double drop_mL) {
  Remedy r{trouble, 0, 0, times_named(trouble, batch) > 1};
  const double pigment_g = batch.standing.pigment_g.value;
  const double liquid_mL = batch.standing.liquid_mL_now.value;
  const auto drops_of = [&](double mL) { return at_least_one(drop_mL > 0 ? mL / drop_mL : 1); };
  switch (trouble) {
  case TroubleKind::wont_wet: r.drops = at_least_one(pigment_g / 10); break; // wetting aid
  case TroubleKind::gelling: r.drops = drops_of(0.05 * liquid_mL); break;    // water
  case TroubleKind::separates: r.drops = drops_of(0.05 * liquid_mL); break;  // binder
  case TroubleKind::foams: r.drops = 1; break;                               // alcohol
  case TroubleKind::gummy:
    r.g = 0.05 * pigment_g;
    r.drops = drops_of(0.03 * liquid_mL);
    break;
  case TroubleKind::gritty:
  case TroubleKind::smells: break;
  }
  return r;
}

}
