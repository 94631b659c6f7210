// How soft dried paint should be in a room. Hard paint is not taken up again by a wet brush, and
// cracks; soft paint stays tacky. Honey and glycerin to gum, and the room's air, decide.
#pragma once

#include "paint/film.hpp"

#include <optional>
#include <vector>

namespace paint {

// Both as a tack index: below the one paint is too hard, above the other it is sticky.
struct SoftMarks {
  TackMark hard, sticky;
  bool operator==(const SoftMarks&) const = default;
};

// A guess of our own, no source: hard begins between the two films of tack_index that are told in
// words, brittle at 0.14 and good at 0.32, each one standard deviation from the middle. Sticky as
// TackMark has it.
SoftMarks usual_soft_marks();

// What paint of that tack index turned out to be, above 0; others are left out.
struct SoftVerdict {
  enum What { wont_rewet, cracked, holds, sticky } what = holds;
  double index = 0;
  bool operator==(const SoftVerdict&) const = default;
};

// The marks after some verdicts, each by the update of TackMark. "Holds" speaks for both marks, the
// others for one. A crack has other reasons too, as a deep layer has, and weighs less: it strays
// from the mark by 0.6 in ln (our own, no source).
SoftMarks marks_after(SoftMarks marks, const std::vector<SoftVerdict>& verdicts);

// What a class has taught, as the start for one pigment of it, which may differ by 0.15 in ln more
// (our own, no source).
SoftMarks for_a_pigment(SoftMarks of_its_class);

// Where paint is soft enough and not too soft, but for one in six at either end; where the marks
// contradict each other, a single point between them.
struct SoftRange {
  double low = 0, high = 0;
};
SoftRange soft_range(const SoftMarks& marks);

// g of honey solids or of glycerin to be added until the paint has that index in that room; 0 where
// it has more. Absent without gum, in a room that is too damp, and where three times the gum's
// weight would not do.
enum class Softener { honey, glycerin };
std::optional<double> softener_g(Softener by, double index, const Wet& has, const Room& room);

}
