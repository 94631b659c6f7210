// Where the search for demands begins. Far from its notes a demand's chance is flat, since each of
// them may have been a slip, and a search from there would stay there. Private to learn*.cpp.
#pragma once

#include "paint/range/learn_plan.hpp"

namespace paint::learning {

// Every pigment at the median of what its notes say one by one, where another mode could not be
// told from there; else, and for all that is no pigment, as in `z`.
Eigen::VectorXd start_near_notes(const Plan& plan, const NoteModel& hand, Eigen::VectorXd z);

}
