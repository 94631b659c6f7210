#include "bench/act.hpp"

namespace bench {

void act_on_pans(Bench&, const PadId&, const Now&, Effects&) {}

}
