// What a card of the shelf says in numbers, and how each is read off a scale or a label.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// By the names of the pads: what may be typed, and what turns over at each tap.
std::vector<std::string_view> facts_of(session::CardKind kind);
std::vector<std::string_view> choices_of(session::CardKind kind);

// A fact as it stands; 0: not known. Droppers are told by what 20 drops weigh, spoons and pans by
// the water they hold.
struct Fact {
  double value = 0;
  double u = 0;
  int decimals = 2;
};
Fact fact_of(const session::Card& card, std::string_view which);

// The card with another value. Errors: fact_out_of_range with what is taken; those of
// paint::calibrated and paint::spoon_weighed.
words::Result<session::Card> with_fact(session::Card card, std::string_view which, double value);

// The card with the next of its choices: a pigment's class, what a dropper was weighed with, a
// spoon's kind.
session::Card with_next(session::Card card, std::string_view which);

// A new card of that kind, with values that may stand until they are replaced.
session::Card blank_card(ShelfKind kind, std::string id);

ShelfKind shelf_kind(session::CardKind kind);
std::optional<ShelfKind> shelf_kind_named(std::string_view name);

// What the list shows, before it is cut into pages.
std::vector<const session::Card*> cards_listed(const Bench& bench);
int shelf_rows(double height_mm);

// A binder that is none: see paint::fault_of_recipe.
std::optional<words::Error> fault_of_figures(const session::Card& card);

// What is wrong with what is written on a card: no name, a date that is none, or lies ahead, or its
// figures.
std::optional<words::Error> fault_of(const session::Card& card, std::int64_t today);

}
