// Specks in a dot of paint: lumps of pigment not yet mulled apart, lighter or darker than the paint
// around them. Counted on its photo as a proposal: the hand decides.
#pragma once

#include "colour/photo.hpp"

#include <tl/expected.hpp>

#include <optional>
#include <vector>

namespace colour {

enum class Specked { many, few, none };

struct Speck {
  double x = 0, y = 0; // its middle, upright, in the file's pixels
  double across = 0;   // the diameter of a disc of its area, in the file's pixels
};

struct Specks {
  std::vector<Speck> found;
  std::optional<double> per_cm2; // of paint; where a scale is known
  Specked as_word = Specked::none;
};

// Why they cannot be counted.
enum class Uncounted {
  outside,   // the region reaches beyond the photo
  too_small, // under 40 pixels wide
  too_dark,  // under level 6 of 255: nothing would show
};

// `paint` lies within the dot, upright. `pixels_per_mm` of the file, above 0, where it is known.
// A speck is what differs from the paint around it by 5 times the scatter and 3 of L*, is at least
// 2 pixels across, at most a twelfth of the region, and not three times as long as wide. Of specks
// that touch one is counted; a photo out of focus has none. Per cm2 of paint: none under 1, few
// under 20 (own estimate: a test dot is about 1 cm2, and a hand calls 1 to 20 specks few); without
// a scale the region is taken for such a dot.
tl::expected<Specks, Uncounted> count_specks(const Photo& photo, const Box& paint,
                                             std::optional<double> pixels_per_mm);

}
