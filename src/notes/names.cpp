#include "notes/names.hpp"

#include "notes/amount.hpp"
#include "notes/pigment_words.hpp"
#include "notes/tokens.hpp"
#include "paint/catalogue.hpp"
#include "words/notes_says.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace notes {

namespace {

using session::Card;
using session::CardKind;
using Say = words::NotesSay;

constexpr std::size_t least_part = 4; // letters of a part of a name

// Dry gum goes into no paint by itself: whoever notes "gum arabic" means a binder of it.
bool may_be_meant(const Card& card) {
  if (card.kind() == CardKind::pigment) return true;
  const paint::Recipe& r = recipe_of(card);
  return session::is_liquid(card.kind()) && r != paint::Recipe{.gum = r.gum};
}

struct LiquidWord {
  std::string_view key;
  CardKind kind;
};
constexpr std::array liquid_words{LiquidWord{"honey", CardKind::honey},
                                  LiquidWord{"honig", CardKind::honey},
                                  LiquidWord{"glycerin", CardKind::glycerin},
                                  LiquidWord{"glycerine", CardKind::glycerin},
                                  LiquidWord{"glycerol", CardKind::glycerin},
                                  LiquidWord{"glyzerin", CardKind::glycerin},
                                  LiquidWord{"water", CardKind::water},
                                  LiquidWord{"distilledwater", CardKind::water},
                                  LiquidWord{"wasser", CardKind::water},
                                  LiquidWord{"destwasser", CardKind::water},
                                  LiquidWord{"destillierteswasser", CardKind::water},
                                  LiquidWord{"oxgall", CardKind::wetting_aid},
                                  LiquidWord{"ochsengalle", CardKind::wetting_aid},
                                  LiquidWord{"binder", CardKind::binder},
                                  LiquidWord{"medium", CardKind::binder},
                                  LiquidWord{"bindingmedium", CardKind::binder},
                                  LiquidWord{"bindemittel", CardKind::binder},
                                  LiquidWord{"gum", CardKind::binder},
                                  LiquidWord{"gumwater", CardKind::binder},
                                  LiquidWord{"gumarabic", CardKind::binder},
                                  LiquidWord{"gumarabicsolution", CardKind::binder},
                                  LiquidWord{"gummi", CardKind::binder},
                                  LiquidWord{"gummiarabicum", CardKind::binder},
                                  LiquidWord{"gummiarabikum", CardKind::binder}};

constexpr std::array<std::string_view, 9> hues{"pbk", "pbr", "pb", "pg", "po",
                                               "pr",  "pv",  "pw", "py"};

bool is_index_name(std::string_view key) {
  return std::any_of(hues.begin(), hues.end(), [&](std::string_view hue) {
    const std::string_view number = key.substr(std::min(hue.size(), key.size()));
    return key.substr(0, hue.size()) == hue && !number.empty() &&
           number.find_first_not_of("0123456789") == std::string_view::npos;
  });
}

// "pb29" in "Ultramarine (PB29)" or "PB 29 ultramarine"; empty where there is none, or more.
std::string index_name_in(std::string_view text) {
  std::string found;
  const auto tokens = tokens_of(text);
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    std::string key = tokens[at].key;
    const bool hue_alone = std::find(hues.begin(), hues.end(), key) != hues.end();
    if (hue_alone && at + 1 < tokens.size() && tokens[at + 1].kind == TokenKind::number)
      key += tokens[++at].key;
    if (!is_index_name(key)) continue;
    if (!found.empty()) return "";
    found = key;
  }
  return found;
}

// A name by itself, and not one with an amount beside it, or several.
bool is_one_name(std::string_view text) {
  const auto named = named_in(text, {Decimal::point});
  return named && named->size() == 1 && !named->front().amount;
}

// "Gummi arabicum 1:2", dry gum to water by weight; absent for other texts.
std::optional<paint::Recipe> gum_water_in(std::string_view text) {
  const auto tokens = tokens_of(text);
  if (tokens.size() < 4) return std::nullopt;
  const Token *gum = &tokens[tokens.size() - 3], *water = &tokens.back();
  const auto parts = number_of(gum->key, Decimal::unknown),
             to = number_of(water->key, Decimal::unknown);
  const bool binder = liquid_word(text.substr(0, gum->from)) == CardKind::binder;
  if (!binder || gum[1].key != ":" || !parts || !to || !(*parts > 0)) return std::nullopt;
  return paint::Recipe{.gum = *parts, .water = *to};
}

std::string outside_brackets(std::string_view text) {
  return std::string(text.substr(0, text.find_first_of("([")));
}

}

std::optional<CardKind> liquid_word(std::string_view text) {
  const std::string key = key_of(text);
  for (const LiquidWord& word : liquid_words)
    if (word.key == key) return word.kind;
  return std::nullopt;
}

