// Readings that were kept long ago, of which only L*, a*, b* and their doubts are left, and what a
// paint that was read more than once says of such doubts.
#pragma once

#include "colour/reading.hpp"

namespace colour {

// What all swatches of one photo share is worked out again, as of a photo in sRGB; the doubt about
// its white, which went with the light, stays with the reading's own. So two swatches on one photo
// are compared as surely, nearly, as on the day they were read.
Reading kept_reading(const Lab& lab, const Three& sd);

// One paint on two photos: how far apart it was read, against how far it might have been.
struct Repeats {
  double squares = 0; // of that ratio, in each of the three ways that colours differ
  int degrees = 0;    // three of each repeat
};
void add_repeat(Repeats& repeats, const Reading& one, const Reading& other);

// By what the doubt of a difference between two photos is to be multiplied: 1 before anything was
// repeated. The stated doubts count as much as two repeats that bear them out (our own choice), so
// that one lucky repeat makes nothing sure.
double doubt_of(const Repeats& repeats);

}
