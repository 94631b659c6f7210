// Text that came from outside, letter by letter.
#pragma once

#include <string>
#include <string_view>

namespace words {

inline constexpr char32_t no_letter = 0xFFFD; // stands for what is none

// The letter at `at`, which moves on behind it: by one byte where the bytes are not UTF-8 (RFC
// 3629), which is no letter. `at` must lie inside.
char32_t next_letter(std::string_view text, std::size_t& at);

void put_letter(std::string& out, char32_t letter);

// C0, DEL, C1, and what XML 1.0 (2.2) knows no character for: surrogates, U+FFFE, U+FFFF.
bool is_control(char32_t letter);

}