Names::Names(const std::vector<Card>& shelf, const std::set<std::string>& own,
             const std::vector<Card>& away)
    : shelf_(shelf), own_(own) {
  for (const Card& card : away) {
    if (!may_be_meant(card)) continue;
    away_.emplace(key_of(card.name), card.name);
    if (const auto* entry = paint::in_catalogue(card.id))
      away_.emplace(key_of(entry->name), card.name);
  }
  for (const Card& card : shelf) {
    if (!may_be_meant(card)) continue;
    by_id_[key_of(card.id)].push_back(&card);
    by_name_[key_of(card.name)].push_back(&card);
    if (card.kind() != CardKind::pigment) continue;
    const std::string& index = pigment_of(card).index_name;
    if (!index.empty()) by_index_[key_of(index)].push_back(&card);
    if (const auto* entry = paint::in_catalogue(card.id)) {
      if (entry->name != card.name) by_catalogue_[key_of(entry->name)].push_back(&card);
      for (const std::string& name : entry->other_names) by_other_[key_of(name)].push_back(&card);
    }
    for (const PigmentWord& word : pigment_words())
      if (word.card == card.id) by_other_[std::string(word.key)].push_back(&card);
  }
}

// One of them; absent where there is none.
std::optional<words::Result<Meant>> Names::chosen(Cards cards, const std::string& text) const {
  if (cards.empty()) return std::nullopt;
  if (std::any_of(cards.begin(), cards.end(), [&](const Card* c) { return own_.count(c->id); }))
    std::erase_if(cards, [&](const Card* c) { return !own_.count(c->id); });
  if (cards.size() == 1) return Meant{cards.front()->id, cards.front()->kind()};
  constexpr std::size_t most = 4;
  std::string all;
  for (std::size_t at = 0; at < std::min(most, cards.size()); ++at)
    all += (at ? ", " : "") + cards[at]->name;
  return words::failure(Say::name_of_many, {text, cards.size() > most ? all + " …" : all});
}

words::Result<Meant> Names::look_up(const std::string& text) const {
  const auto in = [](const std::map<std::string, Cards>& names, const std::string& key) {
    const auto at = names.find(key);
    return at == names.end() ? Cards{} : at->second;
  };
  const auto owned = [&](Cards cards) {
    std::erase_if(cards, [&](const Card* card) { return !own_.count(card->id); });
    return cards;
  };
  const auto by_key = [&](const std::string& key) -> std::optional<words::Result<Meant>> {
    if (key.empty()) return std::nullopt;
    for (const Cards& cards : {in(by_name_, key), owned(in(by_index_, key)), in(by_id_, key),
                               in(by_index_, key), in(by_catalogue_, key), in(by_other_, key)})
      if (auto meant = chosen(cards, text)) return meant;
    return std::nullopt;
  };
  const auto exactly = [&](const std::string& name) -> std::optional<words::Result<Meant>> {
    const auto kind = liquid_word(name);
    const bool on_a_card = !in(by_name_, key_of(name)).empty();
    return kind && !on_a_card ? words::Result<Meant>(Meant{"", *kind}) : by_key(key_of(name));
  };
  if (auto meant = exactly(text)) return *std::move(meant);
  if (const auto gum = gum_water_in(text))
    if (auto meant = chosen(of_strength(*gum), text)) return *std::move(meant);
  if (!is_one_name(text)) return words::failure(Say::name_unknown, {text});
  const std::string part = outside_brackets(text), index = index_name_in(text);
  if (auto meant = exactly(part)) return *std::move(meant);
  for (const std::string& name : {key_of(text), key_of(part)})
    if (const auto at = away_.find(name); at != away_.end())
      return words::failure(Say::name_put_away, {text, at->second});
  if (auto meant = by_key(index)) return *std::move(meant);
  if (auto meant = chosen(with_part(part), text)) return *std::move(meant);
  return words::failure(Say::name_unknown, {text});
}

Names::Cards Names::with_part(const std::string& part) const {
  Cards near;
  if (key_of(part).size() < least_part) return near;
  for (const Card& card : shelf_)
    if (card.kind() == CardKind::pigment &&
        paint::goes_by(card.id, card.name, pigment_of(card).index_name, part))
      near.push_back(&card);
  return near;
}

Names::Cards Names::of_strength(const paint::Recipe& wanted) const {
  Cards same;
  for (const Card& card : shelf_) {
    if (card.kind() != CardKind::binder) continue;
    const paint::Recipe& of = recipe_of(card);
    const bool plain = of == paint::Recipe{.gum = of.gum, .water = of.water};
    constexpr double near = 1e-6;
    if (plain && std::abs(of.gum * wanted.water - of.water * wanted.gum) <= near * of.gum)
      same.push_back(&card);
  }
  return same;
}

words::Result<Meant> Names::meant_by(std::string_view text) const {
  const auto known = asked_.find(text);
  if (known != asked_.end()) return known->second;
  auto meant = look_up(std::string(text));
  asked_.emplace(std::string(text), meant);
  return meant;
}

}
