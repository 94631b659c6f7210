// What is known of a pigment before anybody has felt it, as the learnt range takes it.
#pragma once

#include "paint/material.hpp"
#include "paint/range/learn.hpp"

namespace paint {

// ln r_oa from the oil absorption, or its class's mean; kappa and its sd from the class's usual
// demand, as class_guess (range.hpp) has them. q takes that sd where it is larger than the usual sd
// between pigments, the class's sd of ln r_oa where the oil absorption is not known, and 0.15 where
// it was measured on another lot.
LearnPigment learn_facts(const Pigment& pigment, bool another_lot = false);

}
