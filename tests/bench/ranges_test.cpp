#include "bench/ranges.hpp"
#include "hands.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace ranges_test {

using namespace bench;
using hands::Hands;

TEST_CASE("pigments stand from thirsty to modest, each with where nine in ten of it lies") {
  Hands h;
  h.tap("book");
  h.tap("ranges");
  const auto& all = ranges_of(h.b.book.page)->of_pigments;
  REQUIRE(all.size() > 20);
  for (std::size_t i = 0; i < all.size(); ++i) {
    CHECK(all[i].low < all[i].demand);
    CHECK(all[i].demand < all[i].high);
    CHECK(all[i].band.batches == 0);
    if (i > 0) CHECK(all[i].demand <= all[i - 1].demand);
  }
}

TEST_CASE("Book shows all ranges page by page on one scale, and goes back to its batches") {
  for (const Size mm : hands::displays()) {
    Display display;
    display.mm = mm;
    Hands h(display);
    h.tap("book");
    h.tap("ranges");
    const std::size_t count = ranges_of(h.b.book.page)->of_pigments.size();
    std::size_t seen = 0;
    double low = 0, high = 0;
    for (;;) {
      const auto v = std::get<RangesView>(view(h.b, h.now()).screen);
      seen += v.rows.size();
      if (v.page > 0) CHECK(std::pair(v.low, v.high) == std::pair(low, high));
      std::tie(low, high) = std::pair(v.low, v.high);
      for (const auto& row : v.rows) {
        CHECK(row.range.low >= v.low);
        CHECK(row.range.high <= v.high);
        CHECK(h.shows("range_of " + row.range.card));
      }
      if (!h.shows("page_on")) break;
      h.tap("page_on");
    }
    CHECK(seen == count);
    h.tap("to_list");
    CHECK(std::holds_alternative<BookView>(view(h.b, h.now()).screen));
    CHECK(h.b.book.list == Scroll{});
    h.tap("ranges");
    h.tap("book");
    CHECK(std::holds_alternative<BookView>(view(h.b, h.now()).screen));
  }
}

TEST_CASE("a pigment nobody has felt says so, and has no note to leave out") {
  Hands h;
  h.tap("book");
  h.tap("ranges");
  h.tap("range_of " + ranges_of(h.b.book.page)->of_pigments.front().card);
  const auto story = std::get<StoryView>(view(h.b, h.now()).screen);
  REQUIRE(story.steps.size() == 1);
  CHECK(story.steps[0].of.batch.empty());
  CHECK(story.steps[0].of.demand == story.range.demand);
  CHECK_FALSE(story.chosen);
  CHECK_FALSE(h.shows("set_aside"));
  h.tap("to_list");
  CHECK(std::holds_alternative<RangesView>(view(h.b, h.now()).screen));
}

}
