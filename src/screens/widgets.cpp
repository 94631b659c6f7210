#include "screens/widgets.hpp"

#include "screens/measure.hpp"
#include "words/photos_says.hpp"

#include <algorithm>

namespace screens {

Text one_line(Text text, double least_mm) {
  const Lines one = fitted(text.words, text.max_mm, {text.cap_mm, text.bold, least_mm}, 1);
  text.cap_mm = one.cap_mm;
  text.words = one.lines.empty() ? "" : one.lines[0];
  return text;
}

void write(Sheet& sheet, Point at, Anchor anchor, const Lettering& l, Colour colour,
           const std::string& words, double max_mm) {
  if (words.empty()) return;
  sheet.shapes.push_back(
      one_line({at, anchor, l.cap_mm, l.bold, colour, words, max_mm}, l.least_mm));
}

void heard_apart(Sheet& sheet, const std::string& instead) {
  if (sheet.shapes.empty()) return;
  auto* last = std::get_if<Text>(&sheet.shapes.back());
  if (last) last->begins = true, last->heard = instead;
}

void panel(Sheet& sheet, const Rect& rect) {
  sheet.shapes.push_back(Box{rect, radius_mm, sheet.theme.slab, clear, 0});
}

namespace {

std::string no_picture_words(const words::Error& why) {
  using words::PhotosSay;
  return words::say(why.what == PhotosSay::gone ? PhotosSay::gone_short
                                                : PhotosSay::not_shown_short);
}

}

void framed(Sheet& sheet, const Rect& rect, const std::string& image, Colour ink) {
  const auto why = sheet.view.no_pictures.find(image);
  const bool shown = why == sheet.view.no_pictures.end();
  if (shown) sheet.shapes.push_back(Picture{rect, image});
  sheet.shapes.push_back(Box{rect, 0, clear, ink, outline_mm});
  if (shown) return;
  constexpr double wide_mm = 20, high_mm = 10; // in which the words have room
  const Rect r = inset(rect, outline_mm);
  if (rect.w >= wide_mm && rect.h >= high_mm)
    return labels(sheet, r, plain(sheet.theme),
                  {{no_picture_words(why->second), {cap::small, false, cap::small}, true, 3}});
  sheet.shapes.push_back(Polyline{{{r.x, r.bottom()}, {r.right(), r.y}}, outline_mm, ink, 0});
}

Ground pad_box(Sheet& sheet, const bench::Pad& pad, const Ground& ground) {
  const Ground g = sheet.view.pressed == pad.id ? pressed(ground) : ground;
  const bool dark_ground = ground.fill == sheet.theme.ink;
  const Colour edge = dark_ground ? ground.fill : ground.ink;
  sheet.shapes.push_back(
      Box{inset(pad.box, g.outline / 2), radius_mm, g.fill, dark_ground ? edge : g.ink, g.outline});
  return g;
}

namespace {

struct Row {
  std::string words;
  double cap_mm;
  bool bold;
  bool quiet;
  double above; // from the top of the block to the baseline
  bool first;   // of its label
};

constexpr double below_line = 0.3; // by which g and y reach below it, in heights of a capital

// Rows under each other: a little more air between labels than between the lines of one. `air`: how
// much of it there is, of the usual.
std::vector<Row> rows_of(const std::vector<Label>& labels, double width, double air) {
  std::vector<Row> rows;
  double bottom = 0;
  for (const Label& label : labels) {
    if (label.words.empty()) continue;
    const Lines lines = fitted(label.words, width, label.lettering, label.max_lines);
    bool first = true;
    for (const std::string& line : lines.lines) {
      const double gap = lines.cap_mm * (first ? line_step - 0.88 : line_step - 1);
      bottom += (rows.empty() ? 0 : gap * air) + lines.cap_mm;
      rows.push_back({line, lines.cap_mm, label.lettering.bold, label.quiet, bottom, first});
      first = false;
    }
  }
  return rows;
}

// Rows that would reach the edges stand closer, and what is below the last line counts.
std::vector<Row> rows_within(const std::vector<Label>& labels, double width, double high,
                             double& top) {
  constexpr double edge_mm = 1.02, least_air = 0.5;
  auto rows = rows_of(labels, width, 1);
  if (rows.empty()) return rows;
  const double below = below_line * rows.back().cap_mm;
  const double room = high - 2 * edge_mm - below, all = rows.back().above;
  if (all > room && rows.size() > 1) {
    double letters = 0;
    for (const Row& row : rows) letters += row.cap_mm;
    rows = rows_of(labels, width, std::clamp((room - letters) / (all - letters), least_air, 1.0));
  }
  const double rest = high - rows.back().above;
  top = rest / 2 < below + edge_mm ? (rest - below) / 2 : rest / 2;
  return rows;
}

}

void labels(Sheet& sheet, const Rect& rect, const Ground& ground, const std::vector<Label>& list,
            Anchor anchor) {
  const double side = std::clamp(rect.w * 0.05, 1.0, padding_mm);
  const double width = rect.w - 2 * side;
  double top = 0;
  const auto rows = rows_within(list, width, rect.h, top);
  const double x = anchor == Anchor::centre ? rect.centre().x
                   : anchor == Anchor::left ? rect.x + side
                                            : rect.right() - side;
  for (const Row& row : rows)
    sheet.shapes.push_back(Text{{x, rect.y + top + row.above},
                                anchor,
                                row.cap_mm,
                                row.bold,
                                row.quiet ? ground.quiet : ground.ink,
                                row.words,
                                width,
                                row.first});
}

void pad(Sheet& sheet, const bench::Pad& pad, const Ground& ground,
         const std::vector<Label>& list) {
  labels(sheet, pad.box, pad_box(sheet, pad, ground), list);
}

void toggle_pad(Sheet& sheet, const bench::Pad& pad, const std::string& words, bool on,
                const std::string& below) {
  constexpr double groove_w = 6.4, groove_h = 3.6;
  const Ground g = pad_box(sheet, pad, plain(sheet.theme));
  const Rect groove{pad.box.right() - groove_w - 1.6, pad.box.centre().y - groove_h / 2, groove_w,
                    groove_h};
  const double r = groove_h / 2;
  sheet.shapes.push_back(Box{groove, r, on ? g.ink : clear, g.ink, 0.4});
  sheet.shapes.push_back(Disc{{on ? groove.right() - r : groove.x + r, groove.centre().y},
                              r - 0.75,
                              on ? g.fill : g.ink,
                              clear,
                              0});
  labels(sheet, {pad.box.x + 1, pad.box.y, groove.x - pad.box.x - 1, pad.box.h}, g,
         {{words, {cap::clear, false, cap::small}, false, below.empty() ? 2 : 1},
          {below, {cap::small, false, cap::small}, true, 2}},
         Anchor::left);
}

void progress_bar(Sheet& sheet, const Rect& rect, Colour track, Colour done, double share) {
  sheet.shapes.push_back(Box{rect, rect.h / 2, track, clear, 0});
  const double w = rect.w * std::clamp(share, 0.0, 1.0);
  if (w < rect.h) return; // shorter than its own round ends
  sheet.shapes.push_back(Box{{rect.x, rect.y, w, rect.h}, rect.h / 2, done, clear, 0});
}

}
