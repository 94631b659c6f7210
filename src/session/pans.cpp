#include "session/pans.hpp"

#include "paint/pans.hpp"
#include "words/paint_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>

namespace session {

namespace {

// The middle of ten batches by an independent model, and their span.
constexpr paint::Interval usual_dry_share{0.44, 0.55, 0.69};

const PlaceContents* find_contents(const Places& places, Place place) {
  const auto found = places.at.find(place);
  return found == places.at.end() ? nullptr : &found->second;
}

std::vector<paint::PigmentMass> pigments_in(const PlaceContents& here) {
  std::vector<paint::PigmentMass> out;
  for (const paint::Portion& p : here.paint.contents)
    if (p.material.parts.pigment > 0)
      out.push_back({p.material.pigment, p.grams.value * p.material.parts.pigment});
  return out;
}

double wet_mL(const PlaceContents& here) {
  return here.sums.pigment_mL + std::max(0.0, paint::live(here.sums, here.paint).liquid_mL);
}

Pan& pan_of(std::vector<Pan>& pans, int number, const Card& card) {
  for (Pan& pan : pans)
    if (pan.number == number) return pan;
  pans.push_back({number, card, {}, {}});
  return pans.back();
}

}

double dry_mL(const Pan& pan) {
  double sum = 0;
  for (const PouredLayer& layer : pan.layers) sum += layer.dry_mL;
  return sum;
}

std::optional<std::int64_t> last_pour(const std::vector<Pan>& pans, std::int64_t by) {
  std::optional<std::int64_t> out;
  for (const Pan& pan : pans)
    for (const PouredLayer& layer : pan.layers)
      if (layer.at <= by) out = std::max(out.value_or(layer.at), layer.at);
  return out;
}

double wet_mL(const Places& places, Place place) {
  const PlaceContents* here = find_contents(places, place);
  return here ? wet_mL(*here) : 0;
}

double wet_g_per_mL(const Places& places, Place place) {
  const PlaceContents* here = find_contents(places, place);
  const double mL = here ? wet_mL(*here) : 0;
  return mL > 0 ? paint::grams_of(here->paint, places.bench).value / mL : 0;
}

std::optional<paint::Interval> dry_share(const Places& places, Place place) {
  const PlaceContents* here = find_contents(places, place);
  if (!here) return std::nullopt;
  const auto critical = paint::cpvc(pigments_in(*here));
  const auto film =
      paint::film_of(here->sums.pigment_mL,
                     paint::wet_of(here->sums, paint::live(here->sums, here->paint)), places.room);
  if (!critical || !film) return usual_dry_share;
  const auto share = paint::dry_over_wet(*film, *critical, wet_mL(*here));
  return share ? *share : usual_dry_share;
}

Fault into_no_pan(const Poured& poured, const Card* in) {
  using Say = words::SessionSay;
  if (in && in->kind() == CardKind::pan) return std::nullopt;
  if (in) return words::Error{Say::poured_into_no_pan, {in->name}};
  if (poured.in.empty()) return words::Error{Say::poured_into_nothing, {}};
  return words::Error{Say::pan_not_laid_out, {poured.in}};
}

Fault pour(std::vector<Pan>& pans, Places& places, const Poured& poured, const Card& card,
           const WhenPoured& when, const std::string& name) {
  if (!(volume_of(card).mL > 0))
    return words::Error{words::PaintSay::measure_not_positive, {card.name}};
  const Place from = find_contents(places, Place::jar) ? Place::jar : Place::slab;
  const PlaceContents* there = find_contents(places, from);
  if (!there) return words::Error{words::PaintSay::nothing_there, {}};
  const double all_mL = wet_mL(*there);
  const double all_g = paint::grams_of(there->paint, places.bench).value;
  const double shrinks_to = dry_share(places, from)->middle;
  double left_mL = all_mL;
  for (int number = poured.first; number <= poured.last; ++number) {
    Pan& pan = pan_of(pans, number, card);
    const double wanted =
        poured.g ? *poured.g / all_g * all_mL : std::max(0.0, volume_of(card).mL - dry_mL(pan));
    const double wet = std::min(wanted, left_mL);
    if (wet <= 0) continue;
    left_mL -= wet;
    pan.layers.push_back({when.line, when.clock, when.at, wet, wet * shrinks_to});
  }
  std::erase_if(pans, [](const Pan& pan) { return pan.layers.empty(); });
  if (left_mL == all_mL) return std::nullopt;
  return move(places, from, Place::pans, {1 - left_mL / all_mL, std::nullopt}, name);
}

}
