#include "notes/dates.hpp"

#include "notes/tokens.hpp"
#include "words/calendar.hpp"
#include "words/notes_says.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace notes {

namespace {

using Say = words::NotesSay;

// From 1970 on; spreadsheets take 1900 for a leap year.
constexpr std::int64_t serial_of_1970 = 25569, least_serial = 25569, most_serial = 73050;

int month_of(std::string_view key) {
  constexpr std::array<std::array<std::string_view, 2>, 12> months{{{"january", "januar"},
                                                                    {"february", "februar"},
                                                                    {"march", "marz"},
                                                                    {"april", "april"},
                                                                    {"may", "mai"},
                                                                    {"june", "juni"},
                                                                    {"july", "juli"},
                                                                    {"august", "august"},
                                                                    {"september", "sept"},
                                                                    {"october", "oktober"},
                                                                    {"november", "november"},
                                                                    {"december", "dezember"}}};
  if (key.size() < 3) return 0;
  if (key == "maerz" || key == "mrz") return 3;
  for (std::size_t month = 0; month < months.size(); ++month)
    for (const std::string_view name : months[month])
      if (name.substr(0, key.size()) == key) return static_cast<int>(month) + 1;
  return 0;
}

struct Pieces {
  std::vector<int> numbers;
  std::vector<std::size_t> digits; // of each
  std::optional<std::size_t> month_at;
  int month = 0;
  bool points = false;
};

void take_numbers(Pieces& out, std::string_view token) {
  for (std::size_t at = 0; at <= token.size();) {
    const std::size_t end = std::min(token.find('.', at), token.size());
    const std::string_view digits = token.substr(at, end - at);
    int value = 0;
    for (const char c : digits.substr(0, 6)) value = value * 10 + (c - '0');
    out.numbers.push_back(value);
    out.digits.push_back(digits.size());
    at = end + 1;
  }
  out.points = out.points || token.find('.') != std::string_view::npos;
}

// Up to three of them; what stands behind, a time of day, is no matter.
Pieces pieces_of(std::string_view cell) {
  Pieces out;
  for (const Token& token : tokens_of(cell)) {
    if (out.numbers.size() + (out.month > 0) >= 3) break;
    if (token.kind == TokenKind::number && token.key.find_first_of(",'") == std::string::npos) {
      take_numbers(out, token.key);
    } else if (token.kind == TokenKind::word && month_of(token.key) > 0 && out.month == 0) {
      out.month_at = out.numbers.size();
      out.month = month_of(token.key);
    } else if (token.kind != TokenKind::sign) {
      return {};
    }
  }
  return out;
}

int whole_year(int year, std::size_t digits) {
  constexpr int first_of_this_century = 70;
  if (digits != 2) return year;
  return year + (year < first_of_this_century ? 2000 : 1900);
}

words::Result<std::int64_t> days(int year, int month, int day) {
  const bool usual = year >= 1970 && year <= 9999;
  const auto found =
      usual ? words::days_of(words::date_of(words::Day{year, month, day})) : std::nullopt;
  if (!found) return words::failure(Say::date_none);
  return *found;
}

bool year_first(const Pieces& p) { return p.numbers.size() == 3 && p.digits[0] == 4; }
bool by_numbers(const Pieces& p) { return p.numbers.size() == 3 && p.month == 0 && !year_first(p); }

DateOrder told_by(const Pieces& p) {
  if (!by_numbers(p)) return DateOrder::unknown;
  if (p.points || p.numbers[0] > 12) return DateOrder::day_first;
  return p.numbers[1] > 12 ? DateOrder::month_first : DateOrder::unknown;
}

}

DateOrder date_order_of(const std::vector<std::string_view>& cells) {
  bool day = false, month = false;
  for (const std::string_view cell : cells) {
    const DateOrder told = told_by(pieces_of(cell));
    day = day || told == DateOrder::day_first;
    month = month || told == DateOrder::month_first;
  }
  if (day == month) return DateOrder::unknown;
  return day ? DateOrder::day_first : DateOrder::month_first;
}

words::Result<std::int64_t> date_in(std::string_view cell, DateOrder order) {
  const Pieces p = pieces_of(cell);
  const auto& n = p.numbers;
  if (n.size() == 1 && p.month == 0 && n[0] >= least_serial && n[0] <= most_serial)
    return n[0] - serial_of_1970;
  if (n.size() == 2 && p.month > 0 && *p.month_at < 2)
    return days(whole_year(n[1], p.digits[1]), p.month, n[0]);
  if (year_first(p)) return days(n[0], n[1], n[2]);
  if (!by_numbers(p)) return words::failure(Say::date_none);
  const DateOrder told = told_by(p), is = told == DateOrder::unknown ? order : told;
  const int year = whole_year(n[2], p.digits[2]);
  if (is == DateOrder::unknown && n[0] != n[1]) return words::failure(Say::date_two_ways);
  return is == DateOrder::month_first ? days(year, n[0], n[1]) : days(year, n[1], n[0]);
}

}
