// Kinds and numbers into what a maker would say. The sentences themselves stand in words/.
#pragma once

#include "bench/view.hpp"
#include "paint/digits.hpp"

#include <string>

namespace screens {

std::string feel_words(session::Feel feel);
std::string specks_words(session::Specks specks);
std::string became_words(session::Became);
std::string trouble_words(session::TroubleKind trouble);
std::string trouble_sign(session::TroubleKind trouble); // how it is told

std::string amount_words(session::Unit unit, double amount); // "1 drop", "¼ tsp", "4.5 g"
std::string next_words(const bench::Amount& amount);         // "weigh" where a number is asked
std::string amount_pad_words(const std::string& arg);        // of the pad "amount 1/4 tsp"

// What a fact of a card is: "g to 1 mL".
std::string fact_words(const std::string& which);

// What one entry did: "binder 1 drop". card_name: of the material it speaks of.
std::string event_words(const session::Event& event, const std::string& card_name);

std::string mark_words(const bench::TrailMark& mark);
std::string stage_words(const session::Pass& pass); // "knife", "pass 2"

std::string remedy_words(const bench::Remedy& remedy);
std::string advice_words(const bench::Advice& advice);
std::string sticky_words(paint::Tack tack);
std::string gum_words(const bench::Advice& advice); // of its gum, which is there
std::string not_counted_words(bench::NotCounted why);
std::string notice_words(const bench::Notice& notice); // empty where there is none

// 12:34; minutes go on past 59.
std::string minutes_seconds(double seconds);
// 14:32 and 9 March, 14:32 of a moment in ms since 1970.
std::string time_of_day(std::int64_t ms, int utc_offset_min);
std::string date_and_time(std::int64_t ms, int utc_offset_min);

// 0.04 g, 12.0 g, 250 g; with an uncertainty, by that
std::string grams_number(double grams); // without the unit
std::string grams_words(double grams);
std::string grams_words(const paint::Amount& grams);

// A number by one digit of its uncertainty, and with no more decimals than so many.
std::string number_words(const paint::Amount& amount, int most);

// As an instrument was read, to a tenth: 19.5, 45.
std::string reading_words(double value);

std::string total_words(const session::Total& total); // "1 tsp + 52 drops", "weighed"

}
