#include "bench/ranges.hpp"
#include "hands.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace bench;
using hands::Hands;

TEST_CASE("pigments stand from thirsty to modest, each with where nine in ten of it lies") {
  Hands h;
  const auto all = ranges_of(h.b);
  REQUIRE(all.size() > 20);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const auto [low, high] = nine_in_ten(all[i].band);
    const double middle = std::exp(all[i].band.middle);
    CHECK(low < middle);
    CHECK(middle < high);
    CHECK(std::sqrt(low * high) == doctest::Approx(middle));
    if (i > 0) CHECK(all[i].band.middle <= all[i - 1].band.middle);
  }
}

TEST_CASE("Book shows all ranges page by page on one scale, and goes back to its batches") {
  for (const Size mm : hands::displays()) {
    Display display;
    display.mm = mm;
    Hands h(display);
    h.tap("book");
    h.tap("ranges");
    std::size_t seen = 0;
    double low = 0, high = 0;
    for (;;) {
      const auto v = std::get<RangesView>(view(h.b, h.now()).screen);
      seen += v.rows.size();
      if (v.page > 0) CHECK(std::pair(v.low, v.high) == std::pair(low, high));
      std::tie(low, high) = std::pair(v.low, v.high);
      for (const auto& row : v.rows) {
        CHECK(nine_in_ten(row.band).first >= v.low);
        CHECK(nine_in_ten(row.band).second <= v.high);
      }
      if (!h.shows("page_on")) break;
      h.tap("page_on");
    }
    CHECK(seen == ranges_of(h.b).size());
    h.tap("to_list");
    CHECK(std::holds_alternative<BookView>(view(h.b, h.now()).screen));
    CHECK(h.b.book.page == 0);
    h.tap("ranges");
    h.tap("book");
    CHECK(std::holds_alternative<BookView>(view(h.b, h.now()).screen));
  }
}
