// Whether the edges of a shape can be seen in a frame.
#pragma once

#include "screens/eyes.hpp"

#include <optional>

namespace eyes {

// Looked at in many places along its outline, or along its rim where it has none, to either side.
// Places that something else covers are not counted.
struct Edge {
  std::array<int, 2> seen{};  // places looked at, on the outer and on the inner side
  std::array<int, 2> faint{}; // of these, with less than 3:1
  double worst = 21;
  Colour ink, beside; // at the worst place

  // Here and there something of the same ink lies beside it or crosses it; what is too faint is so
  // along most of a side.
  bool too_faint() const { return on(0) || on(1); }
  bool on(std::size_t side) const { return seen[side] >= 8 && faint[side] * 5 > seen[side] * 3; }
};

// Absent for shapes that need no edge: texts, clips, gradients, and soft fills without an outline,
// whose words or neighbours say the same.
std::optional<Edge> edge_of(const screens::Shape& shape, const Frame& frame);

std::string described(const screens::Shape& shape);

}
