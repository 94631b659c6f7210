// How powder lies in a spoon.
#pragma once

#include "paint/material.hpp"

namespace paint {

struct Heap {
  double g_per_mL = 0;
  double u = 0;       // standard uncertainty
  bool guess = false; // nobody weighed it
};

// As its card says it; else a guess: loose powder fills 22 % of its spoon, by 11 to 45 (own
// estimate: a factor of two either way, as handling moves it). 0 for a pigment of no density.
Heap heap_of(const Pigment& pigment);

// The pigment with that guess on it, where its card has none: for amounts that say so.
Pigment with_heap(Pigment pigment);

}
