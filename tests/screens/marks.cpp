#include "screens/marks.hpp"

#include <cmath>
#include <numbers>
#include <sstream>

namespace eyes {

using namespace screens;

namespace {

constexpr double least = 3;       // WCAG 2.2, 1.4.11
constexpr int same = 8;           // levels of one channel: one colour, up to rounding
constexpr int covered = 60;       // so far from the shape's colour: something lies over it
constexpr double clean_px = 2.0;  // beyond a stroke's edge, clear of its smoothing
constexpr double beside_px = 5.0; // farther off it is beside no more

struct Place { // in pixels, with the way out
  double x, y, out_x, out_y;
};

struct Walk {
  double px;
  std::vector<Place> places = {};

  void side(Point a, Point b, Point inside) {
    const double dx = b.x - a.x, dy = b.y - a.y, length = std::hypot(dx, dy);
    if (length < 0.4) return;
    double nx = dy / length, ny = -dx / length;
    if (nx * (a.x - inside.x) + ny * (a.y - inside.y) < 0) nx = -nx, ny = -ny;
    const int steps = std::max(2, static_cast<int>(length / 0.8));
    for (int i = 1; i < steps; ++i) { // not at the corners
      const double t = static_cast<double>(i) / steps;
      places.push_back({(a.x + dx * t) * px, (a.y + dy * t) * px, nx, ny});
    }
  }
};

struct Edges {
  const Frame& frame;

  // The pixel nearest to the colour across the stroke; absent where that is hidden.
  std::optional<Colour> ink(const Place& p, double half, Colour colour) const {
    Colour best;
    int off = 256;
    for (double d = -half - 0.5; d <= half + 0.5; d += 0.5) {
      const Colour c = at(p, d);
      if (apart(c, colour) < off) off = apart(c, colour), best = c;
    }
    return off <= covered ? std::optional(best) : std::nullopt;
  }

  Colour at(const Place& p, double off) const {
    return frame.pixel(static_cast<int>(std::floor(p.x + p.out_x * off)),
                       static_cast<int>(std::floor(p.y + p.out_y * off)));
  }

  // What lies to one side: the first colour that goes on for more than a pixel, so that the smooth
  // edge of something else is not taken for a ground. Absent where all is busy.
  std::optional<Colour> ground(const Place& p, double from, double way) const {
    for (double off = from; off <= from + beside_px; off += 0.5)
      if (apart(at(p, way * off), at(p, way * (off + 1))) <= same) return at(p, way * off);
    return std::nullopt;
  }

  void look(Edge& edge, std::size_t side, Colour ink, Colour beside) const {
    if (apart(ink, beside) <= same) return; // more of the same
    ++edge.seen[side];
    const double ratio = contrast(ink, beside);
    edge.faint[side] += ratio < least;
    if (ratio >= edge.worst) return;
    edge.worst = ratio;
    edge.ink = ink;
    edge.beside = beside;
  }

  // A stroke is needed where its two sides do not stand out against each other.
  Edge stroke(const std::vector<Place>& places, double width_px, Colour colour) const {
    Edge edge;
    const double half = width_px / 2;
    for (const Place& p : places) {
      const auto seen = ink(p, half, colour);
      const auto outer = ground(p, half + clean_px, 1), inner = ground(p, half + clean_px, -1);
      if (!seen || !outer || !inner) continue;
      if (contrast(*inner, *outer) >= least) {
        ++edge.seen[0];
        continue;
      }
      look(edge, 0, *seen, *outer);
      look(edge, 1, *seen, *inner);
    }
    return edge;
  }

