// Kinds and numbers into what a maker would say. The sentences themselves stand in words/.
#pragma once

#include "bench/view.hpp"
#include "paint/digits.hpp"
#include "paint/in_words.hpp"
#include "session/in_words.hpp"
#include "words/moments.hpp"

#include <string>

namespace screens {

using paint::grams_number;
using paint::grams_words;
using paint::number_words;
using paint::reading_words;
using session::amount_words;
using session::became_words;
using session::days_since_pour_words;
using session::feel_words;
using session::progress_words;
using session::since_pour_words;
using session::specks_words;
using session::stage_words;
using session::tapped_words;
using session::total_words;
using session::trouble_words;
using words::date_and_time;
using words::minutes_seconds;
using words::time_of_day;
using words::time_to_second;

std::string trouble_sign(session::TroubleKind trouble); // how it is told

std::string next_words(const bench::TapAmount& amount); // "weigh" where a number is asked
std::string amount_pad_words(const std::string& arg);   // of the pad "amount 1/4 tsp"

// What a fact of a card is: "g to 1 mL".
std::string fact_words(const std::string& which);

// What one entry did: "binder 1 drop". card_name: of the material it speaks of.
std::string event_words(const session::Event& event, const std::string& card_name);

std::string mark_words(const bench::TrailMark& mark);

// What the plan still waits for: pigments, else all the rest; empty for nothing.
// A list of those.
std::string amounts_to_come(const std::vector<bench::ToComeView>& to_come,
                            bool (*is)(const bench::ToComeView&));
std::string to_come_words(const std::vector<bench::ToComeView>& to_come);
// Of one or more: the first and how many more; how many. Empty for one.
std::string short_to_come_words(const std::vector<bench::ToComeView>& to_come);
std::string shortest_to_come_words(const std::vector<bench::ToComeView>& to_come);

// That nothing soft is in it, and how much is usual.
std::string softening_words(const bench::Softening& softening);
std::string money_words(double amount, const std::string& currency); // small sums to a thousandth
std::string minutes_words(double minutes); // as round as a guess may be, at least 1

// "2 entries are not in the sums"; empty: all are.
std::string left_out_words(const std::vector<session::Warning>& warnings);

std::string remedy_words(const bench::Remedy& remedy);
// Minutes, without their unit: from which to which where nothing has been learnt.
std::string mulling_words(const bench::MullingNeeded& needed);
std::string advice_words(const bench::Advice& advice);
std::string short_give_back_words(const bench::Advice& advice); // where that has no room
// The same where it is right, with what honey and glycerin say of it, in one sentence.
std::string right_words(const bench::Advice& advice,
                        const std::optional<bench::Softening>& softening,
                        bool room_guessed = false);
// That sentence says all of honey and glycerin; no other line has to.
bool is_right_in_all(const bench::Advice& advice);
std::string binder_range_words(const bench::BinderRange& range);
std::string from_to_words(double low_g, double high_g); // "5.2 to 7.2", without the unit
std::string
binder_words(const bench::Planned& planned); // how it goes in: spoons, the last by the drop
std::string sticky_words(paint::Tack tack);
std::string gum_words(const bench::Advice& advice);  // why it is that liquid; empty: nothing to say
std::string span_words(double low_h, double high_h); // until pans may take a layer: "in 9 to 62 h"
std::string not_counted_words(bench::NotCounted why);
std::string notice_words(const bench::Notice& notice); // empty where there is none

}
