#include "bench/layout_parts.hpp"

namespace bench {

void lay_out_pans(const Bench& bench, Layout& layout) { layout.main = below_strip(bench.display); }

}
