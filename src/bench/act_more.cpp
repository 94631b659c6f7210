// Pads of the slab that are wanted seldom: where the paint lies, what it weighs, other paint, lines
// that were wrong.
#include "bench/act.hpp"
#include "bench/corrections.hpp"
#include "bench/materials.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_slab.hpp"
#include "bench/paints.hpp"
#include "bench/recalibration.hpp"
#include "bench/record.hpp"
#include "paint/measure.hpp"

namespace bench {

namespace {

using session::Place;

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
    record_at_slab(bench, session::Corrected{line->ref, {}, moved_by_ms(bench, *line) + by_ms}, now,
                   effects);
}

void turn_lines(Bench& bench, int by) {
  if (auto* lines = std::get_if<LinesPanel>(&bench.panel)) lines->page += by;
}

void open_materials(Bench& bench, MaterialsPanel::Why why) {
  const session::Entry* line = why == MaterialsPanel::was ? line_chosen(bench) : nullptr;
  bench.panel = MaterialsPanel{why, 0, line ? std::optional(line->ref) : std::nullopt};
}

void turn_materials(Bench& bench) {
  if (auto* panel = std::get_if<MaterialsPanel>(&bench.panel))
    panel->page = (panel->page + 1) % material_pages(bench, *panel);
}

// On a pad of the slab, or off it: the one chosen first makes way.
void put_on_pad(Bench& bench, const std::string& card, Effects& effects) {
  auto& chosen = bench.tablet.materials;
  if (std::erase(chosen, card) == 0) chosen.push_back(card);
  if (chosen.size() > most_materials) chosen.erase(chosen.begin());
  effects.keep_tablet = true;
}

void take_back(Bench& bench, const Now& now, Effects& effects) {
  const auto* open = std::get_if<LinePanel>(&bench.panel);
  if (!open) return;
  record_at_slab(bench, session::Withdrawn{session::Ref(open->line)}, now, effects);
  bench.sitting.picked_out.insert(bench.sitting.next_n - 1);
}

// What a weighing that was doubted has to say of a dropper waits no longer.
void say_of_doubted(Bench& bench, const session::Entry& line, session::Event said, const Now& now,
                    Effects& effects) {
  const bool bottle = std::holds_alternative<session::BottleWeighed>(line.event);
  record_at_slab(bench, std::move(said), now, effects);
  if (bottle && dropper_found(bench)) bench.panel = DropperPanel{};
}

void confirm(Bench& bench, const Now& now, Effects& effects) {
  const session::Entry* line = line_chosen(bench);
  const auto g = line ? amount_in(line->event) : std::nullopt;
  if (!g) return;
  say_of_doubted(bench, *line, session::Confirmed{line->ref, *g}, now, effects);
}

void say_meant(Bench& bench, const std::string& arg, const Now& now, Effects& effects) {
  const session::Entry* line = line_chosen(bench);
  const auto g = paint::typed_number(arg);
  auto says = line && g ? with_amount(line->event, *g) : std::nullopt;
  if (!says) return;
  say_of_doubted(bench, *line, session::Corrected{line->ref, *std::move(says), {}}, now, effects);
}

}

void correct_material(Bench& bench, const std::string& id, const Now& now, Effects& effects) {
  const session::Entry* line = line_chosen(bench);
  const auto card = card_of(bench, id);
  if (!line || !card) return;
  const auto* added = std::get_if<session::Added>(&line->event);
  const std::string tool = added ? tool_for(bench, *card, added->unit) : "";
  auto says = with_material(line->event, *card, tool);
  if (!says) return say_error(bench, says.error(), now);
  const session::Ref ref = line->ref;
  lay_out_card(bench, bench.batch, *card, now, effects);
  if (const auto tool_card = card_of(bench, tool))
    lay_out_card(bench, bench.batch, *tool_card, now, effects);
  record_at_slab(bench, session::Corrected{ref, *std::move(says), {}}, now, effects);
}

void act_on_more(Bench& bench, MorePad pad, const std::string& arg, const Now& now,
                 Effects& effects) {
  switch (pad) {
  case MorePad::weigh_paint:
  case MorePad::spilt:
  case MorePad::room: return open_number(bench, {pad, arg});
  case MorePad::to_jar:
    return record_at_slab(bench,
                          session::Moved{Place::slab, Place::jar, {arg == "half" ? 0.5 : 1.0, {}}},
                          now, effects);
  case MorePad::from_jar:
    return record_at_slab(bench, session::Moved{Place::jar, Place::slab, {}}, now, effects);
  case MorePad::other_paint: bench.panel = PaintsPanel{}; return;
  case MorePad::paint_of: return choose_paint(bench, arg, now, effects);
  case MorePad::lines: bench.panel = LinesPanel{}; return;
  case MorePad::earlier: return turn_lines(bench, 1);
  case MorePad::later: return turn_lines(bench, -1);
  case MorePad::run: bench.panel = LinesPanel{0, line_named(arg)}; return;
  case MorePad::other_material: return open_materials(bench, MaterialsPanel::was);
  case MorePad::it_was: return correct_material(bench, arg, now, effects);
  case MorePad::materials: return open_materials(bench, MaterialsPanel::add);
  case MorePad::choose_pads: return open_materials(bench, MaterialsPanel::choose);
  case MorePad::more_materials: return turn_materials(bench);
  case MorePad::on_pad: return put_on_pad(bench, arg, effects);
  case MorePad::line: return choose_line(bench, arg);
  case MorePad::other_amount: return open_number(bench, {pad, arg});
  case MorePad::five_earlier: return move_line(bench, -300000, now, effects);
  case MorePad::take_back: return take_back(bench, now, effects);
  case MorePad::it_is: return confirm(bench, now, effects);
  case MorePad::was_meant: return say_meant(bench, arg, now, effects);
  case MorePad::found:
    if (const auto state = session::state_named(arg))
      record_at_slab(bench, session::Found{*state}, now, effects);
    return;
  }
}

}
