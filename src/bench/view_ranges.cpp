#include "bench/choices.hpp"
#include "bench/layout_of.hpp"
#include "bench/ranges.hpp"
#include "bench/view_parts.hpp"

#include <algorithm>

namespace bench {

RangesView ranges_view(const Bench& bench) {
  RangesView v;
  const std::vector<PigmentRange> all = ranges_of(bench);
  const int a_page = ranges_a_page(bench.display);
  v.page = bench.book.page;
  v.a_page = a_page;
  v.pages = pages_for(all.size(), a_page);
  for (const PigmentRange& range : all) {
    const auto [low, high] = nine_in_ten(range.band);
    v.low = std::min(v.low, low);
    v.high = std::max(v.high, high);
  }
  const auto first = static_cast<std::size_t>(v.page * a_page);
  const auto last = std::min(all.size(), first + static_cast<std::size_t>(a_page));
  for (std::size_t i = first; i < last; ++i)
    v.rows.push_back(
        {all[i].card->name, all[i].card->index_name, all[i].card->colour, all[i].band});
  return v;
}

}
