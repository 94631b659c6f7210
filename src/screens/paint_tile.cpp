// One paint of the chart: the swatch above, its name and what is left of it below.
#include "screens/book_parts.hpp"
#include "screens/phrases.hpp"
#include "words/book_says.hpp"
#include "words/moments.hpp"
#include "words/session_says.hpp"

namespace screens {

using Say = words::BookSay;
using words::say;

namespace {

constexpr double line_mm = 0.4;
constexpr Lettering small_words{cap::small, false, cap::small};
const Colour swatch_paper = rgb(0xf8f6f0); // by day and night: the colour was read on paper

// As a brush leaves it: full where it was set down, thinner where it ran out of paint.
void stroke(Sheet& sheet, const Rect& r, Colour paint, const Ground& ground) {
  constexpr int steps = 8;
  constexpr double thinnest = 0.35; // of its strength. Our own value
  Gradient wash{r, {}};
  for (int i = 0; i <= steps; ++i) {
    const double along = static_cast<double>(i) / steps;
    const double strength = 1 - (1 - thinnest) * along * along;
    wash.stops.push_back({r.x + r.w * along, mixed(swatch_paper, paint, strength)});
  }
  sheet.shapes.push_back(wash);
  sheet.shapes.push_back(Box{r, 0, clear, ground.ink, line_mm});
}

std::string left_words(const bench::PaintLeft& left) {
  const std::string jar =
      left.jar_mL >= 0.05
          ? say(Say::paint_left_jar, {words::number(left.jar_mL, left.jar_mL < 10 ? 1 : 0)})
          : "";
  const std::string pans = left.pans == 1  ? say(Say::paint_left_pan)
                           : left.pans > 1 ? say(Say::paint_left_pans, {std::to_string(left.pans)})
                                           : "";
  if (!jar.empty() && !pans.empty()) return say(Say::paint_left_both, {jar, pans});
  if (!jar.empty() || !pans.empty()) return jar + pans;
  return say(left.on_slab ? Say::paint_on_slab : Say::paint_none_left);
}

bool is_none(const bench::PaintLeft& left) {
  return left.jar_mL < 0.05 && left.pans == 0 && !left.on_slab;
}

// The day gives way where there is no room for both.
std::string made_words(const Sheet& sheet, const bench::BookView::Row& row, double width_mm) {
  const std::string day =
      words::date(row.made_at, row.offset_min.value_or(sheet.view.utc_offset_min));
  if (row.batches <= 1) return day;
  const std::string many = std::to_string(row.batches);
  const std::string both = say(Say::paint_batches, {many, day});
  return fitted(both, width_mm, small_words, 1).cut ? say(words::SessionSay::known_batches, {many})
                                                    : both;
}

}

void paint_tile(Sheet& sheet, const bench::Pad& at, const bench::BookView::Row& row) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Rect& r = at.box;
  const Lines name = fitted(row.name, r.w - 2 * padding_mm, clean_bold, 1);
  const bool is_long = name.cut || name.shortened; // what stands in brackets tells two apart
  const double words_h = is_long ? 18.8 : 15.5, side = 1.4;
  const Rect above{r.x + side, r.y + side, r.w - 2 * side, r.h - words_h - side};
  if (row.swatch) {
    stroke(sheet, above, rgb(row.colour), g);
  } else {
    const double size = std::min(above.h * 0.9, 8.0);
    paint_symbol(sheet, {above.x + 2 + size * 0.6, above.centre().y}, size, rgb(row.colour), false,
                 g.ink);
    labels(sheet, {above.x + 3 + size * 1.2, above.y, above.w - 3 - size * 1.2, above.h}, g,
           {{say(Say::paint_no_swatch), small_words, true, 2}}, Anchor::left);
  }
  std::vector<Label> below{{row.name, clean_bold, false, is_long ? 2 : 1}};
  if (row.left)
    below.push_back(
        {left_words(*row.left), {cap::small, is_none(*row.left), cap::small}, false, 1});
  below.push_back({made_words(sheet, row, r.w - 2 * padding_mm), small_words, true, 1});
  labels(sheet, {r.x, r.bottom() - words_h, r.w, words_h}, g, below, Anchor::left);
}

}
