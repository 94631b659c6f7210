// Bottles weighed before and after: what was counted between weighs together what the bottle lost.
// Used by amounts.cpp alone.
#pragma once

#include "session/lines_of_batch.hpp"

namespace session {

// Corrects what was counted by the weighings around it, and says of each weighing what came of it.
// One that lies more than 4 standard uncertainties from the count, as a slip of the finger makes
// it, moves nothing until it is confirmed. The next is compared with it all the same, and with
// those before it: with the latest that it agrees with.
void weigh_bottles(BatchLines& lines, std::vector<std::optional<paint::Amount>>& amounts);

}
