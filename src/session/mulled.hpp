// What one batch tells of mulling: how long, in which passes, and what its dots showed.
#pragma once

#include "paint/mull_time.hpp"
#include "session/batch.hpp"

namespace session {

struct MulledPigment {
  std::string card;
  paint::PigmentClass family = paint::PigmentClass::unknown;
  bool operator==(const MulledPigment&) const = default;
};

struct Mulled {
  std::vector<MulledPigment>
      pigments;                 // by card; those of which there is enough to be seen as specks
  paint::MullBatch dots;        // by the minutes mulled then
  double minutes = 0;           // up to the batch's clock
  std::vector<double> passes_s; // that have ended
  bool operator==(const Mulled&) const = default;
};

// Since pigment was last added, for that is to be mulled anew. A pass of more than an hour was
// forgotten: what comes after it tells nothing. Without pigments where paint of another batch is in
// it, which was mulled there.
Mulled mulled(const Batch& batch);
std::vector<MulledPigment> pigments_mulled(const Batch& batch); // of it, these alone

}
