#include "session/date.hpp"

#include <algorithm>
#include <cstdio>

namespace session {

namespace {

// H. Hinnant, "chrono-Compatible Low-Level Date Algorithms": days_from_civil and its inverse. Years
// begin in March, eras have 400 of them.
std::int64_t days_from_civil(std::int64_t year, int month, int day) {
  if (month <= 2) --year;
  const std::int64_t era = year / 400, of_era = year % 400;
  const std::int64_t of_year = (153 * (month + (month > 2 ? -3 : 9)) + 2) / 5 + day - 1;
  return era * 146097 + of_era * 365 + of_era / 4 - of_era / 100 + of_year - 719468;
}

std::optional<int> digits(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') return std::nullopt;
    value = value * 10 + (c - '0');
  }
  return value;
}

}

std::optional<std::int64_t> days_of(std::string_view date) {
  if (date.size() != 10 || date[4] != '-' || date[7] != '-') return std::nullopt;
  const auto year = digits(date.substr(0, 4)), month = digits(date.substr(5, 2)),
             day = digits(date.substr(8, 2));
  if (!year || !month || !day || *year < 1970 || *month < 1 || *month > 12 || *day < 1)
    return std::nullopt;
  const std::int64_t days = days_from_civil(*year, *month, *day);
  // A day that its month does not have lies in the next one.
  return date_of(days) == date ? std::optional(days) : std::nullopt;
}

std::string date_of(std::int64_t days) {
  days += 719468;
  const std::int64_t era = days / 146097, of_era = days % 146097;
  const std::int64_t year_of_era =
      (of_era - of_era / 1460 + of_era / 36524 - of_era / 146096) / 365;
  const std::int64_t of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const std::int64_t from_march = (5 * of_year + 2) / 153;
  const std::int64_t month = from_march < 10 ? from_march + 3 : from_march - 9;
  char text[48];
  std::snprintf(text, sizeof text, "%04lld-%02lld-%02lld",
                static_cast<long long>(year_of_era + era * 400 + (month <= 2 ? 1 : 0)),
                static_cast<long long>(month),
                static_cast<long long>(of_year - (153 * from_march + 2) / 5 + 1));
  return text;
}

std::int64_t day_of(std::int64_t ms, int utc_offset_min) {
  const std::int64_t local = ms + std::int64_t{utc_offset_min} * 60000;
  constexpr std::int64_t a_day = 86'400'000;
  return local / a_day - (local % a_day < 0 ? 1 : 0);
}

}
