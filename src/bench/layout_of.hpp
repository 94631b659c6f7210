// One layout a screen; layout(bench) chooses among them.
#pragma once

#include "bench/bench.hpp"

namespace bench {

void lay_out_top_bar(const Bench& bench, Layout& layout);
void lay_out_today(const Bench& bench, Layout& layout);
void lay_out_slab(const Bench& bench, Layout& layout);
void lay_out_plan(const Bench& bench, Layout& layout);
void lay_out_shelf(const Bench& bench, Layout& layout);
void lay_out_pans(const Bench& bench, Layout& layout);
void lay_out_book(const Bench& bench, Layout& layout);
// Of the Book.
void lay_out_compare(const Bench& bench, const ComparePage& page, const Rect& area, Layout& layout);
void lay_out_ranges(const Bench& bench, const RangesPage& page, Layout& layout);
void lay_out_story(const Bench& bench, const PigmentStory& story, Layout& layout);
void lay_out_tablet(const Bench& bench, Layout& layout);
void lay_out_binder(const Bench& bench, Layout& layout);
void lay_out_photos(const Bench& bench, Layout& layout);

// What opens over the trail, in a grid of 4 columns; the top row is left for words.
void lay_out_panel(const Bench& bench, const Grid& grid, Layout& layout);

// The number pad in a grid of 4 columns and at least 5 rows; the top row is left for the number.
void lay_out_number(const Grid& grid, Layout& layout);

inline constexpr int plan_rows_a_page = 10; // pads, two to a row
int book_rows_a_page(const Display& display);
std::vector<std::string> batches_of_page(const Bench& bench); // of the Book's list
Grid photos_grid(const Display& display, const Rect& area);   // of thumbnails
// All that it lists, newest first; of paints by colour the latest batch of each, in their order.
std::vector<std::string> batches_for_paper(const Bench& bench);
int ranges_a_page(const Display& display);
int pans_a_page(const Display& display); // the last place turns the page where there are more

}
