#include "bench/act.hpp"
#include "bench/advice.hpp"
#include "bench/again.hpp"
#include "bench/choices.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/planning.hpp"
#include "bench/recipes.hpp"
#include "bench/record.hpp"
#include "bench/shelf.hpp"
#include "bench/stock.hpp"
#include "paint/heap.hpp"
#include "session/bytes.hpp"
#include "session/covered.hpp"
#include "words/bench_says.hpp"
#include "words/lists.hpp"

#include <algorithm>

namespace bench {

namespace {

bool is_in(const Bench& bench, const PlanState& plan, const std::string& card) {
  return card == plan.binder || card == plan.pan || card == recipe_followed(bench) ||
         std::any_of(plan.blend.begin(), plan.blend.end(),
                     [&](const BlendPart& part) { return part.card == card || part.with == card; });
}

// What every slab has beside pigment and binder: the other liquids, and of the tools the first.
bool always_there(const Bench& bench, const session::Card& card) {
  using session::CardKind;
  switch (card.kind()) {
  case CardKind::pigment:
  case CardKind::binder:
  case CardKind::pan:
  case CardKind::paint:
  case CardKind::recipe: return false;
  case CardKind::dropper:
  case CardKind::spoon:
  case CardKind::slab:
  case CardKind::muller: return shelf_of(bench, card.kind()).front()->id == card.id;
  case CardKind::water:
  case CardKind::honey:
  case CardKind::glycerin:
  case CardKind::wetting_aid:
  case CardKind::other: // spirits are brought when they are used
    return !makes_binder(card) && recipe_of(card).alcohol <= 0;
  }
  return true;
}

// As it was said: by a spoon, or weighed.
session::Added added_as_said(const BlendPart& part) {
  using session::SaidIn;
  const session::Unit unit = part.in == SaidIn::spoons  ? session::Unit::spoons
                             : part.in == SaidIn::drops ? session::Unit::drops
                                                        : session::Unit::g;
  return {part.card, unit, part.parts, unit == session::Unit::g ? "" : part.with};
}

// What was typed as pigment is what was measured out; what was worked out from pans is still to be,
// and so is more of one than its jar holds.
void put_pigment(Bench& bench, const PlanState& plan, const std::string& batch, const Now& now,
                 Effects& effects) {
  const auto grams = planned(bench);
  if (plan.want == Want::as_it_stands && grams && *grams)
    for (const BlendPart& part : plan.blend)
      if (shelf_card(bench, part.card)) record(bench, batch, added_as_said(part), now, effects);
  if (plan.want != Want::pigment_g || !grams || !*grams) return;
  const auto lacking = to_buy(bench, **grams);
  for (const PlannedPigment& p : (*grams)->pigments)
    if (std::none_of(lacking.begin(), lacking.end(),
                     [&](const session::ToBuy& one) { return one.card == p.card; }))
      record(bench, batch, session::Added{p.card, session::Unit::g, p.grams, ""}, now, effects);
}

// Its parts by weight, of those of the densest; absent where they cannot be told.
std::vector<std::optional<double>> parts_by_weight(const Bench& bench) {
  std::vector<std::optional<double>> out;
  double densest = 0;
  const auto g_per_mL = [&](const BlendPart& part) {
    const session::Card* card = shelf_card(bench, part.card);
    return card ? pigment_of(*card).pigment.g_per_mL : 0;
  };
  for (const BlendPart& part : bench.plan.blend) densest = std::max(densest, g_per_mL(part));
  for (const BlendPart& part : bench.plan.blend) {
    const double share = bench.plan.by_volume ? g_per_mL(part) / densest : 1;
    const bool known = part.in == session::SaidIn::parts && share > 0;
    out.push_back(known ? std::optional(part.parts * share) : std::nullopt);
  }
  return out;
}

// A blend of which nobody said how much: what goes in, so that none of it is forgotten.
std::optional<session::Planned> blend_kept(const Bench& bench) {
  session::Planned kept;
  const auto parts = parts_by_weight(bench);
  for (std::size_t i = 0; i < parts.size(); ++i)
    if (const std::string& card = bench.plan.blend[i].card; shelf_card(bench, card))
      kept.takes.push_back({card, std::nullopt, parts[i]});
  return kept.takes.size() > 1 ? std::optional(kept) : std::nullopt;
}

// Absent where the plan comes to nothing that could be said, and is of one pigment.
std::optional<session::Planned> plan_kept(const Bench& bench) {
  const auto comes_to = planned(bench);
  if (!comes_to || !*comes_to) return blend_kept(bench);
  const Planned& p = **comes_to;
  session::Planned kept;
  if (bench.plan.want == Want::pans && p.pans > 0) kept.pans = p.pans, kept.in = bench.plan.pan;
  for (const PlannedPigment& pigment : p.pigments)
    kept.takes.push_back({pigment.card, pigment.grams});
  const bool more_gum = p.last_time && p.last_time->in_plan && p.last_time->of == bench.plan.binder;
  const bool known_g = p.as_made || more_gum;
  if (shelf_card(bench, bench.plan.binder))
    kept.takes.push_back({bench.plan.binder, known_g ? std::optional(p.binder_g) : std::nullopt});
  for (const PlannedPigment& extra : p.extras) kept.takes.push_back({extra.card, extra.grams});
  kept.recipe = recipe_followed(bench);
  return kept;
}

// A powder that goes in by a spoon nobody weighed has the guess, and its width, on its card for
// this batch alone.
session::Card as_laid_out(const PlanState& plan, session::Card card) {
  auto* pigment = std::get_if<session::PigmentCard>(&card.facts);
  for (const BlendPart& part : plan.blend)
    if (pigment && part.card == card.id && part.in == session::SaidIn::spoons)
      pigment->pigment = paint::with_heap(pigment->pigment);
  return card;
}

void begin(Bench& bench, const Now& now, Effects& effects) {
  const PlanState plan = bench.plan;
  if (missing_for_begin(bench)) return;
  const auto kept = plan_kept(bench);
  if (kept && !session::reads_back(*kept))
    return say_error(bench, {words::BenchSay::amount_cannot_be, {}}, now);
  const std::string batch = fresh_id(now);
  record(bench, batch, session::Opened{plan.name, made_again(plan)}, now, effects);
  record(bench, batch, session::RoomSet{plan.celsius, plan.humidity, room_is_guess(plan, now)}, now,
         effects);
  if (plan.cautions_seen) record(bench, batch, session::CautionsSeen{}, now, effects);
  for (const session::Card& card : bench.shelf)
    if (is_in(bench, plan, card.id) || always_there(bench, card))
      lay_out_card(bench, batch, as_laid_out(plan, card), now, effects);
  if (kept) record(bench, batch, *kept, now, effects);
  put_pigment(bench, plan, batch, now, effects);
  bench.batch = batch;
  bench.begun = plan;
  bench.batches.push_back(batch);
  learn_lessons(bench);
  clear_plan(bench.plan);
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

// For a pigment more: that of the last one, else the shelf's first.
std::string spoon_of_blend(const Bench& bench) {
  const auto& blend = bench.plan.blend;
  if (!blend.empty() && !blend.back().with.empty()) return blend.back().with;
  const auto spoons = shelf_of(bench, session::CardKind::spoon);
  return spoons.empty() ? "" : spoons.front()->id;
}

// In or out of the blend.
void turn_pigment(Bench& bench, const std::string& id, const Now& now) {
  PlanState& plan = bench.plan;
  const auto gone = std::erase_if(plan.blend, [&](const BlendPart& p) { return p.card == id; });
  plan.cautions_seen = plan.reading = false;
  if (gone == 0 && plan.blend.size() == most_pigments)
    return say_error(bench, {words::BenchSay::blend_full, {std::to_string(most_pigments)}}, now);
  const bool first = plan.blend.empty();
  if (gone == 0) plan.blend.push_back({id, 1, plan.said_in, spoon_of_blend(bench)});
  // The first of a new blend was all that was looked for; of several, the hand says when.
  if (first || plan.blend.empty()) plan.finding = Finding::nothing;
  if (gone == 0) plan.list = {};
  rename(bench);
}

void next_pan(Bench& bench) {
  const auto pans = shelf_of(bench, session::CardKind::pan);
  const auto now = std::find_if(pans.begin(), pans.end(),
                                [&](const auto* card) { return card->id == bench.plan.pan; });
  if (pans.empty()) return;
  bench.plan.pan = now == pans.end() || now + 1 == pans.end() ? pans.front()->id : (*(now + 1))->id;
}

bool serves(const Bench& bench, Want want) {
  const auto& blend = bench.plan.blend;
  if (want == Want::as_it_stands)
    return !blend.empty() && blend.front().in != session::SaidIn::parts;
  if (want != Want::all_left) return true;
  return std::any_of(blend.begin(), blend.end(), [&](const BlendPart& part) {
    const session::Card* card = shelf_card(bench, part.card);
    return card && left_of(bench, *card);
  });
}

// A number of grams is none of pans.
void next_want(Bench& bench) {
  do bench.plan.want = words::next_of(bench.plan.want);
  while (!serves(bench, bench.plan.want));
  bench.plan.wanted = 0;
}

// One pan, gram or millilitre.
void step_wanted(PlanState& plan, double by) {
  const double most = plan.want == Want::pans ? session::Planned::most_pans : plan.wanted + 1;
  plan.wanted = std::clamp(plan.wanted + by, 0.0, most);
}

void find(PlanState& plan, Finding what) {
  plan.finding = plan.finding == what ? Finding::nothing : what;
  plan.list = {};
  plan.search.clear();
}

// Found or not: back to what was chosen.
void leave_finder(PlanState& plan) {
  plan.finding = Finding::nothing;
  plan.search.clear();
  plan.list = {};
}

}

namespace {

// Water that went in when the paint had stood, before it was felt again: it took the place of what
// had dried off.
double given_back_g(const session::Batch& batch, const std::string& card) {
  double g = 0;
  bool stood = false;
  session::Clock before = 0;
  for (const session::Entry& e : batch.entries) {
    if (e.withdrawn || !by_hand(e.event)) continue;
    const bool wet = e.flow_before.value_or(0) > 0; // dry powder does not dry
    if (wet && e.clock - before > session::gap_s) stood = true;
    before = e.clock;
    const auto* added = std::get_if<session::Added>(&e.event);
    if (std::holds_alternative<session::Felt>(e.event)) stood = false;
    if (const auto* found = std::get_if<session::Found>(&e.event))
      stood = found->as == session::State::dry;
    if (stood && added && added->of == card && e.grams) g += e.grams->value;
  }
  return g;
}

// To 1 g of pigment, of all that was put in: what stayed on the tools took its share of both.
std::vector<std::pair<std::string, double>> extras_of(const session::Batch& batch) {
  std::vector<std::pair<std::string, double>> out;
  constexpr double least_g = 0.005; // less than half a drop
  double pigment_g = 0;
  for (const session::Total& t : batch.totals)
    if (t.card.kind() == session::CardKind::pigment) pigment_g += t.grams.value;
  if (pigment_g <= 0) return out;
  for (const session::Total& t : batch.totals) {
    const bool extra =
        session::is_liquid(t.card.kind()) && t.card.kind() != session::CardKind::binder;
    if (!extra) continue;
    const bool water = t.card.kind() == session::CardKind::water;
    const double g = t.grams.value - (water ? given_back_g(batch, t.card.id) : 0);
    if (g > least_g) out.emplace_back(t.card.id, g / pigment_g);
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
    if (felt.as == session::Feel::right && !felt.set_aside) flow = felt.flow;
  return AsMade{
      plan.blend,        plan.binder,     s.binder_ratio->value / 10, flow * mL_of_one_gram,
      took_first(batch), extras_of(batch)};
}

void make_again(Bench& bench, const std::string& id, const Now& now) {
  const Folded batch = fold_of(bench, id);
  if (!batch) return;
  PlanState& plan = bench.plan;
  clear_plan(plan);
  std::vector<std::string> left_out;
  std::string paint; // of another batch
  for (const session::Planned::Take& take :
       batch->plan ? batch->plan->of.takes : std::vector<session::Planned::Take>{})
    if (const session::Card* card = shelf_card(bench, take.of);
        card && card->kind() == session::CardKind::binder)
      plan.binder = card->id; // where none went in
  for (const session::Total& total : batch->totals) {
    if (!(total.grams.value > 0)) continue;
    const bool pigment = total.card.kind() == session::CardKind::pigment;
    if (total.card.kind() == session::CardKind::paint) {
      paint = total.card.name;
    } else if (!shelf_card(bench, total.card.id) ||
               (pigment && plan.blend.size() == most_pigments)) {
      left_out.push_back(total.card.name);
    } else if (pigment) {
      plan.blend.push_back({total.card.id, total.grams.value});
      plan.wanted += total.grams.value;
    } else if (total.card.kind() == session::CardKind::binder) {
      plan.binder = total.card.id;
    }
  }
  plan.again_of = id;
  plan.again_name = batch->name;
  for (const BlendPart& part : plan.blend) plan.again_cards.push_back(part.card);
  std::sort(plan.again_cards.begin(), plan.again_cards.end());
  if (left_out.empty() && paint.empty()) plan.as_made = what_it_took(*batch, plan);
  rename(bench);
  go_to(bench, Screen::plan);
  if (!paint.empty()) say_error(bench, {words::BenchSay::paint_not_planned, {paint}}, now);
  say_left_out(bench, left_out, now);
}

void plan_pigment(Bench& bench, const std::string& card, const Now& now) {
  clear_plan(bench.plan);
  turn_pigment(bench, card, now);
  go_to(bench, Screen::plan);
}

void act_on_plan(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  PlanState& plan = bench.plan;
  if (pad.kind == SharedPad::leave) return leave_finder(plan);
  const auto own = pad.kind.as<PlanPad>();
  if (!own) return;
  switch (*own) {
  case PlanPad::another_pigment: return find(plan, Finding::pigment);
  case PlanPad::recipes: return find(plan, Finding::recipe);
  case PlanPad::recipe: return use_recipe(bench, std::string(pad.arg), now);
  case PlanPad::all_others:
    plan.all_cards = !plan.all_cards;
    plan.list = {};
    return;
  case PlanPad::say_in:
    if (const auto in = session::said_in_named(pad.arg)) say_in(bench, *in);
    return;
  case PlanPad::spoon: return next_spoon(bench, pad.arg);
  case PlanPad::other_binders: ++plan.binder_page; return;
  case PlanPad::fewer: return step_wanted(plan, -1);
  case PlanPad::more: return step_wanted(plan, 1);
  case PlanPad::keep_recipe: return keep_recipe_of_plan(bench, now, effects);
  case PlanPad::pigment: return turn_pigment(bench, pad.arg, now);
  case PlanPad::binder:
    plan.binder = pad.arg;
    plan.binder_chosen = true;
    return;
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
