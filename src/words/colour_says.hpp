// What is said of a swatch's colour, and of two beside each other, wherever it is said.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class ColourSay {
  untold_outside, // why a photo cannot tell
  untold_overlapping,
  untold_too_small,
  untold_no_paper,
  untold_paper_clipped,
  untold_paper_dark,
  untold_too_dark,
  untold_clipped,
  untold_gloss,
  untold_several,
  untold_like_paper,
  untold_no_colours,
  graded, // 0: L*
  glints, // 0: percent
  beyond,
  seen_not, // what an eye makes of a difference
  seen_practised,
  seen_any,
  seen_clearly,
  seen_another,
  apart_seen,    // 0: a sentence of these
  apart_between, // 0 and 1: two of these
  second_as,
  way_lighter, // how one differs from the other
  way_darker,
  way_stronger,
  way_greyer,
  way_redder,
  way_yellower,
  way_greener,
  way_bluer,
  way_warmer,
  way_cooler,
  a_little, // 0: a way
  much,     // likewise
  as_light,
  as_strong,
  as_hue,
  way_untold,
  how_far,
  later_is,      // 0: the later batch
  match_against, // 0: the earlier batch
  match_limits,  // between which a difference lies
  one_photo,
  two_photos,
  repeat_photo,
  repeat_photos, // 0: how many
  blame_head,
  blame_guess,
  blame_none,
  blame_binder_more, // 0: per cent, and so on
  blame_binder_less,
  blame_gum_more,
  blame_gum_less,
  blame_sweet_more,
  blame_sweet_less,
  blame_minutes_more, // 0: minutes
  blame_minutes_less,
  blame_pass_more,
  blame_passes_more, // 0: how many
  blame_pass_less,
  blame_passes_less,
  blame_lot,   // 0: a material
  blame_older, // 0: days
  blame_younger,
  unusual_very,
  unusual,
  usual,
  match_trails,
  match_colours,
  match_new_photo,
  match_again, // 0: the earlier batch
};

constexpr Table table_of(ColourSay) { return Table::colour; }

std::string_view english(ColourSay id);

}
