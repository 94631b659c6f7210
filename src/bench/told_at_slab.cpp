#include "bench/told_at_slab.hpp"

#include "bench/advice_parts.hpp"
#include "session/feelings.hpp"

#include <algorithm>

namespace bench {

session::Stage next_stage(const session::Batch& batch) {
  const session::Pass* pass = running(batch);
  if (!pass) {
    const bool wet = is_worked_in(batch) || (was_felt(batch) && flows_right(batch));
    return wet && !is_late_powder(batch) ? session::Stage::mulling : session::Stage::wetting_out;
  }
  return pass->stage == session::Stage::mulling ? session::Stage::resting : session::Stage::mulling;
}

bool is_dusty(const session::Batch& batch) {
  constexpr double mulled_s = 60; // as a pass that has ended wets it
  const session::Pass* pass = running(batch);
  if (!batch.powder_is_dry && !batch.passes.empty() && !is_worked_in(batch) && !was_felt(batch))
    return true;
  if (!batch.powder_is_dry || !pass || !(batch.standing.liquid_mL.value > 0))
    return batch.powder_is_dry;
  session::Clock since = pass->start;
  for (const session::Entry& e : batch.entries) {
    const auto* added = std::get_if<session::Added>(&e.event);
    const auto card = added && !e.withdrawn ? batch.cards.find(added->of) : batch.cards.end();
    if (card != batch.cards.end() && !session::is_liquid(card->second.kind()))
      since = std::max(since, e.clock);
  }
  const bool knife = pass->stage == session::Stage::wetting_out;
  return batch.clock - since < (knife ? session::wetted_out_s : mulled_s);
}

bool is_late_powder(const session::Batch& batch) { return was_felt(batch) && is_dusty(batch); }

bool flows_right(const session::Batch& batch) {
  const auto felt = last_note(batch).feel;
  return !felt || *felt == session::Feel::right;
}

paint::Band band_as_told(const session::Batch& batch, const session::Expectation& expected) {
  paint::Band band = expected.band;
  const double up = ln_right(batch, expected) - band.middle;
  for (double* ln_flow : {&band.middle, &band.from, &band.to, &band.first}) *ln_flow += up;
  const paint::Standing& s = batch.standing;
  const session::Entry* told = nullptr;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend() && !told; ++e)
    if (!e->withdrawn && e->flow &&
        (std::holds_alternative<session::Added>(e->event) ||
         std::holds_alternative<session::Felt>(e->event) ||
         std::holds_alternative<session::Found>(e->event)))
      told = &*e;
  if (!told || !s.flow_now || !(s.gum_g.value > 0)) return band;
  const double gum = paint::dry_gum(s);
  if (!(gum > 0) || gum > session::strongest_modelled) return band;
  const double dried_g = (*told->flow - s.flow_now->value) * s.pigment_mL.value;
  const double then = s.gum_g.value / (s.gum_g.value / gum + dried_g);
  const double down = expected.prediction.drying * (gum - then);
  for (double* ln_flow : {&band.middle, &band.from, &band.to, &band.first}) *ln_flow -= down;
  return band;
}

}
