#include "bench/act.hpp"
#include "bench/advice.hpp"
#include "bench/again.hpp"
#include "bench/choices.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/planning.hpp"
#include "bench/record.hpp"
#include "bench/shelf.hpp"
#include "words/bench_says.hpp"
#include "words/lists.hpp"

#include <algorithm>

namespace bench {

namespace {

// Everything but the room and the binder: the next batch is another colour.
void clear(PlanState& plan) {
  PlanState next;
  next.binder = plan.binder;
  next.pan = plan.pan;
  next.celsius = plan.celsius;
  next.humidity = plan.humidity;
  next.room_guessed = plan.room_guessed;
  next.room_read_at = plan.room_read_at;
  plan = next;
}

bool is_in(const PlanState& plan, const std::string& card) {
  return card == plan.binder || card == plan.pan ||
         std::any_of(plan.blend.begin(), plan.blend.end(),
                     [&](const BlendPart& part) { return part.card == card; });
}

// What every slab has beside pigment and binder: the other liquids, and of the tools the first.
bool always_there(const Bench& bench, const session::Card& card) {
  using session::CardKind;
  switch (card.kind()) {
  case CardKind::pigment:
  case CardKind::binder:
  case CardKind::pan:
  case CardKind::paint: return false;
  case CardKind::dropper:
  case CardKind::spoon:
  case CardKind::slab:
  case CardKind::muller: return shelf_of(bench, card.kind()).front()->id == card.id;
  case CardKind::water:
  case CardKind::honey:
  case CardKind::glycerin:
  case CardKind::wetting_aid:
  case CardKind::other: return !makes_binder(card);
  }
  return true;
}

// What was typed as pigment is what was weighed; what was worked out from pans is still to be.
void put_pigment(Bench& bench, const PlanState& plan, const std::string& batch, const Now& now,
                 Effects& effects) {
  const auto grams = planned(bench);
  if (plan.want != Want::pigment_g || !grams || !*grams) return;
  for (const PlannedPigment& p : (*grams)->pigments)
    record(bench, batch, session::Added{p.card, session::Unit::g, p.grams, ""}, now, effects);
}

// Nothing where the plan comes to nothing that could be said.
void keep_plan(Bench& bench, const std::string& batch, const Now& now, Effects& effects) {
  const auto comes_to = planned(bench);
  if (!comes_to || !*comes_to) return;
  const Planned& p = **comes_to;
  session::Planned kept;
  if (bench.plan.want == Want::pans && p.pans > 0) kept.pans = p.pans, kept.in = bench.plan.pan;
  for (const PlannedPigment& pigment : p.pigments)
    kept.takes.push_back({pigment.card, pigment.grams});
  if (shelf_card(bench, bench.plan.binder))
    kept.takes.push_back({bench.plan.binder, p.as_made ? std::optional(p.binder_g) : std::nullopt});
  for (const PlannedPigment& extra : p.extras) kept.takes.push_back({extra.card, extra.grams});
  record(bench, batch, std::move(kept), now, effects);
}

void begin(Bench& bench, const Now& now, Effects& effects) {
  const PlanState plan = bench.plan;
  if (missing_for_begin(bench)) return;
  const std::string batch = fresh_id(now);
  record(bench, batch, session::Opened{plan.name, made_again(plan)}, now, effects);
  record(bench, batch, session::RoomSet{plan.celsius, plan.humidity, room_is_guess(plan, now)}, now,
         effects);
  if (plan.cautions_seen) record(bench, batch, session::CautionsSeen{}, now, effects);
  for (const session::Card& card : bench.shelf)
    if (is_in(plan, card.id) || always_there(bench, card))
      lay_out_card(bench, batch, card, now, effects);
  keep_plan(bench, batch, now, effects);
  put_pigment(bench, plan, batch, now, effects);
  bench.batch = batch;
  bench.begun = plan;
  bench.batches.push_back(batch);
  learn_lessons(bench);
  clear(bench.plan);
  bench.amount = {};
  bench.dropper.clear();
  refold(bench, now);
  go_to(bench, Screen::slab);
}

void rename(Bench& bench) {
  PlanState& plan = bench.plan;
  if (plan.name_typed) return;
  plan.name =
      proposed_name(bench, made_again(plan).empty() ? name_of_blend(bench) : plan.again_name);
}

// In or out of the blend.
void turn_pigment(Bench& bench, const std::string& id, const Now& now) {
  PlanState& plan = bench.plan;
  const auto gone = std::erase_if(plan.blend, [&](const BlendPart& p) { return p.card == id; });
  plan.cautions_seen = plan.reading = false;
  if (gone == 0 && plan.blend.size() == most_pigments)
    return say_error(bench, {words::BenchSay::blend_full, {std::to_string(most_pigments)}}, now);
  if (gone == 0) plan.blend.push_back({id, 1});
  rename(bench);
}

void next_pan(Bench& bench) {
  const auto pans = shelf_of(bench, session::CardKind::pan);
  const auto now = std::find_if(pans.begin(), pans.end(),
                                [&](const auto* card) { return card->id == bench.plan.pan; });
  if (pans.empty()) return;
  bench.plan.pan = now == pans.end() || now + 1 == pans.end() ? pans.front()->id : (*(now + 1))->id;
}

// A number of grams is none of pans.
void next_want(Bench& bench) {
  bench.plan.want = words::next_of(bench.plan.want);
  bench.plan.wanted = 0;
}

}

namespace {

// To 1 g of pigment, of all that was put in: what stayed on the tools took its share of both.
std::vector<std::pair<std::string, double>> extras_of(const session::Batch& batch) {
  std::vector<std::pair<std::string, double>> out;
  double pigment_g = 0;
  for (const session::Total& t : batch.totals)
    if (t.card.kind() == session::CardKind::pigment) pigment_g += t.grams.value;
  if (pigment_g <= 0) return out;
  for (const session::Total& t : batch.totals) {
    const bool extra =
        session::is_liquid(t.card.kind()) && t.card.kind() != session::CardKind::binder;
    if (extra && t.grams.value > 0) out.emplace_back(t.card.id, t.grams.value / pigment_g);
  }
  return out;
}

}

std::optional<AsMade> what_it_took(const session::Batch& batch, const PlanState& plan) {
  const paint::Standing& s = batch.standing;
  if (!s.binder_ratio || !s.flow_now || !(s.binder_ratio->value > 0)) return std::nullopt;
  const double mL_of_one_gram = s.pigment_mL.value / s.pigment_g.value;
  double flow = s.flow_now->value;
  for (const session::Feeling& felt : batch.feelings)
    if (felt.as == session::Feel::right) flow = felt.flow;
  return AsMade{
      plan.blend,        plan.binder,     s.binder_ratio->value / 10, flow * mL_of_one_gram,
      took_first(batch), extras_of(batch)};
}

void make_again(Bench& bench, const std::string& id) {
  const Folded batch = fold_of(bench, id);
  if (!batch) return;
  PlanState& plan = bench.plan;
  clear(plan);
  for (const session::Total& total : batch->totals) {
    const bool pigment = total.card.kind() == session::CardKind::pigment && total.grams.value > 0;
    if (pigment && plan.blend.size() < most_pigments && shelf_card(bench, total.card.id)) {
      plan.blend.push_back({total.card.id, total.grams.value});
      plan.wanted += total.grams.value;
    }
    if (total.card.kind() == session::CardKind::binder && shelf_card(bench, total.card.id))
      plan.binder = total.card.id;
  }
  plan.again_of = id;
  plan.again_name = batch->name;
  for (const BlendPart& part : plan.blend) plan.again_cards.push_back(part.card);
  std::sort(plan.again_cards.begin(), plan.again_cards.end());
  plan.as_made = what_it_took(*batch, plan);
  rename(bench);
  go_to(bench, Screen::plan);
}

void plan_pigment(Bench& bench, const std::string& card, const Now& now) {
  clear(bench.plan);
  turn_pigment(bench, card, now);
  go_to(bench, Screen::plan);
}

void act_on_plan(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  PlanState& plan = bench.plan;
  if (pad.kind == SharedPad::page_back) --plan.page;
  if (pad.kind == SharedPad::page_on) ++plan.page;
  const auto own = pad.kind.as<PlanPad>();
  if (!own) return;
  switch (*own) {
  case PlanPad::pigment: return turn_pigment(bench, pad.arg, now);
  case PlanPad::binder: plan.binder = pad.arg; return;
  case PlanPad::by_volume: plan.by_volume = !plan.by_volume; return;
  case PlanPad::want: return next_want(bench);
  case PlanPad::pan_size: return next_pan(bench);
  case PlanPad::cautions: plan.reading = !plan.reading; return;
  case PlanPad::cautions_read:
    plan.cautions_seen = true;
    plan.reading = false;
    return;
  case PlanPad::parts:
  case PlanPad::weigh:
  case PlanPad::celsius:
  case PlanPad::humidity: return open_number(bench, pad);
  case PlanPad::begin: return begin(bench, now, effects);
  case PlanPad::go_on: return take_up(bench, std::string(pad.arg), now, effects);
  case PlanPad::name: return; // a text field
  }
}

}
