// Pads of the slab that are wanted seldom: where the paint lies, what it weighs, other paint, lines
// that were wrong.
#include "bench/act.hpp"
#include "bench/corrections.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_slab.hpp"
#include "bench/paints.hpp"
#include "bench/record.hpp"

namespace bench {

namespace {

using session::Place;

void at_slab(Bench& bench, session::Event event, const Now& now, Effects& effects) {
  record(bench, bench.batch, std::move(event), now, effects);
  bench.panel = TrailPanel{};
  refold(bench, now);
}

void choose_paint(Bench& bench, const std::string& batch, const Now& now, Effects& effects) {
  for (const OtherPaint& paint : bench.paints)
    if (paint.batch == batch) {
      lay_out_card(bench, bench.batch, paint.card, now, effects);
      refold(bench, now);
      return open_number(bench, {SlabPad::add, paint.card.id});
    }
}

void choose_line(Bench& bench, const std::string& arg) {
  if (const auto line = line_named(arg)) bench.panel = LinePanel{*line};
}

void move_line(Bench& bench, std::int64_t by_ms, const Now& now, Effects& effects) {
  if (const session::Entry* line = line_chosen(bench))
    at_slab(bench, session::Corrected{line->ref, {}, moved_by_ms(bench, *line) + by_ms}, now,
            effects);
}

}

void act_on_more(Bench& bench, MorePad pad, const std::string& arg, const Now& now,
                 Effects& effects) {
  switch (pad) {
  case MorePad::weigh_paint:
  case MorePad::spilt: return open_number(bench, {pad, arg});
  case MorePad::to_jar:
    return at_slab(bench, session::Moved{Place::slab, Place::jar, {arg == "half" ? 0.5 : 1.0, {}}},
                   now, effects);
  case MorePad::from_jar:
    return at_slab(bench, session::Moved{Place::jar, Place::slab, {}}, now, effects);
  case MorePad::other_paint: bench.panel = PaintsPanel{}; return;
  case MorePad::paint_of: return choose_paint(bench, arg, now, effects);
  case MorePad::lines: bench.panel = LinesPanel{}; return;
  case MorePad::earlier:
    if (auto* lines = std::get_if<LinesPanel>(&bench.panel)) ++lines->page;
    return;
  case MorePad::line: return choose_line(bench, arg);
  case MorePad::other_amount: return open_number(bench, {pad, arg});
  case MorePad::five_earlier: return move_line(bench, -300000, now, effects);
  case MorePad::take_back:
    if (const auto* open = std::get_if<LinePanel>(&bench.panel))
      at_slab(bench, session::Withdrawn{open->line}, now, effects);
    return;
  case MorePad::found:
    if (const auto state = session::state_named(arg))
      at_slab(bench, session::Found{*state}, now, effects);
    return;
  }
}

}
