// What was poured into which pan, while a batch is folded. Used by batch.cpp.
#pragma once

#include "session/places.hpp"

#include <cstdint>
#include <vector>

namespace session {

// Seconds since the batch was opened: from a session's own clock within it, from the order stamps
// between sessions; never falling.
using Clock = double;

struct PouredLayer {
  Ref line;
  Clock clock = 0;
  std::int64_t at = 0; // ms since 1970
  double wet_mL = 0;
  double dry_mL = 0; // what it will be, between its bounds in the middle
};

struct PanReading {
  Clock clock = 0;
  std::int64_t at = 0;
  double g = 0; // pan and paint
};

struct Pan {
  int number = 1;
  Card card;
  std::vector<PouredLayer> layers;
  std::vector<PanReading> readings;
};

double dry_mL(const Pan& pan);

// When the last layer was poured that lies in a pan by then, in ms since 1970; absent: none.
std::optional<std::int64_t> last_pour(const std::vector<Pan>& pans, std::int64_t by);

// mL of wet paint in a place, and what share of it a dry layer keeps; the share is absent where
// nothing lies there. Where too little is known of the paint: 0.55, the middle of ten batches by an
// independent model (0.44 to 0.69).
double wet_mL(const Places& places, Place place);
std::optional<paint::Interval> dry_share(const Places& places, Place place);
double wet_g_per_mL(const Places& places, Place place); // 0: nothing lies there

struct WhenPoured {
  Ref line;
  Clock clock = 0;
  std::int64_t at = 0;
};

// Why nothing can be poured into that, if so; `in` is null where no session laid it out.
Fault into_no_pan(const Poured& poured, const Card* in);

// Fills them one after the other as far as the paint goes: out of the jar, or off the slab where
// the jar is empty. Errors: nothing_there; measure_not_positive for a pan that holds nothing.
Fault pour(std::vector<Pan>& pans, Places& places, const Poured& poured, const Card& card,
           const WhenPoured& when, const std::string& name);

}
