// What one batch has to teach of the range and of gum, small enough that all of a studio's can be
// kept.
#pragma once

#include "paint/gum.hpp"
#include "paint/softness.hpp"
#include "session/batch.hpp"

namespace session {

struct TrainingBatch {
  std::string batch;
  std::int64_t opened_at = 0;
  std::vector<Feeling> notes;                     // their tools as tool_key has it
  std::map<std::string, paint::Pigment> pigments; // by card
  paint::PigmentClass family = paint::PigmentClass::unknown;
  std::optional<paint::GumVerdict> gum; // of its dry paint
  double own_tools_sd = 0; // relative, of the liquid: what only this batch was measured with

  bool operator==(const TrainingBatch&) const = default;
};

// Absent where there is no note and no verdict on its gum. Left out: the same word again with
// nothing changed between, and what was felt with another batch's paint in it, which is no pigment
// alone.
std::optional<TrainingBatch> training_of(const Batch& batch);

// Not all of its notes were set aside, or felt before the powder was wetted out.
bool has_training_notes(const TrainingBatch& training);

// The last verdict on the batch that gum is a reason of: rubs off; cracked, or sticky a day
// after the pour though its honey and glycerin would let it dry; good. Others say nothing of it.
std::optional<paint::GumVerdict> gum_verdict(const Batch& batch);

// What the dry paint of a batch has to teach of honey, glycerin and gum.
struct DriedPaint {
  std::vector<std::string> pigments; // cards, in order
  paint::PigmentClass family = paint::PigmentClass::unknown;
  Became as = Became::good; // good, cracked, sticky, rubs_off or wont_rewet
  std::int64_t at = 0;      // ms since 1970
  double index = 0;         // tack index in the room it dried in; 0: not known
  double gum_g_per_mL = 0;  // dry gum to pigment; 0: not known
  std::optional<paint::GumVerdict> gum;

  bool operator==(const DriedPaint&) const = default;
};

// By the last of those verdicts on the batch, or on a pan of it; sticky of paint that may not be
// dry yet is none. Absent without one, without a pigment and for a batch that was discarded.
std::optional<DriedPaint> dried_paint(const Batch& batch);

// Absent for what says nothing of softness.
std::optional<paint::SoftVerdict> soft_verdict(const DriedPaint& dried);

// Of a whole studio, by class.
using GumVerdicts = std::map<paint::PigmentClass, std::vector<paint::GumVerdict>>;
paint::GumMarks marks_of(const GumVerdicts& verdicts, paint::PigmentClass family);

// Which tools' errors other batches share, by what they were calibrated to be: "bulb 0.0500 mL".
// Empty for one that only this batch knows, as a weighing.
std::string tool_key(const Batch& batch, const std::string& tool);

}
