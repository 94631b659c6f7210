#include "studio/utc.hpp"

#include "words/calendar.hpp"

#include <cstdio>

namespace studio {

namespace {

std::string written(std::int64_t ms, const char* form) {
  const words::WallTime at = words::wall_time(ms, 0);
  char text[96];
  std::snprintf(text, sizeof text, form, words::date_of(at.day).c_str(), at.hour, at.minute,
                at.second);
  return text;
}

}

std::string utc_for_files(std::int64_t ms) { return written(ms, "%sT%02d%02d%02dZ"); }

std::string utc_for_people(std::int64_t ms) { return written(ms, "%s %02d:%02d UTC"); }

}
