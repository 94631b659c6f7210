// Numbers written out, for two kinds of reader that must not be mixed up: a decimal comma is right
// in a sentence and breaks CSS, SVG, CSV, JSON, a script or a key.
#pragma once

#include <string>

namespace words {

// A number on its way into a sentence, which writes it by its language.
struct Number {
  double value = 0;
  int decimals = 0;

  constexpr Number(double number, int places) : value(number), decimals(places) {}
  bool operator==(const Number&) const = default;
};

// For people: with the decimal sign of the language that is spoken. Here and below "-0.0" is
// written "0.0", and nothing stands between thousands: a point there is a decimal sign to others.
std::string number(double value, int decimals);

// For machines: with a point in every language.
std::string invariant(double value, int decimals);

// "," where people write 12,5. What they type is read with either.
std::string decimal_sign();

}
