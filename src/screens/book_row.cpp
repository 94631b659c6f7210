// One batch of the list.
#include "screens/book_parts.hpp"
#include "screens/phrases.hpp"
#include "session/in_words.hpp"
#include "words/book_says.hpp"
#include "words/moments.hpp"

#include <algorithm>

namespace screens {

using Say = words::BookSay;
using words::say;

namespace {

constexpr Lettering in_small{cap::small, false, cap::small};

// The last words on it, two at most; while there are none, how far it has come.
std::string what_became_of(const bench::BookView::Row& row) {
  std::string out;
  const std::size_t from = row.became.size() - std::min<std::size_t>(2, row.became.size());
  for (std::size_t i = from; i < row.became.size(); ++i)
    out += (out.empty() ? "" : ", ") + became_words(row.became[i]);
  return out.empty() ? progress_words(row.progress) : out;
}

}

void batch_row(Sheet& sheet, const bench::Pad& at, const bench::BookView::Row& row) {
  const Rect& r = at.box;
  const Ground g = pad_box(sheet, at, choosable(sheet.theme, row.chosen));
  const bool photo = !row.image.empty() && r.w > 150;
  const double size = 7, ratio = 32, thumb = photo ? 13 : 0, x = r.x + size + 5 + thumb;
  paint_symbol(sheet, {r.x + 3 + size / 2, r.centre().y}, size, rgb(row.colour), row.swatch, g.ink);
  if (photo) framed(sheet, {x - thumb, r.y + 1.2, thumb - 1, r.h - 2.4}, row.image, g.ink);
  const double warned = row.warned ? 8 : 0;
  const std::string when =
      words::date_and_time(row.made_at, row.offset_min.value_or(sheet.view.utc_offset_min));
  const bool wide = r.w > 150;
  const double name_w = (wide ? 0.55 : 1) * (r.right() - ratio - warned - x);
  std::vector<Label> left{{row.name, clean_bold, false, 1}};
  if (!wide) left.push_back({when + ", " + what_became_of(row), in_small, true, 1});
  labels(sheet, {x, r.y, name_w, r.h}, g, left, Anchor::left);
  if (wide)
    labels(sheet, {x + name_w, r.y, r.right() - ratio - warned - x - name_w, r.h}, g,
           {{what_became_of(row), row.became.empty() ? clean_letters : clean_bold, false, 1},
            {when, in_small, true, 1}},
           Anchor::left);
  if (row.warned) caution_sign(sheet, {r.right() - ratio - 4, r.centre().y}, 5.4);
  if (row.ratio)
    labels(sheet, {r.right() - ratio, r.y, ratio - 1, r.h}, g,
           {{words::number(row.ratio->value, 1), {cap::body, true, cap::body}, false, 1},
            {say(Say::book_ratio), in_small, true, 2}},
           Anchor::right);
}

}
