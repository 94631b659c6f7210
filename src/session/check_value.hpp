// CRC-32C (Castagnoli), as in RFC 3720 appendix B.4.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace session {

// The check value of `bytes` that follow what gave `before`; 0 before the first.
std::uint32_t crc32c(std::string_view bytes, std::uint32_t before = 0);
// The same where the processor has no instruction for it.
std::uint32_t crc32c_by_tables(std::string_view bytes, std::uint32_t before = 0);

std::string to_hex(std::uint32_t value); // eight lower-case digits
std::optional<std::uint32_t> from_hex(std::string_view eight_digits);

}
