#include "session/trail_shapes.hpp"

#include "session/in_words.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace session {

using namespace shapes;
using Say = words::SessionSay;
using words::say;

namespace {

constexpr double thin_mm = 0.3;

shapes::Polyline line(Point a, Point b, double width_mm, Colour colour, double dash_mm = 0) {
  return {{a, b}, width_mm, colour, dash_mm};
}

// Notes that contradict each other: right is here or there, and less likely between.
bool lies_in_two(const paint::Band& band) {
  constexpr double much_less = 0.7;
  double most = 0;
  for (const double chance : band.right) most = std::max(most, chance);
  return paint::chance_right(band, std::exp((band.from + band.to) / 2)) < much_less * most;
}

void add_band(std::vector<Shape>& out, const TrailPlot& p) {
  if (!p.trail.band) return;
  const TrailStyle& s = p.style;
  const Rect& in = s.inside;
  const Rect r{in.x - s.fade_mm, s.area.y, in.w + 2 * s.fade_mm, in.bottom() - s.area.y};
  out.push_back(Gradient{r, band_stops(*p.trail.band, p.flow, s.fade_mm, s.ground, s.right)});
  if (p.trail.points.empty()) return;     // words stand there
  if (lies_in_two(*p.trail.band)) return; // its edges stand between them
  const auto [low, high] = paint::band_edges(*p.trail.band);
  for (const double edge : {low, high})
    out.push_back(
        line({p.flow.x(edge), in.y}, {p.flow.x(edge), in.bottom()}, thin_mm, s.right_ink, 0.9));
}

// The captions above; where the band lies at one end, that end's word steps aside.
void add_captions(std::vector<Shape>& out, const TrailPlot& p) {
  const TrailStyle& s = p.style;
  const double y = s.area.y + s.cap_mm + 3.2, air = 3;
  double from = s.inside.right(), to = s.inside.x; // of the word in the middle
  if (p.trail.band) {
    const std::string words = right_words(*p.trail.band);
    const double half = s.width_mm(words, s.cap_mm, true) / 2;
    const double x = std::clamp(p.flow.x(std::exp(p.trail.band->middle)), s.inside.x + half,
                                s.inside.right() - half);
    out.push_back(Text{{x, y}, Anchor::centre, s.cap_mm, true, s.right_ink, words, 2 * half});
    from = x - half;
    to = x + half;
  }
  const auto end_word = [&](double x, Anchor anchor, const std::string& words, double room) {
    out.push_back(s.fitted(Text{{x, y}, anchor, s.cap_mm, false, s.quiet, words, room}, s.cap_mm));
  };
  const std::string sticky = say(Say::feel_too_sticky), runny = say(Say::feel_too_runny);
  const double left = s.area.x + trail_edge_mm, right = s.inside.right();
  if (left + s.width_mm(sticky, s.cap_mm, false) + air < from)
    end_word(left, Anchor::left, sticky, from);
  if (right - s.width_mm(runny, s.cap_mm, false) - air > to)
    end_word(right, Anchor::right, runny, 60);
}

void add_axis(std::vector<Shape>& out, const TrailPlot& p) {
  const TrailStyle& s = p.style;
  const double y = s.inside.bottom();
  const auto width = [&](std::string_view words) { return s.width_mm(words, s.cap_mm, false); };
  out.push_back(line({s.inside.x, y}, {s.inside.right(), y}, thin_mm, s.quiet));
  for (const paint::Tick& tick : paint::ticks(p.flow, width, s.cap_mm * 0.7)) {
    const double x = p.flow.x(tick.flow), half = width(tick.label) / 2;
    out.push_back(line({x, y}, {x, y + 1.3}, thin_mm, s.quiet));
    const double at = std::clamp(x, s.area.x + 2 + half, s.area.right() - 2 - half);
    out.push_back(Text{{at, y + 2.4 + s.cap_mm},
                       Anchor::centre,
                       s.cap_mm,
                       false,
                       s.quiet,
                       tick.label,
                       2 * half + 1});
  }
  const Point below{s.inside.right(), s.area.bottom() - s.cap_mm * 0.8};
  out.push_back(s.fitted(
      Text{below, Anchor::right, s.cap_mm, false, s.quiet, say(Say::trail_caption), s.inside.w},
      s.cap_mm));
}

}

paint::FlowScale flow_scale(const TrailView& trail, double left, double right) {
  std::vector<double> shown;
  for (const auto& point : trail.points)
    if (trail.whole || point.clock >= trail.from) shown.push_back(point.flow);
  for (const auto& point : trail.beside) shown.push_back(point.flow);
  for (const auto& flow : {trail.now, trail.landing, trail.next})
    if (flow) shown.push_back(*flow);
  return paint::flow_scale(trail.band, shown, left, right);
}

