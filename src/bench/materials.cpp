#include "bench/materials.hpp"

#include "bench/choices.hpp"
#include "bench/pads_slab.hpp"
#include "bench/shelf.hpp"
#include "paint/measure.hpp"
#include "session/amounts.hpp"

#include <algorithm>
#include <utility>

namespace bench {

namespace {

using session::Card;
using session::CardKind;

// In which order materials lie; tools are none.
std::optional<int> place_of(CardKind kind) {
  switch (kind) {
  case CardKind::binder: return 0;
  case CardKind::water: return 1;
  case CardKind::honey: return 2;
  case CardKind::glycerin: return 3;
  case CardKind::pigment: return 4;
  case CardKind::paint: return 5;
  case CardKind::wetting_aid: return 6;
  case CardKind::other: return 7;
  case CardKind::dropper:
  case CardKind::spoon:
  case CardKind::pan:
  case CardKind::slab:
  case CardKind::muller:
  case CardKind::recipe: return std::nullopt;
  }
  return std::nullopt;
}

void sort_by_kind(std::vector<Card>& cards) {
  std::stable_sort(cards.begin(), cards.end(), [](const Card& a, const Card& b) {
    return place_of(a.kind()) < place_of(b.kind());
  });
}

bool is_solid(const Card& card) {
  return card.kind() == CardKind::pigment || card.kind() == CardKind::paint;
}

bool used(const Bench& bench, const Card& card) {
  if (!bench.folded) return false;
  return std::any_of(bench.folded->totals.begin(), bench.folded->totals.end(),
                     [&](const session::Total& t) { return t.card.id == card.id; });
}

// Whatever a slab always has comes from the shelf, where none of its kind is there.
void add_what_is_always_there(const Bench& bench, std::vector<Card>& cards) {
  for (const Card& card : bench.shelf) {
    const auto same_kind = [&](const Card& c) { return c.kind() == card.kind(); };
    const bool always =
        session::is_liquid(card.kind()) && card.kind() != CardKind::binder && !makes_binder(card);
    if (always && std::none_of(cards.begin(), cards.end(), same_kind)) cards.push_back(card);
  }
}

bool is_planned(const Bench& bench, const Card& card) {
  const auto& plan = bench.folded->plan;
  return plan && std::any_of(plan->of.takes.begin(), plan->of.takes.end(),
                             [&](const auto& take) { return take.of == card.id; });
}

// Another honey or glycerin than the planned one.
bool stands_behind(const Bench& bench, const std::vector<Card>& materials, const Card& card) {
  const bool sweet = card.kind() == CardKind::honey || card.kind() == CardKind::glycerin;
  if (!sweet || is_planned(bench, card)) return false;
  return std::any_of(materials.begin(), materials.end(), [&](const Card& other) {
    return other.kind() == card.kind() && is_planned(bench, other);
  });
}

bool lay_there_from_the_start(const session::Batch& batch, const Card& card) {
  return std::any_of(batch.entries.begin(), batch.entries.end(), [&](const session::Entry& e) {
    const auto* laid = std::get_if<session::LaidOut>(&e.event);
    return laid && laid->card->id == card.id && e.clock <= batch.entries.front().clock;
  });
}

// A second binder, or another second liquid of its kind, that had no pad before it went in: the one
// before it was there already, used before it or not at all.
bool came_later(const Bench& bench, const std::vector<Card>& materials, const Card& card) {
  if (!session::is_liquid(card.kind()) || !used(bench, card) || is_planned(bench, card))
    return false;
  if (lay_there_from_the_start(*bench.folded, card)) return stands_behind(bench, materials, card);
  const auto& totals = bench.folded->totals;
  const auto first = std::find_if(totals.begin(), totals.end(), [&](const session::Total& t) {
    return t.card.kind() == card.kind();
  });
  return first->card.id != card.id ||
         std::any_of(materials.begin(), materials.end(), [&](const Card& other) {
           return other.kind() == card.kind() && !used(bench, other);
         });
}

}

std::vector<Card> materials_of(const Bench& bench) {
  std::vector<Card> cards;
  if (!bench.folded) return cards;
  for (const auto& [id, card] : bench.folded->cards)
    if (place_of(card.kind())) cards.push_back(card);
  add_what_is_always_there(bench, cards); // a log may name only what it used
  sort_by_kind(cards);
  return cards;
}

std::vector<Card> all_materials(const Bench& bench) {
  std::vector<Card> cards = materials_of(bench);
  for (const Card& card : bench.shelf) {
    const auto same = [&](const Card& c) { return c.id == card.id; };
    const bool liquid = session::is_liquid(card.kind()) && !makes_binder(card);
    if (liquid && std::none_of(cards.begin(), cards.end(), same)) cards.push_back(card);
  }
  sort_by_kind(cards);
  return cards;
}

std::vector<Card> pigments_of(const Bench& bench) {
  std::vector<Card> cards = materials_of(bench);
  std::erase_if(cards, [](const Card& c) { return !is_solid(c); });
  return cards;
}

namespace {

bool stands_for(const PadId& pad, const Card& card) {
  return pad.kind == SlabPad::pigments ? is_solid(card) : pad.arg == card.id;
}

// One for each card; solids share one.
std::vector<PadId> pads_for(const std::vector<Card>& cards, bool several_solids) {
  std::vector<PadId> pads;
  bool asked = false;
  for (const Card& card : cards) {
    if (!is_solid(card) || !several_solids)
      pads.push_back({SlabPad::add, card.id});
    else if (!std::exchange(asked, true))
      pads.push_back({SlabPad::pigments, ""});
  }
  return pads;
}

template <class Has>
void put_first(std::vector<PadId>& pads, Has has) {
  std::stable_partition(pads.begin(), pads.end(), has);
}

// No other pad moves, for a hand knows its place by heart: it lies on a free one, else on that of
// the last liquid of which there is none in the batch.
void put_behind(const Bench& bench, std::vector<PadId>& pads, const PadId& pad) {
  if (std::find(pads.begin(), pads.end(), pad) != pads.end()) return;
  if (pads.size() < most_materials) return pads.push_back(pad);
  const auto is_free = [&](const PadId& p) {
    const auto card = p.kind == SlabPad::add ? card_of(bench, p.arg) : std::nullopt;
    return card && !is_solid(*card) && !used(bench, *card);
  };
  const auto last = std::find_if(pads.rbegin(), pads.rend(), is_free);
  if (last != pads.rend()) *last = pad;
}

}

std::vector<PadId> material_pads(const Bench& bench) {
  const auto all = all_materials(bench), solids = pigments_of(bench);
  if (!bench.folded) return {};
  const std::vector<Card> there = materials_of(bench);
  std::vector<Card> usual, later;
  for (const Card& card : there)
    if (used(bench, card) || !stands_behind(bench, there, card))
      (came_later(bench, there, card) ? later : usual).push_back(card);
  add_what_is_always_there(bench, usual);
  const std::vector<PadId> in_order = pads_for(all, solids.size() > 1);
  const auto any_of = [](const std::vector<Card>& cards, const PadId& pad) {
    return std::any_of(cards.begin(), cards.end(),
                       [&](const Card& card) { return stands_for(pad, card); });
  };
  const auto& chosen = bench.tablet.materials;
  const auto is_chosen = [&](const PadId& pad) {
    return std::find(chosen.begin(), chosen.end(), pad.arg) != chosen.end();
  };
  std::vector<PadId> pads = in_order;
  std::erase_if(pads, [&](const PadId& pad) { return !any_of(usual, pad) && !is_chosen(pad); });
  put_first(pads, is_chosen);
  put_first(pads, [&](const PadId& pad) { return any_of(solids, pad); });
  if (pads.size() > most_materials) pads.resize(most_materials);
  std::vector<PadId> out;
  for (const PadId& pad : in_order)
    if (std::find(pads.begin(), pads.end(), pad) != pads.end()) out.push_back(pad);
  for (const Card& card : later) put_behind(bench, out, {SlabPad::add, card.id});
  return out;
}

std::vector<Card> without_pad(const Bench& bench) {
  const std::vector<PadId> pads = material_pads(bench);
  std::vector<Card> rest = all_materials(bench);
  std::erase_if(rest, [&](const Card& card) {
    return std::any_of(pads.begin(), pads.end(),
                       [&](const PadId& pad) { return stands_for(pad, card); });
  });
  return rest;
}

namespace {

std::vector<Card> materials_listed(const Bench& bench, MaterialsPanel::Why why) {
  switch (why) {
  case MaterialsPanel::add: return without_pad(bench);
  case MaterialsPanel::was: return all_materials(bench);
  case MaterialsPanel::choose: break;
  }
  std::vector<Card> cards = all_materials(bench);
  std::erase_if(cards, is_solid); // they always have one
  return cards;
}

}

int material_pages(const Bench& bench, const MaterialsPanel& panel) {
  return pages_for(materials_listed(bench, panel.why).size(), materials_a_page);
}

std::vector<Card> materials_of_page(const Bench& bench, const MaterialsPanel& panel) {
  const std::vector<Card> all = materials_listed(bench, panel.why);
  const auto first = std::min(all.size(), static_cast<std::size_t>(panel.page) * materials_a_page);
  const auto last = std::min(all.size(), first + materials_a_page);
  return {all.begin() + static_cast<std::ptrdiff_t>(first),
          all.begin() + static_cast<std::ptrdiff_t>(last)};
}

std::vector<Card> bottles_of(const Bench& bench) {
  std::vector<Card> cards = materials_of(bench);
  std::erase_if(cards, [](const Card& c) { return !session::is_liquid(c.kind()); });
  std::stable_sort(cards.begin(), cards.end(),
                   [&](const Card& a, const Card& b) { return used(bench, a) && !used(bench, b); });
  if (cards.size() > most_bottles) cards.resize(most_bottles);
  return cards;
}

std::optional<Card> card_of(const Bench& bench, const std::string& id) {
  if (bench.folded) {
    const auto known = bench.folded->cards.find(id);
    if (known != bench.folded->cards.end()) return known->second;
  }
  for (const Card& card : bench.shelf)
    if (card.id == id) return card;
  return std::nullopt;
}

std::optional<TapAmount> amount_named(std::string_view name) {
  for (const AmountPad& pad : amount_pads)
    if (pad.name == name) return pad.amount;
  return std::nullopt;
}

TapAmount next_amount(const Bench& bench, const Card& card) {
  return is_solid(card) ? TapAmount{session::Unit::g, 0} : bench.amount;
}

namespace {

bool is_there(const Bench& bench, const std::string& id, CardKind kind) {
  for (const Card& card : bench.away)
    if (card.id == id) return false;
  const auto card = card_of(bench, id);
  return card && card->kind() == kind;
}

std::string last_of_batch(const Bench& bench, const Card& card, session::Unit unit, CardKind kind) {
  if (!bench.folded) return "";
  const auto& entries = bench.folded->entries;
  for (auto e = entries.rbegin(); e != entries.rend(); ++e) {
    const auto* added = std::get_if<session::Added>(&e->event);
    if (added && !e->withdrawn && added->of == card.id && added->unit == unit &&
        is_there(bench, added->with, kind))
      return added->with;
  }
  return "";
}

std::string last_of_all(const Bench& bench, const std::string& card, session::Unit unit,
                        CardKind kind) {
  const ToolUse* last = nullptr;
  for (const auto& [measured, uses] : bench.index.tools) {
    if (measured.first != unit || (!card.empty() && measured.second != card)) continue;
    const auto use = std::find_if(uses.rbegin(), uses.rend(), [&](const ToolUse& one) {
      return is_there(bench, one.tool, kind);
    });
    if (use != uses.rend() && (!last || *last < *use)) last = &*use;
  }
  return last ? last->tool : "";
}

std::optional<CardKind> calibrated_with(const Card& tool) {
  const auto* dropper = std::get_if<session::DropperCard>(&tool.facts);
  return dropper ? std::optional(dropper->calibrated_with) : std::nullopt;
}

// A tool that only this batch knows comes last.
std::string first_of_shelf(const Bench& bench, const Card& card, CardKind kind) {
  std::vector<const Card*> tools;
  for (const Card& tool : bench.shelf)
    if (tool.kind() == kind) tools.push_back(&tool);
  if (bench.folded)
    for (const auto& [id, tool] : bench.folded->cards)
      if (tool.kind() == kind && is_there(bench, id, kind)) tools.push_back(&tool);
  if (tools.empty()) return "";
  const auto own = std::find_if(tools.begin(), tools.end(), [&](const Card* tool) {
    return calibrated_with(*tool) == card.kind();
  });
  return (own == tools.end() ? tools.front() : *own)->id;
}

}

bool is_sweet(const Card& card) {
  return card.kind() == CardKind::honey || card.kind() == CardKind::glycerin;
}

std::string tool_for(const Bench& bench, const Card& card, session::Unit unit) {
  if (unit == session::Unit::g) return "";
  const CardKind kind = unit == session::Unit::drops ? CardKind::dropper : CardKind::spoon;
  if (kind == CardKind::dropper && is_there(bench, bench.dropper, kind)) return bench.dropper;
  std::string tool = last_of_batch(bench, card, unit, kind);
  if (tool.empty()) tool = last_of_all(bench, card.id, unit, kind);
  if (tool.empty()) tool = last_of_all(bench, "", unit, kind);
  return tool.empty() ? first_of_shelf(bench, card, kind) : tool;
}

std::vector<Card> droppers_of(const Bench& bench) {
  std::vector<Card> out;
  for (const Card& card : bench.shelf)
    if (card.kind() == CardKind::dropper) out.push_back(card);
  return out;
}

std::string dropper_to_tell(const Bench& bench, const Card& card) {
  const auto all = droppers_of(bench);
  const TapAmount next = next_amount(bench, card);
  if (all.size() < 2 || next.unit != session::Unit::drops) return "";
  const auto tool = card_of(bench, tool_for(bench, card, next.unit));
  if (!tool) return "";
  const auto of_it = [&](const Card& one) { return calibrated_with(one) == card.kind(); };
  const bool plain = of_it(*tool) && std::count_if(all.begin(), all.end(), of_it) == 1;
  return plain ? "" : tool->name;
}

std::string dropper_in_hand(const Bench& bench) {
  for (const Card& card : materials_of(bench))
    if (session::is_liquid(card.kind())) return tool_for(bench, card, session::Unit::drops);
  return "";
}

void next_dropper(Bench& bench) {
  const auto all = droppers_of(bench);
  if (all.empty()) return;
  const auto here = std::find_if(all.begin(), all.end(),
                                 [id = dropper_in_hand(bench)](auto& one) { return one.id == id; });
  bench.dropper = here == all.end() || here + 1 == all.end() ? all.front().id : (here + 1)->id;
}

std::optional<double> mL_of(const Bench& bench, const Card& card, const TapAmount& amount) {
  const auto tool = card_of(bench, tool_for(bench, card, amount.unit));
  const auto material = session::material_of(card);
  if (!tool || !material || !session::is_liquid(card.kind())) return std::nullopt;
  const auto grams =
      amount.unit == session::Unit::drops
          ? paint::grams_of_drops(amount.count, session::dropper_of(*tool), *material)
          : paint::grams_of_spoons(amount.count, session::spoon_of(*tool), *material);
  if (!grams) return std::nullopt;
  return grams->value * paint::mL_per_g(material->parts);
}

}
