// The colour of a swatch, read from a photo of it with bare paper around, and how well it is known.
//
// Levels become linear light; the light on the paper around, as it falls off across the table,
// divides it (colour/light.hpp); what is left is the paint beside the paper, which so stands for
// white: CIELAB with the paper at L* 100. Two papers of one kind compare; a yellow paper and a
// white one do not. Light of another colour than daylight is taken out half by the camera's own
// colours and half by Bradford's, since cameras lie between, and the half of it is the doubt.
//
// What is not known comes in two parts. The reading's own: the scatter of 16 cells of the swatch
// and of the paper's cells around their fit, and the steps that a JPEG coarsened both by. And what
// all swatches of a photo share, each with one standard deviation: the camera's curve is not
// exactly the stated one (exponent 3 %), colours are made livelier or duller (3 %), black is lifted
// or crushed (0.4 % of the paper), and the white of above. The first three are our own estimates
// until repeats of one swatch have been measured. Of two swatches on one photo what they share
// nearly cancels.
#pragma once

#include "colour/photo.hpp"

#include <tl/expected.hpp>

#include <optional>
#include <vector>

namespace colour {

// How far to either side of what was read a doubt reaches, in sds of a normal distribution.
inline constexpr double nineteen_in_twenty = 1.96, nine_in_ten = 1.6448536269514722;

struct Regions {
  Box swatch;
  std::vector<Box> paper; // bare, as near to the swatch as may be, best on all sides
  bool operator==(const Regions&) const = default;
};

// Why a photo cannot tell.
enum class Untold {
  outside,       // a region reaches beyond the photo
  overlapping,   // swatch and paper, or two swatches, lie over each other
  too_small,     // under 12 pixels wide or 400 in all
  no_paper,      // the paper is darker than the swatch, uneven, or in light of one colour alone
  paper_clipped, // over 1 % of the paper is at the brightest there is
  paper_dark,    // paper under level 70 of 255
  too_dark,      // paint under 6
  clipped,       // over 2 % of the swatch is at the brightest there is
  gloss,         // over 3 % of the swatch is as bright as the paper: shine, or bare spots
  several,       // parts of the swatch are 20 apart in hue (own estimate): two paints, or a table
  like_paper,    // no further than 1.5 from the paper: white on white
  no_colours,    // the photo has none
};

enum class Shared { curve, liveliness, black, white };
inline constexpr std::size_t shared_parts = 4;

struct Reading {
  Lab d50;                                  // of the paint beside the paper, D50
  Lab d65;                                  // the same under D65
  Matrix own{};                             // covariance of d50, the reading's own part
  std::array<Three, shared_parts> shared{}; // what 1 sd of each would do to d50
  double graded = 0;   // L* between the lightest and the darkest quarter of the swatch
  double glints = 0;   // share of the swatch left out
  bool beyond = false; // a colour is at the lowest that the photo can hold: it may be livelier yet
};

// Takes 10 ms for a million pixels in the regions. The photo is as the file has it, the regions are
// as it is seen upright.
tl::expected<Reading, Untold> read_swatch(const Photo& photo, const Regions& regions);

// Which regions it is about: 0 the swatch, from 1 on the paper. Paper is tried piece by piece, and
// where none alone is to blame, all of it is; empty where the photo itself has no colours.
std::vector<std::size_t> regions_at_fault(const Photo& photo, const Regions& regions, Untold why);

// What a photo in sRGB may have done to paint of this colour beside its paper: all that is shared
// but the white.
std::array<Three, shared_parts> camera_doubts(const Lab& lab);

// 1 sd of L*, a* and b* of one reading alone, everything counted.
Three uncertainty(const Reading& reading);

}
