// What a batch's paint will be when it is dry.
#pragma once

#include "session/batch.hpp"

#include <string>

namespace session {

// Pigment's share of the dry film's volume, 0 to 1, in the batch's room; a humidity that was read
// is taken for right to 0.05, a guessed one to 0.15 (own choice). Absent without pigment or gum,
// and where the pigment's density is not known.
std::optional<paint::Amount> pvc_of(const Batch& batch);

std::string pvc_number(const paint::Amount& pvc); // "62 ± 3 %"
std::string pvc_words(const paint::Amount& pvc);  // a sentence

}
