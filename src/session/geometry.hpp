// Millimetres on a picture: x to the right, y down, from the top left corner.
#pragma once

namespace session {

struct Point {
  double x = 0, y = 0;
  bool operator==(const Point&) const = default;
};

struct Size {
  double w = 0, h = 0;
  bool operator==(const Size&) const = default;
};

struct Rect {
  double x = 0, y = 0, w = 0, h = 0;
  bool operator==(const Rect&) const = default;

  double right() const { return x + w; }
  double bottom() const { return y + h; }
  Point centre() const { return {x + w / 2, y + h / 2}; }
  bool contains(Point p) const { return p.x >= x && p.x < right() && p.y >= y && p.y < bottom(); }
};

inline Rect inset(const Rect& r, double by) {
  return {r.x + by, r.y + by, r.w - 2 * by, r.h - 2 * by};
}

}
