#include "studio/utc.hpp"

#include "words/calendar.hpp"

#include <cstdio>

namespace studio {

namespace {

std::string written(std::int64_t ms, int utc_offset_min, const char* form) {
  const words::WallTime at = words::wall_time(ms, utc_offset_min);
  char text[96];
  std::snprintf(text, sizeof text, form, words::date_of(at.day).c_str(), at.hour, at.minute,
                at.second);
  return text;
}

}

std::string utc_for_files(std::int64_t ms) { return written(ms, 0, "%sT%02d%02d%02dZ"); }

std::string for_people(std::int64_t ms, std::optional<int> utc_offset_min) {
  return written(ms, utc_offset_min.value_or(0),
                 utc_offset_min ? "%s %02d:%02d" : "%s %02d:%02d UTC");
}

}
