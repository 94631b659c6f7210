// A batch on the slab by hand, and its materials and lines.
#pragma once

#include "screens/views.hpp"

namespace views {

bench::Bench bench_on(bench::Size mm, bench::Hand hand);
void open_batch(bench::Bench& b); // of the longest names on the shelf that ships
bench::SlabView slab_of(const bench::Bench& b);
bench::View around(const bench::Bench& b);

void add_materials(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);
void add_droppers(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);
void add_dots(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);
void add_runs(std::vector<Case>& out, bench::Size mm, bench::Hand hand, const std::string& on);

}
