#include "session/shapes.hpp"

#include <cmath>

namespace session::shapes {

namespace {

std::uint8_t between(std::uint8_t a, std::uint8_t b, double t) {
  return static_cast<std::uint8_t>(std::lround(a + (b - a) * t));
}

}

Colour mixed(Colour a, Colour b, double t) {
  return {between(a.r, b.r, t), between(a.g, b.g, t), between(a.b, b.b, t), between(a.a, b.a, t)};
}

}
