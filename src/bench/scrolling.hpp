// The list of the screen that shows, as fingers, pads and time move it.
#pragma once

#include "bench/touch.hpp"

namespace bench {

// By a pad that turns its pages; whether it was one.
bool turns_list(Bench& bench, const PadId& pad);

// By a finger. Whether other rows show now.
bool drag_list(Bench& bench, const Recognised& recognised, const Now& now);

// As time passes: between two rows it is only under a finger, or while it runs on. Whether other
// rows show now.
bool move_list(Bench& bench, const Now& now);

std::optional<std::int64_t> next_row_at(const Bench& bench); // see Scroll

}
