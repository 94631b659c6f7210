// Properties that hold of any input: RapidCheck's random cases, as a check of doctest's. Which seed
// was used is printed; RC_PARAMS="seed=..." runs the same again.
#pragma once

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cstdint>
#include <string>

// A number between two, drawn evenly on a grid of a million steps; both ends are reached.
inline double between(double low, double high) {
  const auto step = *rc::gen::inRange<std::int32_t>(0, 1000001);
  return low + (high - low) * step / 1e6;
}

// Runs a property a hundred times; inside it, RC_ASSERT.
template <class Property>
void holds(const std::string& what, Property property) {
  CHECK_MESSAGE(rc::check(what, property), what);
}
