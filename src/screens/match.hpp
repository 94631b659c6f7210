// Whether two batches are of one colour, in shapes and words.
#pragma once

#include "screens/parts.hpp"

namespace screens {

// Both colours edge to edge, with nothing between them.
void both_colours(Sheet& sheet, const Rect& r, const bench::MatchView& match);

// The pad of a batch's page: beside the last good one.
void match_pad(Sheet& sheet, const bench::Pad& at, const bench::MatchView& match);

// The page of two batches' colours.
void draw_colours(Sheet& sheet, const bench::CompareView& both);

}
