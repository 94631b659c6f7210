// What is said of two colours, and of what differs between two batches, in words.
#pragma once

#include "bench/view_match.hpp"
#include "words/sentence.hpp"

#include <array>
#include <string>

namespace bench {

// One of the three ways in which they differ, and what is said of it.
struct Way {
  colour::Way by;
  words::Sentence less, more, same;
};

std::array<Way, 3> ways_of(const colour::Match& match);
std::string way_words(const Way& way); // "a little lighter", "as light"

// "a little lighter, greener"; empty where no way stands out.
std::string ways_words(const colour::Match& match);
// "a practised eye sees it", or between which two of these it is.
std::string seen_words(const colour::Match& match);

std::string blame_words(const MatchView::Blame& blame);   // "5 % more binder"
std::string unusual_words(const MatchView::Blame& blame); // against what is usual here

}
