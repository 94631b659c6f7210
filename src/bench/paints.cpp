#include "bench/paints.hpp"

#include "paint/catalogue.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr std::size_t most_tried = 30; // each has to be folded

paint::Parts made_of(const session::PlaceContents& contents, const paint::Live& now) {
  paint::Parts p;
  p.pigment = contents.sums.pigment_g;
  p.gum = contents.sums.gum_g;
  p.water = std::max(0.0, now.water_g);
  p.glycerin = contents.sums.glycerin_g;
  p.honey = contents.sums.honey_g;
  p.alcohol = std::max(0.0, now.alcohol_g);
  return p;
}

// Its pigments as if they were one: density by volume, oil absorption by mass, the family of the
// most of it.
paint::Pigment blended(const session::PlaceContents& contents) {
  paint::Pigment all;
  double largest_g = 0;
  for (const paint::Portion& portion : contents.paint.contents) {
    const double g = portion.grams.value * portion.material.parts.pigment;
    if (g <= 0) continue;
    all.oil_g_per_100g += g * portion.material.pigment.oil_g_per_100g / contents.sums.pigment_g;
    if (g > largest_g) all.family = portion.material.pigment.family;
    largest_g = std::max(largest_g, g);
  }
  if (contents.sums.pigment_mL > 0)
    all.g_per_mL = contents.sums.pigment_g / contents.sums.pigment_mL;
  return all;
}

// What its pigments ask for, each once.
std::vector<std::string> cautions_of(const session::Batch& batch) {
  std::vector<std::string> all;
  for (const session::Total& total : batch.totals) {
    const auto kind = total.card.kind();
    if (kind != session::CardKind::pigment && kind != session::CardKind::paint) continue;
    for (const paint::Caution c :
         paint::cautions_of(total.card.id, pigment_of(total.card).cautions))
      if (std::find(all.begin(), all.end(), paint::name_of(c)) == all.end())
        all.emplace_back(paint::name_of(c));
  }
  return all;
}

std::optional<OtherPaint> paint_of(const session::Batch& batch) {
  using session::Place;
  for (const Place place : {Place::jar, Place::pans}) {
    const auto there = batch.places.at.find(place);
    if (there == batch.places.at.end()) continue;
    const session::PlaceContents& contents = there->second;
    if (!(contents.sums.pigment_mL > 0)) continue;
    const paint::Live now = paint::live(contents.sums, contents.paint);
    OtherPaint p{batch.id, {}, place, paint::grams_of(contents.paint, batch.places.bench).value};
    p.card.id = "paint_" + batch.id;
    p.card.name = batch.name;
    session::PaintCard made{{"", 0, blended(contents), cautions_of(batch)}, made_of(contents, now)};
    made.as_one.colour = session::colour_of(batch);
    p.card.facts = made;
    return p;
  }
  return std::nullopt;
}

}

void find_paints(Bench& bench) {
  std::vector<OtherPaint> out;
  std::size_t tried = 0;
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend(); ++id) {
    if (out.size() == most_paints || ++tried > most_tried) break;
    if (*id == bench.batch) continue;
    const Folded batch = fold_of(bench, *id);
    if (!batch || batch->newer) continue;
    if (auto paint = paint_of(*batch)) out.push_back(std::move(*paint));
  }
  bench.paints = std::move(out);
}

bool lies(const Bench& bench, session::Place place) {
  return bench.folded && bench.folded->places.at.count(place) > 0;
}

}