  // A fill without an outline; its own colour is looked for well within it.
  Edge rim(const std::vector<Place>& places, Colour colour) const {
    Edge edge;
    for (const Place& p : places) {
      const Colour inner = at(p, -clean_px);
      const auto outer = ground(p, clean_px, 1);
      if (apart(inner, colour) <= same && outer) look(edge, 0, inner, *outer);
    }
    return edge;
  }
};

std::vector<Place> around(const Disc& d, double px) {
  std::vector<Place> out;
  for (int i = 0; i < 24; ++i) {
    const double a = std::numbers::pi * (i + 0.5) / 12;
    out.push_back({(d.centre.x + d.radius * std::cos(a)) * px,
                   (d.centre.y + d.radius * std::sin(a)) * px, std::cos(a), std::sin(a)});
  }
  return out;
}

std::vector<Place> around(const Polygon& p, double px) {
  Point middle;
  for (const Point& at : p.points) {
    middle.x += at.x / static_cast<double>(p.points.size());
    middle.y += at.y / static_cast<double>(p.points.size());
  }
  Walk walk{px};
  for (std::size_t i = 0; i < p.points.size(); ++i)
    walk.side(p.points[i], p.points[(i + 1) % p.points.size()], middle);
  return walk.places;
}

std::vector<Place> around(const Box& b, double px) {
  const Rect& r = b.rect;
  Walk walk{px};
  const double k = std::max(b.radius, 0.6);
  walk.side({r.x + k, r.y}, {r.right() - k, r.y}, r.centre());
  walk.side({r.x + k, r.bottom()}, {r.right() - k, r.bottom()}, r.centre());
  walk.side({r.x, r.y + k}, {r.x, r.bottom() - k}, r.centre());
  walk.side({r.right(), r.y + k}, {r.right(), r.bottom() - k}, r.centre());
  return walk.places;
}

std::vector<Place> along(const Polyline& line, double px) {
  Walk walk{px};
  for (std::size_t i = 1; i < line.points.size(); ++i)
    walk.side(line.points[i - 1], line.points[i], {});
  return walk.places;
}

struct EdgeOf {
  const Frame& frame;
  const Shape& whole;
  std::optional<Edge> operator()(const Text&) const { return {}; }
  std::optional<Edge> operator()(const Clip&) const { return {}; }
  std::optional<Edge> operator()(const Gradient&) const { return {}; }
  std::optional<Edge> operator()(const Picture&) const { return {}; }
  std::optional<Edge> operator()(const Polyline& l) const {
    return Edges{frame}.stroke(along(l, frame.px_per_mm), l.width_mm * frame.px_per_mm, l.colour);
  }
  template <class Filled>
  std::optional<Edge> operator()(const Filled& f) const {
    const auto places = around(f, frame.px_per_mm);
    if (f.outline.a && f.outline_mm > 0)
      return Edges{frame}.stroke(places, f.outline_mm * frame.px_per_mm, f.outline);
    if (std::is_same_v<Filled, Box> || f.fill.a == 0) return {};
    if (const auto* disc = std::get_if<Disc>(&whole); disc && disc->radius * frame.px_per_mm < 3)
      return {}; // too small to be looked into
    return Edges{frame}.rim(places, f.fill);
  }
};

struct Described {
  std::ostringstream& out;
  void operator()(const Box& b) const {
    out << "box " << b.rect.x << ' ' << b.rect.y << ' ' << b.rect.w << ' ' << b.rect.h;
  }
  void operator()(const Disc& d) const {
    out << "disc " << d.centre.x << ' ' << d.centre.y << ' ' << d.radius;
  }
  void operator()(const Polygon& p) const {
    out << "polygon of " << p.points.size() << " at " << p.points[0].x << ' ' << p.points[0].y;
  }
  void operator()(const Polyline& l) const {
    out << "line of " << l.points.size() << " from " << l.points[0].x << ' ' << l.points[0].y
        << " to " << l.points.back().x << ' ' << l.points.back().y;
  }
  template <class Other>
  void operator()(const Other&) const {
    out << "a shape";
  }
};

}

std::optional<Edge> edge_of(const Shape& shape, const Frame& frame) {
  return std::visit(EdgeOf{frame, shape}, shape);
}

std::string described(const Shape& shape) {
  std::ostringstream out;
  std::visit(Described{out}, shape);
  return out.str();
}

}
