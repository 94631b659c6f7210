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

std::string left_words(const bench::ShelfView::Row& row) {
  if (row.left->g <= 0) return say(Say::card_used_up);
  const bool low = row.low_g && row.left->g < *row.low_g;
  return say(low ? Say::card_low : Say::card_grams, {grams_number(row.left->g)});
}

// Names as far as they have room; of the others how many there are.
std::string names_within(const std::vector<bench::ShelfView::Row::Part>& parts, double width) {
  std::string out;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const std::string more = (i > 0 ? ", " : "") + parts[i].name;
    const std::string rest = parts.size() - i > 1 ? " +" + std::to_string(parts.size() - i) : "";
    if (i > 0 && width_mm(out + more + rest, cap::small, false) > width)
      return out + " +" + std::to_string(parts.size() - i);
    out += more;
  }
  return out;
}

// The heaps that it is mixed of, their names below its own, and how often it was made.
void recipe_row(Sheet& sheet, const Rect& r, const bench::ShelfView::Row& row, const Ground& g) {
  constexpr double size = 6, step = 4.6, made_mm = 21;
  constexpr std::size_t most = 3; // heaps; the names say the rest
  const std::size_t heaps = std::min(most, row.pigments.size());
  for (std::size_t i = heaps; i-- > 0;)
    material_symbol(sheet, {r.x + 2.6 + size / 2 + step * static_cast<double>(i), r.centre().y},
                    size, CardKind::pigment, rgb(row.pigments[i].colour), g.ink);
  const double x = r.x + 3.4 + size + step * static_cast<double>(most - 1);
  const double made = row.made > 0 ? made_mm : 0, width = r.right() - made - 1 - x;
  labels(sheet, {x, r.y, width, r.h}, g,
         {{row.name, small_bold, false, 1},
          {names_within(row.pigments, width - 2 * padding_mm), small, true, 1}},
         Anchor::left);
  if (row.made == 0) return;
  const std::string times =
      row.made == 1 ? say(Say::recipe_row_one) : say(Say::recipe_row, {std::to_string(row.made)});
  labels(sheet, {r.right() - made - 1, r.y, made, r.h}, g, {{times, small, true, 1}},
         Anchor::right);
}

void row_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView::Row& row) {
  const Theme& t = sheet.theme;
  const bool ticked = row.pad.kind == ShelfPad::own && row.mine;
  const Ground g = pad_box(sheet, at, choosable(t, row.open || ticked));
  const Rect& r = at.box;
  const double size = 6, mark = ticked ? 6 : 0;
  const Colour fill = row.kind == CardKind::pigment || row.kind == CardKind::paint
                          ? rgb(row.colour)
                          : material_colour(t, row.kind);
  if (!row.pigments.empty()) return recipe_row(sheet, r, row, g);
  material_symbol(sheet, {r.x + 2.6 + size / 2, r.centre().y}, size, row.kind, fill, g.ink);
  const double x = r.x + size + 3.4;
  const double bar_mm = row.left ? 2.2 : 0;
  if (ticked) tick(sheet, {r.right() - 4.6, r.centre().y}, 3.4, g.ink);
  labels(sheet, {x, r.y, r.right() - mark - x, r.h - bar_mm}, g,
         {{row.name, small_bold, false, row.left ? 1 : 2},
          {row.left ? left_words(row) : row.index_name, small, true, 1}},
         Anchor::left);
  if (row.left)
    stock_bar(sheet, {x + 2, r.bottom() - bar_mm - 0.8, r.right() - mark - x - 5, 1.6}, *row.left,
              row.low_g, fill, g);
}

std::string value_words(const bench::FactView& fact) {
  if (fact.value > 0) return words::number(fact.value, fact.decimals);
  return say(fact.zero);
}

