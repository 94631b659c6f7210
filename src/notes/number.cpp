#include "notes/number.hpp"

#include "paint/measure.hpp"
#include "words/notes_says.hpp"

#include <algorithm>

namespace notes {

namespace {

using Say = words::NotesSay;

std::size_t count(std::string_view text, char sign) {
  return static_cast<std::size_t>(std::count(text.begin(), text.end(), sign));
}

std::string without(std::string_view text, char sign) {
  std::string out(text);
  std::erase(out, sign);
  return out;
}

// Whether so much stands before a sign and between it and the next one that it may set thousands
// apart.
bool in_thousands(std::string_view whole, char sign) {
  std::size_t at = whole.find(sign);
  if (at == 0 || at > 3 || whole[0] == '0') return false;
  while (at != std::string_view::npos) {
    const std::size_t next = whole.find(sign, at + 1);
    if ((next == std::string_view::npos ? whole.size() : next) - at != 4) return false;
    at = next;
  }
  return true;
}

struct Signs {
  char decimal = 0;  // 0: none
  char thousand = 0; // likewise
};

// The two signs, from the number alone; absent where it is none, `decimal` '?' where one sign may
// be either.
std::optional<Signs> signs_of(std::string_view digits) {
  const std::size_t commas = count(digits, ','), points = count(digits, '.');
  if (commas == 0 && points == 0) return Signs{};
  if (commas > 0 && points > 0) {
    const char last = digits[digits.find_last_of(",.")], other = last == ',' ? '.' : ',';
    const std::string_view whole = digits.substr(0, digits.find(last));
    if (count(digits, last) > 1 || !in_thousands(whole, other)) return std::nullopt;
    return Signs{last, other};
  }
  const char sign = commas > 0 ? ',' : '.';
  const bool thousands = in_thousands(digits, sign);
  if (commas + points > 1) return thousands ? std::optional(Signs{0, sign}) : std::nullopt;
  return thousands ? Signs{'?', sign} : Signs{sign, 0};
}

words::Result<double> value_of(std::string_view digits, char decimal, char thousand) {
  std::string plain = thousand ? without(digits, thousand) : std::string(digits);
  if (decimal == ',') std::replace(plain.begin(), plain.end(), ',', '.');
  if (!plain.empty() && plain.back() == '.') plain += '0';
  const auto value = paint::typed_number(plain);
  if (!value) return words::failure(Say::number_none, {std::string(digits)});
  return value;
}

}

Decimal decimal_told(std::string_view with_marks) {
  const std::string digits = without(with_marks, '\'');
  const auto signs = signs_of(digits);
  if (!signs || signs->decimal == '?') return Decimal::unknown;
  if (signs->decimal == ',' || (!signs->decimal && signs->thousand == '.')) return Decimal::comma;
  if (signs->decimal == '.' || signs->thousand == ',') return Decimal::point;
  return Decimal::unknown;
}

words::Result<double> number_of(std::string_view with_marks, Decimal decimal) {
  const std::string digits = without(with_marks, '\'');
  const auto signs = signs_of(digits);
  if (!signs) return words::failure(Say::number_none, {std::string(with_marks)});
  if (signs->decimal != '?') return value_of(digits, signs->decimal, signs->thousand);
  const char sign = signs->thousand;
  if (decimal == Decimal::unknown)
    return words::failure(Say::number_two_ways, {std::string(with_marks)});
  const bool is_decimal = (decimal == Decimal::comma) == (sign == ',');
  return is_decimal ? value_of(digits, sign, 0) : value_of(digits, 0, sign);
}

Decimal decimal_of(const std::vector<std::string_view>& cells) {
  constexpr std::string_view of_a_number = "0123456789.,'";
  bool comma = false, point = false;
  for (const std::string_view cell : cells)
    for (std::size_t at = 0; at < cell.size();) {
      at = cell.find_first_of("0123456789", at);
      if (at == std::string_view::npos) break;
      const std::size_t end = std::min(cell.find_first_not_of(of_a_number, at), cell.size());
      std::string_view digits = cell.substr(at, end - at);
      while (!digits.empty() && (digits.back() == '.' || digits.back() == ','))
        digits.remove_suffix(1);
      const Decimal told = decimal_told(digits);
      comma = comma || told == Decimal::comma;
      point = point || told == Decimal::point;
      at = end;
    }
  if (comma == point) return Decimal::unknown;
  return comma ? Decimal::comma : Decimal::point;
}

}
