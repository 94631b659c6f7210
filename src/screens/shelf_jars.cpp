// Shelf: the jars of a card, and the one that is being entered.
#include "bench/pads_shelf.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/calendar.hpp"
#include "words/moments.hpp"
#include "words/shelf_says.hpp"

#include <algorithm>

namespace screens {

using bench::ShelfPad;
using bench::ShelfView;
using Say = words::ShelfSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};

std::string jar_words(const session::Jar& jar) {
  const auto day = words::days_of(jar.of.on);
  const std::string on =
      day ? words::date(*day * session::a_day_ms, 0) : words::date(jar.at, jar.offset_min);
  const std::string grams = grams_number(jar.of.g);
  std::string said = say(Say::jar_said, {on, grams});
  if (jar.of.price && *jar.of.price > 0)
    said = say(Say::jar_said_price, {on, grams, money_words(*jar.of.price, jar.of.currency)});
  else if (jar.of.price)
    said = say(Say::jar_said_gift, {on, grams});
  return jar.of.lot.empty() ? said : say(Say::jar_said_lot, {said, jar.of.lot});
}

std::vector<Label> jars_told(const ShelfView& shelf) {
  constexpr std::size_t most = 5;
  std::vector<Label> out;
  if (shelf.notice.error)
    out.push_back({words::message(*shelf.notice.error), clean_bold, false, 3});
  if (shelf.stock.left)
    out.push_back(
        {say(Say::card_left, {grams_number(std::max(0.0, shelf.stock.left->g))}), clean_bold});
  if (shelf.jars.weighed)
    out.push_back(
        {say(Say::jar_weighed, {words::date(shelf.jars.weighed->at, shelf.jars.weighed->offset_min),
                                grams_number(shelf.jars.weighed->g)}),
         small});
  for (std::size_t i = 0; i < std::min(most, shelf.jars.jars.size()); ++i)
    out.push_back({jar_words(shelf.jars.jars[i]), small});
  if (shelf.jars.jars.empty() && !shelf.jars.weighed)
    out.push_back({say(Say::jar_none), clean_letters, true, 1});
  out.push_back({say(Say::jar_note), small, true, 3});
  return out;
}

void jar_pad(Sheet& sheet, const bench::Pad& at, const ShelfView& shelf) {
  const Ground g = plain(sheet.theme);
  const session::Bought& jar = shelf.jars.jar;
  if (at.id.kind == ShelfPad::jar_g)
    pad(sheet, at, g,
        {{jar.g > 0 ? say(Say::jar_grams, {grams_number(jar.g)}) : say(Say::jar_grams_none),
          clean_bold, false, 1},
         {say(Say::jar_grams_what), small, true, 1}});
  if (at.id.kind == ShelfPad::jar_price)
    pad(sheet, at, g,
        {{!jar.price       ? say(Say::jar_price_none)
          : *jar.price > 0 ? money_words(*jar.price, jar.currency)
                           : say(Say::jar_gift),
          clean_bold, false, 1},
         {say(Say::jar_price_what), small, true, 1}});
  if (at.id.kind == ShelfPad::jar_in)
    pad(sheet, at, dark(sheet.theme), {{say(Say::jar_in), clean_bold}});
  if (at.id.kind == ShelfPad::jar_back) pad(sheet, at, g, {{say(Say::jar_back), small, false, 2}});
  if (at.id.kind == ShelfPad::left_g) pad(sheet, at, g, {{say(Say::jar_weigh), small, false, 2}});
}

}

void draw_jars(Sheet& sheet, const ShelfView& shelf) {
  const Rect& area = sheet.view.layout.lower;
  panel(sheet, area);
  labels(sheet, inset(area, 1.5), plain(sheet.theme), jars_told(shelf), Anchor::left);
  for (const bench::Pad& at : sheet.view.layout.pads) jar_pad(sheet, at, shelf);
}

}
