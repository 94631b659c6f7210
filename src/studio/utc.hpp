// Moments in UTC, written out. Years 0 to 9999; others are written as they are, longer.
#pragma once

#include <cstdint>
#include <string>

namespace studio {

std::string utc_for_files(std::int64_t ms);  // since 1970: "2026-11-25T143200Z"
std::string utc_for_people(std::int64_t ms); // "2026-11-25 14:32 UTC"

}
