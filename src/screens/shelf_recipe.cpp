// Shelf: a recipe's card, each thing in its maker's measure.
#include "bench/pads_shelf.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "screens/plan_recipe.hpp"
#include "words/paint_says.hpp"
#include "words/shelf_says.hpp"

#include <algorithm>

namespace screens {

using bench::RecipeView;
using session::SaidIn;
using Say = words::ShelfSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small}, small_bold{cap::small, true, cap::small};

std::string said_words(const RecipeView::Part& line) {
  switch (line.in) {
  case SaidIn::g: return say(words::PaintSay::amount_grams, {grams_number(line.amount)});
  case SaidIn::parts:
    if (line.amount <= 0) return say(Say::recipe_as_wanted);
    return line.amount == 1 ? say(Say::recipe_part)
                            : say(Say::recipe_parts, {words::number(line.amount, 2)});
  case SaidIn::drops:
  case SaidIn::spoons: break;
  }
  return scoops_words({line.scoop});
}

// What stands beside that: why it cannot be taken, or what the measure comes to.
std::string beside_words(const RecipeView::Part& line) {
  if (line.gone) return say(Say::recipe_gone);
  const bool measured = line.in == SaidIn::spoons || line.in == SaidIn::drops;
  return measured && line.g > 0 ? grams_about(line.g, line.u, line.guess) : "";
}

constexpr double two_lines_mm = 7.4; // of a row that has room for two

// How much at the right, and what that comes to below it, or before it where there is no room.
void line_of_recipe(Sheet& sheet, const Rect& r, const RecipeView::Part& line) {
  const Theme& t = sheet.theme;
  const double size = std::min(5.4, r.h - 0.6), x = r.x + 6.4;
  const bool pigment = line.kind == session::CardKind::pigment, low = r.h < two_lines_mm;
  material_symbol(sheet, {r.x + 3.6, r.centre().y}, size, line.kind,
                  pigment ? rgb(line.colour) : material_colour(t, line.kind), t.ink);
  const std::string said = said_words(line), beside = beside_words(line);
  const double said_mm = width_mm(said, cap::small, true) + 2 * padding_mm + 0.4,
               beside_mm = width_mm(beside, cap::small, false) + 2 * padding_mm + 0.4,
               amount_mm = low ? said_mm + beside_mm : std::max(said_mm, beside_mm);
  labels(sheet, {x, r.y, r.right() - amount_mm - x, r.h}, plain(t),
         {{line.name, small, line.gone, low ? 1 : 2}}, Anchor::left);
  const Label much{said, small_bold, false, 1}, comes_to{beside, small, true, 1};
  if (!low)
    return labels(sheet, {r.right() - amount_mm, r.y, amount_mm, r.h}, plain(t), {much, comes_to},
                  Anchor::right);
  labels(sheet, {r.right() - said_mm, r.y, said_mm, r.h}, plain(t), {much}, Anchor::right);
  labels(sheet, {r.right() - amount_mm, r.y, beside_mm, r.h}, plain(t), {comes_to}, Anchor::right);
}

std::string basis_words(const RecipeView& recipe) {
  if (recipe.liquids.empty()) return say(Say::recipe_no_liquids);
  if (std::all_of(recipe.liquids.begin(), recipe.liquids.end(),
                  [](const RecipeView::Part& line) { return line.amount <= 0; }))
    return say(Say::recipe_wanted_how);
  if (recipe.per_g > 0) return say(Say::recipe_to_grams, {grams_number(recipe.per_g)});
  return recipe.per ? say(Say::recipe_to_spoons, {scoops_words({*recipe.per})})
                    : say(Say::recipe_to_all);
}

std::string kept_words(const RecipeView& recipe) {
  if (!recipe.batch.empty()) return say(Say::recipe_kept_of, {recipe.batch});
  switch (recipe.from) {
  case session::RecipeFrom::own_head: return say(Say::recipe_of_head);
  case session::RecipeFrom::old_notes: return say(Say::recipe_of_notes);
  case session::RecipeFrom::batch: break;
  }
  return "";
}

