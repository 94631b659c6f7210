#include "bench/shelf.hpp"

#include "paint/catalogue.hpp"
#include "session/shelf.hpp"
#include "words/bench_says.hpp"
#include "words/card_names.hpp"
#include "words/say.hpp"

#include <algorithm>

namespace bench {

namespace {

using session::Card;
using session::CardKind;
using Say = words::BenchSay;
using words::say;

Card liquid(std::string id, CardKind kind, std::string name, paint::Recipe recipe) {
  return {std::move(id), std::move(name), session::LiquidCard{kind, recipe}};
}

Card pigment(const paint::CataloguePigment& entry) {
  return {entry.id, words::card_name_of_file(entry.id, entry.name),
          session::PigmentCard{entry.ci_name, entry.colour, entry.facts}};
}

}

std::vector<Card> shelf_that_ships() {
  // Recipes by mass: common practice, no source. A level metric teaspoon is 5 mL, household
  // measures keep within 5 % (uniform: 0.05 / sqrt 3). The dropper: 20 drops of water a mL
  // (USP <1101>); between one dropper and another practice spans 20 to 42 drops a mL. Pans differ
  // by maker: common practice, no source.
  std::vector<Card> cards{
      liquid("gum_12", CardKind::binder, say(Say::ships_gum_12), {.gum = 1, .water = 2}),
      liquid("gum_12_honey", CardKind::binder, say(Say::ships_gum_12_honey),
             {.gum = 1, .water = 2, .honey = 0.25}),
      liquid("gum_12_glycerin", CardKind::binder, say(Say::ships_gum_12_glycerin),
             {.gum = 1, .water = 2, .glycerin = 0.2}),
      liquid("gum_13", CardKind::binder, say(Say::ships_gum_13), {.gum = 1, .water = 3}),
      liquid("water", CardKind::water, say(Say::ships_water), {.water = 1}),
      liquid("honey_11", CardKind::honey, say(Say::ships_honey_11), {.water = 1, .honey = 1}),
      liquid("glycerin", CardKind::glycerin, say(Say::ships_glycerin), {.glycerin = 1}),
      liquid("ox_gall", CardKind::wetting_aid, say(Say::ships_ox_gall),
             {.water = 0.95, .other = 0.05}),
      liquid("gum_arabic", CardKind::other, say(Say::ships_gum_arabic), {.gum = 1}),
      // 70 % by volume of ethanol is 62.4 % by mass at 20 °C: OIML R 22, from memory.
      liquid("alcohol_70", CardKind::wetting_aid, say(Say::ships_alcohol_70),
             {.water = 0.376, .alcohol = 0.624}),
      {"dropper", say(Say::ships_dropper), session::DropperCard{{0.05, 0.0095}}},
      {"teaspoon", say(Say::ships_teaspoon), session::SpoonCard{{5, 0.144}}},
      {"half_pan", say(Say::ships_half_pan), session::PanCard{{1.7, 0.2}}},
      {"full_pan", say(Say::ships_full_pan), session::PanCard{{3, 0.4}}},
  };
  for (const paint::CataloguePigment& entry : paint::catalogue()) cards.push_back(pigment(entry));
  return cards;
}

bool ships_so(const Card& card) {
  const auto all = shelf_that_ships();
  return std::find(all.begin(), all.end(), card) != all.end();
}

bool makes_binder(const Card& card) {
  const paint::Recipe& r = recipe_of(card);
  return card.kind() == CardKind::other && r.gum > 0 && r == paint::Recipe{.gum = r.gum};
}

void restock(Bench& bench) {
  ++bench.restocked;
  const session::Shelf own = session::shelf_of(session::all_of(bench.logs), bench.offsets);
  bench.stock = own.stock;
  bench.makings = own.makings;
  std::erase_if(bench.makings, [&](const auto& making) {
    return making.second.given_up || own.cards.count(making.first) > 0;
  });
  bench.shelf.clear();
  bench.away.clear();
  bench.own.clear();
  for (const auto& [id, card] : own.cards) bench.own.insert(id);
  const auto put = [&](const Card& card) {
    (own.put_away.count(card.id) ? bench.away : bench.shelf).push_back(card);
  };
  for (const auto& [id, card] : own.cards) put(card);
  for (const Card& card : shelf_that_ships())
    if (!own.cards.count(card.id)) put(card);
  bench.pigments_in_recipes.clear();
  for (const Card& card : bench.shelf)
    if (const auto* recipe = std::get_if<session::RecipeCard>(&card.facts))
      for (const session::Said& said : recipe->pigments) bench.pigments_in_recipes.insert(said.of);
  bench.place_on_shelf.clear();
  for (std::size_t i = 0; i < bench.shelf.size(); ++i) bench.place_on_shelf[bench.shelf[i].id] = i;
}

}
