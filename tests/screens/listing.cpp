#include "screens/listing.hpp"

#include "screens/measure.hpp"

#include <algorithm>

namespace views {

using namespace screens;
using words::invariant;

namespace {

std::string mm(double value) { return invariant(value, 1); }

std::string at(Point p) { return mm(p.x) + "," + mm(p.y); }

std::string rect(const Rect& r) { return mm(r.x) + " " + mm(r.y) + " " + mm(r.w) + " " + mm(r.h); }

std::string colour(Colour c) {
  if (c.a == 0) return "none";
  char text[16];
  std::snprintf(text, sizeof text, c.a == 255 ? "#%02x%02x%02x" : "#%02x%02x%02x/%02x", c.r, c.g,
                c.b, c.a);
  return text;
}

std::string points(const std::vector<Point>& list) {
  std::string out;
  for (const Point& p : list) out += " " + at(p);
  return out;
}

template <class Filled>
std::string filled(const Filled& f) {
  return " " + colour(f.fill) + " edge " + invariant(f.outline_mm, 2) + " " + colour(f.outline);
}

struct LineOf {
  std::string operator()(const Box& b) const {
    return "box " + rect(b.rect) + " round " + mm(b.radius) + filled(b);
  }
  std::string operator()(const Disc& d) const {
    return "disc " + at(d.centre) + " " + invariant(d.radius, 2) + filled(d);
  }
  std::string operator()(const Polygon& p) const {
    return "polygon" + filled(p) + points(p.points);
  }
  std::string operator()(const Polyline& l) const {
    return "line " + invariant(l.width_mm, 2) + " " + colour(l.colour) + " dash " + mm(l.dash_mm) +
           points(l.points);
  }
  std::string operator()(const Gradient& g) const {
    std::string out = "gradient " + rect(g.rect);
    for (std::size_t i = 0; i < g.stops.size(); i += 8) // enough to see where it lies
      out += " " + mm(g.stops[i].x) + " " + colour(g.stops[i].colour);
    return out;
  }
  std::string operator()(const Text& t) const {
    constexpr const char* anchors[]{"left", "centre", "right"};
    return "text " + at(t.at) + " " + anchors[static_cast<int>(t.anchor)] + " " + mm(t.cap_mm) +
           (t.bold ? " bold " : " ") + colour(t.colour) + " “" + t.words + "”";
  }
  std::string operator()(const Picture& p) const {
    return "picture " + rect(p.rect) + (p.large ? " large " : " ") + p.image;
  }
  std::string operator()(const Clip& c) const { return "clip " + rect(c.rect); }
};

struct Bounds {
  Rect operator()(const Box& b) const { return b.rect; }
  Rect operator()(const Disc& d) const {
    return {d.centre.x - d.radius, d.centre.y - d.radius, 2 * d.radius, 2 * d.radius};
  }
  Rect operator()(const Polygon& p) const { return of(p.points); }
  Rect operator()(const Polyline& l) const { return of(l.points); }
  Rect operator()(const Gradient& g) const { return g.rect; }
  Rect operator()(const Clip& c) const { return c.rect; }
  Rect operator()(const Picture& p) const { return p.rect; }
  Rect operator()(const Text& t) const {
    const double w = width_mm(t.words, t.cap_mm, t.bold);
    const double x = t.anchor == Anchor::left     ? t.at.x
                     : t.anchor == Anchor::centre ? t.at.x - w / 2
                                                  : t.at.x - w;
    return {x, t.at.y - t.cap_mm, w, t.cap_mm};
  }

  static Rect of(const std::vector<Point>& list) {
    if (list.empty()) return {};
    const auto [left, right] = std::minmax_element(
        list.begin(), list.end(), [](const Point& a, const Point& b) { return a.x < b.x; });
    const auto [top, bottom] = std::minmax_element(
        list.begin(), list.end(), [](const Point& a, const Point& b) { return a.y < b.y; });
    return {left->x, top->y, right->x - left->x, bottom->y - top->y};
  }
};

struct Colourless {
  static void wash(Colour& c) {
    if (c.a) c = rgb(0x808080);
  }
  template <class Filled>
  void operator()(Filled& f) const {
    wash(f.fill);
    wash(f.outline);
  }
  void operator()(Polyline& l) const { wash(l.colour); }
  void operator()(Text& t) const { wash(t.colour); }
  void operator()(Clip&) const {}
  void operator()(Picture&) const {}
  void operator()(Gradient& g) const {
    for (Stop& stop : g.stops) wash(stop.colour);
  }
};

struct Move {
  double x, y;
  void to(Point& p) const {
    p.x += x;
    p.y += y;
  }
  void to(Rect& r) const {
    r.x += x;
    r.y += y;
  }
  void operator()(Box& b) const { to(b.rect); }
  void operator()(Disc& d) const { to(d.centre); }
  void operator()(Text& t) const { to(t.at); }
  void operator()(Clip& c) const { to(c.rect); }
  void operator()(Picture& p) const { to(p.rect); }
  void operator()(Gradient& g) const {
    to(g.rect);
    for (Stop& stop : g.stops) stop.x += x;
  }
  template <class Pointed>
  void operator()(Pointed& s) const {
    for (Point& p : s.points) to(p);
  }
};

}

std::string line_of(const Shape& shape) { return std::visit(LineOf{}, shape); }

std::string listing(const std::vector<Shape>& shapes) {
  std::string out;
  for (const Shape& shape : shapes) out += line_of(shape) + "\n";
  return out;
}

Shape colourless(Shape shape) {
  std::visit(Colourless{}, shape);
  return shape;
}

Shape moved(Shape shape, double x, double y) {
  std::visit(Move{x, y}, shape);
  return shape;
}

Rect bounds_of(const Shape& shape) { return std::visit(Bounds{}, shape); }

}
