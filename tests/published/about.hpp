// Tolerances that mean what they say: doctest's own epsilon counts from 1 + the larger value.
#pragma once

#include <cmath>
#include <ostream>

struct About {
  double value = 0;
  double absolute = 0;

  friend bool operator==(double measured, const About& about) {
    return std::abs(measured - about.value) <= about.absolute;
  }
  friend std::ostream& operator<<(std::ostream& out, const About& about) {
    return out << about.value << " +- " << about.absolute;
  }
};

inline About within(double value, double absolute) { return {value, absolute}; }
inline About relative(double value, double part) { return {value, std::abs(value) * part}; }
