#include "bench/typed.hpp"

#include "bench/act.hpp"
#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/corrections.hpp"
#include "bench/doubt.hpp"
#include "bench/materials.hpp"
#include "bench/pads_binder.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pans.hpp"
#include "paint/measure.hpp"
#include "session/amounts.hpp"
#include "words/bench_says.hpp"
#include "words/lists.hpp"

#include <cmath>
#include <utility>

namespace bench {

namespace {

using Say = words::BenchSay;
using Fault = std::optional<words::Error>;

std::optional<session::Event> event_of(const Bench& bench, const PadId& target, double value) {
  if (target.kind == SlabPad::add) return session::Added{target.arg, session::Unit::g, value, ""};
  if (target.kind == ChoicePad::bottle_of) return session::BottleWeighed{target.arg, value};
  if (target.kind == PansPad::weigh_pan) return session::PanWeighed{bench.pans.pan, value};
  if (!bench.folded) return std::nullopt;
  const session::Place here = session::in_hand(bench.folded->places);
  if (target.kind == MorePad::weigh_paint) return session::Weighed{here, value, 0};
  if (target.kind == MorePad::spilt) return session::Lost{here, {1, value}, ""};
  return std::nullopt;
}

std::optional<session::Event> corrected(const session::Entry& line, double value) {
  auto says = with_amount(line.event, value);
  if (!says) return std::nullopt;
  using Made = std::optional<session::Event>;
  return std::visit(words::Overloaded{[](const std::monostate&) { return Made(); },
                                      [](const auto& event) { return Made(event); }},
                    *says);
}

template <class E>
const E* says(const Typed& typed) {
  return typed.says ? std::get_if<E>(&*typed.says) : nullptr;
}

// ---- what cannot be

// By another device, while the digits were open.
Fault taken_back(const Typed& typed) {
  if (!typed.line || !typed.line->withdrawn) return std::nullopt;
  return words::Error{Say::line_taken_back, {}};
}

// Nothing of it, where it makes no sense: a line that says so would be read as a weighing.
Fault nothing(const Typed& typed) {
  const PadKind kind = typed.target.kind;
  if (typed.value > 0) return std::nullopt;
  if (says<session::BottleWeighed>(typed) || says<session::PanWeighed>(typed))
    return words::Error{Say::weighs_nothing, {}};
  if (says<session::Weighed>(typed)) return words::Error{Say::paint_weighs_nothing, {}};
  if (typed.line) return words::Error{Say::none_went_in, {}};
  if (typed.says || kind == PansPad::pour_g) return words::Error{Say::nothing_typed, {}};
  return std::nullopt;
}

Fault more_than_lies_there(const Typed& typed) {
  const auto* lost = says<session::Lost>(typed);
  return lost ? fault_of_spilt(*typed.bench.folded, *lost, typed.line != nullptr) : std::nullopt;
}

Fault more_than_a_pan_holds(const Typed& typed) {
  const auto& batch = typed.bench.pans.folded;
  if (typed.target.kind != PansPad::pour_g || !batch) return std::nullopt;
  return fault_of_pour(*batch, typed.bench.pans.pan, typed.value);
}

bool plans_pans(const Typed& typed) {
  return typed.target.kind == PlanPad::weigh && typed.bench.plan.want == Want::pans;
}

// Beyond what any scale of such a bench shows.
Fault more_than_is_weighed(const Typed& typed) {
  const auto* event = says<session::Added>(typed);
  const bool wanted = typed.target.kind == PlanPad::weigh && !plans_pans(typed);
  const bool grams =
      event ? event->unit == session::Unit::g
            : says<session::PanWeighed>(typed) || says<session::Weighed>(typed) || wanted;
  if (!grams) return std::nullopt;
  const auto fits = paint::grams_weighed(typed.value);
  return fits ? std::nullopt : Fault(fits.error());
}

Fault no_such_pans(const Typed& typed) {
  if (!plans_pans(typed)) return std::nullopt;
  const double pans = typed.value;
  if (pans != std::floor(pans))
    return words::Error{Say::pans_not_whole,
                        {words::Number(std::floor(pans), 0), words::Number(std::ceil(pans), 0),
                         words::Number(pans, 1)}};
  if (pans <= session::Planned::most_pans) return std::nullopt;
  return words::Error{Say::pans_too_many,
                      {words::Number(pans, 0), words::Number(session::Planned::most_pans, 0)}};
}

Fault beyond_a_making(const Typed& typed) {
  return fault_of_making(typed.bench, typed.target, typed.value);
}

// ---- what is not plausible

double grams_of(const Bench& bench, const session::Event& event) {
  const auto* added = std::get_if<session::Added>(&event);
  const auto card = added ? card_of(bench, added->of) : std::nullopt;
  const auto tool = added ? card_of(bench, added->with) : std::nullopt;
  if (!card) return 0;
  session::GramsAdded grams_added;
  const auto& grams = grams_added(*added, *card, tool ? &*tool : nullptr);
  return grams ? grams->value : 0;
}

Fault added(const Typed& typed) {
  const auto* event = says<session::Added>(typed);
  if (!event) return std::nullopt;
  const bool stood = typed.line && !typed.line->withdrawn;
  const double was = stood ? grams_of(typed.bench, typed.line->event) : 0;
  return doubt_about_added(typed.bench, event->of, grams_of(typed.bench, *typed.says), was);
}

Fault pan_weighed(const Typed& typed) {
  const auto* event = says<session::PanWeighed>(typed);
  const bool on_pans = typed.target.kind == PansPad::weigh_pan;
  const Bench& bench = typed.bench;
  const session::Batch* batch = on_pans        ? bench.pans.folded.get()
                                : bench.folded ? &*bench.folded
                                               : nullptr;
  if (!event || !batch) return std::nullopt;
  return doubt_about_pan(*batch, event->pan, event->g, typed.line);
}

Fault planned_size(const Typed& typed) {
  if (typed.target.kind == PlanPad::weigh) return doubt_about_wanted(typed.bench, typed.value);
  if (typed.target.kind != PlanPad::parts) return std::nullopt;
  for (const BlendPart& part : typed.bench.plan.blend)
    if (part.card == typed.target.arg && part.in == session::SaidIn::g)
      if (const session::Card* card = shelf_card(typed.bench, part.card))
        return doubt_about_so_much(*card, typed.value);
  return std::nullopt;
}

Fault of_a_jar(const Typed& typed) {
  const auto& card = typed.bench.shelf_page.card;
  if (!card) return std::nullopt;
  if (typed.target.kind == ShelfPad::left_g)
    return doubt_about_left(typed.bench, *card, typed.value);
  if (typed.target.kind == ShelfPad::jar_g) return doubt_about_bought(typed.value);
  return std::nullopt;
}

Fault of_a_dropper(const Typed& typed) {
  const auto& card = typed.bench.shelf_page.card;
  if (!card || !(typed.target == PadId{ShelfPad::fact, "drops_20_g"})) return std::nullopt;
  return with_fact(*card, typed.target.arg, typed.value) ? doubt_about_drops(*card, typed.value)
                                                         : std::nullopt;
}

Fault of_a_making(const Typed& typed) {
  if (typed.target.kind == BinderPad::jar_holds) return doubt_about_jar(typed.bench, typed.value);
  if (typed.target.kind == BinderPad::dose) return doubt_about_dose(typed.bench, typed.value);
  return std::nullopt;
}

using Check = Fault (*)(const Typed&);
constexpr Check cannot_be[] = {taken_back,           nothing,      more_than_is_weighed,
                               more_than_lies_there, no_such_pans, more_than_a_pan_holds,
                               beyond_a_making};
// A slip would be in every drop of a dropper, in all that is planned of a jar, in all that is said
// of a batch: the same once more says that it is none.
constexpr Check not_plausible[] = {added,    pan_weighed,  planned_size,
                                   of_a_jar, of_a_dropper, of_a_making};

template <std::size_t n>
Fault first_of(const Check (&checks)[n], const Typed& typed) {
  for (const Check check : checks)
    if (auto fault = check(typed)) return fault;
  return std::nullopt;
}

}

Typed typed(const Bench& bench, const PadId& target, double value) {
  const bool corrects = target.kind == MorePad::other_amount;
  const session::Entry* line = corrects ? line_chosen(bench) : nullptr;
  return {bench, target, value, line,
          line ? corrected(*line, value) : event_of(bench, target, value)};
}

std::optional<words::Error> refused(const Typed& typed) { return first_of(cannot_be, typed); }

std::optional<words::Error> asked_about(const Typed& typed) {
  return first_of(not_plausible, typed);
}

}