// What it says, and below what that is.
void fact_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView& shelf) {
  for (const bench::FactView& fact : shelf.facts) {
    if (fact.pad != at.id) continue;
    pad(sheet, at, plain(sheet.theme),
        {{value_words(fact), clean_bold, false, 1}, {say(fact.say), small, true, 2}});
  }
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
  if (*choice == bench::ChoiceKind::mine)
    return toggle_pad(sheet, at, choice_words(*choice, shelf), shelf.recipe && !shelf.recipe->mine,
                      say(bench::row_of(*choice).say));
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
  const double width = r.w - mark - 2 * padding_mm;
  const Lines lines = fitted(say(paint::sentence(*caution)), width, small, 3);
  const auto below = static_cast<double>(lines.lines.size()) - 1;
  const double step = lines.cap_mm * (below > 1 ? 1.5 : line_step); // three keep off the outline
  double y = r.centre().y - (lines.cap_mm + below * step) / 2 + lines.cap_mm;
  for (const std::string& line : lines.lines) {
    write(sheet, {r.x + padding_mm, y}, Anchor::left, small, g.ink, line, width);
    y += step;
  }
  if (chosen) tick(sheet, {r.right() - 4.6, r.centre().y}, 3.4, g.ink);
}

// What is to be known about the open card's figures.
std::vector<Label> about(const bench::ShelfView& shelf) {
  std::vector<Label> out;
  if (shelf.notice.error)
    out.push_back({words::message(*shelf.notice.error), clean_bold, false, 3});
  else if (shelf.fault)
    out.push_back({words::message(*shelf.fault), clean_bold, false, 3});
  const session::Card& card = *shelf.card;
  if (shelf.stock.left)
    out.push_back(
        {say(Say::card_left, {grams_number(std::max(0.0, shelf.stock.left->g))}), clean_bold});
  if (shelf.range) out.push_back({binder_range_words(*shelf.range), small, false, 3});
  if (shelf.soft)
    if (const std::string soft = soft_words(*shelf.soft); !soft.empty())
      out.push_back({soft, small, false, 4});
  if (card.kind() == CardKind::dropper) out.push_back({say(Say::card_of_drops), small, false, 3});
  if (card.kind() == CardKind::spoon || card.kind() == CardKind::pan)
    out.push_back({say(Say::card_of_water), small, false, 3});
  if (card.kind() == CardKind::binder) out.push_back({say(Say::card_keep_note), small, true, 3});
  if (session::recipe_of(card).alcohol > 0)
    out.push_back({say(Say::card_alcohol), clean_bold, false, 3});
  if (shelf.ships) out.push_back({say(Say::card_ships), small, true, 2});
  if (shelf.from_catalogue) out.push_back({rests_on_words(shelf), small, true, 5});
  if (card.kind() == CardKind::pigment) out.push_back({say(Say::card_sheet), small, true, 1});
  return out;
}

// One of the chart's colours.
void chart_pad(Sheet& sheet, const bench::Pad& at, const bench::ShelfView& shelf) {
  const auto place = static_cast<std::size_t>(std::stoi(at.id.arg));
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  sheet.shapes.push_back(
      Box{inset(at.box, 2), radius_mm, rgb(shelf.chart[place]), g.ink, outline_mm});
}

Say where_label_is(const bench::PaperDesk& paper) {
  if (paper.writing) return Say::card_label_writing;
  if (paper.written.empty()) return Say::card_label;
  switch (paper.way) {
  case bench::PaperWay::into_folder: return Say::card_label_written;
  case bench::PaperWay::to_print: return Say::card_label_printed;
  case bench::PaperWay::saved: return Say::card_label_saved;
  }
  return Say::card_label;
}

