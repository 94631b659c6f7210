#include "bench/remedy.hpp"

#include "bench/advice_parts.hpp"

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

// With so much pigment more.
std::optional<paint::GumState> gum_with(const session::Batch& batch, const Known& known,
                                        double more) {
  const paint::Standing& s = batch.standing;
  return paint::gum_state(s.gum_g.value, (1 + more) * s.pigment_mL.value,
                          session::marks_of(known.verdicts, session::family_of(batch)));
}

bool felt_loose(const session::Batch& batch) {
  const LastNote note = last_note(batch);
  return note.feel > session::Feel::right && !note.added_since;
}

constexpr double powder_for_strings = 0.05; // of the pigment

// What is usual for gelling is water, for strings powder, and for water that separates binder.
bool gum_speaks_against(TroubleKind trouble, const session::Batch& batch, const Known& known) {
  switch (trouble) {
  case TroubleKind::gelling: return gum_with(batch, known, 0) == paint::GumState::too_little;
  case TroubleKind::gummy:
    return gum_with(batch, known, powder_for_strings) == paint::GumState::too_little;
  case TroubleKind::separates: {
    const auto gum = gum_with(batch, known, 0);
    return gum == paint::GumState::too_much ||
           (felt_loose(batch) && gum != paint::GumState::too_little);
  }
  case TroubleKind::wont_wet:
  case TroubleKind::gritty:
  case TroubleKind::foams:
  case TroubleKind::smells: return false;
  }
  return false;
}

// Water is what is usual.
bool looseness_speaks_against(TroubleKind trouble, const session::Batch& batch, const Known& known,
                              Advice::Kind beside) {
  const bool by_count = beside == Advice::past_right || beside == Advice::too_loose;
  return (by_count || felt_loose(batch)) &&
         (trouble == TroubleKind::gummy ||
          (trouble == TroubleKind::gelling && !gum_speaks_against(trouble, batch, known)));
}

Remedy::Way way_of(TroubleKind trouble, const session::Batch& batch, const Known& known,
                   Advice::Kind beside) {
  if (looseness_speaks_against(trouble, batch, known, beside)) return Remedy::loose;
  if (gum_speaks_against(trouble, batch, known)) return Remedy::by_gum;
  return times_named(trouble, batch) > 1 ? Remedy::stronger : Remedy::usual;
}

}

Remedy remedy_of(TroubleKind trouble, const session::Batch& batch, const Measures& binder,
                 const Known& known, Advice::Kind beside) {
  constexpr Measures any_liquid{any_drop_mL, 0, 1};
  Remedy r{trouble, way_of(trouble, batch, known, beside)};
  if (r.way == Remedy::loose) return r;
  const bool by_gum = r.way == Remedy::by_gum;
  const double pigment_g = batch.standing.pigment_g.value;
  const double liquid_mL = batch.standing.liquid_mL_now.value;
  switch (trouble) {
  case TroubleKind::wont_wet: // wetting aid
    r.amount = at_least_a_drop(pigment_g / 10 * any_drop_mL, any_liquid);
    break;
  case TroubleKind::gelling:
    r.amount = at_least_a_drop(0.05 * liquid_mL, by_gum ? binder : known.water);
    break;
  case TroubleKind::separates:
    if (!by_gum) r.amount = at_least_a_drop(0.05 * liquid_mL, binder);
    break;
  case TroubleKind::foams: r.amount = {.drops = 1}; break; // alcohol
  case TroubleKind::gummy:
    if (!by_gum) r.g = powder_for_strings * pigment_g;
    r.amount = at_least_a_drop(0.03 * liquid_mL, known.water);
    break;
  case TroubleKind::gritty:
  case TroubleKind::smells: break;
  }
  return r;
}

}
