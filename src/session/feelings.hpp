// Feel notes as they are met while a batch is folded. Used by batch.cpp.
#pragma once

#include "session/batch.hpp"

namespace session {

// Where the line is a feel note: what was felt, the paint in hand being this.
void feel(Batch& batch, const Entry& entry, const paint::Mixture& paint);

// Once all entries are there: marks what repeats the note before it, and what a line sets aside.
void mark_feelings(Batch& batch);

}
