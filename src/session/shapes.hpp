// A picture as a plain list of shapes, in millimetres, drawn in order: x to the right, y down.
// A screen makes pixels of it, a sheet makes lines of SVG.
#pragma once

#include "session/geometry.hpp"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace session::shapes {

struct Colour {
  std::uint8_t r = 0, g = 0, b = 0, a = 255;
  bool operator==(const Colour&) const = default;
};

constexpr Colour rgb(std::uint32_t hex) {
  return {static_cast<std::uint8_t>(hex >> 16 & 255), static_cast<std::uint8_t>(hex >> 8 & 255),
          static_cast<std::uint8_t>(hex & 255), 255};
}

constexpr Colour clear{0, 0, 0, 0};

Colour mixed(Colour a, Colour b, double t); // a at 0, b at 1

struct Box {
  Rect rect;
  double radius = 0;
  Colour fill = clear;
  Colour outline = clear;
  double outline_mm = 0;
};

struct Disc {
  Point centre;
  double radius = 0;
  Colour fill = clear;
  Colour outline = clear;
  double outline_mm = 0;
};

struct Polygon { // convex
  std::vector<Point> points;
  Colour fill = clear;
  Colour outline = clear;
  double outline_mm = 0;
};

struct Polyline {
  std::vector<Point> points;
  double width_mm = 0.3;
  Colour colour;
  double dash_mm = 0; // length of a dash and of the gap behind it; 0: drawn through
};

struct Stop {
  double x = 0; // mm on the picture
  Colour colour;
};

struct Gradient { // from left to right; stops rising in x, the first and the last at the edges
  Rect rect;
  std::vector<Stop> stops;
};

enum class Anchor { left, centre, right };

struct Text { // one line
  Point at;   // on the baseline
  Anchor anchor = Anchor::left;
  double cap_mm = 2.9; // height of a capital
  bool bold = false;
  Colour colour;
  std::string words; // UTF-8
  double max_mm = 0; // the room it was given; 0: nobody else wants it
  // For whoever hears it: it begins words of its own, though it looks like the line above; and what
  // is said in its place.
  bool begins = false;
  std::string heard = {};
};

struct Clip { // until the next Clip; an empty rect ends it
  Rect rect;
};

struct Picture { // of pixels that whoever draws has, or not yet: then nothing is drawn
  Rect rect;
  std::string image;  // its name
  bool large = false; // the whole of it, as large as it may; else a thumbnail that fills the rect
};

using Shape = std::variant<Box, Disc, Polygon, Polyline, Gradient, Text, Clip, Picture>;

}
