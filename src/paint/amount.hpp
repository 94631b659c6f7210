// A measured quantity: its value, the variance that is its own, and for each tool that measured it
// the standard uncertainty that tool's calibration puts into it. Repeats with one tool share that
// error fully, so shares of one tool add by value; different tools are independent.
// Source: JCGM 100:2008 (GUM), clause 5.2.2 with r = 1 within a tool and r = 0 between tools.
// Units are those of the quantity: g, mL or a ratio.
#pragma once

#include "words/error.hpp"

#include <map>
#include <optional>
#include <string>

namespace paint {

struct Amount {
  double value = 0;
  double variance = 0;                  // independent part, units squared
  std::map<std::string, double> shares; // tool -> signed standard uncertainty, same units

  bool operator==(const Amount&) const = default;
};

Amount exact(double value);

// Standard uncertainty of the whole: sqrt(variance + sum of shares squared).
double uncertainty(const Amount& a);

// Relative standard uncertainty; 0 for a value of 0.
double relative_uncertainty(const Amount& a);

// What two amounts share: the sum over their common tools of the products of the shares. An
// amount's own variance is not in it.
double covariance(const Amount& a, const Amount& b);

// not_a_number where the value or an uncertainty is not finite, negative_amount for a variance
// below zero; absent for a good one. The algebra below asks nothing: what is not a number stays so.
std::optional<words::Error> fault_of(const Amount& a);

// First order in the uncertainties. The independent parts of a and b are taken as independent of
// each other, so an amount must not be combined with one it was itself made from.
Amount operator+(const Amount& a, const Amount& b);
Amount operator-(const Amount& a, const Amount& b);
Amount scaled(const Amount& a, double factor);
Amount product(const Amount& a, const Amount& b);
// A b.value of 0 gives a value that is not finite.
Amount quotient(const Amount& a, const Amount& b);

}
