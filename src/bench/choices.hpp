// What Plan offers and what it still lacks.
#pragma once

#include "bench/bench.hpp"
#include "words/say.hpp"

namespace bench {

std::vector<const session::Card*> shelf_of(const Bench& bench, session::CardKind kind);
const session::Card* shelf_card(const Bench& bench, const std::string& id);
const session::Card* card_anywhere(const Bench& bench, const std::string& id); // or put away

// Binders as Plan offers them: the workshop's own jars with something left before all others, of
// both the last used or filled.
std::vector<const session::Card*> binders_offered(const Bench& bench);
// Until something is planned, the first of them is meant.
void offer_binder(Bench& bench);

// Pigments whose name or Colour Index name holds the search text, in any case. Without one the
// workshop's own, unless all are wanted or it has none. Own ones first, the last used before the
// others.
std::vector<const session::Card*> pigments_found(const Bench& bench);

// What Plan shows in place of what was chosen.
Finding finds(const Bench& bench);
// Everything but the room, the binder and the pans: the next batch is another colour.
void clear_plan(PlanState& plan);

int pages_for(std::size_t items, int a_page); // at least 1

// A room read half a day ago is a guess of what it is now.
bool room_is_guess(const PlanState& plan, const Now& now);
// The last one that anybody read, for Plan, unless one was given there.
void recall_room(Bench& bench, const Now& now);

// What stands in the way of beginning; absent when nothing does.
std::optional<words::Sentence> missing_for_begin(const Bench& bench);

// "Cobalt blue, 3" if two batches of that name were opened before.
std::string proposed_name(const Bench& bench, std::string_view of);

std::string name_of_batch(const Bench& bench, const std::string& id); // empty: not there

// Of a recipe or of a batch made again; nothing where there is no name.
void say_left_out(Bench& bench, const std::vector<std::string>& names, const Now& now);

// The batch that is made again; empty: none, or other pigments were taken since.
std::string made_again(const PlanState& plan);

// "Cobalt blue", or "Cobalt blue, yellow ochre" of a blend.
std::string name_of_blend(const Bench& bench);

}
