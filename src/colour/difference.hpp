// How far apart two colours look: CIEDE2000 (ISO/CIE 11664-6), with all parametric factors 1.
#pragma once

#include "colour/cielab.hpp"

namespace colour {

// From one to the other, each divided by what an eye tells apart there, so that the root of the sum
// of their squares is the difference. The term that turns blues (R_T) is in chroma and hue.
struct Apart {
  double lightness = 0; // above 0: the other one is lighter
  double chroma = 0;    // stronger
  double hue = 0;       // turned from red towards yellow, from yellow towards green and so on
};

Apart apart(const Lab& one, const Lab& other);

// The colour difference, 0 and up. Meant for small ones: above about 5 it is only "another colour".
double difference(const Lab& one, const Lab& other);

}
