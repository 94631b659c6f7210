// What Pans is about: one batch, its pans, and what is to be poured into them.
#pragma once

#include "bench/bench.hpp"
#include "bench/pan_times.hpp"

namespace bench {

// Chosen there, else in the Book, else on the slab, else the latest that left a slab; empty: none.
std::string pans_batch(const Bench& bench);

// Folds that batch up to now.
void refold_pans(Bench& bench, const Now& now);

// The other batches that may have paint in a jar or in pans, as they lay when Pans was opened: what
// waits first, then those poured lately, the newest first. Those that have a pad: this page's, or
// while judging the first.
inline constexpr std::size_t others_a_page = 2;
std::vector<std::string> others_that_show(const Bench& bench);
int other_pages(const Bench& bench);

// By their numbers.
std::vector<const session::Pan*> pans_in_order(const session::Batch& batch);
// Of them, those that take a layer now.
std::vector<const session::Pan*> pans_with_room(const session::Batch& batch, std::int64_t wall_ms);
const session::Pan* pan_numbered(const session::Batch& batch, int number);
int next_number(const session::Batch& batch);

// The pads of this page: pans by their numbers.
std::vector<int> pans_of_page(const Bench& bench);
void show_pan(Bench& bench, int number); // turns to its page
bool may_add_pan(const Bench& bench);    // a batch has so many numbers
int pan_pages(const Bench& bench);

// What the next new pan is: chosen, else as poured last, else as planned, else the first of the
// shelf.
std::optional<session::Card> pan_card(const Bench& bench);

// There is room in it, and its last layer may be firm.
bool takes_layer(const session::Batch& batch, const session::Pan& pan, std::int64_t wall_ms);

// How many pans of this card the batch was planned for; 0: nothing was said of them.
int pans_planned(const Bench& bench, const session::Card& card);

// What "pour all" does: layers into all that take one, or, before the first pour, as many new pans
// as the paint will have filled when all its layers are dry, but no more than were planned.
std::vector<session::Poured> pours_for_all(const Bench& bench, const Now& now);
int pans_in(const std::vector<session::Poured>& pours);
// What each of these pans takes in one pour, in mL, where that fills none of them: as much as the
// others. Absent where one is filled: then each is, in their order.
std::optional<double> shared_mL(const session::Batch& batch,
                                const std::vector<const session::Pan*>& pans);

// The line of this session that poured into this pan alone and was its last layer.
std::optional<session::Ref> own_pour(const Bench& bench, int pan);

// On pouring where a layer is due, else with the verdict that is due.
void open_pans(Bench& bench, const Now& now);
// The same, with what waits: a layer before a verdict, this batch before others, the longest first;
// but not away from a batch in hand, on the slab or in the Book.
void open_pans_from_top_bar(Bench& bench, const Now& now);

}
