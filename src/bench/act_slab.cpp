#include "bench/act.hpp"
#include "bench/corrections.hpp"
#include "bench/doubt.hpp"
#include "bench/materials.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "bench/paints.hpp"
#include "bench/recalibration.hpp"
#include "bench/record.hpp"
#include "bench/shelf.hpp"
#include "bench/told_at_slab.hpp"
#include "words/bench_says.hpp"

#include <utility>

namespace bench {

namespace {

void add_material(Bench& bench, const std::string& id, const Now& now, Effects& effects) {
  const auto card = card_of(bench, id);
  if (!card) return;
  const TapAmount amount = next_amount(bench, *card);
  if (amount.unit == session::Unit::g) return open_number(bench, {SlabPad::add, id});
  const std::string tool = tool_for(bench, *card, amount.unit);
  lay_out_card(bench, bench.batch, *card, now, effects);
  if (const auto tool_card = card_of(bench, tool))
    lay_out_card(bench, bench.batch, *tool_card, now, effects);
  record_at_slab(bench, session::Added{id, amount.unit, amount.count, tool}, now, effects);
  bench.amount = {};
  bench.dropper.clear();
}

void begin_next_stage(Bench& bench, const Now& now, Effects& effects) {
  record_at_slab(bench, session::StageBegan{next_stage(*bench.folded)}, now, effects);
}

// Mulled paint is judged under the muller; before the first pass the knife is in the hand.
session::By tool_in_hand(const session::Batch& batch) {
  const bool mulled = !batch.passes.empty() && batch.passes.back().stage == session::Stage::mulling;
  return mulled ? session::By::muller : session::By::knife;
}

// Dry powder feels like nothing that could be learnt from.
void feel(Bench& bench, session::Feel as, const Now& now, Effects& effects) {
  if (!(bench.folded->standing.liquid_mL.value > 0))
    return say_error(bench, {words::BenchSay::nothing_to_feel, {}}, now);
  record_at_slab(bench, session::Felt{as, tool_in_hand(*bench.folded)}, now, effects);
}

// Back to Plan, as it was.
void take_back_beginning(Bench& bench, const Now& now) {
  bench.batch.clear();
  refold(bench, now);
  bench.plan = *std::exchange(bench.begun, std::nullopt);
  go_to(bench, Screen::plan);
}

constexpr std::int64_t long_away_ms = 30 * 60000;

bool lies_wet(const Bench& bench) {
  return lies(bench, session::Place::slab) && session::sums(bench.folded->places).water_g > 0;
}

// Signs of life are no hand's.
bool is_by_hand(const session::Entry& e) {
  return !std::holds_alternative<session::GoesOn>(e.event);
}

std::int64_t last_touched(const session::Batch& batch) {
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e)
    if (is_by_hand(*e)) return e->at;
  return batch.opened_at;
}

// How the paint was found is asked again when the answer is taken back, or what was tapped instead
// of one.
std::optional<FoundPanel> asked_again(const Bench& bench, const UndoTarget& target) {
  if (target.gives_back) return std::nullopt;
  std::optional<std::int64_t> before;
  for (const session::Entry& e : bench.folded->entries) {
    if (e.ref == target.ref) {
      const bool asked = std::holds_alternative<session::Found>(target.event) ||
                         (before && e.at - *before >= long_away_ms && lies_wet(bench));
      return before && asked ? std::optional(FoundPanel{*before}) : std::nullopt;
    }
    if (!e.withdrawn && is_by_hand(e)) before = e.at;
  }
  return std::nullopt;
}

void undo(Bench& bench, const Now& now, Effects& effects) {
  const auto target = undo_target(bench);
  if (close_question(bench, target, now) || !target) return;
  const auto again = asked_again(bench, *target);
  for (const session::Ref& line : undone_together(bench, *bench.folded, *target))
    record_at_slab(bench, session::Withdrawn{line}, now, effects);
  if (!bench.folded) return take_back_beginning(bench, now);
  if (again) bench.panel = *again;
}

void open_panel(Bench& bench, Panel which) {
  bench.panel = bench.panel == which ? TrailPanel{} : std::move(which);
  bench.number.reset();
}

// What to do about it stays until it is put away.
void name_trouble(Bench& bench, const std::string& name, const Now& now, Effects& effects) {
  const auto trouble = session::trouble_named(name);
  if (!trouble) return;
  record_at_slab(bench, session::Trouble{*trouble}, now, effects);
  bench.panel = RemedyPanel{*trouble};
}

void lay_out_and_lose(Bench& bench, const std::string& id, const Now& now, Effects& effects) {
  if (const auto card = card_of(bench, id)) lay_out_card(bench, bench.batch, *card, now, effects);
  record_at_slab(bench, session::CountLost{id}, now, effects);
}

// The next drops go by it; those of before keep what their session said of the dropper.
void keep_dropper(Bench& bench, const Now& now, Effects& effects) {
  if (const auto found = dropper_found(bench)) {
    record(bench, "", session::LaidOut{found->card}, now, effects);
    restock(bench);
  }
  bench.panel = TrailPanel{};
}

}

