// How one pan dries: what the scale said, what is foreseen, and from when the next layer can go on.
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/calendar.hpp"
#include "words/pans_says.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace screens {

using bench::PansView;
using Say = words::PansSay;
using words::say;

namespace {

constexpr double ms_per_h = 3'600'000;

// Where hours and grams lie, and what is taken already: a label that has no room is left out.
struct Plot {
  Rect in;
  double to_h = 1, low_g = 0, high_g = 1;
  std::vector<Rect> taken = {};

  double x(double h) const { return in.x + in.w * std::clamp(h / to_h, 0.0, 1.0); }
  double y(double g) const {
    return in.bottom() - 1.2 - (in.h - 2.4) * (g - low_g) / (high_g - low_g);
  }
  Point at(double h, double g) const { return {x(h), y(g)}; }
  bool is_free(const Rect& r) const {
    const bool inside = r.x >= in.x - 0.2 && r.right() <= in.right() + 0.2 && r.y >= in.y - 0.2 &&
                        r.bottom() <= in.bottom() - 0.4;
    return inside && std::none_of(taken.begin(), taken.end(), [&](const Rect& t) {
             return r.x < t.right() && t.x < r.right() && r.y < t.bottom() && t.y < r.bottom();
           });
  }
  void take(Point p, double around) {
    taken.push_back({p.x - around, p.y - around, 2 * around, 2 * around});
  }
};

Plot plot_of(const Rect& in, const PansView& pans) {
  Plot p{in, pans.curve.to_h};
  double low = 1e9, high = -1e9;
  const auto reach = [&](double g) { low = std::min(low, g), high = std::max(high, g); };
  for (const auto& w : pans.weighings) reach(w.g);
  for (const auto& a : pans.curve.ahead) reach(a.low_g), reach(a.high_g);
  if (high < low) low = 0, high = 1;
  p.low_g = low;
  p.high_g = std::max(high, low + 0.1);
  return p;
}

// Its words at the first of these places that is free; nothing where none is.
void label(Sheet& sheet, Plot& p, const std::vector<Point>& places, const std::string& words,
           bool bold, Colour colour) {
  const double w = width_mm(words, cap::body, bold);
  for (const Point& at : places) {
    const Rect box{at.x - 0.4, at.y - cap::body - 0.5, w + 0.8, cap::body + 1.4};
    if (!p.is_free(box)) continue;
    p.taken.push_back(box);
    sheet.shapes.push_back(Text{at, Anchor::left, cap::body, bold, colour, words, w + 0.2});
    return;
  }
}

// Soft where it may be, whole from where it likely is.
void draw_right(Sheet& sheet, const Plot& p, const PansView::Curve& curve) {
  if (!curve.ready_h || curve.layer == 0) return;
  const Theme& t = sheet.theme;
  const double low = p.x(curve.ready_h->low), middle = p.x(curve.ready_h->middle);
  if (low >= p.in.right() - 1) return;
  const double full = std::min(std::max(low + 0.5, middle), p.in.right());
  sheet.shapes.push_back(
      Gradient{{low, p.in.y, full - low, p.in.h}, {{low, t.slab}, {full, t.right}}});
  if (full < p.in.right())
    sheet.shapes.push_back(Box{{full, p.in.y, p.in.right() - full, p.in.h}, 0, t.right, clear, 0});
}

std::string day_words(std::int64_t ms, int utc_offset_min) {
  constexpr std::array days{Say::pans_monday,   Say::pans_tuesday, Say::pans_wednesday,
                            Say::pans_thursday, Say::pans_friday,  Say::pans_saturday,
                            Say::pans_sunday};
  const std::int64_t day = words::day_number(ms, utc_offset_min) + 3; // 1970 began on a Thursday
  return say(days[static_cast<std::size_t>((day % 7 + 7) % 7)]);
}

void draw_tick(Sheet& sheet, const Plot& p, double x) {
  const double y = p.in.bottom();
  sheet.shapes.push_back(Polyline{{{x, y}, {x, y + 1.4}}, 0.3, sheet.theme.ink, 0});
}

// For a week each day by its name, between its midnights.
void draw_named_days(Sheet& sheet, const Plot& p, const PansView::Curve& curve) {
  const int offset = sheet.view.utc_offset_min;
  const double y = p.in.bottom() + 1.6 + cap::body;
  double from = p.in.x - 1;
  for (std::int64_t day = words::day_number(curve.poured_at, offset);; ++day) {
    const std::int64_t midnight =
        day * session::a_day_ms - static_cast<std::int64_t>(offset) * 60'000;
    const double begins = static_cast<double>(midnight - curve.poured_at) / ms_per_h;
    if (begins >= p.to_h) return;
    if (begins > 0) draw_tick(sheet, p, p.x(begins));
    const std::string words = day_words(std::max(midnight, curve.poured_at), offset);
    const double w = width_mm(words, cap::body, false);
    const double c = (p.x(begins) + p.x(begins + 24)) / 2;
    if (c - w / 2 < from || c + w / 2 > p.in.right() + 1) continue;
    write(sheet, {c, y}, Anchor::centre, slab_letters, sheet.theme.ink, words, w + 0.2);
    from = c + w / 2 + 2;
  }
}

// Then days counted from the pour.
void draw_counted_days(Sheet& sheet, const Plot& p) {
  constexpr double label_mm = 17;
  const double y = p.in.bottom() + 1.6 + cap::body, day_mm = p.in.w * 24 / p.to_h;
  const int step = std::max(1, static_cast<int>(std::ceil(label_mm / day_mm)));
  for (int day = 0; day * 24 < p.to_h; day += step) {
    const double x = p.x(day * 24.0);
    const std::string words = say(Say::pans_day, {std::to_string(day)});
    const double w = width_mm(words, cap::body, false);
    draw_tick(sheet, p, x);
    if (x + 0.8 + w > p.in.right()) continue;
    write(sheet, {x + 0.8, y}, Anchor::left, slab_letters, sheet.theme.ink, words, w + 0.2);
  }
}

void draw_days(Sheet& sheet, const Plot& p, const PansView::Curve& curve) {
  const double y = p.in.bottom();
  sheet.shapes.push_back(Polyline{{{p.in.x, y}, {p.in.right(), y}}, 0.3, sheet.theme.ink, 0});
  if (p.to_h < 7 * 24)
    draw_named_days(sheet, p, curve);
  else
    draw_counted_days(sheet, p);
}

void draw_ahead(Sheet& sheet, Plot& p, const PansView::Curve& curve) {
  const Theme& t = sheet.theme;
  const auto& all = curve.ahead;
  if (all.size() < 2) return;
  Colour veil = t.ink;
  veil.a = 70;
  constexpr int slices = 5; // so narrow that their steps look like a line
  for (std::size_t i = 1; i < all.size(); ++i) {
    const double x = p.x(all[i - 1].hours), w = (p.x(all[i].hours) - x) / slices;
    for (int k = 0; k < slices; ++k) {
      const double share = (k + 0.5) / slices;
      const double top = p.y(std::lerp(all[i - 1].high_g, all[i].high_g, share)),
                   bottom = p.y(std::lerp(all[i - 1].low_g, all[i].low_g, share));
      if (bottom - top > 0.3)
        sheet.shapes.push_back(Box{{x + k * w, top, w, bottom - top}, 0, veil, clear, 0});
    }
  }
  std::vector<Point> past, ahead;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Point at = p.at(all[i].hours, all[i].g);
    p.take(at, 1);
    p.take({at.x, p.y(all[i].high_g)}, 0.6);
    const bool gone = all[i].hours <= curve.now_h;
    if (gone) past.push_back(at);
    // A dash begins anew at each point.
    if ((!gone && i % 4 == 0) || (gone && (i + 1 == all.size() || all[i + 1].hours > curve.now_h)))
      ahead.push_back(at);
  }
  if (past.size() > 1) sheet.shapes.push_back(Polyline{past, 0.6, t.ink, 0});
  if (ahead.size() > 1) sheet.shapes.push_back(Polyline{ahead, 0.5, t.ink, 0.8});
}

