#include "words/moments.hpp"

#include "words/language_says.hpp"
#include "words/say.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace words {

namespace {

std::string two_digits(std::int64_t n) { return (n < 10 ? "0" : "") + std::to_string(n); }

std::string nth_name(LanguageSay list, int n) { // 0 for the first
  const std::string names = say(list);
  std::size_t from = 0;
  for (int i = 0; i < n; ++i) from = names.find(' ', from) + 1;
  return names.substr(from, names.find(' ', from) - from);
}

std::string month_name(int month) { return nth_name(LanguageSay::month_names, month - 1); }

std::string day_name(std::int64_t day_number) {
  constexpr std::int64_t week = 7, first = 4; // 1970 began with a Thursday
  return nth_name(LanguageSay::day_names,
                  static_cast<int>(((day_number + first) % week + week) % week));
}

}

std::string minutes_seconds(double seconds) {
  const auto whole = static_cast<std::int64_t>(std::isfinite(seconds) && seconds > 0 ? seconds : 0);
  return std::to_string(whole / 60) + ":" + two_digits(whole % 60);
}

std::string time_of_day(std::int64_t ms, int utc_offset_min) {
  const WallTime at = wall_time(ms, utc_offset_min);
  return two_digits(at.hour) + ":" + two_digits(at.minute);
}

std::string time_to_second(std::int64_t ms, int utc_offset_min) {
  return time_of_day(ms, utc_offset_min) + ":" + two_digits(wall_time(ms, utc_offset_min).second);
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

std::string weekday_and_date(std::int64_t ms, int utc_offset_min) {
  const Day d = day_of(ms, utc_offset_min);
  return say(LanguageSay::weekday_date, {day_name(day_number(ms, utc_offset_min)),
                                         std::to_string(d.day), month_name(d.month)});
}

std::string lately(std::int64_t ms, std::int64_t now_ms, int utc_offset_min) {
  const std::int64_t day = day_number(ms, utc_offset_min),
                     today = day_number(now_ms, utc_offset_min);
  if (day == today) return time_of_day(ms, utc_offset_min);
  if (day < today && today - day < 7) return day_name(day);
  const Day d = day_of(ms, utc_offset_min);
  if (d.year != day_of(now_ms, utc_offset_min).year) return date(ms, utc_offset_min);
  return say(LanguageSay::day_month, {std::to_string(d.day), month_name(d.month)});
}

std::optional<int> utc_offset_in(std::string_view local_time) {
  constexpr std::size_t form = 6; // +01:00
  if (!local_time.empty() && local_time.back() == 'Z') return 0;
  if (local_time.size() < form) return std::nullopt;
  const std::string_view text = local_time.substr(local_time.size() - form);
  if ((text[0] != '+' && text[0] != '-') || text[3] != ':') return std::nullopt;
  int digits[4];
  constexpr std::size_t at[] = {1, 2, 4, 5};
  for (std::size_t i = 0; i < 4; ++i) {
    digits[i] = text[at[i]] - '0';
    if (digits[i] < 0 || digits[i] > 9) return std::nullopt;
  }
  const int hours = digits[0] * 10 + digits[1], minutes = digits[2] * 10 + digits[3];
  if (hours > 14 || minutes > 59) return std::nullopt;
  return (hours * 60 + minutes) * (text[0] == '-' ? -1 : 1);
}

std::string local_time(std::int64_t ms, int utc_offset_min) {
  const WallTime at = wall_time(ms, utc_offset_min);
  const int offset = std::abs(utc_offset_min);
  char text[80];
  std::snprintf(text, sizeof text, "%sT%02d:%02d:%02d%c%02d:%02d", date_of(at.day).c_str(), at.hour,
                at.minute, at.second, utc_offset_min < 0 ? '-' : '+', offset / 60, offset % 60);
  return text;
}

}
