#include "commands/clock.hpp"

#include "words/commands_says.hpp"
#include "words/moments.hpp"

#include <chrono>

namespace commands {

namespace {

// Digits at a fixed place of the text; -1 where there is anything else.
int digits(std::string_view text, std::size_t from, std::size_t count) {
  int value = 0;
  for (const char c : text.substr(from, count)) {
    if (c < '0' || c > '9') return -1;
    value = value * 10 + (c - '0');
  }
  return value;
}

bool has_form(std::string_view text, std::string_view form) {
  if (text.size() != form.size()) return false;
  for (std::size_t i = 0; i < form.size(); ++i)
    if (form[i] != '0' && form[i] != text[i]) return false;
  return true;
}

// "Z", "+01:00", "-03:30", and nothing else.
std::optional<int> zone_of(std::string_view text) {
  const bool whole = text == "Z" || text.size() == 6;
  return whole ? words::utc_offset_in(text) : std::nullopt;
}

}

words::Result<Moment> moment(std::string_view text) {
  using namespace std::chrono;
  constexpr std::size_t until_seconds = 19;
  const auto wrong = [&] {
    return words::failure(words::CommandsSay::not_a_moment, {std::string(text)});
  };
  if (text.size() <= until_seconds) return wrong();
  const auto offset = zone_of(text.substr(until_seconds));
  if (!has_form(text.substr(0, until_seconds), "0000-00-00T00:00:00") || !offset) return wrong();
  const int year_number = digits(text, 0, 4), month_number = digits(text, 5, 2);
  const int day_number = digits(text, 8, 2), h = digits(text, 11, 2);
  const int m = digits(text, 14, 2), s = digits(text, 17, 2);
  if (year_number < 1970 || month_number < 1 || day_number < 1 || h < 0 || h > 23 || m < 0 ||
      m > 59 || s < 0 || s > 59)
    return wrong();
  const year_month_day date{year(year_number), month(static_cast<unsigned>(month_number)),
                            day(static_cast<unsigned>(day_number))};
  if (!date.ok()) return wrong();
  const auto when = sys_days(date) + hours(h) + minutes(m) + seconds(s) - minutes(*offset);
  return Moment{duration_cast<milliseconds>(when.time_since_epoch()).count(), *offset};
}

}
