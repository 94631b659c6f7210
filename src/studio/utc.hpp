// Moments written out. Years 0 to 9999; others are written as they are, longer.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace studio {

std::string utc_for_files(std::int64_t ms); // since 1970: "2026-11-25T143200Z"
// By a clock so many minutes east of UTC, "2026-11-25 15:32"; of nobody knows which clock,
// "2026-11-25 14:32 UTC".
std::string for_people(std::int64_t ms, std::optional<int> utc_offset_min);

}
