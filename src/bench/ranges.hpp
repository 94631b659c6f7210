// What each pigment of the shelf wants, as far as this studio knows it.
#pragma once

#include "bench/bench.hpp"

#include <vector>

namespace bench {

// Looked up anew while the page is open: those that were felt here before the guesses, the
// thirstiest first; pigments of which nothing can be said are not there.
void refresh_ranges(Bench& bench);

std::size_t steps_of_story(const Display& display); // batches that there is room for

void open_story(Bench& bench, const std::string& card);
void choose_note(PigmentStory& story, int by); // the one before (-1) or after (1) the chosen one
const PigmentStory::Step* step_of_note(const PigmentStory& story);
const PigmentStory::Note* note_chosen(const PigmentStory& story);

// Takes the chosen note out of what is learnt from, or back into it.
void set_aside(Bench& bench, PigmentStory& story, const Now& now, Effects& effects);

}
