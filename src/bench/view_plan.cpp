#include "bench/choices.hpp"
#include "bench/layout_of.hpp"
#include "bench/view_parts.hpp"
#include "paint/catalogue.hpp"

#include <algorithm>

namespace bench {

namespace {

PlanView::Row plan_row(const session::Card& card, PadKind kind, const std::string& chosen) {
  return {{kind, card.id}, card.name, card.index_name, card.colour, card.id == chosen};
}

// The mask comes first; gloves are said only where this pigment wants them.
std::vector<words::Say> cautions_of(const std::string& pigment) {
  std::vector<words::Say> out{words::Say::care_mask};
  for (const paint::CataloguePigment& entry : paint::catalogue())
    if (entry.id == pigment)
      for (const paint::Caution c : entry.cautions)
        if (c != paint::Caution::dust) out.push_back(paint::sentence(c));
  for (const words::Say care : paint::general_care())
    if (care != words::Say::care_mask && (care != words::Say::care_gloves || pigment.empty()))
      out.push_back(care);
  return out;
}

}

PlanView plan_view(const Bench& bench) {
  const PlanState& plan = bench.plan;
  PlanView v;
  const auto found = pigments_found(bench);
  const auto a_page = static_cast<std::size_t>(plan_rows_a_page(bench.display));
  const std::size_t first = static_cast<std::size_t>(plan.page) * a_page;
  for (std::size_t i = first; i < std::min(found.size(), first + a_page); ++i)
    v.pigments.push_back(plan_row(*found[i], PadKind::pigment, plan.pigment));
  for (const session::Card* card : shelf_of(bench, session::CardKind::binder))
    v.binders.push_back(plan_row(*card, PadKind::binder, plan.binder));
  v.page = plan.page;
  v.pages = pages_for(found.size(), static_cast<int>(a_page));
  v.name = plan.name;
  v.search = plan.search;
  v.grams = plan.grams;
  v.celsius = plan.celsius;
  v.humidity = plan.humidity;
  v.room_guessed = plan.room_guessed;
  v.cautions = cautions_of(plan.pigment);
  if (const session::Card* card = shelf_card(bench, plan.pigment)) {
    const paint::Helping usual = paint::first_helping(card->pigment.family);
    v.first_helping = {usual.low * plan.grams / 10, usual.high * plan.grams / 10};
  }
  v.missing = missing_for_begin(bench);
  v.number = number_view(bench);
  v.error = bench.notice.error;
  return v;
}

}
