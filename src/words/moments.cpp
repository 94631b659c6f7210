#include "words/moments.hpp"

#include "words/language_says.hpp"
#include "words/say.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace words {

namespace {

std::int64_t floor_div(std::int64_t a, std::int64_t b) { return a / b - (a % b < 0 ? 1 : 0); }

std::string two_digits(std::int64_t n) { return (n < 10 ? "0" : "") + std::to_string(n); }

std::string month_name(int month) { // 1 to 12
  const std::string names = say(LanguageSay::month_names);
  std::size_t from = 0;
  for (int i = 1; i < month; ++i) from = names.find(' ', from) + 1;
  return names.substr(from, names.find(' ', from) - from);
}

// Seconds since 1970 by the clock on the wall there.
std::int64_t wall_seconds(std::int64_t ms, int utc_offset_min) {
  return floor_div(ms, 1000) + std::int64_t{utc_offset_min} * 60;
}

// Days since 1970 to a date: H. Hinnant's civil_from_days, "chrono-Compatible Low-Level Date
// Algorithms", for the proleptic Gregorian calendar.
Day civil_day(std::int64_t days) {
  days += 719468; // from 0000-03-01
  const std::int64_t era = floor_div(days, 146097);
  const std::int64_t day_of_era = days - era * 146097;
  const std::int64_t year_of_era =
      (day_of_era - day_of_era / 1460 + day_of_era / 36524 - day_of_era / 146096) / 365;
  const std::int64_t day_of_year =
      day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const std::int64_t month = (5 * day_of_year + 2) / 153; // from March
  return {year_of_era + era * 400 + (month < 10 ? 0 : 1),
          static_cast<int>(month < 10 ? month + 3 : month - 9),
          static_cast<int>(day_of_year - (153 * month + 2) / 5 + 1)};
}

}

Day day_of(std::int64_t ms, int utc_offset_min) {
  return civil_day(floor_div(wall_seconds(ms, utc_offset_min), 86400));
}

std::string minutes_seconds(double seconds) {
  const auto whole = static_cast<std::int64_t>(std::isfinite(seconds) && seconds > 0 ? seconds : 0);
  return std::to_string(whole / 60) + ":" + two_digits(whole % 60);
}

std::string time_of_day(std::int64_t ms, int utc_offset_min) {
  const std::int64_t seconds = wall_seconds(ms, utc_offset_min);
  const std::int64_t minutes = (seconds - floor_div(seconds, 86400) * 86400) / 60;
  return two_digits(minutes / 60) + ":" + two_digits(minutes % 60);
}

std::string time_to_second(std::int64_t ms, int utc_offset_min) {
  const std::int64_t seconds = wall_seconds(ms, utc_offset_min);
  return time_of_day(ms, utc_offset_min) + ":" + two_digits(seconds - floor_div(seconds, 60) * 60);
}

std::string date_and_time(std::int64_t ms, int utc_offset_min) {
  const Day d = day_of(ms, utc_offset_min);
  return say(LanguageSay::date_time,
             {std::to_string(d.day), month_name(d.month), time_of_day(ms, utc_offset_min)});
}

std::string date(std::int64_t ms, int utc_offset_min) {
  const Day d = day_of(ms, utc_offset_min);
  return say(LanguageSay::date,
             {std::to_string(d.day), month_name(d.month), std::to_string(d.year)});
}

std::string local_time(std::int64_t ms, int utc_offset_min) {
  const std::int64_t seconds = wall_seconds(ms, utc_offset_min);
  const std::int64_t in_day = seconds - floor_div(seconds, 86400) * 86400;
  const Day d = civil_day(floor_div(seconds, 86400));
  const int offset = std::abs(utc_offset_min);
  char text[80];
  std::snprintf(text, sizeof text, "%04lld-%02d-%02dT%02lld:%02lld:%02lld%c%02d:%02d",
                static_cast<long long>(d.year), d.month, d.day,
                static_cast<long long>(in_day / 3600), static_cast<long long>(in_day / 60 % 60),
                static_cast<long long>(in_day % 60), utc_offset_min < 0 ? '-' : '+', offset / 60,
                offset % 60);
  return text;
}

}
