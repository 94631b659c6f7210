#include "notes/measures.hpp"

#include "paint/measure.hpp"
#include "session/bytes.hpp"
#include "words/lists.hpp"
#include "words/notes_says.hpp"

#include <algorithm>
#include <cmath>

namespace notes {

namespace {

using session::Card;
using session::CardKind;
using session::Said;
using session::SaidIn;
using Say = words::NotesSay;

struct Country {
  std::string_view tea, table;
};
constexpr words::EnumTable<SpoonsOf, Country> countries{
    {{SpoonsOf::metric, {"teaspoon_metric", "tablespoon_metric"}},
     {SpoonsOf::us, {"teaspoon_us", "tablespoon_us"}},
     {SpoonsOf::uk, {"teaspoon_uk_traditional", "tablespoon_uk_traditional"}},
     {SpoonsOf::australia, {"teaspoon_metric", "tablespoon_australia"}}}};

// As the session's format has them.
constexpr words::EnumTable<SaidIn, double> most{
    {{SaidIn::parts, 1000}, {SaidIn::g, 5000}, {SaidIn::drops, 10000}, {SaidIn::spoons, 1000}}};

const paint::KitchenMeasure& kitchen_measure(std::string_view id) {
  const auto& all = paint::kitchen_measures();
  return *std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == id; });
}

bool is_pure_honey(const Card& card) {
  const paint::Recipe& r = recipe_of(card);
  return card.kind() == CardKind::honey && r.honey > 0 && r == paint::Recipe{.honey = r.honey};
}

// A third of a spoon, and no trace of a sum's last bit.
double rounded(double amount) { return std::round(1e6 * amount) / 1e6; }

}

Measures::Measures(const std::vector<Card>& shelf, const std::set<std::string>& own,
                   const AskedRecipes& how)
    : shelf_(shelf), own_(own), how_(how) {
  know(shelf_);
  know(how_.away);
}

void Measures::know(const std::vector<Card>& cards) {
  for (const Card& card : cards) known_.emplace(card.id, card.name);
}

std::string Measures::name_of(const std::string& card) const {
  const auto known = known_.find(card);
  return known == known_.end() ? "" : known->second;
}

std::string Measures::laid_out(Card card) {
  std::string id = card.id;
  if (known_.emplace(id, card.name).second) new_cards_.push_back(std::move(card));
  return id;
}

std::vector<Tool> Measures::tools() const {
  std::vector<Tool> out;
  for (const Card& card : shelf_)
    if (card.kind() == CardKind::spoon && own_.count(card.id))
      out.push_back({card.id, key_of(card.name)});
  return out;
}

const Card* Measures::first_of(CardKind kind) const {
  const Card* first = nullptr;
  for (const Card& card : shelf_) {
    if (card.kind() != kind) continue;
    if (own_.count(card.id)) return &card;
    if (!first) first = &card;
  }
  return first;
}

std::string Measures::card_for(CardKind kind) {
  if (kind == CardKind::binder && !how_.binder.empty()) return how_.binder;
  if (kind != CardKind::honey) {
    const Card* card = first_of(kind);
    return card ? card->id : "";
  }
  for (const auto* cards : {&shelf_, &std::as_const(new_cards_)})
    for (const Card& card : *cards)
      if (is_pure_honey(card)) return card.id;
  return laid_out({"honey_pure", words::say(Say::card_honey),
                   session::LiquidCard{CardKind::honey, {.honey = 1}}});
}

std::string Measures::new_pigment(const std::string& name) {
  constexpr std::size_t longest_id = 60;
  const std::string id = "notes_" + session::first_characters(key_of(name), longest_id);
  constexpr std::uint32_t grey = 0x8A8178;
  return laid_out({id, session::first_characters(name, session::longest_text),
                   session::PigmentCard{"", grey, {.g_per_mL = 4, .g_per_mL_u = 1}}});
}

// One of the shelf's of that size, within 2 %, else one of the country's.
std::string Measures::spoon(bool large) {
  const Country& country = countries[how_.spoons];
  const paint::KitchenMeasure& measure = kitchen_measure(large ? country.table : country.tea);
  constexpr double same_size = 0.02;
  const auto fits = [&](const Card& card) {
    return card.kind() == CardKind::spoon &&
           std::abs(volume_of(card).mL - measure.mL) <= same_size * measure.mL;
  };
  for (const bool own : {true, false})
    for (const Card& card : shelf_)
      if ((own_.count(card.id) > 0) == own && fits(card)) return card.id;
  for (const Card& card : new_cards_)
    if (fits(card)) return card.id;
  const paint::Spoon size = paint::spoon_of(measure);
  return laid_out({std::string(measure.id),
                   words::say(large ? Say::card_tablespoon : Say::card_teaspoon),
                   session::SpoonCard{{size.mL, size.mL_u}}});
}

double Measures::mL_of(const std::string& spoon) const {
  for (const auto* cards : {&shelf_, &how_.away, &new_cards_})
    for (const Card& card : *cards)
      if (card.id == spoon) return volume_of(card).mL;
  return 0;
}

words::Result<Said> Measures::said(const Meant& of, const NotedAmount& amount) {
  Said out{of.card, SaidIn::g, amount.value};
  switch (amount.unit) {
  case Unit::none:
  case Unit::parts: out.in = SaidIn::parts; break;
  case Unit::g: break;
  case Unit::drops: {
    if (of.kind == CardKind::pigment) return words::failure(Say::amount_powder_in_drops);
    const Card* dropper = first_of(CardKind::dropper);
    if (!dropper) return words::failure(Say::amount_no_dropper);
    out.in = SaidIn::drops;
    out.with = dropper->id;
    break;
  }
  case Unit::mL:
  case Unit::teaspoon:
  case Unit::tablespoon:
  case Unit::tool:
    out.in = SaidIn::spoons;
    out.with = amount.unit == Unit::tool ? amount.tool : spoon(amount.unit == Unit::tablespoon);
    if (amount.unit == Unit::mL) out.amount /= mL_of(out.with);
    break;
  }
  out.amount = rounded(out.amount);
  if (out.amount > most[out.in])
    return words::failure(Say::amount_too_large, {words::Number(most[out.in], 0)});
  return out;
}

}
