#include "words/typed_date.hpp"

#include "words/calendar.hpp"
#include "words/language_says.hpp"
#include "words/say.hpp"

#include <vector>

namespace words {

namespace {

bool day_first() { return typed_example().find('.') != std::string::npos; }

// "25.11.2026" and "25. 11." in their numbers; empty for anything else.
std::vector<int> between_dots(std::string_view text) {
  std::vector<int> out{0};
  bool digit = false;
  for (const char c : text) {
    if (c == ' ') continue;
    if (c == '.' && digit) {
      out.push_back(0);
      digit = false;
    } else if (c >= '0' && c <= '9' && out.back() < 1000) {
      out.back() = out.back() * 10 + (c - '0');
      digit = true;
    } else {
      return {};
    }
  }
  if (!digit) out.pop_back();
  return out;
}

std::optional<std::int64_t> day_in(std::int64_t year, const std::vector<int>& typed) {
  if (typed[0] > 31 || typed[1] > 12) return std::nullopt;
  return days_of(date_of(Day{year, typed[1], typed[0]}));
}

}

std::string typed_example() { return say(LanguageSay::date_typed); }

std::optional<std::int64_t> typed_day(std::string_view text, std::int64_t today,
                                      WithoutYear which) {
  if (const auto day = days_of(text)) return day;
  if (!day_first()) return std::nullopt;
  const auto typed = between_dots(text);
  constexpr int century = 2000;
  if (typed.size() == 3) return day_in(typed[2] < 100 ? century + typed[2] : typed[2], typed);
  if (typed.size() != 2) return std::nullopt;
  const std::int64_t year = day_of(today * 86'400'000, 0).year;
  constexpr int leap_years_apart = 8; // 29.2. may be so far off
  const int step = which == WithoutYear::last ? -1 : 1;
  for (int i = 0; i <= leap_years_apart; ++i) {
    const auto day = day_in(year + i * step, typed);
    if (day && (which == WithoutYear::last ? *day <= today : *day >= today)) return day;
  }
  return std::nullopt;
}

std::string typed_date(const std::string& text, std::int64_t today, WithoutYear which) {
  const auto day = typed_day(text, today, which);
  return day ? date_of(*day) : text;
}

}
