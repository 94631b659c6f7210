#include "screens/range_chart.hpp"

namespace screens {

RangeChart range_chart(const Rect& rows, std::size_t count, double low, double high) {
  const Rect area{rows.x + 4, rows.y, rows.w - 8, rows.h};
  const double name_w = area.w > 150 ? 62 : 40, known_w = 24, gap = 3;
  RangeChart c;
  c.names = {area.x, area.y, name_w, area.h};
  c.bars = {area.x + name_w + gap, area.y, area.w - name_w - known_w - 2 * gap, area.h};
  c.knowns = {area.right() - known_w, area.y, known_w, area.h};
  c.scale = {low, high, c.bars.x, c.bars.right()};
  c.step = area.h / static_cast<double>(count);
  return c;
}

void range_axis(Sheet& sheet, const RangeChart& c) {
  const Theme& t = sheet.theme;
  for (const Tick& tick : ticks(c.scale, cap::clear)) {
    const double x = c.scale.x(tick.flow);
    sheet.shapes.push_back(Polyline{{{x, c.bars.y}, {x, c.bars.bottom()}}, outline_mm, t.rule, 0});
    write(sheet, {x, c.bars.bottom() + cap::clear * 1.7}, Anchor::centre, clean_letters, t.quiet,
          tick.label, 12);
  }
}

void interval(Sheet& sheet, const RangeChart& c, double y, double low, double middle, double high,
              bool known) {
  const Theme& t = sheet.theme;
  sheet.shapes.push_back(Polyline{{{c.scale.x(low), y}, {c.scale.x(high), y}}, 0.5, t.ink, 0});
  sheet.shapes.push_back(Disc{{c.scale.x(middle), y}, 1.5, known ? t.ink : t.slab, t.ink, 0.5});
}

}