void ask_how_found(Bench& bench, const Now& now) {
  if (!bench.folded || bench.screen != Screen::slab || !is_open<TrailPanel>(bench.panel)) return;
  const session::Batch& batch = *bench.folded;
  const std::int64_t since = last_touched(batch);
  if (!lies_wet(bench) || running(batch) || now.wall_ms - since < long_away_ms) return;
  if (std::exchange(bench.asked_since, since) != since) bench.panel = FoundPanel{since};
}

namespace {

void close_batch(Bench& bench, const Now& now, Effects& effects) {
  if (asks_what_is_left_out(bench, *bench.folded, now)) return;
  record_at_slab(bench, session::Closed{}, now, effects);
  bench.screen = Screen::book;
  bench.book.page = BatchPage{std::exchange(bench.batch, ""), {}};
  bench.folded.reset();
  bench.plan.go_on.clear();
}

void act_on(Bench& bench, SlabPad pad, const std::string& arg, const Now& now, Effects& effects) {
  switch (pad) {
  case SlabPad::add:
    return corrects_material(bench) ? correct_material(bench, arg, now, effects)
                                    : add_material(bench, arg, now, effects);
  case SlabPad::another: return open_panel(bench, AmountsPanel{});
  case SlabPad::pigments:
    return corrects_material(bench) ? act_on_more(bench, MorePad::other_material, "", now, effects)
                                    : open_panel(bench, PigmentsPanel{});
  case SlabPad::more: return open_panel(bench, MorePanel{});
  case SlabPad::bottle: return open_panel(bench, BottlesPanel{});
  case SlabPad::dot: return open_panel(bench, SpecksPanel{});
  case SlabPad::trouble: return open_panel(bench, TroublesPanel{});
  case SlabPad::pass: return begin_next_stage(bench, now, effects);
  case SlabPad::gather: return record_at_slab(bench, session::Gathered{}, now, effects);
  case SlabPad::back_on_slab:
    return record_at_slab(bench, session::StageBegan{session::Stage::resting}, now, effects);
  case SlabPad::close: return close_batch(bench, now, effects);
  case SlabPad::felt:
    if (const auto as = session::feel_named(arg)) feel(bench, *as, now, effects);
    return;
  }
}

void act_on(Bench& bench, ChoicePad pad, const std::string& arg, const Now& now, Effects& effects) {
  switch (pad) {
  case ChoicePad::specks:
    if (const auto specks = session::specks_named(arg))
      record_at_slab(bench, session::Dot{*specks}, now, effects);
    return;
  case ChoicePad::trouble_is: return name_trouble(bench, arg, now, effects);
  case ChoicePad::amount:
    if (const auto amount = amount_named(arg)) bench.amount = *amount;
    bench.panel = TrailPanel{};
    return;
  case ChoicePad::dropper: return next_dropper(bench);
  case ChoicePad::bottle_of: return open_number(bench, {pad, arg});
  case ChoicePad::lost_count: return lay_out_and_lose(bench, arg, now, effects);
  case ChoicePad::keep_dropper: return keep_dropper(bench, now, effects);
  }
}

}

void act_on_slab(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  if (!bench.folded) return;
  if (const auto slab = pad.kind.as<SlabPad>()) return act_on(bench, *slab, pad.arg, now, effects);
  if (const auto choice = pad.kind.as<ChoicePad>())
    return act_on(bench, *choice, pad.arg, now, effects);
  if (const auto more = pad.kind.as<MorePad>())
    return act_on_more(bench, *more, pad.arg, now, effects);
  if (pad.kind == SharedPad::undo) return undo(bench, now, effects);
  if (pad.kind == SharedPad::leave) bench.panel = TrailPanel{};
}

}
