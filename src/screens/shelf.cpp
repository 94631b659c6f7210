// Shelf: what the workshop owns, a card each.
#include "bench/card_facts.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/lists.hpp"
#include "words/screens_says.hpp"
#include "words/shelf_says.hpp"

#include <algorithm>

namespace screens {

using bench::SharedPad;
using bench::ShelfPad;
using session::CardKind;
using Say = words::ShelfSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};
constexpr Lettering small_bold{cap::small, true, cap::small};

void kind_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView& shelf) {
  const auto kind = bench::shelf_tabs.find(&bench::ShelfTab::name, std::string_view(at.id.arg));
  if (!kind) return;
  const bool here = shelf.kind == *kind;
  pad(sheet, at, choosable(sheet.theme, here),
      {{say(bench::shelf_tabs[*kind].say), here ? small_bold : small, false, 2}});
}

void row_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView::Row& row) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, choosable(t, row.open));
  const Rect& r = at.box;
  const double size = 6;
  const Colour fill = row.kind == CardKind::pigment || row.kind == CardKind::paint
                          ? rgb(row.colour)
                          : material_colour(t, row.kind);
  material_symbol(sheet, {r.x + 2.6 + size / 2, r.centre().y}, size, row.kind, fill, g.ink);
  const double x = r.x + size + 3.4;
  labels(sheet, {x, r.y, r.right() - x, r.h}, g,
         {{row.name, small_bold, false, 2}, {row.index_name, small, true, 1}}, Anchor::left);
}

std::string value_words(const bench::FactView& fact) {
  if (fact.value > 0) return words::number(fact.value, fact.decimals);
  return say(fact.zero);
}

// What it says, and below what that is.
void fact_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView& shelf) {
  for (const bench::FactView& fact : shelf.facts)
    if (fact.pad == at.id)
      pad(sheet, at, plain(sheet.theme),
          {{value_words(fact), clean_bold, false, 1}, {say(fact.say), small, true, 2}});
}

std::string family_words(paint::PigmentClass family) {
  using paint::PigmentClass;
  switch (family) {
  case PigmentClass::mineral: return say(Say::family_mineral);
  case PigmentClass::fine_mineral: return say(Say::family_fine_mineral);
  case PigmentClass::organic: return say(Say::family_organic);
  case PigmentClass::carbon: return say(Say::family_carbon);
  case PigmentClass::effect: return say(Say::family_effect);
  case PigmentClass::extender: return say(Say::family_extender);
  case PigmentClass::unknown: break;
  }
  return say(Say::family_unknown);
}

std::string liquid_words(CardKind kind) {
  switch (kind) {
  case CardKind::honey: return say(Say::liquid_honey);
  case CardKind::glycerin: return say(Say::liquid_glycerin);
  case CardKind::water: return say(Say::liquid_water);
  case CardKind::wetting_aid: return say(Say::liquid_aid);
  case CardKind::binder: return say(Say::with_binder);
  case CardKind::pigment:
  case CardKind::other:
  case CardKind::paint:
  case CardKind::dropper:
  case CardKind::spoon:
  case CardKind::pan:
  case CardKind::slab:
  case CardKind::muller:
  case CardKind::recipe: return say(Say::liquid_other);
  }
  return "";
}

std::string from_words(const session::Card& card) {
  const auto* recipe = std::get_if<session::RecipeCard>(&card.facts);
  switch (recipe ? recipe->from : session::RecipeFrom::own_head) {
  case session::RecipeFrom::own_head: return say(Say::recipe_own_head);
  case session::RecipeFrom::old_notes: return say(Say::recipe_old_notes);
  case session::RecipeFrom::batch: return say(Say::recipe_from_batch);
  }
  return "";
}

std::string chosen_words(const std::vector<paint::Caution>& asks) {
  const bool known = std::find(asks.begin(), asks.end(), paint::Caution::not_known) == asks.end();
  return known ? say(Say::card_cautions, {std::to_string(asks.size())})
               : say(Say::card_cautions_none);
}

std::string choice_words(bench::ChoiceKind choice, const bench::ShelfView& shelf) {
  using bench::ChoiceKind;
  const session::Card& card = *shelf.card;
  switch (choice) {
  case ChoiceKind::family: return family_words(pigment_of(card).pigment.family);
  case ChoiceKind::with: {
    const auto* dropper = std::get_if<session::DropperCard>(&card.facts);
    return dropper ? liquid_words(dropper->calibrated_with) : "";
  }
  case ChoiceKind::size: return say(Say::size_mL, {words::number(volume_of(card).mL, 2)});
  case ChoiceKind::liquid: return liquid_words(card.kind());
  case ChoiceKind::glass:
    return say(card.kind() == CardKind::slab ? Say::glass_slab : Say::glass_muller);
  case ChoiceKind::cautions: return chosen_words(shelf.asks);
  case ChoiceKind::mine: {
    const auto* recipe = std::get_if<session::RecipeCard>(&card.facts);
    return say(recipe && recipe->mine ? Say::recipe_mine : Say::recipe_not_mine);
  }
  case ChoiceKind::from: return from_words(card);
  }
  return "";
}

void choice_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView& shelf) {
  const auto choice = bench::choice_named(at.id.arg);
  if (!choice) return;
  pad(sheet, at, plain(sheet.theme),
      {{choice_words(*choice, shelf), clean_letters, false, 2},
       {say(bench::row_of(*choice).say), small, true, 2}});
}

