#include "words/calendar.hpp"

#include <chrono>
#include <cstdio>

namespace words {

namespace {

using namespace std::chrono;

// The library's own days may count in 32 bits.
using Days = duration<std::int64_t, days::period>;
using Eras = duration<std::int64_t, std::ratio_multiply<days::period, std::ratio<146097>>>;

seconds on_wall(std::int64_t ms, int utc_offset_min) {
  return floor<seconds>(milliseconds(ms)) + minutes(utc_offset_min);
}

// The library's years end at 32767, so whole eras of 400 years, which are all alike, stay aside.
Day civil(Days since_1970) {
  const auto era = floor<Eras>(since_1970);
  const year_month_day date{sys_days{days{static_cast<int>((since_1970 - era).count())}}};
  return {static_cast<int>(date.year()) + 400 * era.count(),
          static_cast<int>(static_cast<unsigned>(date.month())),
          static_cast<int>(static_cast<unsigned>(date.day()))};
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

WallTime wall_time(std::int64_t ms, int utc_offset_min) {
  const seconds wall = on_wall(ms, utc_offset_min);
  const auto day = floor<Days>(wall);
  const hh_mm_ss time{wall - day};
  return {civil(day), static_cast<int>(time.hours().count()),
          static_cast<int>(time.minutes().count()), static_cast<int>(time.seconds().count())};
}

Day day_of(std::int64_t ms, int utc_offset_min) {
  return civil(floor<Days>(on_wall(ms, utc_offset_min)));
}

std::int64_t day_number(std::int64_t ms, int utc_offset_min) {
  return floor<Days>(on_wall(ms, utc_offset_min)).count();
}

std::optional<std::int64_t> days_of(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto y = digits(text.substr(0, 4)), m = digits(text.substr(5, 2)),
             d = digits(text.substr(8, 2));
  if (!y || !m || !d || *y < 1970) return std::nullopt;
  const year_month_day date{year{*y}, month{static_cast<unsigned>(*m)},
                            day{static_cast<unsigned>(*d)}};
  if (!date.ok()) return std::nullopt;
  return sys_days{date}.time_since_epoch().count();
}

std::string date_of(std::int64_t days_since_1970) { return date_of(civil(Days(days_since_1970))); }

std::string date_of(const Day& d) {
  char text[64];
  std::snprintf(text, sizeof text, "%04lld-%02d-%02d", static_cast<long long>(d.year), d.month,
                d.day);
  return text;
}

}
