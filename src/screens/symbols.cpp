// The symbols, drawn: none of them hangs on a glyph that a face may lack.
#include "screens/widgets.hpp"

#include <cmath>
#include <numbers>

namespace screens {

namespace {

constexpr double pi = std::numbers::pi;

// Angles from the right, clockwise on the display.
void arc(std::vector<Point>& points, Point c, double r, double from, double to, int steps) {
  for (int i = 0; i <= steps; ++i) {
    const double a = from + (to - from) * i / steps;
    points.push_back({c.x + r * std::cos(a), c.y + r * std::sin(a)});
  }
}

std::vector<Point> drop(Point c, double size) {
  const double r = size * 0.34;
  const Point belly{c.x, c.y + size * 0.16};
  // Where straight lines from the tip touch the belly.
  const double tip = size * 0.66;
  const double touch = std::asin(r / tip);
  std::vector<Point> points{{c.x, belly.y - tip}};
  arc(points, belly, r, -touch, pi + touch, 28);
  return points;
}

std::vector<Point> even(Point c, double rx, double ry, int corners) {
  std::vector<Point> points;
  for (int i = 0; i < corners; ++i) {
    const double a = 2 * pi * i / corners - pi / 2;
    points.push_back({c.x + rx * std::cos(a), c.y + ry * std::sin(a)});
  }
  return points;
}

std::vector<Point> heap(Point c, double size) {
  std::vector<Point> points;
  const double foot = c.y + size * 0.32;
  for (int i = 0; i <= 24; ++i) {
    const double t = i / 12.0 - 1; // -1 to 1 across
    points.push_back(
        {c.x + t * size * 0.56, foot - size * 0.68 * (1 - std::pow(std::abs(t), 2.2))});
  }
  return points;
}

// Two arcs that meet in points, leaning to the right.
std::vector<Point> leaf(Point c, double size) {
  std::vector<Point> points;
  const auto side = [&](double sign) {
    for (int i = 0; i < 14; ++i) {
      const double t = i / 14.0 * 2 - 1;
      const double along = t * sign * size * 0.54, off = sign * size * 0.27 * (1 - t * t);
      points.push_back({c.x + (along + off) * 0.7071, c.y + (off - along) * 0.7071});
    }
  };
  side(1);
  side(-1);
  return points;
}

// Leaning to the left, its tip down: `along` from -1 to 1 down the glass, `off` across it.
Point on_dropper(Point c, double size, double along, double off) {
  const double u = along * size * 0.6, v = off * size;
  return {c.x + (v - u) * 0.7071, c.y + (u + v) * 0.7071};
}

// A dark bulb, its collar, a glass that narrows to the tip, and the drop that hangs from it.
void dropper(Sheet& sheet, Point c, double size, Colour fill, Colour outline) {
  const double thick = size * 0.085;
  const auto shape = [&](std::initializer_list<Point> ways, Colour inside) {
    std::vector<Point> points;
    for (const Point& way : ways) points.push_back(on_dropper(c, size, way.x, way.y));
    sheet.shapes.push_back(Polygon{std::move(points), inside, outline, thick});
  };
  std::vector<Point> bulb;
  for (int i = 0; i < 20; ++i) {
    const double a = 2 * pi * i / 20;
    bulb.push_back(on_dropper(c, size, -0.66 + 0.34 * std::cos(a), 0.17 * std::sin(a)));
  }
  shape({{-0.3, -0.1}, {0.35, -0.1}, {0.66, -0.03}, {0.66, 0.03}, {0.35, 0.1}, {-0.3, 0.1}}, fill);
  sheet.shapes.push_back(Polygon{std::move(bulb), outline, outline, thick});
  sheet.shapes.push_back(
      Polyline{{on_dropper(c, size, -0.3, -0.23), on_dropper(c, size, -0.3, 0.23)},
               size * 0.13,
               outline,
               0});
  sheet.shapes.push_back(Disc{on_dropper(c, size, 0.95, 0), size * 0.1, outline, clear, 0});
}

// Its bowl below at the left, its handle up to the right.
void spoon(Sheet& sheet, Point c, double size, Colour fill, Colour outline) {
  sheet.shapes.push_back(
      Polyline{{{c.x - size * 0.1, c.y + size * 0.1}, {c.x + size * 0.48, c.y - size * 0.48}},
               size * 0.12,
               outline,
               0});
  std::vector<Point> bowl;
  for (int i = 0; i < 24; ++i) {
    const double a = 2 * pi * i / 24;
    const double along = std::cos(a) * size * 0.32, off = std::sin(a) * size * 0.22;
    bowl.push_back(
        {c.x - size * 0.2 + (along - off) * 0.7071, c.y + size * 0.2 - (along + off) * 0.7071});
  }
  sheet.shapes.push_back(Polygon{std::move(bowl), fill, outline, size * 0.085});
}

// From the side, open above.
void pan(Sheet& sheet, Point c, double size, Colour fill, Colour outline) {
  const double w = size * 0.5, top = c.y - size * 0.3, foot = c.y + size * 0.3;
  sheet.shapes.push_back(Box{
      {c.x - w * 0.94, c.y - size * 0.06, w * 1.88, foot - c.y + size * 0.06}, 0, fill, clear, 0});
  sheet.shapes.push_back(Polyline{
      {{c.x - w, top}, {c.x - w, foot}, {c.x + w, foot}, {c.x + w, top}}, size * 0.1, outline, 0});
}

// A foot that is as wide as it grinds, and a grip.
void muller(Sheet& sheet, Point c, double size, Colour fill, Colour outline) {
  const double thick = size * 0.085;
  sheet.shapes.push_back(Box{{c.x - size * 0.16, c.y - size * 0.5, size * 0.32, size * 0.6},
                             size * 0.12,
                             fill,
                             outline,
                             thick});
  const double top = c.y + size * 0.04, foot = c.y + size * 0.46;
  sheet.shapes.push_back(Polygon{{{c.x - size * 0.2, top},
                                  {c.x + size * 0.2, top},
                                  {c.x + size * 0.46, foot},
                                  {c.x - size * 0.46, foot}},
                                 fill,
                                 outline,
                                 thick});
}

// A written page with a corner turned down.
void leaflet(Sheet& sheet, Point c, double size, Colour fill, Colour outline) {
  const double w = size * 0.38, h = size * 0.5, corner = size * 0.24;
  sheet.shapes.push_back(Polygon{{{c.x - w, c.y - h},
                                  {c.x + w - corner, c.y - h},
                                  {c.x + w, c.y - h + corner},
                                  {c.x + w, c.y + h},
                                  {c.x - w, c.y + h}},
                                 fill,
                                 outline,
                                 size * 0.085});
  for (const double y : {-0.08, 0.12, 0.32})
    sheet.shapes.push_back(
        Polyline{{{c.x - w * 0.6, c.y + y * size}, {c.x + w * 0.6, c.y + y * size}},
                 size * 0.07,
                 outline,
                 0});
}

}

void material_symbol(Sheet& sheet, Point c, double size, session::CardKind kind, Colour fill,
                     Colour outline) {
  using session::CardKind;
  const double thick = size * 0.085;
  const auto polygon = [&](std::vector<Point> points) {
    sheet.shapes.push_back(Polygon{std::move(points), fill, outline, thick});
  };
  switch (kind) {
  case CardKind::pigment: return polygon(heap(c, size));
  case CardKind::binder: return polygon(drop(c, size));
  case CardKind::water:
    sheet.shapes.push_back(Disc{c, size * 0.32, fill, outline, size * 0.19});
    return;
  case CardKind::dropper: return dropper(sheet, c, size, fill, outline);
  case CardKind::honey: return polygon(even(c, size * 0.46, size * 0.46, 6));
  case CardKind::glycerin: return polygon(even(c, size * 0.38, size * 0.52, 4));
  case CardKind::wetting_aid: {
    polygon(leaf(c, size));
    const double d = size * 0.2;
    sheet.shapes.push_back(
        Polyline{{{c.x - 2 * d, c.y + 2 * d}, {c.x + d, c.y - d}}, thick, outline, 0});
    return;
  }
  case CardKind::spoon: return spoon(sheet, c, size, fill, outline);
  case CardKind::pan: return pan(sheet, c, size, fill, outline);
  case CardKind::slab:
    sheet.shapes.push_back(Box{{c.x - size * 0.54, c.y - size * 0.12, size * 1.08, size * 0.24},
                               size * 0.06,
                               fill,
                               outline,
                               thick});
    return;
  case CardKind::muller: return muller(sheet, c, size, fill, outline);
  case CardKind::recipe: return leaflet(sheet, c, size, fill, outline);
  case CardKind::other:
  case CardKind::paint:
    sheet.shapes.push_back(Box{{c.x - size * 0.5, c.y - size * 0.32, size, size * 0.64},
                               size * 0.2,
                               fill,
                               outline,
                               thick});
  }
}

void paint_symbol(Sheet& sheet, Point c, double size, Colour fill, bool swatch, Colour outline) {
  if (!swatch) return material_symbol(sheet, c, size, session::CardKind::pigment, fill, outline);
  sheet.shapes.push_back(Box{{c.x - size / 2, c.y - size * 0.34, size, size * 0.68},
                             size * 0.1,
                             fill,
                             outline,
                             size * 0.085});
}

void undo_arrow(Sheet& sheet, Point c, double size, Colour colour) {
  const double r = size * 0.36, thick = size * 0.1;
  const Point middle{c.x + size * 0.06, c.y + size * 0.08};
  std::vector<Point> bow{{c.x - size * 0.42, middle.y - r}};
  arc(bow, middle, r, -pi / 2, pi / 2, 24);
  bow.push_back({middle.x - size * 0.12, middle.y + r});
  sheet.shapes.push_back(Polyline{bow, thick, colour, 0});
  const Point tip = bow.front();
  const double h = size * 0.24;
  sheet.shapes.push_back(
      Polyline{{{tip.x + h, tip.y - h}, {tip.x, tip.y}, {tip.x + h, tip.y + h}}, thick, colour, 0});
}

void tick(Sheet& sheet, Point c, double size, Colour colour) {
  session::add_tick(sheet.shapes, c, size, colour);
}

void sun(Sheet& sheet, Point c, double size, Colour colour) {
  sheet.shapes.push_back(Disc{c, size * 0.2, clear, colour, size * 0.09});
  for (int i = 0; i < 8; ++i) {
    const double a = pi / 4 * i;
    const Point way{std::cos(a) * size, std::sin(a) * size};
    sheet.shapes.push_back(Polyline{
        {{c.x + way.x * 0.34, c.y + way.y * 0.34}, {c.x + way.x * 0.48, c.y + way.y * 0.48}},
        size * 0.09,
        colour,
        0});
  }
}

void moon(Sheet& sheet, Point c, double size, Colour colour, Colour ground) {
  sheet.shapes.push_back(Disc{c, size * 0.42, colour, clear, 0});
  sheet.shapes.push_back(
      Disc{{c.x + size * 0.2, c.y - size * 0.14}, size * 0.36, ground, clear, 0});
}

void chevron(Sheet& sheet, Point c, double size, Colour colour, bool to_the_right) {
  session::add_chevron(sheet.shapes, c, size, colour, to_the_right);
}

void caution_sign(Sheet& sheet, Point c, double size) {
  session::add_caution(sheet.shapes, c, size, sign_colours(sheet.theme));
}

void bell(Sheet& sheet, Point c, double size, Colour colour, Colour ground, bool rings) {
  const double h = size / 2;
  std::vector<Point> body;
  arc(body, {c.x, c.y - h * 0.15}, h * 0.62, pi, 2 * pi, 16);
  body.push_back({c.x + h * 0.72, c.y + h * 0.62});
  body.push_back({c.x - h * 0.72, c.y + h * 0.62});
  sheet.shapes.push_back(Polygon{body, colour, clear, 0});
  sheet.shapes.push_back(
      Polyline{{{c.x - h, c.y + h * 0.66}, {c.x + h, c.y + h * 0.66}}, 0.6, colour});
  sheet.shapes.push_back(Disc{{c.x, c.y + h * 0.92}, h * 0.17, colour, clear, 0});
  if (rings) return;
  const std::vector<Point> through{{c.x - h, c.y - h}, {c.x + h, c.y + h}};
  sheet.shapes.push_back(Polyline{through, 1.6, ground});
  sheet.shapes.push_back(Polyline{through, 0.6, colour});
}

void feel_sign(Sheet& sheet, Point c, double size, session::Feel feel) {
  session::add_sign(sheet.shapes, feel, c, size, sign_colours(sheet.theme));
}

}
