#include "screens/trail_geometry.hpp"

#include "screens/measure.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

std::vector<Tick> ticks(const FlowScale& scale, double cap_mm) {
  const auto width = [&](std::string_view label) { return width_mm(label, cap_mm, false); };
  return paint::ticks(scale, width, cap_mm * 0.7);
}

// Liang and Barsky's clipping: is any of the segment inside?
bool touches(const Rect& r, const Segment& s) {
  double enter = 0, leave = 1;
  const double dx = s.b.x - s.a.x, dy = s.b.y - s.a.y;
  const auto edge = [&](double p, double q) { // p * t <= q
    if (p == 0) return q >= 0;
    if (p < 0)
      enter = std::max(enter, q / p);
    else
      leave = std::min(leave, q / p);
    return enter <= leave;
  };
  return edge(-dx, s.a.x - r.x) && edge(dx, r.right() - s.a.x) && edge(-dy, s.a.y - r.y) &&
         edge(dy, r.bottom() - s.a.y);
}

bool overlap(const Rect& a, const Rect& b) {
  return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom();
}

std::vector<std::vector<Point>> dashes(const std::vector<Point>& line, double length_mm) {
  std::vector<std::vector<Point>> out;
  bool drawn = true;
  double left = length_mm; // of this dash, or of this gap
  for (std::size_t i = 1; i < line.size(); ++i) {
    Point at = line[i - 1];
    const Point to = line[i];
    for (double rest = std::hypot(to.x - at.x, to.y - at.y); rest > 0;) {
      const double step = std::min(rest, left);
      const Point next{at.x + (to.x - at.x) * step / rest, at.y + (to.y - at.y) * step / rest};
      if (drawn && (out.empty() || left == length_mm)) out.push_back({at});
      if (drawn) out.back().push_back(next);
      at = next;
      rest -= step;
      left -= step;
      if (left > 1e-9) continue;
      drawn = !drawn;
      left = length_mm;
    }
  }
  return out;
}

std::vector<std::vector<Point>> ghost_pieces(const bench::TrailView& trail, const FlowScale& flow,
                                             const TimeScale& time) {
  std::vector<session::TrailPoint> shown;
  for (const auto& point : trail.ghost)
    if (point.clock >= trail.from && point.clock <= std::max(trail.to, trail.from + 120))
      shown.push_back(point);
  return trail_pieces(shown, flow, time);
}

namespace {

enum class Side { left, right, middle };

// `down` below its mark, `out` further to the side than beside it.
Placed placed(const Flag& flag, Side side, double down, double out, double cap_mm) {
  const double air = 0.7, off = flag.size / 2 + 2.1 + out;
  const double width = width_mm(flag.words, cap_mm, false);
  const double x = side == Side::left    ? flag.at.x - off - width
                   : side == Side::right ? flag.at.x + off
                                         : flag.at.x - width / 2;
  const double baseline = flag.at.y + cap_mm / 2 + down;
  return {{x - air, baseline - cap_mm - air, width + 2 * air, cap_mm * 1.3 + 2 * air},
          {x, baseline},
          std::nullopt};
}

// The end of the words that is nearest to the mark, and the mark's own edge.
Placed led(Placed place, const Flag& flag) {
  const Rect& box = place.box;
  const Point from{flag.at.x < box.x ? box.x : box.right(), box.centre().y};
  const double dx = flag.at.x - from.x, dy = flag.at.y - from.y;
  const double length = std::hypot(dx, dy), share = 1 - flag.size / 2 / length;
  place.leader = Segment{from, {from.x + dx * share, from.y + dy * share}};
  return place;
}

// A leader may cross the trail, but neither words nor marks: its own mark it only reaches.
bool leads(const Placed& place, const Taken& taken) {
  return std::none_of(taken.boxes.begin(), taken.boxes.end(),
                      [&](const Rect& other) { return touches(inset(other, 0.2), *place.leader); });
}

bool free_of(const Rect& box, const Taken& taken) {
  const Rect& in = taken.within;
  if (box.x < in.x || box.right() > in.right() || box.y < in.y || box.bottom() > in.bottom())
    return false;
  return std::none_of(taken.lines.begin(), taken.lines.end(),
                      [&](const Segment& line) { return touches(box, line); }) &&
         std::none_of(taken.boxes.begin(), taken.boxes.end(),
                      [&](const Rect& other) { return overlap(box, other); });
}

}

std::optional<Placed> place_beside(const Flag& flag, const Taken& taken, double cap_mm) {
  for (const double down : {0.0, 0.5, -0.5, 1.0, -1.0})
    for (const Side side : {Side::left, Side::right}) {
      const Placed place = placed(flag, side, down * cap_mm, 0, cap_mm);
      if (free_of(place.box, taken)) return place;
    }
  return std::nullopt;
}

std::vector<std::optional<Placed>> place_labels(const std::vector<Flag>& flags, Taken taken,
                                                double cap_mm, double furthest_mm,
                                                double latest_mm) {
  for (const Flag& flag : flags)
    taken.boxes.push_back(
        {flag.at.x - flag.size / 2, flag.at.y - flag.size / 2, flag.size, flag.size});
  std::vector<std::optional<Placed>> out;
  for (const Flag& flag : flags) {
    out.emplace_back();
    if (flag.words.empty()) continue;
    const auto attempt = [&](Side side, double caps_down) {
      if (out.back()) return;
      const Placed place = placed(flag, side, caps_down * cap_mm, 0, cap_mm);
      if (free_of(place.box, taken)) out.back() = place;
    };
    // Beside the mark, left before right since the trail mostly comes from above left; then lower
    // or higher, as long as it is plain which mark is meant.
    for (const double down : {0.0, 0.5, -0.5, 1.0, -1.0, 1.5, -1.5})
      for (const Side side : {Side::left, Side::right}) attempt(side, down);
    for (const double down : {1.8, -1.8})
      for (const Side side : {Side::middle, Side::left, Side::right}) attempt(side, down);
    const auto attempt_led = [&](Side side, double caps_down, double away_mm) {
      if (out.back()) return;
      const Placed place = led(placed(flag, side, caps_down * cap_mm, away_mm, cap_mm), flag);
      if (free_of(place.box, taken) && leads(place, taken)) out.back() = place;
    };
    const bool latest = &flag == &flags.front();
    const double most = latest ? std::max(furthest_mm, latest_mm) : furthest_mm;
    for (double away = 0; away <= most; away += 7)
      for (const double down : {0.0, 2.6, -2.6, 3.6, -3.6, 4.6, -4.6})
        for (const Side side : {Side::left, Side::right}) attempt_led(side, down, away);
    if (out.back()) taken.boxes.push_back(out.back()->box);
  }
  return out;
}

}
