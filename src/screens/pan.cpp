// One pan from the side: its dried layers, and the wet one on top.
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "words/pans_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

namespace {

constexpr double wall_mm = 0.6;
constexpr double air_mm = 0.45; // between layers, and to the wall

// The brim stands a little above the paint of a full pan.
constexpr double brim = 0.94;

void draw_walls(Sheet& sheet, const Rect& r, Colour ink) {
  sheet.shapes.push_back(Polyline{
      {{r.x, r.y}, {r.x, r.bottom()}, {r.right(), r.bottom()}, {r.right(), r.y}}, wall_mm, ink, 0});
}

double light(Colour c) {
  const auto linear = [](int level) {
    const double v = level / 255.0;
    return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b) + 0.05;
}

// 3:1, by WCAG 2.2. What does not has an outline, which would be no better seen on what does.
bool stands_out(Colour paint, Colour ground) {
  const double a = light(paint), b = light(ground);
  return std::max(a, b) / std::min(a, b) >= 3;
}

// A layer that is to come: dotted as high as it is poured, and where it will have dried to.
void draw_next(Sheet& sheet, const Rect& free, double dry_y, Colour ink) {
  constexpr double least_mm = 1.6, dots_mm = 0.5, line_mm = 0.25;
  if (free.h < least_mm) return;
  const Rect r{free.x + 0.2, free.y, free.w - 0.4, free.h - air_mm};
  sheet.shapes.push_back(Polyline{
      {{r.x, r.bottom()}, {r.x, r.y}, {r.right(), r.y}, {r.right(), r.bottom()}, {r.x, r.bottom()}},
      line_mm,
      ink,
      dots_mm});
  if (dry_y > r.y + 0.6 && dry_y < r.bottom() - 0.6)
    sheet.shapes.push_back(Polyline{{{r.x, dry_y}, {r.right(), dry_y}}, line_mm, ink, dots_mm});
}

// What is wet has waves; what is dry lies flat.
void draw_waves(Sheet& sheet, double x, double w, double y, Colour ink) {
  std::vector<Point> points;
  constexpr int steps = 32;
  for (int i = 0; i <= steps; ++i) {
    const double t = static_cast<double>(i) / steps;
    points.push_back({x + w * t, y - 0.45 * std::sin(t * 3 * 2 * 3.14159265358979)});
  }
  sheet.shapes.push_back(Polyline{points, 0.45, ink, 0});
}

}

void draw_pan(Sheet& sheet, const Rect& r, const bench::PansView::Pan& pan, Colour paint,
              const Ground& g) {
  const Rect in{r.x + wall_mm / 2 + air_mm, r.y, r.w - wall_mm - 2 * air_mm,
                r.h - wall_mm / 2 - air_mm};
  const double mm_per_mL = pan.brim_mL > 0 ? in.h * brim / pan.brim_mL : 0;
  double y = in.bottom();
  for (const double mL : pan.layers_mL) {
    const double h = std::min(mL * mm_per_mL, y - in.y);
    if (h <= air_mm) continue;
    const bool seen = stands_out(paint, g.fill);
    sheet.shapes.push_back(
        Box{{in.x, y - h, in.w, h - air_mm}, 0.5, paint, seen ? clear : g.ink, seen ? 0 : 0.25});
    y -= h;
  }
  const double wet = std::min(pan.wet_mL * mm_per_mL, y - in.y);
  if (wet > 0.4) {
    const Rect on_top{in.x, y - wet, in.w, wet - air_mm * 0.5};
    sheet.shapes.push_back(Box{on_top, 0, mixed(paint, g.fill, 0.45), clear, 0});
    if (wet > 1.2) draw_waves(sheet, on_top.x, on_top.w, on_top.y, g.ink);
  }
  const double surface = y - std::max(0.0, wet), brim_y = in.bottom() - in.h * brim;
  const double top = std::max(brim_y, y - pan.pour_mL * mm_per_mL);
  if (pan.pour_mL > 0)
    draw_next(sheet, {in.x, top, in.w, surface - top}, y - pan.next_mL * mm_per_mL, g.ink);
  draw_walls(sheet, r, g.ink);
}

namespace {

constexpr Lettering small{cap::small, false, cap::small};

}

double beside_mm(std::size_t more) {
  return width_mm(say(words::PansSay::pans_beside, {std::to_string(more)}), cap::small, false) +
         0.7;
}

void pans_beside(Sheet& sheet, Point end, Colour ink, std::size_t more) {
  const words::Args args{std::to_string(more)};
  write(sheet, end, Anchor::right, small, ink, say(words::PansSay::pans_beside, args),
        beside_mm(more));
  heard_apart(sheet, say(words::PansSay::pans_beside_heard, args));
}

}
