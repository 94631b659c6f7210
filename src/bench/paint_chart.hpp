// What the workshop makes, each paint once: by hue and lightness, as it was last read from a
// swatch, else as its pigment's card guesses it.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// Batches are of one paint where they are made again of one another, or bear one name (but for a
// count behind it) and hold the same pigments. Only paints of which a batch is found, while
// something is searched for.
std::vector<PaintMade> paints_by_colour(const Bench& bench);

// As its latest batch was read whose swatch was; absent where none was.
std::optional<std::uint32_t> swatch_of(const Bench& bench, const PaintMade& paint);

// Puts them into bench.book, while it lists them.
void chart_paints(Bench& bench);

// Whether the Book shows them now.
bool shows_chart(const Bench& bench);

// How many stand beside one another, and above one another.
Size paints_a_page(const Display& display);
std::vector<PaintMade> paints_of_page(const Bench& bench);

// Of all its batches; absent where they were not folded.
std::optional<PaintLeft> kept_left(const Bench& bench, const PaintMade& paint);

// Where a colour stands in the chart: sectors of hue round the circle from red, greys last, and in
// each the light before the dark.
struct ChartPlace {
  int sector = 0;
  double darkness = 0; // 0 white, 1 black
  bool operator<(const ChartPlace& other) const;
};
ChartPlace chart_place(std::uint32_t colour); // 0xRRGGBB

}
