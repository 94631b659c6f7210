#include "paper/blank_card.hpp"

#include "colour/card.hpp"
#include "paper/label.hpp"
#include "paper/measure.hpp"
#include "paper/palette.hpp"
#include "paper/svg.hpp"
#include "session/geometry.hpp"
#include "words/moments.hpp"
#include "words/paper_says.hpp"

#include <algorithm>

namespace paper {

using colour::card_places;
using colour::CardPlaces;
using colour::dark_grey;
using colour::light_grey;
using Say = words::PaperSay;
using words::say;

namespace {

constexpr double margin = 8, foot = 8; // as on sheets of labels
constexpr double title_mm = 4, words_mm = 2.4, small_mm = 2.1;

Attributes of_box(const session::Rect& r, const std::string& fill) {
  return {{"x", mm(r.x)},         {"y", mm(r.y)}, {"width", mm(r.w)},
          {"height", mm(r.h)},    {"fill", fill}, {"stroke", css(ink::quiet)},
          {"stroke-width", "0.2"}};
}

Markup written(double x, double y, double size, const std::string& words, double room,
               bool bold = false) {
  Attributes a{{"x", mm(x)}, {"y", mm(y)}, {"font-size", mm(size)}, {"fill", css(ink::text)}};
  if (bold) a.push_back({"font-weight", "bold"});
  return element("text", a, shortened(words, room / size));
}

std::string grey(int value) {
  const auto v = static_cast<unsigned>(value);
  return hex(v << 16 | v << 8 | v);
}

// A stroke each millimetre, longer ones each five and ten.
Markup scale(double x, double y, double length) {
  std::string path;
  for (int i = 0; i <= static_cast<int>(length); ++i) {
    const double high = i % 10 == 0 ? 3 : i % 5 == 0 ? 2.2 : 1.4;
    path += "M" + mm(x + i) + " " + mm(y) + "v-" + mm(high);
  }
  return element("path", {{"d", path + "M" + mm(x) + " " + mm(y) + "h" + mm(length)},
                          {"fill", "none"},
                          {"stroke", css(ink::text)},
                          {"stroke-width", "0.15"}});
}

session::Rect moved(const colour::Place& place, double x, double y) {
  return {place.x + x, place.y + y, place.w, place.h};
}

Markup patch(const session::Rect& r, const std::string& fill, const std::string& says) {
  Markup out = element("rect", of_box(r, fill));
  out += written(r.right() + 1.6, r.centre().y + 0.8, small_mm, says, 15);
  return out;
}

Markup head(const Handed& handed, double x, double y) {
  const session::Batch& batch = handed.batch;
  std::string of;
  for (const session::Card& pigment : pigments_of(batch))
    of += (of.empty() ? "" : "; ") + pigment_words(pigment);
  const double room = card_places.w - 10;
  Markup out = written(x + 5, y + 6.4, title_mm, batch.name, room, true);
  out += written(x + 5, y + 11, words_mm, of, room);
  out += written(x + 5, y + 15.4, words_mm,
                 say(Say::label_batch,
                     {words::date(session::made_at(batch), offset_of(handed)), short_id(batch.id)}),
                 room);
  return out;
}

Markup card(const Handed& handed, double x, double y) {
  const CardPlaces& p = card_places;
  std::vector<Markup> inside{
      element("rect", of_box({x, y, p.w, p.h}, "none")),
      head(handed, x, y),
      element("rect", of_box(moved(p.paint, x, y), css(ink::paper))),
      written(x + p.paint.x + 1.5, y + p.paint.y + 3, small_mm, say(Say::card_paint_here), 30),
      patch(moved(p.white, x, y), css(ink::paper), say(Say::card_white)),
      patch(moved(p.light, x, y), grey(light_grey),
            say(Say::card_grey, {std::to_string(light_grey)})),
      patch(moved(p.dark, x, y), grey(dark_grey), say(Say::card_grey, {std::to_string(dark_grey)})),
      scale(x + p.paint.x, y + p.scale_y + 3, p.scale_mm),
      written(x + p.paint.x + p.scale_mm + 2, y + p.scale_y + 3, small_mm, "50 mm", 12)};
  return element("g", {}, inside);
}

Markup page(const std::vector<const Handed*>& all, const Size& sheet, const Grid& grid) {
  constexpr Size size{card_places.w, card_places.h};
  const double left = (sheet.w - size.w * grid.across) / 2;
  std::vector<Markup> inside;
  for (std::size_t at = 0; at < all.size(); ++at) {
    const int i = static_cast<int>(at);
    inside.push_back(
        card(*all[at], left + size.w * (i % grid.across), margin + size.h * (i / grid.across)));
  }
  inside.push_back(written(left, sheet.h - margin, small_mm, say(Say::card_how), sheet.w - 20));
  return element("svg",
                 {{"xmlns", "http://www.w3.org/2000/svg"},
                  {"width", mm(sheet.w) + "mm"},
                  {"height", mm(sheet.h) + "mm"},
                  {"viewBox", "0 0 " + mm(sheet.w) + " " + mm(sheet.h)},
                  {"font-family", "B612, DejaVu Sans, Verdana, sans-serif"}},
                 inside);
}

}

std::string swatch_cards(const std::vector<Handed>& all, const Size& sheet) {
  constexpr Size size{card_places.w, card_places.h};
  const Grid grid{static_cast<int>((sheet.w - 2 * margin) / size.w),
                  static_cast<int>((sheet.h - 2 * margin - foot) / size.h)};
  const auto on_a_page = static_cast<std::size_t>(grid.on_a_page());
  std::vector<Markup> pages;
  for (std::size_t i = 0; i < all.size(); i += on_a_page) {
    std::vector<const Handed*> of;
    for (std::size_t k = i; k < std::min(i + on_a_page, all.size()); ++k) of.push_back(&all[k]);
    pages.push_back(page(of, sheet, grid));
  }
  return document(title_of(all.size(), all.empty() ? nullptr : &all[0].batch, Say::card_title),
                  own_page_style(sheet).c_str(), pages);
}

}
