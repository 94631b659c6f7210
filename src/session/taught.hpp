// What one batch has to teach of the range, small enough that all of a studio's can be kept.
#pragma once

#include "session/batch.hpp"

namespace session {

struct Taught {
  std::string batch;
  std::int64_t opened_at = 0;
  std::vector<Feeling> notes;                     // their tools as tool_key has it
  std::map<std::string, paint::Pigment> pigments; // by card
  double own_tools_sd = 0; // relative, of the liquid: what only this batch was measured with

  bool operator==(const Taught&) const = default;
};

// Absent where there is no note. Left out: the same word again with nothing changed between, and
// what was felt with another batch's paint in it, which is no pigment alone.
std::optional<Taught> taught_by(const Batch& batch);

bool teaches(const Taught& taught); // not all of its notes were set aside

// Which tools' errors other batches share, by what they were calibrated to be: "bulb 0.0500 mL".
// Empty for one that only this batch knows, as a weighing.
std::string tool_key(const Batch& batch, const std::string& tool);

}
