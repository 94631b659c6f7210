// What differs between two batches, in words.
#pragma once

#include "bench/view_match.hpp"

#include <string>

namespace screens {

std::string blame_words(const bench::MatchView::Blame& blame);   // "5 % more binder"
std::string unusual_words(const bench::MatchView::Blame& blame); // against what is usual here

}
