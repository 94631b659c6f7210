#pragma once

#include "screens/views.hpp"

namespace views {

inline const char* const long_name = "Cerulean blue (chromium), 3";

// Three batches that left the slab; "one" has so many pans, poured by this session.
bench::Bench bench_with_batches(bench::Size mm, bench::Hand hand, bench::Screen screen);
session::Batch batch_of_pans(int pans);
session::Entry entry_of(std::uint64_t n, session::Event event);
bench::View view_around(const bench::Bench& b);

// Pans, the Book while it compares, finds and takes a note, and what follows from the plan.
void add_pans(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);
void add_book_pages(std::vector<Case>& out, bench::Size mm, bench::Hand hand,
                    const std::string& on);
void add_photos(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);
void add_two(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);
void add_charts(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);

}
