#include "bench/act.hpp"
#include "bench/again.hpp"
#include "bench/ghost.hpp"
#include "bench/ranges.hpp"
#include "bench/record.hpp"

namespace bench {

void offer_to_go_on(Bench& bench, const Now& now) {
  constexpr std::int64_t lately_ms = 3 * session::a_day_ms;
  bench.plan.go_on.clear();
  if (bench.batches.empty()) return;
  const std::string& latest = bench.batches.back();
  const Folded batch = fold_of(bench, latest);
  if (batch && batch->progress == session::Progress::open &&
      now.wall_ms - batch->last_at <= lately_ms)
    bench.plan.go_on = latest;
}

void take_up(Bench& bench, const std::string& batch, const Now& now, Effects& effects) {
  bench.batch = batch;
  refold(bench, now);
  if (!bench.folded) return;
  if (bench.folded->progress == session::Progress::closed)
    for (auto e = bench.folded->entries.rbegin(); e != bench.folded->entries.rend(); ++e)
      if (std::holds_alternative<session::Closed>(e->event) && !e->withdrawn) {
        record(bench, bench.batch, session::Withdrawn{e->ref}, now, effects);
        break;
      }
  bench.amount = {};
  bench.dropper.clear();
  refold(bench, now);
  bench.ghost = ghost_of(bench, *bench.folded);
  go_to(bench, Screen::slab);
  ask_how_found(bench, now);
}

namespace {

void choose(Bench& bench, const std::string& batch) {
  BookState& book = bench.book;
  if (!book.comparing) {
    book.batch = batch;
    return;
  }
  if (batch == book.batch) return;
  book.other = batch;
  book.comparing = false;
}

// From the two to the one, from the choice of another back to the one, from the one to all.
void step_back(Bench& bench) {
  BookState& book = bench.book;
  if (book.story) return book.story.reset();
  if (book.ranges) return to_all_batches(bench);
  if (!book.other.empty()) return book.other.clear();
  if (book.comparing)
    book.comparing = false;
  else
    to_all_batches(bench);
}

void keep_note(Bench& bench, const Now& now, Effects& effects) {
  const std::string note = bench.book.note.value_or("");
  bench.book.note.reset();
  if (note.empty()) return;
  record(bench, bench.book.batch, session::Noted{note}, now, effects);
  if (bench.book.batch == bench.batch) refold(bench, now);
}

}

void to_all_batches(Bench& bench) {
  bench.book.batch.clear();
  bench.book.other.clear();
  bench.book.comparing = false;
  if (bench.book.ranges) bench.book.page = 0;
  bench.book.ranges = false;
  bench.book.story.reset();
  refresh_ranges(bench);
  bench.book.note.reset();
}

void act_on_book(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  switch (pad.kind) {
  case PadKind::batch: return choose(bench, pad.arg);
  case PadKind::page_back: --bench.book.page; return;
  case PadKind::page_on: ++bench.book.page; return;
  case PadKind::to_list: return step_back(bench);
  case PadKind::make_again: make_again(bench, bench.book.batch); return go_to(bench, Screen::plan);
  case PadKind::ranges:
    bench.book.ranges = true;
    bench.book.page = 0;
    refresh_ranges(bench);
    return;
  case PadKind::range_of: return open_story(bench, pad.arg);
  case PadKind::note_before: return choose_note(bench, -1);
  case PadKind::note_after: return choose_note(bench, 1);
  case PadKind::set_aside: return set_aside(bench, now, effects);
  case PadKind::compare:
    bench.book.comparing = true;
    bench.book.page = 0;
    return;
  case PadKind::note: bench.book.note = ""; return;
  case PadKind::keep: return keep_note(bench, now, effects);
  case PadKind::leave:
    bench.book.note.reset();
    bench.book.comparing = false;
    return;
  case PadKind::take_up: return take_up(bench, bench.book.batch, now, effects);
  default: return;
  }
}

}