void draw_weighings(Sheet& sheet, Plot& p, const PansView& pans) {
  const Theme& t = sheet.theme;
  std::vector<Point> points;
  for (const auto& one : pans.weighings) points.push_back(p.at(one.hours, one.g));
  for (std::size_t i = 1; i < points.size(); ++i)
    for (int k = 0; k <= 20; ++k) {
      const double s = k / 20.0;
      p.take({points[i - 1].x + (points[i].x - points[i - 1].x) * s,
              points[i - 1].y + (points[i].y - points[i - 1].y) * s},
             0.5);
    }
  if (points.size() > 1) sheet.shapes.push_back(Polyline{points, 0.6, t.ink, 0});
  for (const Point& at : points) {
    sheet.shapes.push_back(Disc{at, 1.1, t.slab, t.ink, 0.45});
    p.take(at, 1.6);
  }
}

double g_now(const PansView::Curve& curve) {
  const auto& all = curve.ahead;
  const auto after =
      std::find_if(all.begin(), all.end(), [&](const auto& a) { return a.hours >= curve.now_h; });
  return after == all.end() ? all.back().g : after->g;
}

void draw_labels(Sheet& sheet, Plot& p, const PansView& pans) {
  const Theme& t = sheet.theme;
  const PansView::Curve& curve = pans.curve;
  const double row = cap::body * line_step, top = p.in.y + cap::body + 1.2;
  const double now = p.x(curve.now_h);
  if (!curve.ahead.empty()) {
    const Point at{now, p.y(g_now(curve))};
    sheet.shapes.push_back(
        Polyline{{{now, top + row - cap::body}, {now, p.in.bottom()}}, 0.3, t.ink, 0});
    sheet.shapes.push_back(Disc{at, 1.2, t.ink, clear, 0});
    p.taken.push_back({now - 0.6, top + row - cap::body, 1.2, p.in.h});
    p.take(at, 1.5);
  }
  if (curve.ready_h && curve.layer > 0) {
    const double x = std::max(p.x(curve.ready_h->middle), p.in.x) + 1.5;
    label(sheet, p, {{x, top}}, say(Say::pans_can_go_on, {std::to_string(curve.layer)}), true,
          t.right_ink);
  }
  const std::string word = say(Say::pans_curve_now);
  const double left = now - 1.4 - width_mm(word, cap::body, false);
  if (!curve.ahead.empty())
    label(sheet, p, {{now + 1.4, top + row}, {left, top + row}, {now + 1.4, p.in.bottom() - 1.6}},
          word, false, t.ink);
  for (const auto& one : pans.weighings) {
    const Point at = p.at(one.hours, one.g);
    const std::string g = grams_words(one.g);
    const double w = width_mm(g, cap::body, false);
    label(sheet, p,
          {{at.x + 2, at.y - 1.2},
           {at.x + 2.2, at.y + cap::body / 2},
           {at.x - w / 2, at.y - 2.2},
           {at.x - w - 2, at.y + 4.6}},
          g, false, t.ink);
  }
}

}

void draw_pan_curve(Sheet& sheet, const Rect& area, const PansView& pans) {
  Plot p = plot_of({area.x, area.y, area.w, area.h - cap::body - 2.2}, pans);
  draw_right(sheet, p, pans.curve);
  draw_days(sheet, p, pans.curve);
  draw_ahead(sheet, p, pans.curve);
  draw_weighings(sheet, p, pans);
  draw_labels(sheet, p, pans);
}

}
