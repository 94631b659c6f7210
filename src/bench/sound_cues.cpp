#include "bench/sound_cues.hpp"

#include "bench/pads_number.hpp"
#include "bench/pads_shared.hpp"

#include <cmath>

namespace bench {

namespace {

SoundCue of_material(session::CardKind kind) {
  using session::CardKind;
  switch (kind) {
  case CardKind::pigment: return SoundCue::pigment;
  case CardKind::binder: return SoundCue::binder;
  case CardKind::water: return SoundCue::water;
  case CardKind::honey: return SoundCue::honey;
  case CardKind::glycerin: return SoundCue::glycerin;
  case CardKind::wetting_aid: return SoundCue::wetting_aid;
  case CardKind::other:
  case CardKind::paint:
  case CardKind::dropper:
  case CardKind::spoon:
  case CardKind::pan:
  case CardKind::slab:
  case CardKind::muller:
  case CardKind::recipe: return SoundCue::tap;
  }
  return SoundCue::tap;
}

// The pad was there and said no, or had nothing to do.
bool in_vain(const Bench& bench, const Effects& effects, PadKind kind) {
  if (kind == NumberPad::enter) return bench.number && bench.number->error;
  return kind == SharedPad::undo && effects.append.empty();
}

SoundCue of_tap(const Bench& bench, const Effects& effects, PadKind kind) {
  if (in_vain(bench, effects, kind)) return SoundCue::not_counted;
  for (const session::Line& line : effects.append) {
    const auto* added = std::get_if<session::Added>(&line.event);
    if (!added || !bench.folded) continue;
    const auto card = bench.folded->cards.find(added->of);
    if (card != bench.folded->cards.end()) return of_material(card->second.kind());
  }
  return SoundCue::tap;
}

// Until the pass that runs has lasted its time; absent without one, or when it has rung.
std::optional<double> seconds_to_bell(const Bench& bench) {
  const session::Pass* pass = bench.folded ? session::running(*bench.folded) : nullptr;
  if (!pass || pass->stage != session::Stage::mulling) return std::nullopt;
  if (bench.rung == std::pair{bench.batch, pass->start}) return std::nullopt;
  return pass->start + bench.mulling.pass_s - bench.folded->clock;
}

bool rings(Bench& bench) {
  const auto left = seconds_to_bell(bench);
  if (!left || *left > 0) return false;
  bench.rung = {bench.batch, session::running(*bench.folded)->start};
  return true;
}

}

std::vector<SoundCue> cues_of(Bench& bench, const Effects& effects,
                              const std::optional<PadId>& tapped, bool not_counted) {
  std::vector<SoundCue> cues;
  if (not_counted) cues.push_back(SoundCue::not_counted);
  if (tapped) cues.push_back(of_tap(bench, effects, tapped->kind));
  if (rings(bench)) cues.push_back(SoundCue::bell);
  if (!bench.tablet.sound) cues.clear();
  return cues;
}

std::optional<std::int64_t> bell_at(const Bench& bench) {
  const auto left = seconds_to_bell(bench);
  if (!left) return std::nullopt;
  return bench.folded_run_ms + static_cast<std::int64_t>(std::ceil(*left * 1000));
}

}
