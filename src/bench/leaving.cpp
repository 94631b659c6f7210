#include "bench/leaving.hpp"

#include "bench/act.hpp"
#include "bench/record.hpp"

namespace bench {

void say_goodbye(Bench& bench, const Now& now, Effects& effects) {
  if (bench.sitting.left) return; // no line follows
  bench.notice = {};
  keep_what_is_typed(bench, now, effects);
  leave_card(bench, now, effects);
  if (!has_begun(bench)) return;
  record(bench, "", session::Left{}, now, effects);
  bench.sitting.left = true;
}

}
