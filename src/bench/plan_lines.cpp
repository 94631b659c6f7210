#include "bench/plan_lines.hpp"

#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "bench/measures.hpp"
#include "bench/recipes.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using Step = PlanView::Step;
using session::SaidIn;

constexpr double near = 0.02; // of an amount: closer no spoon is filled

Step line_of(const session::Card& card, Step::Why why, double g) {
  Step line;
  line.why = why;
  line.kind = card.kind();
  line.name = card.name;
  line.colour = pigment_of(card).colour;
  line.g = g;
  return line;
}

void say_scoops(const Bench& bench, Step& line, const paint::ScoopSet& set) {
  for (const paint::Scooped& one : set.of)
    line.scoops.push_back(scoop_view(bench, one.tool, one.drops, one.count));
  line.u = paint::uncertainty(set.grams);
}

// In spoons where its maker says it so: as it was said, or the best set for so much.
Step pigment_line(const Bench& bench, const PlannedPigment& p, const session::Card& card) {
  Step line = line_of(card, Step::measure, p.grams);
  const auto& blend = bench.plan.blend;
  const auto part = std::find_if(blend.begin(), blend.end(),
                                 [&](const BlendPart& one) { return one.card == p.card; });
  if (part == blend.end() || (part->in != SaidIn::spoons && part->in != SaidIn::drops)) return line;
  line.guess = p.guess;
  if (bench.plan.want == Want::as_it_stands) {
    line.scoops = {scoop_view(bench, part->with, part->in == SaidIn::drops, part->parts)};
    line.u = p.u;
  } else if (const auto set = scooped(bench, card, p.grams, near * p.grams)) {
    say_scoops(bench, line, *set);
  }
  return line;
}

std::vector<ScoopView> scoops_of(const Bench& bench, const session::Card& liquid,
                                 const Tapped& said) {
  std::vector<ScoopView> scoops;
  if (said.spoons > 0)
    scoops.push_back(
        scoop_view(bench, tool_for(bench, liquid, session::Unit::spoons), false, said.spoons));
  if (said.drops > 0)
    scoops.push_back(
        scoop_view(bench, tool_for(bench, liquid, session::Unit::drops), true, said.drops));
  return scoops;
}

// As the slab asks for it: in what can be counted.
Step extra_line(const Bench& bench, const session::Card& card, Step::Why why, double g) {
  Step line = line_of(card, why, g);
  if (!session::is_liquid(card.kind())) return line;
  const Measures of = measures_of(bench, card);
  line.scoops = scoops_of(bench, card, tapped(g / of.g_per_mL, of));
  return line;
}

// The same spoons that the slab asks for.
Step first_line(const Bench& bench, const session::Card& binder, const Planned::Helping& first) {
  Step line = line_of(binder, Step::first_helping, first.high_g);
  line.low_g = first.low_g;
  line.scoops = scoops_of(bench, binder, first.amount);
  return line;
}

constexpr int most_by_drop = 5 * most_counted; // nobody drips more: own choice

// Spoons as far as they go, then by fives; what both hold is what stands beside them in grams.
Step rest_line(const Bench& bench, const session::Card& binder, const Planned& p) {
  Step line = line_of(binder, Step::rest, p.rest_g);
  const Measures of = measures_of(bench, binder);
  Tapped said{p.rest_spoons, p.drops, 0};
  const double left_mL = p.rest_g / of.g_per_mL - mL_of(said, of);
  const long fives = 5 * std::lround(left_mL / of.drop_mL / 5);
  constexpr long a_five = 5;
  if (said.spoons > 0 && fives > most_counted + a_five) return line; // no spoon for so little
  if (said.spoons > 0) said.drops = static_cast<int>(fives);
  line.scoops = scoops_of(bench, binder, said);
  if (!line.scoops.empty()) line.g = mL_of(said, of) * of.g_per_mL;
  line.by_drop = p.rest_g <= most_by_drop * of.drop_mL * of.g_per_mL;
  return line;
}

Step::Why why_extra(const session::Card& extra, const Planned& p) {
  if (!p.last_time || !p.last_time->in_plan) return Step::extra;
  const bool other =
      p.last_time->of == extra.id || (is_sweet(extra) && p.last_time->sweet_share < 1);
  return other ? Step::lacked : Step::extra;
}

}

ScoopView scoop_view(const Bench& bench, const std::string& tool, bool drops, double count) {
  const session::Card* card = shelf_card(bench, tool);
  return {count, drops, card ? card->name : tool, card ? volume_of(*card).mL : 0};
}

std::vector<Step> plan_lines(const Bench& bench, const Planned& comes_to) {
  std::vector<Step> out;
  for (const PlannedPigment& p : comes_to.pigments)
    if (const session::Card* card = shelf_card(bench, p.card))
      out.push_back(pigment_line(bench, p, *card));
  if (const session::Card* binder = shelf_card(bench, bench.plan.binder)) {
    out.push_back(first_line(bench, *binder, comes_to.first_helping));
    if (comes_to.rest_g > 0) out.push_back(rest_line(bench, *binder, comes_to));
  }
  for (const PlannedPigment& extra : comes_to.extras)
    if (const session::Card* card = shelf_card(bench, extra.card))
      out.push_back(extra_line(bench, *card, why_extra(*card, comes_to), extra.grams));
  return out;
}

}
