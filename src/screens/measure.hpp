// How wide words are, by the faces' own advance widths, so that a label is known to fit before it
// is drawn. B612 is the face, regular and bold; what it lacks (names may be in any script) other
// faces of the system draw, in the order of their ranks. Each is read once, from where
// face_files.hpp has it, when it is first asked for.
#pragma once

#include "words/error.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace screens {

inline constexpr int ranks = 3; // B612, DejaVu Sans, and one for East Asia if the system has one

// The bytes of a face; empty if its file is not there.
const std::vector<unsigned char>& face(bool bold, int rank = 0);

// The first rank that has this letter; absent if none has.
std::optional<int> rank_with(char32_t letter, bool bold);

// Stands for a letter that no face has.
char32_t sign_for_none(bool bold);

// Those that were not there may be now. Widths that were measured before are wrong then.
void look_again_for_faces();

// Error: font_missing, with the path, for the first two ranks, but where one comes later.
words::Result<void> faces_present();

// Width in mm of one line whose capitals are cap_mm high. Bytes that are not UTF-8 count as one
// unknown letter each. 0 without a face.
double width_mm(std::string_view words, double cap_mm, bool bold);

// Height of a capital over the size by which toolkits scale a face (ascender to descender).
double cap_of_size(bool bold, int rank = 0);

}
