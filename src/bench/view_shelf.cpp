#include "bench/view_parts.hpp"

namespace bench {

ShelfView shelf_view(const Bench&) { return {}; }

}
