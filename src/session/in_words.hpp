// What happened, as a maker would say it. The sentences themselves stand in words/.
#pragma once

#include "paint/range/range.hpp"
#include "session/batch.hpp"
#include "session/tapped.hpp"

namespace session {

std::string feel_words(Feel feel);
std::string specks_words(Specks specks);
std::string trouble_words(TroubleKind trouble);
std::string became_words(Became became);
std::string pour_words(const Poured& poured); // "pans 1 to 4 poured"
// The one age of poured paint: "3 days after the last pour". Hours within the first day where the
// moment is now, else the day alone.
std::string since_pour_words(std::int64_t ms);
std::string days_since_pour_words(std::int64_t days);
std::string place_words(Place place);
std::string progress_words(Progress progress);

std::string amount_words(Unit unit, double amount); // "1 drop", "¼ tsp", "4.5 g"
std::string tapped_words(const Tapped& tapped);     // "½ + ¼ tsp and 5 drops"
// "1 tsp + 52 drops (about 1 + ½ tsp)", "weighed"
std::string total_words(const Total& total, const Measures& of);
std::string stage_words(const Pass& pass);        // "knife", "pass 2"
std::string known_words(const paint::Band& band); // "a guess", "4 batches"
std::string right_words(const paint::Band& band); // "right, 4 batches"

std::string detail_words(const Warning& warning);  // what it is about, or why
std::string warning_words(const Warning& warning); // a sentence

}
