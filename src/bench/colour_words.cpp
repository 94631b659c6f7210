#include "bench/colour_words.hpp"

#include "words/colour_says.hpp"
#include "words/lists.hpp"

namespace bench {

namespace {

using words::ColourSay;

struct Worded {
  ColourSay as;
};

constexpr words::EnumTable<colour::Untold, Worded> reasons{
    {{colour::Untold::outside, {ColourSay::untold_outside}},
     {colour::Untold::overlapping, {ColourSay::untold_overlapping}},
     {colour::Untold::too_small, {ColourSay::untold_too_small}},
     {colour::Untold::no_paper, {ColourSay::untold_no_paper}},
     {colour::Untold::paper_clipped, {ColourSay::untold_paper_clipped}},
     {colour::Untold::paper_dark, {ColourSay::untold_paper_dark}},
     {colour::Untold::too_dark, {ColourSay::untold_too_dark}},
     {colour::Untold::clipped, {ColourSay::untold_clipped}},
     {colour::Untold::gloss, {ColourSay::untold_gloss}},
     {colour::Untold::several, {ColourSay::untold_several}},
     {colour::Untold::like_paper, {ColourSay::untold_like_paper}},
     {colour::Untold::no_colours, {ColourSay::untold_no_colours}}}};

constexpr words::EnumTable<colour::Seen, Worded> eyes{
    {{colour::Seen::not_seen, {ColourSay::seen_not}},
     {colour::Seen::practised_eye, {ColourSay::seen_practised}},
     {colour::Seen::any_eye, {ColourSay::seen_any}},
     {colour::Seen::clearly, {ColourSay::seen_clearly}},
     {colour::Seen::another_colour, {ColourSay::seen_another}}}};

constexpr words::EnumTable<colour::Turned, Worded> turns{
    {{colour::Turned::redder, {ColourSay::way_redder}},
     {colour::Turned::yellower, {ColourSay::way_yellower}},
     {colour::Turned::greener, {ColourSay::way_greener}},
     {colour::Turned::bluer, {ColourSay::way_bluer}},
     {colour::Turned::warmer, {ColourSay::way_warmer}},
     {colour::Turned::cooler, {ColourSay::way_cooler}}}};

}

words::Sentence words_of(colour::Untold why) { return reasons[why].as; }
words::Sentence words_of(colour::Seen seen) { return eyes[seen].as; }
words::Sentence words_of(colour::Turned turned) { return turns[turned].as; }

}
