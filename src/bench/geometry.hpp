// Millimetres on the display: x to the right, y down, from the top left corner.
#pragma once

#include "session/geometry.hpp"

namespace bench {

using session::inset;
using session::Point;
using session::Rect;
using session::Size;

}
