// How wide words are, by the faces' own advance widths, so that a label is known to fit before it
// is drawn. B612 is the face, regular and bold, read once from where the build found it.
#pragma once

#include "words/error.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace screens {

// The bytes of a face; empty if its file is not there.
const std::vector<unsigned char>& face(bool bold);

// Error: font_missing, with the path.
words::Result<void> faces_present();

// Width in mm of one line whose capitals are cap_mm high. Bytes that are not UTF-8 count as one
// unknown letter each. 0 without a face.
double width_mm(std::string_view words, double cap_mm, bool bold);

// Height of a capital over the size by which toolkits scale a face (ascender to descender).
double cap_of_size(bool bold);

// The next code point, moving `at` past it. 0xFFFD for a byte that is not UTF-8.
char32_t next_letter(std::string_view words, std::size_t& at);

}