std::string label_pad_words(const bench::ShelfView& shelf) {
  return say(shelf.paper ? where_label_is(*shelf.paper) : Say::card_label);
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
  case ShelfPad::own:
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
  case ShelfPad::put_away:
    return pad(
        sheet, at, g,
        {{say(shelf.is_new ? Say::shelf_no_new : Say::shelf_put_away), clean_letters, false, 2}});
  case ShelfPad::bring_back:
    return pad(sheet, at, g, {{say(Say::shelf_bring_back), clean_letters}});
  case ShelfPad::caution: return caution_pad(sheet, at, shelf);
  case ShelfPad::more_cautions:
    return pad(sheet, at, g, {{say(Say::card_cautions_more), clean_letters, false, 2}});
  case ShelfPad::cautions_chosen:
    return pad(sheet, at, dark(sheet.theme), {{say(Say::card_cautions_done), clean_bold}});
  case ShelfPad::card_done:
    return pad(sheet, at, shelf.recipe ? g : dark(sheet.theme), // one main action: plan it
               {{say(Say::shelf_done), clean_bold}});
  case ShelfPad::others:
    return pad(sheet, at, g,
               {{say(shelf.others ? Say::shelf_mine : Say::shelf_others,
                     {std::to_string(shelf.not_listed)}),
                 small, false, 2}});
  case ShelfPad::make:
    return pad(sheet, at, dark(sheet.theme),
               {{say(shelf.recipe ? Say::recipe_plan : Say::card_make), clean_bold}});
  case ShelfPad::as_swatch: return pad(sheet, at, g, {{say(Say::card_as_swatch), small, false, 3}});
  case ShelfPad::as_catalogue:
    return pad(sheet, at, g, {{say(Say::card_as_catalogue), small, false, 3}});
  case ShelfPad::tick: return pad(sheet, at, g, {{say(Say::card_tick), small, false, 2}});
  case ShelfPad::own_done:
    return pad(sheet, at, dark(sheet.theme), {{say(Say::shelf_done), clean_bold}});
  case ShelfPad::change: return pad(sheet, at, g, {{say(Say::card_change), small, false, 2}});
  case ShelfPad::chart: return pad(sheet, at, g, {{say(Say::card_colour), clean_letters}});
  case ShelfPad::hue:
  case ShelfPad::shade: return chart_pad(sheet, at, shelf);
  case ShelfPad::jars: return pad(sheet, at, g, {{say(Say::card_jars), clean_letters}});
  case ShelfPad::make_binder:
    return pad(sheet, at, g, {{say(Say::card_make_binder), clean_letters, false, 2}});
  case ShelfPad::strength:
    return pad(sheet, at, g, {{say(Say::card_strength), clean_letters, false, 2}});
  case ShelfPad::binder_label:
    return pad(sheet, at, g, {{label_pad_words(shelf), small, false, 2}});
  case ShelfPad::to_card: return pad(sheet, at, g, {{say(Say::card_to), clean_letters}});
  case ShelfPad::batch_of:
  case ShelfPad::jar_g:
  case ShelfPad::jar_price:
  case ShelfPad::jar_in:
  case ShelfPad::jar_back:
  case ShelfPad::left_g: return; // see draw_reading and draw_jars
  case ShelfPad::jar_says:
  case ShelfPad::says: return; // text fields
  }
}

}

namespace {

words::Sentence nothing_listed(const bench::ShelfView& shelf) {
  if (!shelf.search.empty())
    return shelf.kind == bench::ShelfKind::recipe ? Say::shelf_no_recipe_found
                                                  : Say::shelf_none_found;
  if (shelf.away) return Say::shelf_none_away;
  return shelf.kind == bench::ShelfKind::recipe ? Say::shelf_no_recipe : Say::shelf_none;
}

std::vector<Label> ticking(const bench::ShelfView& shelf) {
  if (shelf.notice.error) return {{words::message(*shelf.notice.error), clean_bold, false, 6}};
  return {{say(Say::shelf_ticked, {std::to_string(shelf.ticked)}), clean_bold, false, 1},
          {say(Say::shelf_tick), clean_letters, true, 6}};
}

}

void draw_shelf(Sheet& sheet, const bench::ShelfView& shelf) {
  const bench::Layout& l = sheet.view.layout;
  const Theme& t = sheet.theme;
  if (shelf.rows.empty() && !shelf.number)
    labels(sheet, l.main, plain(t), {{say(nothing_listed(shelf)), clean_letters, true, 4}});
  if (shelf.number) {
    draw_number(sheet, *shelf.number);
  } else if (shelf.choosing || !shelf.chart.empty()) {
    // pads only
  } else if (shelf.card && shelf.on == bench::CardPage::reading) {
    draw_reading(sheet, shelf);
  } else if (shelf.card && shelf.on == bench::CardPage::jars) {
    draw_jars(sheet, shelf);
  } else if (shelf.recipe) {
    draw_recipe_card(sheet, shelf);
  } else if (shelf.card) {
    panel(sheet, l.lower);
    labels(sheet, inset(l.lower, 1.5), plain(t), about(shelf), Anchor::left);
  } else if (shelf.ticking) {
    panel(sheet, l.side);
    labels(sheet, inset(l.side, 6), plain(t), ticking(shelf));
  } else {
    panel(sheet, l.side);
    labels(sheet, inset(l.side, 6), plain(t), {{say(Say::shelf_choose), clean_letters, true, 5}});
  }
  for (const bench::Pad& at : l.pads) shelf_pad(sheet, at, shelf);
}

}
