// Pads of the slab that are wanted seldom: where the paint lies, what it weighs, other paint, lines
// that were wrong.
#include "bench/act.hpp"
#include "bench/corrections.hpp"
#include "bench/paints.hpp"
#include "bench/record.hpp"

namespace bench {

namespace {

using session::Place;

void at_slab(Bench& bench, session::Event event, const Now& now, Effects& effects) {
  record(bench, bench.batch, std::move(event), now, effects);
  bench.middle = Middle::trail;
  refold(bench, now);
}

void choose_paint(Bench& bench, const std::string& batch, const Now& now, Effects& effects) {
  for (const OtherPaint& paint : bench.paints)
    if (paint.batch == batch) {
      lay_out_card(bench, bench.batch, paint.card, now, effects);
      refold(bench, now);
      return open_number(bench, {PadKind::add, paint.card.id});
    }
}

void choose_line(Bench& bench, const std::string& arg) {
  bench.line = line_named(arg);
  bench.middle = Middle::line;
}

void move_line(Bench& bench, std::int64_t by_ms, const Now& now, Effects& effects) {
  if (const session::Entry* line = line_chosen(bench))
    at_slab(bench, session::Corrected{line->ref, {}, moved_by_ms(bench, *line) + by_ms}, now,
            effects);
}

}

void act_on_more(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  switch (pad.kind) {
  case PadKind::weigh_paint:
  case PadKind::spilt: return open_number(bench, pad);
  case PadKind::to_jar:
    return at_slab(bench,
                   session::Moved{Place::slab, Place::jar, {pad.arg == "half" ? 0.5 : 1.0, {}}},
                   now, effects);
  case PadKind::from_jar:
    return at_slab(bench, session::Moved{Place::jar, Place::slab, {}}, now, effects);
  case PadKind::other_paint: bench.middle = Middle::paints; return;
  case PadKind::paint_of: return choose_paint(bench, pad.arg, now, effects);
  case PadKind::lines:
    bench.lines_page = 0;
    bench.middle = Middle::lines;
    return;
  case PadKind::earlier: ++bench.lines_page; return;
  case PadKind::line: return choose_line(bench, pad.arg);
  case PadKind::other_amount: return open_number(bench, pad);
  case PadKind::five_earlier: return move_line(bench, -300000, now, effects);
  case PadKind::take_back:
    if (bench.line) at_slab(bench, session::Withdrawn{*bench.line}, now, effects);
    return;
  case PadKind::found:
    if (const auto state = session::state_named(pad.arg))
      at_slab(bench, session::Found{*state}, now, effects);
    return;
  default: return;
  }
}

}
