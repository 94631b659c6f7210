// What of pours is still to come: one answer for Pans, Today and what is due.
#pragma once

#include "session/batch.hpp"

#include <vector>

namespace bench {

// Less than half a millimetre over a pan cannot be spread in it: own choice.
double least_pour_mL(const session::Card& pan);

double dry_share_to_pour(const session::Batch& batch); // of what is left; where not known, usual

// What is left of the poured paint is no rest that stays in the jar for good: it fills a third of
// the smallest pan, as poured, which is a sixth when dry (own choice).
bool is_worth_pouring(const session::Batch& batch);

// It covers every pan with room: the one that is meant, or all (0).
bool is_enough_for_layer(const session::Batch& batch, int meant);

// Of these pans those that share what is left to pour, each at least that much: the fullest go
// without first. None where it is not worth pouring.
std::vector<const session::Pan*> pans_that_share(const session::Batch& batch,
                                                 std::vector<const session::Pan*> pans);

struct PoursToCome {
  int layers = 0; // each shared by the pans that have room then
  int last = 0;   // how many will lie in the pan that has most of them
};
// Of a batch that was poured: as far as its paint and the room in its pans go.
PoursToCome pours_to_come(const session::Batch& batch);

}
