#include "paint/in_words.hpp"

#include "paint/digits.hpp"
#include "words/paint_says.hpp"

#include <cmath>

namespace paint {

using words::number;
using Say = words::PaintSay;
using words::say;

std::string count_words(double count) {
  const double whole = std::floor(count);
  const double rest = count - whole;
  const std::string head = whole > 0 ? number(whole, 0) : "";
  if (rest == 0) return number(count, 0);
  if (rest == 0.25) return head + "¼";
  if (rest == 0.5) return head + "½";
  if (rest == 0.75) return head + "¾";
  return written(count, decimals_as_read(count, 2));
}

std::string grams_number(double grams) { return written(grams, decimals_of_grams(grams)); }

std::string grams_words(double grams) { return say(Say::amount_grams, {grams_number(grams)}); }

std::string grams_words(const Amount& grams) {
  const auto text = grams_written(grams);
  return text ? say(Say::amount_grams, {*text}) : grams_words(grams.value);
}

std::string number_words(const Amount& amount, int most) {
  const auto text = shown(amount, 1);
  return text && text->decimals <= most ? text->value : written(amount.value, most);
}

std::string reading_words(double value) { return written(value, decimals_as_read(value)); }

}
