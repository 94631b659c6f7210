// What was said last of the dry paint, pan by pan.
#pragma once

#include "session/batch.hpp"

namespace bench {

// The verdict that stands: of one pan the last since its own last layer that speaks of it or of
// all; of all (pan 0) the last since the last pour that speaks of all. Absent: none.
std::optional<session::Judged> said_of(const session::Batch& batch, int pan);

// Pans of which something newer was said than of all.
std::vector<int> said_apart(const session::Batch& batch);

// Sticky, said of a layer that could not yet be dry: that is no fault of the paint.
bool said_early(const session::Batch& batch, const session::Judged& said);

// Why no layer goes on, as it was said of all pans: sticky, when they had their time to dry; rubs
// off or won't re-wet, until what is left was given binder or honey and gathered again. A pan that
// was begun later changes nothing of it. Absent: a layer may go on.
std::optional<session::Became> bars_layer(const session::Batch& batch);

}
