#include "session/signs.hpp"

#include <cmath>

namespace session {

using namespace shapes;

namespace {

constexpr double outline_mm = 0.34;

struct Drawn {
  std::vector<Shape>& out;
  Point at;
  double size;
  const SignColours& colours;

  Colour fill_of(Feel feel) const {
    if (feel == Feel::right) return colours.right;
    return feel < Feel::right ? colours.sticky : colours.runny;
  }

  // Which way from right it was felt, and how far.
  void operator()(Feel feel) const {
    out.push_back(Box{{at.x - size / 2, at.y - size / 2, size, size},
                      size * 0.2,
                      fill_of(feel),
                      colours.ink,
                      outline_mm});
    const int off = static_cast<int>(feel) - static_cast<int>(Feel::right);
    if (off == 0) return add_tick(out, at, size * 0.56, colours.ink);
    const int count = std::abs(off);
    for (int i = 0; i < count; ++i)
      add_chevron(out, {at.x + (i - (count - 1) / 2.0) * size * 0.32, at.y}, size * 0.5,
                  colours.ink, off > 0);
  }

  void operator()(Specks specks) const {
    out.push_back(Disc{at, size * 0.52, colours.ground, colours.ink, outline_mm});
    const int count = specks == Specks::many ? 3 : specks == Specks::few ? 1 : 0;
    constexpr Point places[]{{0, -0.2}, {0.2, 0.14}, {-0.2, 0.14}};
    for (int i = 0; i < count; ++i)
      out.push_back(Disc{{at.x + places[i].x * size, at.y + places[i].y * size},
                         size * 0.12,
                         colours.ink,
                         clear,
                         0});
  }

  void operator()(TroubleKind) const { add_caution(out, at, size * 1.15, colours); }
};

}

void add_sign(std::vector<Shape>& out, const NoteSign& sign, Point centre, double size,
              const SignColours& colours) {
  std::visit(Drawn{out, centre, size, colours}, sign);
}

void add_caution(std::vector<Shape>& out, Point c, double size, const SignColours& colours) {
  const double h = size * 0.5;
  out.push_back(
      Polygon{{{c.x, c.y - h}, {c.x + h * 1.1, c.y + h * 0.86}, {c.x - h * 1.1, c.y + h * 0.86}},
              colours.caution,
              colours.caution_ink,
              size * 0.08});
  out.push_back(shapes::Polyline{
      {{c.x, c.y - h * 0.4}, {c.x, c.y + h * 0.22}}, size * 0.12, colours.caution_ink, 0});
  out.push_back(Disc{{c.x, c.y + h * 0.54}, size * 0.07, colours.caution_ink, clear, 0});
}

void add_tick(std::vector<Shape>& out, Point c, double size, Colour colour) {
  out.push_back(shapes::Polyline{{{c.x - size * 0.42, c.y + size * 0.02},
                                  {c.x - size * 0.12, c.y + size * 0.34},
                                  {c.x + size * 0.44, c.y - size * 0.38}},
                                 size * 0.17,
                                 colour,
                                 0});
}

void add_chevron(std::vector<Shape>& out, Point c, double size, Colour colour, bool to_the_right) {
  const double w = (to_the_right ? 1 : -1) * size * 0.25, h = size * 0.45;
  out.push_back(shapes::Polyline{
      {{c.x - w, c.y - h}, {c.x + w, c.y}, {c.x - w, c.y + h}}, size * 0.22, colour, 0});
}

}
