// What the shelf lists, and what lies open beside the list.
#pragma once

#include "bench/bench.hpp"
#include "bench/pads_shelf.hpp"

namespace bench {

// Before it is cut into pages: the maker's own in order of use, or the others. While something is
// searched for, and where nothing of that kind is the maker's own yet, all of them.
std::vector<const session::Card*> cards_listed(const Bench& bench);
bool has_search(ShelfKind kind); // such cards grow many

ShelfPad row_pad(const Bench& bench); // of each of them
int shelf_rows(double height_mm);
int shelf_columns(const Bench& bench); // two where names are short and many: of pigments

// How many of the kind are not listed but could be.
std::size_t not_listed(const Bench& bench);

bool is_read(const session::Card& card);  // opens to be read: a pigment
bool has_jars(const session::Card& card); // is used up

// Those of the card that is read, newest first: as many as there is room for.
bool shows_batches(const ShelfState& page);
inline constexpr std::size_t latest_batches = 4, latest_by_recipe = 3;
std::vector<std::string> batches_of_card(const Bench& bench);

}
