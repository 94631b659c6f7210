#include "bench/match_words.hpp"

#include "bench/colour_words.hpp"
#include "words/colour_says.hpp"
#include "words/say.hpp"

#include <cmath>

namespace bench {

using words::ColourSay;
using words::say;

namespace {

words::Sentence hue_words(const colour::Match& m, bool on) {
  return words_of(on ? m.turned_on : m.turned_back);
}

}

std::array<Way, 3> ways_of(const colour::Match& m) {
  return {{{m.lightness, ColourSay::way_darker, ColourSay::way_lighter, ColourSay::as_light},
           {m.chroma, ColourSay::way_greyer, ColourSay::way_stronger, ColourSay::as_strong},
           {m.hue, hue_words(m, false), hue_words(m, true), ColourSay::as_hue}}};
}

namespace {

// As is said of whole differences: up to 2 only a practised eye, from 3.5 on clearly.
std::string sized(const Way& way) {
  const std::string word = say(way.by.by > 0 ? way.more : way.less);
  const double size = std::abs(way.by.by);
  return size < 2     ? say(ColourSay::a_little, {word})
         : size < 3.5 ? word
                      : say(ColourSay::much, {word});
}

bool may_be_seen(const colour::Way& way) {
  return std::abs(way.by) + colour::nine_in_ten * way.sd >= 1.5;
}

}

std::string way_words(const Way& way) {
  if (colour::tells(way.by)) return sized(way);
  return say(may_be_seen(way.by) ? ColourSay::way_untold : way.same);
}

std::string ways_words(const colour::Match& m) {
  std::string all;
  for (const Way& way : ways_of(m))
    if (colour::tells(way.by)) all += (all.empty() ? "" : ", ") + sized(way);
  return all;
}

std::string seen_words(const colour::Match& m) {
  const words::Sentence least = words_of(colour::seen(m.low)),
                        most = words_of(colour::seen(m.high));
  return least == most ? say(ColourSay::apart_seen, {say(least)})
                       : say(ColourSay::apart_between, {say(least), say(most)});
}

namespace {

std::string counted(const MatchView::Blame& blame, double size, ColourSay more, ColourSay less) {
  return say(blame.by > 0 ? more : less, {words::number(std::abs(size), 0)});
}

}

std::string blame_words(const MatchView::Blame& blame) {
  const double percent = 100 * blame.by;
  switch (blame.what) {
  case MatchView::Blame::binder:
    return counted(blame, percent, ColourSay::blame_binder_more, ColourSay::blame_binder_less);
  case MatchView::Blame::gum:
    return counted(blame, percent, ColourSay::blame_gum_more, ColourSay::blame_gum_less);
  case MatchView::Blame::sweet:
    return counted(blame, percent, ColourSay::blame_sweet_more, ColourSay::blame_sweet_less);
  case MatchView::Blame::minutes:
    return counted(blame, blame.by, ColourSay::blame_minutes_more, ColourSay::blame_minutes_less);
  case MatchView::Blame::passes:
    if (std::abs(blame.by) < 1.5)
      return say(blame.by > 0 ? ColourSay::blame_pass_more : ColourSay::blame_pass_less);
    return counted(blame, blame.by, ColourSay::blame_passes_more, ColourSay::blame_passes_less);
  case MatchView::Blame::lot: return say(ColourSay::blame_lot, {blame.name});
  case MatchView::Blame::age:
    return counted(blame, blame.by, ColourSay::blame_older, ColourSay::blame_younger);
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
