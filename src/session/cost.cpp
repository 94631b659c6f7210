#include "session/cost.hpp"

#include "paint/making.hpp"

#include <algorithm>

namespace session {

namespace {

const Jar* last_priced(const Stock& stock, const std::string& currency) {
  for (auto jar = stock.jars.rbegin(); jar != stock.jars.rend(); ++jar)
    if (jar->of.price && jar->of.g > 0 && jar->of.currency == currency) return &*jar;
  return nullptr;
}

std::string currency_of(const Stocks& stocks) {
  const Jar* last = nullptr;
  for (const auto& [card, stock] : stocks)
    for (const Jar& jar : stock.jars)
      if (jar.of.price && jar.of.g > 0 && (!last || last->at <= jar.at)) last = &jar;
  return last ? last->of.currency : "";
}

// A raw material: nothing but this part, and water.
void price_part(const Card& card, double a_gram, Prices& prices) {
  const paint::Recipe& r = recipe_of(card);
  const double all = sum_of(r), dry = all - r.water;
  if (!is_liquid(card.kind()) || card.kind() == CardKind::binder || !(dry > 0)) return;
  const double a_dry_gram = a_gram * all / dry;
  if (r.gum == dry) prices.gum = a_dry_gram;
  if (r.honey == dry) prices.honey = a_dry_gram;
  if (r.glycerin == dry) prices.glycerin = a_dry_gram;
}

struct OfAGram {
  double gum = 0, honey = 0;
};

// Absent where a part has no price.
std::optional<OfAGram> made_of(const Card& card, const Prices& prices) {
  const paint::Recipe& r = recipe_of(card);
  const double all = sum_of(r);
  const bool known = (r.gum <= 0 || prices.gum) && (r.honey <= 0 || prices.honey) &&
                     (r.glycerin <= 0 || prices.glycerin);
  if (!is_liquid(card.kind()) || !(all > 0) || !known) return std::nullopt;
  const bool costs = r.gum + r.honey + r.glycerin > 0;
  if (!costs && card.kind() != CardKind::water) return std::nullopt;
  return OfAGram{r.gum / all * prices.gum.value_or(0),
                 r.honey / all * prices.honey.value_or(0) +
                     r.glycerin / all * prices.glycerin.value_or(0)};
}

double& place_of(Cost& cost, CardKind kind) {
  switch (kind) {
  case CardKind::pigment: return cost.pigment;
  case CardKind::binder: return cost.binder;
  case CardKind::honey:
  case CardKind::glycerin: return cost.honey;
  case CardKind::water:
  case CardKind::wetting_aid:
  case CardKind::other:
  case CardKind::paint:
  case CardKind::dropper:
  case CardKind::spoon:
  case CardKind::pan:
  case CardKind::slab:
  case CardKind::muller:
  case CardKind::recipe: return cost.rest;
  }
  return cost.rest;
}

double pigment_mL(const paint::Mixture& paint) {
  double mL = 0;
  for (const paint::Portion& p : paint.contents)
    if (const double g = p.grams.value * p.material.parts.pigment; g > 0)
      mL += g / p.material.pigment.g_per_mL;
  return mL;
}

}

Prices prices_of(const std::vector<Card>& cards, const Stocks& stocks) {
  Prices prices;
  prices.currency = currency_of(stocks);
  std::vector<std::pair<const Jar*, const Card*>> priced;
  for (const auto& [id, stock] : stocks) {
    const Jar* jar = last_priced(stock, prices.currency);
    if (!jar) continue;
    prices.a_gram[id] = *jar->of.price / jar->of.g;
    for (const Card& card : cards)
      if (card.id == id) priced.push_back({jar, &card});
  }
  std::stable_sort(priced.begin(), priced.end(),
                   [](const auto& a, const auto& b) { return a.first->at < b.first->at; });
  for (const auto& [jar, card] : priced) price_part(*card, prices.a_gram[card->id], prices);
  return prices;
}

Cost cost_of(const std::vector<Taken>& taken, const Prices& prices) {
  Cost cost;
  for (const auto& [card, g] : taken) {
    const auto bought = prices.a_gram.find(card->id);
    if (bought != prices.a_gram.end()) {
      place_of(cost, card->kind()) += g * bought->second;
    } else if (const auto made = made_of(*card, prices)) {
      cost.gum += g * made->gum;
      cost.honey += g * made->honey;
    } else {
      cost.unknown.push_back(*card);
    }
  }
  return cost;
}

std::optional<double> a_gram_of(const Card& card, const Prices& prices) {
  const Cost cost = cost_of({{&card, 1}}, prices);
  return cost.unknown.empty() && !prices.currency.empty() ? std::optional(cost.sum())
                                                          : std::nullopt;
}

std::optional<double> cost_of_a_pan(const Batch& batch, const Cost& cost) {
  double all = 0, in_pans = 0;
  for (const auto& [place, lying] : batch.places.at) {
    const double mL = pigment_mL(lying.paint);
    all += mL;
    if (place == Place::pans) in_pans += mL;
  }
  if (!(in_pans > 0) || batch.pans.empty()) return std::nullopt;
  return cost.sum() * in_pans / all / static_cast<double>(batch.pans.size());
}

}
