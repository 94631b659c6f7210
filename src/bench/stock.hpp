// What there is of a card, what it costs, and whose it is.
#pragma once

#include "bench/planning.hpp"
#include "session/cost.hpp"

namespace bench {

// Used, bought or weighed here, or the pigment of a recipe.
bool is_in_use(const Bench& bench, const std::string& card);
// That, or the maker's own; the others are only of the catalogue.
bool is_mine(const Bench& bench, const session::Card& card);

// When a batch last took of it, in ms since 1970; 0: none did.
std::int64_t last_used(const Bench& bench, const std::string& card);

// Batches that it went into and that are listed, newest first.
std::vector<std::string> batches_with(const Bench& bench, const std::string& card,
                                      std::size_t most);

// Likewise, that were planned by it.
std::vector<std::string> batches_by(const Bench& bench, const std::string& recipe,
                                    std::size_t most);

// See session::left_of: an addition by spoon or drop counts as its tools say.
std::optional<session::Remaining> stock_of(const BookIndex& index, const session::Stocks& stock,
                                           const session::Card& card);
std::optional<session::Remaining> stock_of(const Bench& bench, const session::Card& card);
// Where less is left than a batch takes, it is low.
std::optional<double> low_mark(const BookIndex& index, const std::string& card);
std::optional<double> low_mark(const Bench& bench, const std::string& card);
std::optional<double> days_left(const Bench& bench, const session::Card& card, std::int64_t now_ms);

session::Prices prices(const Bench& bench);
// All that went into a batch, by what jars cost. Absent where no price was ever said.
std::optional<session::Cost> cost_of(const Bench& bench, const session::Batch& batch);
// Likewise of all that is to go into what is planned.
std::optional<session::Cost> cost_of(const Bench& bench, const Planned& plan);

// What it wants that there is not enough of.
std::vector<session::ToBuy> to_buy(const Bench& bench, const Planned& plan);

// What was bought or weighed of it last, and can be taken back.
std::optional<session::Ref> last_entry(const Bench& bench, const std::string& card);

}
