#include "paint/slip.hpp"

#include "paint/measure.hpp"
#include "words/numbers.hpp"

#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace paint {

namespace {

// As it was typed: no zeros behind the last digit that counts.
std::string digits_of(double typed) {
  std::string text = words::invariant(typed, 3);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

void slip_at(const std::string& text, std::size_t i, std::vector<std::string>& out) {
  for (char digit = '0'; digit <= '9'; ++digit) {
    std::string more = text;
    out.push_back(more.insert(i, 1, digit));
    if (i == text.size() || text[i] == '.') continue;
    std::string other = text;
    other[i] = digit;
    out.push_back(std::move(other));
  }
  if (i == text.size()) return;
  std::string without = text;
  out.push_back(without.erase(i, 1));
  if (i + 1 == text.size()) return;
  std::string swapped = text;
  std::swap(swapped[i], swapped[i + 1]);
  out.push_back(std::move(swapped));
}

std::vector<double> slips_of(double typed) {
  std::vector<double> out;
  for (const double by : {10.0, 100.0}) {
    out.push_back(typed * by);
    out.push_back(typed / by);
  }
  const std::string text = digits_of(typed);
  std::vector<std::string> texts;
  for (std::size_t i = 0; i <= text.size(); ++i) slip_at(text, i, texts);
  for (const std::string& slip : texts)
    if (const auto number = typed_number(slip)) out.push_back(*number);
  return out;
}

}

std::optional<double> meant(double typed, double expected, double within) {
  if (!std::isfinite(typed) || typed < 0) return std::nullopt;
  std::optional<double> nearest;
  for (const double slip : slips_of(typed)) {
    const double off = std::abs(slip - expected);
    if (off <= within && (!nearest || off < std::abs(*nearest - expected))) nearest = slip;
  }
  return nearest;
}

}
