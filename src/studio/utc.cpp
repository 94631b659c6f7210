#include "studio/utc.hpp"

#include <array>
#include <chrono>
#include <cstdio>

namespace studio {

namespace {

std::string written(std::int64_t ms, const char* form) {
  using namespace std::chrono;
  const sys_time<milliseconds> moment{milliseconds(ms)};
  const auto day = floor<days>(moment);
  const year_month_day date{day};
  const auto second = duration_cast<seconds>(moment - day).count();
  std::array<char, 64> text{};
  std::snprintf(text.data(), text.size(), form, static_cast<int>(date.year()),
                static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                static_cast<int>(second / 3600), static_cast<int>(second / 60 % 60),
                static_cast<int>(second % 60));
  return text.data();
}

}

std::string utc_for_files(std::int64_t ms) { return written(ms, "%04d-%02u-%02uT%02d%02d%02dZ"); }

std::string utc_for_people(std::int64_t ms) { return written(ms, "%04d-%02u-%02u %02d:%02d UTC"); }

}
