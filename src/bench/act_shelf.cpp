#include "bench/act.hpp"

namespace bench {

void act_on_shelf(Bench&, const PadId&, const Now&, Effects&) {}

}
