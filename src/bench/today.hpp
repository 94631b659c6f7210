// Today: what waits, and what may be made again.
#pragma once

#include "bench/bench.hpp"

namespace bench {

inline constexpr std::size_t most_again = 6;

// The newest batches whose paint was judged good, and nothing ill of it since; of the same pigments
// the newest alone.
std::vector<std::string> last_good(const Bench& bench);

bool ended_good(const BookEntry& entry);

// Nothing was ever made here: the board of the first day.
bool is_first_day(const Bench& bench);

// Pads of what waits on one page; with more than that the last of them turns pages.
int waits_a_page();
int waits_shown(const Bench& bench); // of them
int first_wait(const Bench& bench);  // that shows
std::vector<Due> waits_of_page(const Bench& bench);
int waits_pages(const Bench& bench);

// At the end of a step that shows it: what waits now.
void refresh_today(Bench& bench, const Now& now);
// The same beside a step, once older batches were looked through.
bool today_changes(Bench& bench, const Now& now);

// When the studio has been read: on Slab, where a hand was there a moment ago.
void open_at_hand(Bench& bench, const Now& now, Effects& effects);

}
