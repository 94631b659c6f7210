// What a card of the shelf says in numbers, and how each is read off a scale or a label.
#pragma once

#include "bench/bench.hpp"
#include "words/bench_says.hpp"
#include "words/lists.hpp"

namespace bench {

// The shelf's tabs: the argument of each pad, and its sentence.
struct ShelfTab {
  std::string_view name;
  words::Sentence say;
};
inline constexpr words::EnumTable<ShelfKind, ShelfTab> shelf_tabs{
    {{ShelfKind::pigment, {"pigment", words::BenchSay::shelf_pigment}},
     {ShelfKind::binder, {"binder", words::BenchSay::shelf_binder}},
     {ShelfKind::liquid, {"liquid", words::BenchSay::shelf_liquid}},
     {ShelfKind::dropper, {"dropper", words::BenchSay::shelf_dropper}},
     {ShelfKind::spoon, {"spoon", words::BenchSay::shelf_spoon}},
     {ShelfKind::pan, {"pan", words::BenchSay::shelf_pan}},
     {ShelfKind::glass, {"glass", words::BenchSay::shelf_glass}},
     {ShelfKind::recipe, {"recipe", words::BenchSay::shelf_recipe}}}};

// What may be typed, by the names of the pads.
std::vector<std::string_view> facts_of(session::CardKind kind);

// What turns over at each tap; the cautions open instead.
enum class ChoiceKind { family, with, size, liquid, glass, cautions, mine, from };
struct ChoiceRow {
  std::string_view name; // of its pad
  words::Sentence say;
};
std::vector<ChoiceKind> choices_of(session::CardKind kind);
const ChoiceRow& row_of(ChoiceKind choice);
std::optional<ChoiceKind> choice_named(std::string_view name);

// A fact as it stands; 0: not known. Droppers are told by what 20 drops weigh, spoons and pans by
// the water they hold.
struct Fact {
  double value = 0;
  double u = 0;
  int decimals = 2;
  words::Sentence say = words::Sentence{};  // what it is
  words::Sentence zero = words::Sentence{}; // what stands there for 0
};
Fact fact_of(const session::Card& card, std::string_view which);
words::Sentence say_of_fact(std::string_view which);

// The card with another value. Errors: fact_out_of_range with what is taken; those of
// paint::calibrated and paint::spoon_weighed.
words::Result<session::Card> with_fact(session::Card card, std::string_view which, double value);

// The card with the next of its choices: a pigment's class, what a dropper was weighed with, a
// spoon's kind.
session::Card with_next(session::Card card, ChoiceKind choice);

// A new card of that kind, with values that may stand until they are replaced.
session::Card blank_card(ShelfKind kind, std::string id);

ShelfKind shelf_kind(session::CardKind kind);

// A binder that is none: see paint::fault_of_recipe.
std::optional<words::Error> fault_of_figures(const session::Card& card);

// Dates as they were typed become what is kept; what is none stays for fault_of.
void read_typed_dates(session::Card& card, std::int64_t today);
// What is wrong with what is written on a card: no name, a date that is none, or lies ahead, or its
// figures.
std::optional<words::Error> fault_of(const session::Card& card, std::int64_t today);

}