void caution_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView& shelf) {
  const auto caution = paint::caution_named(at.id.arg);
  const bool chosen = std::find(shelf.asks.begin(), shelf.asks.end(), caution) != shelf.asks.end();
  const Ground g = pad_box(sheet, at, choosable(sheet.theme, chosen));
  const double mark = chosen ? 6 : 0;
  const Rect& r = at.box;
  labels(sheet, {r.x, r.y, r.w - mark, r.h}, g, {{say(paint::sentence(*caution)), small, false, 3}},
         Anchor::left);
  if (chosen) tick(sheet, {r.right() - 4.6, r.centre().y}, 3.4, g.ink);
}

constexpr words::EnumTable<paint::Confidence, words::Sentence> confidences{
    {{paint::Confidence::low, Say::card_confidence_low},
     {paint::Confidence::medium, Say::card_confidence_medium},
     {paint::Confidence::high, Say::card_confidence_high}}};

// What is to be known about the open card's figures.
std::vector<Label> about(const bench::ShelfView& shelf) {
  std::vector<Label> out;
  if (shelf.notice.error)
    out.push_back({words::message(*shelf.notice.error), clean_bold, false, 3});
  else if (shelf.fault)
    out.push_back({words::message(*shelf.fault), clean_bold, false, 3});
  const session::Card& card = *shelf.card;
  if (shelf.left_g) out.push_back({say(Say::card_left, {grams_number(*shelf.left_g)}), clean_bold});
  if (shelf.range) out.push_back({binder_range_words(*shelf.range), small, false, 3});
  if (card.kind() == CardKind::dropper) out.push_back({say(Say::card_of_drops), small, false, 3});
  if (card.kind() == CardKind::spoon || card.kind() == CardKind::pan)
    out.push_back({say(Say::card_of_water), small, false, 3});
  if (card.kind() == CardKind::binder) out.push_back({say(Say::card_keep_note), small, true, 3});
  if (shelf.ships) out.push_back({say(Say::card_ships), small, true, 2});
  if (shelf.confidence) {
    const auto from = [](const std::string& s) { return s.empty() ? say(Say::card_guess) : s; };
    out.push_back({say(confidences[*shelf.confidence]), small, true, 1});
    out.push_back({say(Say::card_density_from, {from(shelf.density_from)}), small, true, 2});
    out.push_back({say(Say::card_oil_from, {from(shelf.oil_from)}), small, true, 2});
  }
  if (card.kind() == CardKind::pigment) out.push_back({say(Say::card_sheet), small, true, 1});
  return out;
}

void shelf_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView& shelf) {
  const Ground g = plain(sheet.theme);
  if (at.id.kind == SharedPad::page_back)
    pad(sheet, at, g, {{say(words::ScreensSay::page_back), clean_letters}});
  if (at.id.kind == SharedPad::page_on)
    pad(sheet, at, g, {{say(words::ScreensSay::page_on), clean_letters}});
  const auto own = at.id.kind.as<ShelfPad>();
  if (!own) return;
  switch (*own) {
  case ShelfPad::kind_of: return kind_pad(sheet, at, shelf);
  case ShelfPad::card:
    for (const auto& row : shelf.rows)
      if (row.pad == at.id) row_pad(sheet, at, row);
    return;
  case ShelfPad::fact: return fact_pad(sheet, at, shelf);
  case ShelfPad::choice: return choice_pad(sheet, at, shelf);
  case ShelfPad::kept_away:
    return pad(sheet, at, choosable(sheet.theme, shelf.away),
               {{shelf.away ? say(Say::shelf_here)
                            : say(Say::shelf_away, {std::to_string(shelf.put_away)}),
                 small, true, 2}});
  case ShelfPad::new_card: return pad(sheet, at, g, {{say(Say::shelf_new), clean_letters}});
  case ShelfPad::put_away: return pad(sheet, at, g, {{say(Say::shelf_put_away), clean_letters}});
  case ShelfPad::bring_back:
    return pad(sheet, at, g, {{say(Say::shelf_bring_back), clean_letters}});
  case ShelfPad::caution: return caution_pad(sheet, at, shelf);
  case ShelfPad::more_cautions:
    return pad(sheet, at, g, {{say(Say::card_cautions_more), clean_letters, false, 2}});
  case ShelfPad::cautions_chosen:
    return pad(sheet, at, dark(sheet.theme), {{say(Say::card_cautions_done), clean_bold}});
  case ShelfPad::card_done:
    return pad(sheet, at, dark(sheet.theme), {{say(Say::shelf_done), clean_bold}});
  case ShelfPad::says: return; // a text field
  }
}

}

void draw_shelf(Sheet& sheet, const bench::ShelfView& shelf) {
  const bench::Layout& l = sheet.view.layout;
  const Theme& t = sheet.theme;
  if (shelf.rows.empty() && !shelf.number)
    labels(sheet, l.main, plain(t), {{say(Say::shelf_none), clean_letters, true, 1}});
  if (shelf.number) {
    draw_number(sheet, *shelf.number);
  } else if (shelf.choosing) {
    // pads only
  } else if (shelf.card) {
    panel(sheet, l.lower);
    labels(sheet, inset(l.lower, 1.5), plain(t), about(shelf), Anchor::left);
  } else {
    panel(sheet, l.side);
    labels(sheet, inset(l.side, 6), plain(t), {{say(Say::shelf_choose), clean_letters, true, 5}});
  }
  for (const bench::Pad& at : l.pads) shelf_pad(sheet, at, shelf);
}

}