TimeScale time_scale(const TrailView& trail, double top, double bottom) {
  return time_scale(trail.points, trail.from, trail.to, trail.whole, top, bottom);
}

TrailPlot trail_plot(const TrailView& trail, const TrailStyle& style) {
  const Rect& in = style.inside;
  TrailPlot plot{trail,
                 style,
                 flow_scale(trail, in.x, in.right()),
                 time_scale(trail, in.y + style.head, in.bottom() - style.foot),
                 {}};
  plot.pieces = trail_pieces(trail.points, plot.flow, plot.time);
  return plot;
}

std::vector<Shape> trail_ground(const TrailPlot& p) {
  std::vector<Shape> out;
  add_band(out, p);
  add_captions(out, p);
  add_axis(out, p);
  return out;
}

std::vector<Shape> trail_way(const TrailPlot& p) {
  const auto& pieces = p.pieces;
  std::vector<Shape> out;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0) // nobody was there: the way between is not known
      out.push_back(line(pieces[i - 1].back(), pieces[i].front(), 0.4, p.style.rule, 0.8));
    out.push_back(shapes::Polyline{pieces[i], p.style.trail_mm, p.style.ink, 0});
  }
  return out;
}

std::vector<Shape> trail_stages(const TrailPlot& p) {
  std::vector<Shape> out;
  if (!p.trail.whole) return out;
  const TrailStyle& s = p.style;
  double said = s.inside.y - s.cap_mm; // the lowest word so far
  for (const Pass& pass : p.trail.passes) {
    if (pass.stage == Stage::resting) continue;
    const double top = p.time.y(pass.start), end = p.time.y(pass.end.value_or(p.trail.to));
    const double bottom = std::max(end - 1.5, top + 0.6);
    out.push_back(line({s.bar_x, top}, {s.bar_x, bottom}, s.trail_mm, s.ink));
    const double y = (top + bottom) / 2 + s.cap_mm / 2;
    if (y < said + s.cap_mm * 1.5) continue;
    out.push_back(s.fitted(Text{{s.bar_x + 2, y},
                                Anchor::left,
                                s.cap_mm,
                                false,
                                s.quiet,
                                stage_words(pass),
                                s.inside.x - s.bar_x - 3},
                           s.least_mm));
    said = y;
  }
  return out;
}

Rect trail_window(const TrailPlot& p) {
  const Rect& in = p.style.inside;
  return {in.x - 2, in.y, in.w + 4, in.h};
}

Point beside_others(Point at, double size, const std::vector<Point>& others) {
  const double step = size * 1.08;
  constexpr double places[]{0, 1, 2, 3, -1, -2, -3}; // words stand at the left
  const bool left_of_them = std::any_of(others.begin(), others.end(), [&](const Point& other) {
    return other.x > at.x && other.x - at.x < step && std::abs(other.y - at.y) < size * 0.8;
  });
  for (const double place : places) {
    const Point here{at.x + (left_of_them ? -place : place) * step, at.y};
    const bool free = std::none_of(others.begin(), others.end(), [&](const Point& other) {
      return std::abs(other.x - here.x) < step * 0.99 && std::abs(other.y - here.y) < size * 0.8;
    });
    if (free) return here;
  }
  return at;
}

std::vector<std::vector<Point>> trail_pieces(const std::vector<TrailPoint>& points,
                                             const paint::FlowScale& flow, const TimeScale& time) {
  std::vector<std::vector<Point>> pieces;
  for (const auto& point : points) {
    if (!std::isfinite(point.flow)) continue;
    if (pieces.empty() || point.after_gap) pieces.emplace_back();
    pieces.back().push_back({flow.x(point.flow), time.y(point.clock)});
  }
  return pieces;
}

std::vector<Stop> band_stops(const paint::Band& band, const paint::FlowScale& scale,
                             double margin_mm, Colour away, Colour right) {
  const int steps = std::max(2, static_cast<int>(scale.right - scale.left)); // one a mm
  std::vector<Stop> stops{{scale.left - margin_mm, away}};
  for (int i = 0; i <= steps; ++i) {
    const double x = scale.left + (scale.right - scale.left) * i / steps;
    const double share = paint::chance_right(band, scale.flow(x)) / certain;
    stops.push_back(
        {x, mixed(away, right, std::isfinite(share) ? std::clamp(share, 0.0, 1.0) : 0)});
  }
  stops.push_back({scale.right + margin_mm, away});
  return stops;
}

}
