// What was found about a colour, as sentences.
#pragma once

#include "colour/match.hpp"
#include "colour/reading.hpp"
#include "words/sentence.hpp"

namespace bench {

words::Sentence words_of(colour::Untold why);
words::Sentence words_of(colour::Seen seen);
words::Sentence words_of(colour::Turned turned);

}
