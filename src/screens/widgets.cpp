#include "screens/widgets.hpp"

#include "screens/measure.hpp"

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

void panel(Sheet& sheet, const Rect& rect) {
  sheet.shapes.push_back(Box{rect, radius_mm, sheet.theme.slab, clear, 0});
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
};

// Rows under each other: a little more air between labels than between the lines of one.
std::vector<Row> rows_of(const std::vector<Label>& labels, double width, double& height) {
  std::vector<Row> rows;
  double bottom = 0;
  for (const Label& label : labels) {
    if (label.words.empty()) continue;
    const Lines lines = fitted(label.words, width, label.lettering, label.max_lines);
    bool first = true;
    for (const std::string& line : lines.lines) {
      const double air =
          rows.empty() ? 0 : lines.cap_mm * (first ? line_step - 0.88 : line_step - 1);
      bottom += air + lines.cap_mm;
      rows.push_back({line, lines.cap_mm, label.lettering.bold, label.quiet, bottom});
      first = false;
    }
  }
  height = bottom;
  return rows;
}

}

void labels(Sheet& sheet, const Rect& rect, const Ground& ground, const std::vector<Label>& list,
            Anchor anchor) {
  const double side = std::min(padding_mm, rect.w * 0.05);
  const double width = rect.w - 2 * side;
  double height = 0;
  const auto rows = rows_of(list, width, height);
  const double x = anchor == Anchor::centre ? rect.centre().x
                   : anchor == Anchor::left ? rect.x + side
                                            : rect.right() - side;
  const double top = rect.centre().y - height / 2;
  for (const Row& row : rows)
    sheet.shapes.push_back(Text{{x, top + row.above},
                                anchor,
                                row.cap_mm,
                                row.bold,
                                row.quiet ? ground.quiet : ground.ink,
                                row.words,
                                width});
}

void pad(Sheet& sheet, const bench::Pad& pad, const Ground& ground,
         const std::vector<Label>& list) {
  labels(sheet, pad.box, pad_box(sheet, pad, ground), list);
}

void progress_bar(Sheet& sheet, const Rect& rect, Colour track, Colour done, double share) {
  sheet.shapes.push_back(Box{rect, rect.h / 2, track, clear, 0});
  const double w = rect.w * std::clamp(share, 0.0, 1.0);
  if (w < rect.h) return; // shorter than its own round ends
  sheet.shapes.push_back(Box{{rect.x, rect.y, w, rect.h}, rect.h / 2, done, clear, 0});
}

}
