#include "bench/choices.hpp"
#include "bench/corrections.hpp"
#include "bench/making.hpp"
#include "bench/materials.hpp"
#include "bench/pads_binder.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "bench/view_parts.hpp"
#include "session/plan.hpp"

namespace bench {

namespace {
std::string gum_spoon(const Bench& bench) {
  const session::Card* spoon = gum_measured(bench).spoon;
  return spoon ? spoon->name : "";
}

// Of a pigment that is still to be weighed; 0: of none.
double grams_to_come(const Bench& bench, const std::string& card) {
  if (!bench.folded) return 0;
  for (const session::ToCome& one : session::to_come(*bench.folded))
    if (one.card->id == card && one.card->kind() == session::CardKind::pigment)
      return one.g.value_or(0);
  return 0;
}
}

std::optional<NumberView> number_view(const Bench& bench) {
  if (!bench.number) return std::nullopt;
  NumberView n{bench.number->target, bench.number->text, "", bench.number->error};
  n.want = bench.plan.want;
  for (const BlendPart& part : bench.plan.blend)
    if (part.card == n.target.arg) n.in = part.in;
  if (const auto card = card_of(bench, n.target.arg)) n.of = card->name;
  if (n.target.kind == SlabPad::add) n.planned_g = grams_to_come(bench, n.target.arg);
  if (const session::Entry* line =
          n.target.kind == MorePad::other_amount ? line_chosen(bench) : nullptr) {
    n.corrects = line->event;
    if (const auto of = card_of(bench, session::cards_named_by(line->event).card)) n.of = of->name;
  }
  if (n.target.kind == ShelfPad::jar_price) n.of = bench.shelf_page.jar.currency;
  if (n.target.kind == ShelfPad::left_g && bench.shelf_page.card)
    n.of = bench.shelf_page.card->name;
  if (n.target.kind == BinderPad::gum) n.of = gum_spoon(bench);
  if (n.target.kind == BinderPad::dose && bench.binder.dose_in_g) n.of = "g";
  if (n.target.kind == PansPad::pour_g || n.target.kind == PansPad::weigh_pan)
    n.of = std::to_string(bench.pans.pan);
  return n;
}

}
