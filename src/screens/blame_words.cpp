#include "screens/blame_words.hpp"

#include "words/colour_says.hpp"
#include "words/say.hpp"

#include <cmath>

namespace screens {

using bench::MatchView;
using words::ColourSay;
using words::say;

namespace {

std::string sized(const MatchView::Blame& blame, double size, ColourSay more, ColourSay less) {
  return say(blame.by > 0 ? more : less, {words::number(std::abs(size), 0)});
}

}

std::string blame_words(const MatchView::Blame& blame) {
  const double percent = 100 * blame.by;
  switch (blame.what) {
  case MatchView::Blame::binder:
    return sized(blame, percent, ColourSay::blame_binder_more, ColourSay::blame_binder_less);
  case MatchView::Blame::gum:
    return sized(blame, percent, ColourSay::blame_gum_more, ColourSay::blame_gum_less);
  case MatchView::Blame::sweet:
    return sized(blame, percent, ColourSay::blame_sweet_more, ColourSay::blame_sweet_less);
  case MatchView::Blame::minutes:
    return sized(blame, blame.by, ColourSay::blame_minutes_more, ColourSay::blame_minutes_less);
  case MatchView::Blame::passes:
    if (std::abs(blame.by) < 1.5)
      return say(blame.by > 0 ? ColourSay::blame_pass_more : ColourSay::blame_pass_less);
    return sized(blame, blame.by, ColourSay::blame_passes_more, ColourSay::blame_passes_less);
  case MatchView::Blame::lot: return say(ColourSay::blame_lot, {blame.name});
  case MatchView::Blame::age:
    return sized(blame, blame.by, ColourSay::blame_older, ColourSay::blame_younger);
  }
  return "";
}

// In sds of how much batches differ here: one pair in three lies beyond 1, one in 20 beyond 2.
std::string unusual_words(const MatchView::Blame& blame) {
  return say(blame.unusual >= 2   ? ColourSay::unusual_very
             : blame.unusual >= 1 ? ColourSay::unusual
                                  : ColourSay::usual);
}

}
