// Which cards the slab's pads stand for, and how much one tap of them adds.
#pragma once

#include "bench/bench.hpp"

#include <array>

namespace bench {

inline constexpr int most_materials = 6;
inline constexpr int most_bottles = 4;

// The cards of the batch's materials in the order of their pads, pigments and paints among them.
std::vector<session::Card> materials_of(const Bench& bench);

// With what else of the shelf could go in, such as another binder.
std::vector<session::Card> all_materials(const Bench& bench);

// Pads of the materials: a card's each, but one for all pigments and paints where there are
// several. At most six: those chosen on this tablet before the others.
std::vector<PadId> material_pads(const Bench& bench);
std::vector<session::Card> without_pad(const Bench& bench); // the rest of them

inline constexpr int materials_a_page = 8;
std::vector<session::Card> materials_of_page(const Bench& bench, const MaterialsPanel& panel);
int material_pages(const Bench& bench, const MaterialsPanel& panel);
std::vector<session::Card> pigments_of(const Bench& bench); // with paint of other batches

// The liquids whose bottle can be weighed: those used first, at most four.
std::vector<session::Card> bottles_of(const Bench& bench);

// A card as this batch knows it, else as it stands on the shelf.
std::optional<session::Card> card_of(const Bench& bench, const std::string& id);

// What may be chosen for one tap, by the names of the pads.
struct AmountPad {
  std::string_view name;
  TapAmount amount;
};
inline constexpr std::array amount_pads{AmountPad{"1 drop", {session::Unit::drops, 1}},
                                        AmountPad{"2 drops", {session::Unit::drops, 2}},
                                        AmountPad{"5 drops", {session::Unit::drops, 5}},
                                        AmountPad{"10 drops", {session::Unit::drops, 10}},
                                        AmountPad{"1/4 tsp", {session::Unit::spoons, 0.25}},
                                        AmountPad{"1/2 tsp", {session::Unit::spoons, 0.5}},
                                        AmountPad{"1 tsp", {session::Unit::spoons, 1}},
                                        AmountPad{"weigh", {session::Unit::g, 0}}};
std::optional<TapAmount> amount_named(std::string_view name);

bool is_sweet(const session::Card& card); // honey or glycerin

// What a tap on this card adds: the chosen amount, but powder and paint are always weighed.
TapAmount next_amount(const Bench& bench, const session::Card& card);

// The tool that measures such an amount of a card; empty for a weighing. Of several: the dropper
// chosen for the next drops; else what this batch last measured the card with; else what any batch
// did; else what any batch last measured so at all; else the first of the shelf, those calibrated
// with such a material before the others. What was put away, or used by a line that was withdrawn,
// is not meant.
std::string tool_for(const Bench& bench, const session::Card& card, session::Unit unit);

std::vector<session::Card> droppers_of(const Bench& bench); // of the shelf
// That a tap's drops come from, where several may be meant and the material does not tell: where
// not this one alone is calibrated with it.
std::string dropper_to_tell(const Bench& bench, const session::Card& card);
void next_dropper(Bench& bench);                 // for the next drops
std::string dropper_in_hand(const Bench& bench); // card: for the next drops of the first liquid

// mL that an amount of a card would add to the liquid; absent for a pigment or a weighing.
std::optional<double> mL_of(const Bench& bench, const session::Card& card, const TapAmount& amount);

}
