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
    return "the paper, or a part of it, is overexposed: take it again with less light, or choose "
           "paper "
           "that is not";
  case Say::untold_paper_dark:
    return "the paper is too dark, or there is paint on it: take it again in more light, or choose "
           "bare paper";
  case Say::untold_too_dark: return "it is too dark: take it again in more light";
  case Say::untold_clipped: return "the swatch is overexposed: take it again with less light";
  case Say::untold_gloss:
    return "the swatch shines, or bare paper shows through: turn it away from the light, or choose "
           "an even part";
  case Say::untold_several: return "there is more than one colour in it: choose an even part";
  case Say::untold_like_paper:
    return "no paint is seen there, it looks like the paper beside it: choose the place where the "
           "paint is";
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
  case Say::apart_seen: return "{0}";
  case Say::apart_between: return "from “{0}” to “{1}”";
  case Say::second_as: return "which way cannot be told";
  case Say::way_lighter: return "lighter";
  case Say::way_darker: return "darker";
  case Say::way_stronger: return "brighter";
  case Say::way_greyer: return "duller";
  case Say::way_redder: return "redder";
  case Say::way_yellower: return "yellower";
  case Say::way_greener: return "greener";
  case Say::way_bluer: return "bluer";
  case Say::way_warmer: return "warmer";
  case Say::way_cooler: return "cooler";
  case Say::a_little: return "a little {0}";
  case Say::much: return "much {0}";
  case Say::as_light: return "as light";
  case Say::as_strong: return "as bright";
  case Say::as_hue: return "the same hue";
  case Say::way_untold: return "the photos cannot tell";
  case Say::how_far: return "how far apart";
  case Say::later_is: return "{0} is";
  case Say::match_against: return "beside {0}";
  case Say::match_limits: return "{0} to {1}";
  case Say::one_photo: return "both on one photo";
  case Say::two_photos: return "two photos: one of both would tell more";
  case Say::repeat_photo: return "a paint photographed twice bears on this";
  case Say::repeat_photos: return "paints photographed again, {0} times, bear on this";
  case Say::blame_head: return "what else differs";
  case Say::blame_guess: return "our own guess";
  case Say::blame_none: return "Nothing else that was written down.";
  case Say::blame_binder_more: return "{0} % more binder";
  case Say::blame_binder_less: return "{0} % less binder";
  case Say::blame_gum_more: return "{0} % more gum";
  case Say::blame_gum_less: return "{0} % less gum";
  case Say::blame_sweet_more: return "{0} % more honey or glycerin";
  case Say::blame_sweet_less: return "{0} % less honey or glycerin";
  case Say::blame_minutes_more: return "mulled {0} min longer";
  case Say::blame_minutes_less: return "mulled {0} min less";
  case Say::blame_pass_more: return "a pass more";
  case Say::blame_passes_more: return "{0} passes more";
  case Say::blame_pass_less: return "a pass less";
  case Say::blame_passes_less: return "{0} passes less";
  case Say::blame_lot: return "another jar: {0}";
  case Say::blame_older: return "binder {0} days older";
  case Say::blame_younger: return "binder {0} days younger";
  case Say::unusual_very: return "very unusual here";
  case Say::unusual: return "unusual here";
  case Say::usual: return "as often here";
  case Say::match_trails: return "trails";
  case Say::match_colours: return "colours";
  case Say::match_new_photo: return "photos";
  case Say::match_again: return "make {0} again";
  }
  return "";
}

}
