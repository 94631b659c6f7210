// What of pours is still to come: one answer for Pans, Today and what is due.
#pragma once

#include "session/batch.hpp"

#include <vector>

namespace bench {

// Less than half a millimetre over a pan cannot be spread in it: own choice.
double least_pour_mL(const session::Card& pan);

// Of these pans those that share what is left to pour, each at least that much: the fullest go
// without first.
std::vector<const session::Pan*> pans_that_share(const session::Batch& batch,
                                                 std::vector<const session::Pan*> pans);

struct PoursToCome {
  int layers = 0; // each shared by the pans that have room then
  int last = 0;   // how many will lie in the pan that has most of them
};
// Of a batch that was poured: as far as its paint and the room in its pans go.
PoursToCome pours_to_come(const session::Batch& batch);

}
