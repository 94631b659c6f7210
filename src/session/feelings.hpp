// Feel notes as they are met while a batch is folded. Used by batch.cpp.
#pragma once

#include "session/folding.hpp"

namespace session {

// Under the knife for so long powder is still being wetted out: own choice.
inline constexpr double wetted_out_s = 120;

// Where the line is a feel note: what was felt, the paint in hand being this, and whether it
// repeats the note before it. Where it sets one aside: marks that.
void feel(FoldState& state, const Entry& entry, const paint::Mixture& paint);

// The last note is this line's, and the powder was worked in, as far as it says anything of that.
bool felt_worked_in(const Batch& batch, const Ref& line);

}
