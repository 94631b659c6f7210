// What a batch's paint will be when it is dry.
#pragma once

#include "session/batch.hpp"

#include <string>

namespace session {

// Standard uncertainty of the humidity in the batch's room, 0 to 1: of one that was read, and of a
// guessed one. Own choice.
inline double humidity_u(const Batch& batch) { return batch.room_guessed ? 0.15 : 0.05; }

// Pigment's share of the dry film's volume, 0 to 1, in the batch's room. Absent without pigment or
// gum, and where the pigment's density is not known.
std::optional<paint::Amount> pvc_of(const Batch& batch);

std::string pvc_number(const paint::Amount& pvc); // "62 ± 3 %"
std::string pvc_words(const paint::Amount& pvc);  // a sentence

}
