#include "paper/svg.hpp"

#include "words/lists.hpp"

#include <utility>

namespace paper {

using namespace session::shapes;
using session::Point;
using session::Rect;

namespace {

constexpr words::EnumTable<Anchor, std::string_view> text_anchors{
    {{Anchor::left, "start"}, {Anchor::centre, "middle"}, {Anchor::right, "end"}}};

unsigned rgb_of(Colour c) {
  return static_cast<unsigned>(c.r) << 16 | static_cast<unsigned>(c.g) << 8 | c.b;
}

Attributes joined(Attributes a, const Attributes& more) {
  a.insert(a.end(), more.begin(), more.end());
  return a;
}

Attributes of_rect(const Rect& r) {
  return {{"x", mm(r.x)}, {"y", mm(r.y)}, {"width", mm(r.w)}, {"height", mm(r.h)}};
}

// A colour that lets through what lies behind has its share in an attribute of its own.
Attributes coloured(const char* name, const char* opacity_name, Colour colour) {
  Attributes out{{name, css(colour)}};
  if (colour.a > 0 && colour.a < 255) out.push_back({opacity_name, mm(colour.a / 255.0)});
  return out;
}

Attributes stroked(Colour colour, double width_mm) {
  return joined(coloured("stroke", "stroke-opacity", colour), {{"stroke-width", mm(width_mm)}});
}

template <class Filled>
Attributes filled(const Filled& shape) {
  Attributes out = coloured("fill", "fill-opacity", shape.fill);
  if (shape.outline.a == 0 || shape.outline_mm <= 0) return out;
  return joined(out, stroked(shape.outline, shape.outline_mm));
}

Markup stop_of(const Stop& stop, const Rect& in) {
  Attributes all{{"offset", mm((stop.x - in.x) / in.w)}, {"stop-color", hex(rgb_of(stop.colour))}};
  if (stop.colour.a < 255) all.push_back({"stop-opacity", mm(stop.colour.a / 255.0)});
  return element("stop", all);
}

struct Drawing {
  const std::string name;
  Markup done = {};    // before the clip
  Markup clipped = {}; // since it
  std::string clip = {};
  int ids = 0;

  std::string next_id() { return name + "-" + std::to_string(++ids); }
  void add(const Markup& markup) { (clip.empty() ? done : clipped) += markup; }
  void end_clip() {
    if (!clip.empty()) done += element("g", {{"clip-path", "url(#" + clip + ")"}}, {clipped});
    clip.clear();
    clipped = {};
  }

  void operator()(const Box& b) {
    add(element("rect", joined(joined(of_rect(b.rect), {{"rx", mm(b.radius)}}), filled(b))));
  }
  void operator()(const Disc& d) {
    const Attributes at{{"cx", mm(d.centre.x)}, {"cy", mm(d.centre.y)}, {"r", mm(d.radius)}};
    add(element("circle", joined(at, filled(d))));
  }
  void operator()(const Polygon& p) {
    std::string corners;
    for (const Point& c : p.points)
      corners += (corners.empty() ? "" : " ") + mm(c.x) + "," + mm(c.y);
    add(element("polygon", joined({{"points", corners}}, filled(p))));
  }
  void operator()(const Polyline& l) {
    std::string path;
    for (const Point& p : l.points) path += (path.empty() ? "M" : "L") + mm(p.x) + " " + mm(p.y);
    Attributes all = joined({{"d", path}, {"fill", "none"}}, stroked(l.colour, l.width_mm));
    if (l.dash_mm > 0)
      all.push_back({"stroke-dasharray", mm(l.dash_mm) + " " + mm(l.dash_mm)});
    else
      all = joined(all, {{"stroke-linejoin", "round"}, {"stroke-linecap", "round"}});
    add(element("path", all));
  }
  void operator()(const Gradient& g) {
    if (g.rect.w <= 0 || g.stops.empty()) return;
    const std::string id = next_id();
    std::vector<Markup> stops;
    for (const Stop& stop : g.stops) stops.push_back(stop_of(stop, g.rect));
    add(element("defs", {}, {element("linearGradient", {{"id", id}}, stops)}));
    add(element("rect", joined(of_rect(g.rect), {{"fill", "url(#" + id + ")"}})));
  }
  void operator()(const Text& t) {
    Attributes all{{"x", mm(t.at.x)},
                   {"y", mm(t.at.y)},
                   {"text-anchor", std::string(text_anchors[t.anchor])},
                   {"font-size", mm(t.cap_mm / capital_em)}};
    if (t.bold) all.push_back({"font-weight", "bold"});
    add(element("text", joined(all, coloured("fill", "fill-opacity", t.colour)), t.words));
  }
  void operator()(const Picture&) {} // pixels do not come here
  void operator()(const Clip& c) {
    end_clip();
    if (c.rect == Rect{}) return;
    clip = next_id();
    done += element("defs", {},
                    {element("clipPath", {{"id", clip}}, {element("rect", of_rect(c.rect))})});
  }
};

}

Markup drawing(const std::string& name, session::Size size, const std::vector<Shape>& shapes) {
  Drawing drawing{name};
  for (const Shape& shape : shapes) std::visit(drawing, shape);
  drawing.end_clip();
  return element("svg",
                 {{"xmlns", "http://www.w3.org/2000/svg"},
                  {"width", mm(size.w) + "mm"},
                  {"height", mm(size.h) + "mm"},
                  {"viewBox", "0 0 " + mm(size.w) + " " + mm(size.h)},
                  {"role", "img"}},
                 {drawing.done});
}

std::string css(Colour c) { return c.a == 0 ? "none" : hex(rgb_of(c)); }

}
