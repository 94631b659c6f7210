// What is known of a pigment before anybody has felt it, as the learnt range takes it.
#pragma once

#include "paint/material.hpp"
#include "paint/range/learn.hpp"

namespace paint {

// From the class's usual demand and the mean of its ln r_oa (ClassPrior, range.hpp); with an oil
// absorption, half of what its ln lies off that mean. q takes the sd between pigments of the class,
// what the half may be off by, and the class's sd of ln r_oa where the oil absorption is not known
// or the sd between lots where it was measured on another one.
LearnPigment learn_facts(const Pigment& pigment, bool another_lot = false);

}
