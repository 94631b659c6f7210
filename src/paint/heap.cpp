#include "paint/heap.hpp"

namespace paint {

namespace {

constexpr double loose = 0.22;
constexpr double loose_relative_u = 0.4; // ln 2 / sqrt 3

}

Heap heap_of(const Pigment& pigment) {
  if (pigment.heap_g_per_mL > 0) return {pigment.heap_g_per_mL, pigment.heap_g_per_mL_u, false};
  const double guess = loose * pigment.g_per_mL;
  return {guess, loose_relative_u * guess, true};
}

Pigment with_heap(Pigment pigment) {
  const Heap heap = heap_of(pigment);
  pigment.heap_g_per_mL = heap.g_per_mL;
  pigment.heap_g_per_mL_u = heap.u;
  return pigment;
}

}
