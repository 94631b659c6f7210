#include "words/colour_says.hpp"

namespace words {

std::string_view english(ColourSay id) {
  using Say = ColourSay;
  switch (id) {
  case Say::untold_outside: return "a region reaches beyond the photo";
  case Say::untold_overlapping: return "two regions lie over each other";
  case Say::untold_too_small: return "the swatch, or the bare paper, is too small on the photo";
  case Say::untold_no_paper:
    return "there is no bare paper beside the swatch, or it lies in light and shade";
  case Say::untold_paper_clipped:
    return "the paper is overexposed: take it again with less light, or a little darker";
  case Say::untold_too_dark: return "it is too dark: take it again in more light";
  case Say::untold_clipped: return "the swatch is overexposed: take it again with less light";
  case Say::untold_gloss:
    return "the swatch shines, or bare paper shows through: turn it away from the light, or choose "
           "an even part";
  case Say::untold_like_paper: return "the paint looks like the paper it is on";
  case Say::untold_no_colours: return "the photo is black and white";
  case Say::graded:
    return "from its darkest to its lightest part {0} in L*: this is the middle of all of it";
  case Say::glints: return "{0} % of it shines, and was left out";
  case Say::beyond: return "it may be livelier than the photo can hold";
  case Say::seen_not: return "no eye sees it";
  case Say::seen_practised: return "a practised eye sees it";
  case Say::seen_any: return "any eye sees it";
  case Say::seen_clearly: return "clearly different";
  case Say::seen_another: return "another colour";
  case Say::apart: return "difference {0} (CIEDE2000), nine in ten {1} to {2}";
  case Say::apart_seen: return "{0}";
  case Say::apart_between: return "from “{0}” to “{1}”";
  case Say::second_is: return "{0} is {1}";
  case Say::second_as: return "which way cannot be told";
  case Say::of_two_photos: return "two photos: one photo of both tells more";
  case Say::way_lighter: return "lighter";
  case Say::way_darker: return "darker";
  case Say::way_stronger: return "stronger";
  case Say::way_greyer: return "greyer";
  case Say::way_redder: return "redder";
  case Say::way_yellower: return "yellower";
  case Say::way_greener: return "greener";
  case Say::way_bluer: return "bluer";
  case Say::way_warmer: return "warmer";
  case Say::way_cooler: return "cooler";
  }
  return "";
}

}
