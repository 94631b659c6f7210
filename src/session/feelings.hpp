// Feel notes as they are met while a batch is folded, and which of them say something new.
#pragma once

#include "session/folding.hpp"

namespace session {

// Under the knife for so long powder is still being wetted out; who puts the knife away after so
// long found that it was. Own choice.
inline constexpr double wetted_out_s = 120, put_away_s = 60;
bool is_worked_in(const Batch& batch); // so long, or mulled

// So long water soaks into paint that was found dry: common practice, no source.
inline constexpr double soaked_s = 600;

// Share of dry gum beyond which a solution's viscosity is no longer what the model has, as where
// paint has dried out. Own choice.
inline constexpr double strongest_modelled = 0.5;
double within_model(const Feeling& note); // its dry gum, as far as that

// Where the line is a feel note: what was felt, the paint in hand being this, and whether it
// repeats the note before it. Where it sets one aside: marks that.
void feel(FoldState& state, const Entry& entry, const paint::Mixture& paint);

// The last note is this line's, and the powder was worked in, as far as it says anything of that.
bool felt_worked_in(const Batch& batch, const Ref& line);

// The same word, of paint that is no further towards right than it was when it was said last.
// `drying`: how ln flow moves with dry gum, as the fit has it.
bool is_said_again(const Feeling& note, const Feeling& before, double drying);

}
