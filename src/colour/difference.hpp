// How far apart two colours look: CIEDE2000 (ISO/CIE 11664-6), with all parametric factors 1.
#pragma once

#include "colour/cielab.hpp"

namespace colour {

// From one to the other, each divided by what an eye tells apart there.
struct Apart {
  double lightness = 0; // above 0: the other one is lighter
  double chroma = 0;    // stronger
  double hue = 0;       // turned from red towards yellow, from yellow towards green and so on
  double together = 0;  // R_T, which of blues makes chroma and hue count as partly one; 0 elsewhere
};

Apart apart(const Lab& one, const Lab& other);

// Three numbers whose squares add up to that of the difference: R_T is shared out between the
// second and the third, so that neither says how much stronger or how far turned a colour is.
Three as_squares(const Apart& by);

// The colour difference, 0 and up. Meant for small ones: above about 5 it is only "another colour".
double difference(const Lab& one, const Lab& other);

}