// As many as have room; of the others how many there are.
void lines_of_recipe(Sheet& sheet, Rect& area, double row_mm,
                     const std::vector<RecipeView::Part>& lines, std::size_t rows) {
  const Theme& t = sheet.theme;
  const std::size_t shown = lines.size() > rows ? std::max<std::size_t>(rows, 1) - 1 : lines.size();
  for (std::size_t i = 0; i < shown; ++i) line_of_recipe(sheet, slice(area, row_mm), lines[i]);
  if (shown < lines.size())
    labels(sheet, slice(area, row_mm), plain(t),
           {{say(Say::recipe_more, {std::to_string(lines.size() - shown)}), small, true, 1}},
           Anchor::left);
}

std::vector<Label> told_of_recipe(const bench::ShelfView& shelf) {
  const RecipeView& recipe = *shelf.recipe;
  std::vector<Label> out;
  if (shelf.notice.error)
    out.push_back({words::message(*shelf.notice.error), small_bold, false, 3});
  out.push_back({kept_words(recipe), small, false, 2});
  out.push_back({say(recipe.mine ? Say::recipe_is_mine : Say::recipe_is_shared), small, true, 2});
  if (!recipe.note.empty()) out.push_back({recipe.note, small, false, 2});
  if (recipe.made.empty()) out.push_back({say(Say::recipe_none_made), small, true, 1});
  return out;
}

double high_mm(const Label& label, double width) {
  if (label.words.empty()) return 0;
  const auto lines = fitted(label.words, width, label.lettering, label.max_lines).lines.size();
  return static_cast<double>(lines) * cap::small * line_step + 0.6;
}

double high_mm(const std::vector<Label>& said, double width) {
  double high = 0;
  for (const Label& label : said) high += high_mm(label, width);
  return high;
}

// Those that have room, the first before all others.
void told(Sheet& sheet, Rect area, const std::vector<Label>& said) {
  const double width = area.w - 2 * padding_mm;
  std::vector<Label> out;
  double high = 0;
  for (const Label& label : said) {
    if (label.words.empty()) continue;
    high += high_mm(label, width);
    if (high > area.h) break;
    out.push_back(label);
  }
  labels(sheet, area, plain(sheet.theme), out, Anchor::left);
}

void made_pad(Sheet& sheet, const bench::Pad& at, const bench::ReadingView::Batch& batch) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const bool is_long = fitted(batch.name, at.box.w - 2 * padding_mm, small_bold, 1).cut;
  std::vector<Label> said{{batch.name, small_bold, false, is_long ? 2 : 1}};
  if (!is_long)
    said.push_back({batch.became ? became_words(*batch.became) : progress_words(batch.progress),
                    small, true, 1});
  labels(sheet, at.box, g, said, Anchor::left);
}

}

void draw_recipe_card(Sheet& sheet, const bench::ShelfView& shelf) {
  constexpr double most_mm = 9, least_mm = 4.6, heading_mm = 5.4, least_told_mm = 8.6;
  const RecipeView& recipe = *shelf.recipe;
  panel(sheet, sheet.view.layout.lower);
  Rect area = inset(sheet.view.layout.lower, 1.5);
  const auto all = static_cast<double>(recipe.pigments.size() + recipe.liquids.size());
  // Rows are made lower before what is told of it is left out.
  const auto said = told_of_recipe(shelf);
  const double told_mm =
      std::max(least_told_mm, std::min(high_mm(said, area.w - 2 * padding_mm) + 0.1,
                                       area.h - heading_mm - all * least_mm));
  const double room = area.h - heading_mm - told_mm,
               row_mm = std::clamp(room / std::max(1.0, all), least_mm, most_mm);
  const auto rows = static_cast<std::size_t>(std::max(2.0, room / row_mm));
  const std::size_t liquids = std::min(recipe.liquids.size(), rows / 2);
  const std::size_t pigments = std::min(recipe.pigments.size(), rows - liquids);
  lines_of_recipe(sheet, area, row_mm, recipe.pigments, pigments);
  labels(sheet, slice(area, heading_mm), plain(sheet.theme),
         {{basis_words(recipe), small, true, 1}}, Anchor::left);
  lines_of_recipe(sheet, area, row_mm, recipe.liquids, rows - pigments);
  told(sheet, area, said);
  for (const bench::Pad& at : sheet.view.layout.pads)
    for (const auto& batch : recipe.made)
      if (batch.pad == at.id) made_pad(sheet, at, batch);
}

}
