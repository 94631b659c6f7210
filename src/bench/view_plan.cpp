#include "bench/choices.hpp"
#include "bench/kept_lists.hpp"
#include "bench/layout_of.hpp"
#include "bench/pads_plan.hpp"
#include "bench/plan_lines.hpp"
#include "bench/recipes.hpp"
#include "bench/stock.hpp"
#include "bench/view_parts.hpp"
#include "paint/catalogue.hpp"
#include "words/calendar.hpp"
#include "words/say.hpp"

#include <algorithm>

namespace bench {

namespace {

PlanView::Row plan_row(const Bench& bench, const session::Card& card, PadKind kind,
                       const std::string& chosen) {
  return {{kind, card.id},         card.name,         pigment_of(card).index_name,
          pigment_of(card).colour, card.id == chosen, left_of(bench, card)};
}

// Told from another of its name by its jar, by its day, else by whose it is.
PlanView::Row binder_row(const Bench& bench, const session::Card& card,
                         const std::vector<const session::Card*>& all) {
  PlanView::Row row = plan_row(bench, card, PlanPad::binder, bench.plan.binder);
  const bool alike = std::any_of(all.begin(), all.end(), [&](const session::Card* other) {
    return other != &card && other->name == card.name;
  });
  if (!alike) return row;
  row.index_name = card.lot.empty() ? card.made_on : card.lot;
  row.whose = bench.own.count(card.id) > 0 ? PlanView::Row::own : PlanView::Row::ships;
  return row;
}

// The heap of a recipe is that of its first pigment.
PlanView::Row recipe_row(const Bench& bench, const session::Card& card) {
  PlanView::Row row = plan_row(bench, card, PlanPad::recipe, recipe_followed(bench));
  const auto* recipe = std::get_if<session::RecipeCard>(&card.facts);
  for (const session::Said& said : recipe->pigments) {
    const session::Card* pigment = shelf_card(bench, said.of);
    if (pigment && row.index_name.empty()) row.colour = pigment_of(*pigment).colour;
    row.index_name += (row.index_name.empty() ? "" : ", ") + (pigment ? pigment->name : said.of);
  }
  return row;
}

bool is_chosen(const PlanState& plan, const std::string& card) {
  return std::any_of(plan.blend.begin(), plan.blend.end(),
                     [&](const BlendPart& part) { return part.card == card; });
}

// Those that show.
void add_found(const Bench& bench, PlanView& v) {
  const auto list = list_of_finder(bench);
  const int all = static_cast<int>(list->cards.size()), shown = plan_rows_a_page / 2;
  const int rows = (all + 1) / 2, first = 2 * first_row(bench.plan.list, shown, rows);
  for (int i = first; i < std::min(all, first + plan_rows_a_page); ++i) {
    const session::Card& card = bench.shelf[list->cards[static_cast<std::size_t>(i)]];
    if (v.finding == Finding::recipe) {
      v.recipes.push_back(recipe_row(bench, card));
      continue;
    }
    v.pigments.push_back(plan_row(bench, card, PlanPad::pigment, ""));
    v.pigments.back().chosen = is_chosen(bench.plan, card.id);
  }
  v.page = page_of(bench.plan.list, shown, rows);
  v.pages = pages_for(list->cards.size(), plan_rows_a_page);
}

std::vector<words::Sentence> cautions_of(const Bench& bench) {
  std::vector<std::vector<paint::Caution>> pigments;
  for (const BlendPart& part : bench.plan.blend) {
    const session::Card* card = shelf_card(bench, part.card);
    pigments.push_back(paint::cautions_of(part.card, card ? pigment_of(*card).cautions
                                                          : std::vector<std::string>{}));
  }
  return paint::cautions_for(pigments);
}

std::vector<PlanView::Part> parts_of(const Bench& bench, const std::optional<Planned>& comes_to) {
  std::vector<PlanView::Part> out;
  for (const BlendPart& part : bench.plan.blend) {
    const session::Card* card = shelf_card(bench, part.card);
    if (!card) continue;
    out.push_back({{PlanPad::parts, part.card},
                   card->name,
                   pigment_of(*card).colour,
                   part.parts,
                   0,
                   part.in,
                   scoop_view(bench, part.with, part.in == session::SaidIn::drops, part.parts),
                   pigment_of(*card).index_name,
                   left_of(bench, *card)});
    if (!comes_to) continue;
    for (const PlannedPigment& p : comes_to->pigments)
      if (p.card == part.card) out.back().grams = p.grams, out.back().u = p.u;
  }
  return out;
}

// As the plan says it: with what dries off. By an earlier batch or a recipe there is that alone.
std::optional<BinderRange> range_to_put_in(const Bench& bench,
                                           const std::optional<Planned>& comes_to) {
  auto range = range_of_plan(bench);
  if (!range || !comes_to) return range;
  if (comes_to->as_made) return std::nullopt;
  const double to_10_g = 10 * comes_to->binder_g / comes_to->pigment_g, more = to_10_g / range->g;
  range->g = to_10_g;
  range->low_g *= more;
  range->high_g *= more;
  return range;
}

// What the shelf has too little of, of what it knows how much there was.
std::vector<PlanView::Short> short_of(const Bench& bench, const Planned& comes_to) {
  std::vector<PlanView::Short> out;
  for (const session::ToBuy& buy : to_buy(bench, comes_to))
    out.push_back({shelf_card(bench, buy.card)->name, std::max(0.0, buy.left_g), buy.wanted_g});
  return out;
}

std::vector<std::string> past_day(const Bench& bench, const Planned& comes_to, const Now& now) {
  std::vector<std::string> cards{bench.plan.binder}, out;
  for (const PlannedPigment& extra : comes_to.extras) cards.push_back(extra.card);
  for (const std::string& id : cards)
    if (const session::Card* card = shelf_card(bench, id))
      if (const auto last = words::days_of(card->keep_until);
          last && *last < words::day_number(now.wall_ms, now.utc_offset_min))
        out.push_back(card->name);
  return out;
}

}

PlanView plan_view(const Bench& bench, const Now& now) {
  const PlanState& plan = bench.plan;
  PlanView v;
  v.finding = finds(bench);
  v.all_cards = plan.all_cards;
  v.said_in = plan.said_in;
  if (v.finding != Finding::nothing) add_found(bench, v);
  const auto binders = binders_offered(bench);
  for (const session::Card* card : binders) v.binders.push_back(binder_row(bench, *card, binders));
  v.name = plan.name;
  v.search = plan.search;
  v.want = plan.want;
  v.wanted = plan.wanted;
  if (const session::Card* pan = shelf_card(bench, plan.pan)) v.pan = pan->name;
  if (auto comes_to = planned(bench); comes_to && *comes_to)
    v.planned = **comes_to;
  else if (comes_to && (plan.wanted > 0 || !asks_how_much(plan.want)))
    v.why_not = comes_to->error();
  v.range = range_to_put_in(bench, v.planned);
  v.blend = parts_of(bench, v.planned);
  v.mulling = mulling_planned(bench);
  v.specks_last = specks_last_time(bench);
  if (v.planned) v.last_time = v.planned->last_time;
  if (v.planned && !v.last_time) v.softening = softening_of(bench, *v.planned);
  v.is_short_of_gum = v.planned && is_short_of_gum(bench, *v.planned);
  v.by_volume = plan.by_volume;
  if (v.planned) v.short_of = short_of(bench, *v.planned);
  if (v.planned) v.past_day = past_day(bench, *v.planned, now);
  if (v.planned) v.cost = cost_of(bench, *v.planned);
  if (v.cost) v.currency = prices(bench).currency;
  if (v.planned) v.lines = plan_lines(bench, *v.planned);
  if (const session::Card* recipe = shelf_card(bench, recipe_followed(bench))) {
    v.recipe = recipe->name;
    v.recipe_kept = true;
  }
  v.go_on = name_of_batch(bench, bench.plan.go_on);
  v.again_of = name_of_batch(bench, made_again(plan));
  v.celsius = plan.celsius;
  v.humidity = plan.humidity;
  v.room_guessed = plan.room_guessed;
  if (!plan.room_guessed) v.room_age_ms = now.wall_ms - plan.room_read_at;
  v.cautions = cautions_of(bench);
  v.reading = plan.reading;
  v.cautions_seen = plan.cautions_seen;
  v.missing = missing_for_begin(bench);
  v.number = number_view(bench);
  v.error = bench.notice.error;
  return v;
}

}
