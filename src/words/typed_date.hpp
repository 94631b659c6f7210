// Dates as somebody types them, by language: 2026-11-25 in each; where people write 25.11.2026,
// that and 25.11. too.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace words {

enum class WithoutYear {
  last,
  next
}; // the latest such day until today, or the first from today on

// Days since 1970; absent for what is no date.
std::optional<std::int64_t> typed_day(std::string_view text, std::int64_t today, WithoutYear which);

// The same as it is kept: "2026-11-25". What is no date stays as it is.
std::string typed_date(const std::string& text, std::int64_t today, WithoutYear which);

// "25.11.2026": how one is typed.
std::string typed_example();

}
