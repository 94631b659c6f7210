// Readings that were kept long ago, of which only L*, a*, b* and their doubts are left, and what a
// paint that was read more than once says of such doubts.
#pragma once

#include "colour/reading.hpp"

#include <optional>

namespace colour {

struct KeptParts { // of what is in doubt
  Three own{};     // 1 sd
  Three white{};   // as in Reading::shared
};

// What all swatches of one photo share is worked out again, as of a photo in sRGB. The doubt about
// its white, which went with the light, is known where it was kept; else it stays with the
// reading's own. So two swatches on one photo are compared as surely as on the day they were read.
Reading kept_reading(const Lab& lab, const Three& sd, const std::optional<KeptParts>& parts = {});

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
