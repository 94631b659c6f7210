#include "bench/card_colour.hpp"

#include "paint/catalogue.hpp"

namespace bench {

namespace {

std::vector<OwnSwatch> swatches_newest_first(const Bench& bench, const session::Card& card) {
  std::vector<OwnSwatch> out;
  const auto read = bench.index.swatches.find(card.id);
  if (read == bench.index.swatches.end() || card.kind() != session::CardKind::pigment) return out;
  for (auto one = read->second.rbegin(); one != read->second.rend(); ++one)
    out.push_back({one->first.second, one->second});
  return out;
}

}

std::optional<OwnSwatch> swatch_to_take(const Bench& bench, const session::Card& card) {
  const auto all = swatches_newest_first(bench, card);
  if (all.empty() || all.front().colour == pigment_of(card).colour) return std::nullopt;
  return all.front();
}

std::string swatch_shown(const Bench& bench, const session::Card& card) {
  for (const OwnSwatch& one : swatches_newest_first(bench, card))
    if (one.colour == pigment_of(card).colour) return one.batch;
  return "";
}

std::optional<std::uint32_t> colour_to_give_back(const session::Card& card) {
  const auto* entry = paint::in_catalogue(card.id);
  if (!entry || entry->colour == pigment_of(card).colour) return std::nullopt;
  return entry->colour;
}

session::Card with_colour(session::Card card, std::uint32_t colour) {
  if (auto* pigment = std::get_if<session::PigmentCard>(&card.facts)) pigment->colour = colour;
  return card;
}

session::Card in_its_own_colour(const session::Card& card) {
  const auto* entry = paint::in_catalogue(card.id);
  return entry ? with_colour(card, entry->colour) : card;
}

}
