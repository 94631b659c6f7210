#include "bench/heard.hpp"

namespace bench {

namespace {

Heard of_material(session::CardKind kind) {
  using session::CardKind;
  switch (kind) {
  case CardKind::pigment: return Heard::pigment;
  case CardKind::binder: return Heard::binder;
  case CardKind::water: return Heard::water;
  case CardKind::honey: return Heard::honey;
  case CardKind::glycerin: return Heard::glycerin;
  case CardKind::wetting_aid: return Heard::wetting_aid;
  default: return Heard::tap;
  }
}

Heard of_tap(const Bench& bench, const Effects& effects) {
  for (const session::Line& line : effects.append) {
    const auto* added = std::get_if<session::Added>(&line.event);
    if (!added || !bench.folded) continue;
    const auto card = bench.folded->cards.find(added->of);
    if (card != bench.folded->cards.end()) return of_material(card->second.is_a);
  }
  return Heard::tap;
}

bool rings(Bench& bench) {
  const session::Pass* pass = bench.folded ? session::running(*bench.folded) : nullptr;
  if (!pass || pass->stage != session::Stage::mulling) return false;
  if (bench.folded->clock - pass->start < pass_target_s) return false;
  const std::pair ringing{bench.batch, pass->start};
  return std::exchange(bench.rung, ringing) != ringing;
}

}

std::vector<Heard> heard_of(Bench& bench, const Effects& effects,
                            const std::optional<PadId>& tapped, bool not_counted) {
  std::vector<Heard> heard;
  if (not_counted) heard.push_back(Heard::not_counted);
  if (tapped) heard.push_back(of_tap(bench, effects));
  if (rings(bench)) heard.push_back(Heard::bell);
  if (!bench.tablet.sound) heard.clear();
  return heard;
}

}
