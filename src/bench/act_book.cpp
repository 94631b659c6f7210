#include "bench/act.hpp"
#include "bench/ghost.hpp"
#include "bench/record.hpp"

namespace bench {

namespace {

// Takes up a batch again: a closed one by withdrawing what closed it.
void take_up(Bench& bench, const Now& now, Effects& effects) {
  bench.batch = bench.book.batch;
  refold(bench, now);
  if (!bench.folded) return;
  if (bench.folded->progress == session::Progress::closed)
    for (auto e = bench.folded->entries.rbegin(); e != bench.folded->entries.rend(); ++e)
      if (std::holds_alternative<session::Closed>(e->event) && !e->withdrawn) {
        record(bench, bench.batch, session::Withdrawn{e->ref}, now, effects);
        break;
      }
  bench.amount = {};
  refold(bench, now);
  bench.ghost = ghost_of(bench, *bench.folded);
  go_to(bench, Screen::slab);
}

}

void act_on_book(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  switch (pad.kind) {
  case PadKind::batch: bench.book.batch = pad.arg; return;
  case PadKind::page_back: --bench.book.page; return;
  case PadKind::page_on: ++bench.book.page; return;
  case PadKind::to_list: bench.book.batch.clear(); return;
  case PadKind::take_up: return take_up(bench, now, effects);
  default: return;
  }
}

}
