// A line of text as a square code that a telephone reads (QR code, ISO/IEC 18004), so that a label
// can be told apart and copied without typing.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace paper {

inline constexpr std::size_t most_qr_bytes = 122; // of UTF-8: 45 modules a side at level M

struct Qr {
  int modules = 0;        // a side, without the light border of 4 around it that readers want
  std::vector<bool> dark; // row by row
};

// At level M: 15 % of it may be worn off. Absent for no text or more than most_qr_bytes of it. In a
// browser whoever asks has seen that the page has what makes it (Papers::get_ready).
std::optional<Qr> qr_of(const std::string& text);

}
