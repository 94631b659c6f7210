// What is left of a line where the power went while it was written.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace session {

// Whether these bytes, which no LF ends, are the beginning of a line, of one that comes after
// number `last`. Zeros, another page's bytes or noise are not.
bool is_torn_line(std::string_view bytes, std::optional<std::uint64_t> last);

}
