// Lines of the batch on the slab that can be corrected, and how.
#pragma once

#include "bench/bench.hpp"

namespace bench {

inline constexpr int lines_a_page = 4;

// The latest first: what hands did, and still stands.
std::vector<const session::Entry*> correctable(const Bench& bench);

std::string arg_of(const session::Ref& line); // "c41e08d5 12"
std::optional<session::Ref> line_named(std::string_view arg);

const session::Entry* line_chosen(const Bench& bench);

// By how much corrections have moved it, in ms.
std::int64_t moved_by_ms(const Bench& bench, const session::Entry& line);

// The number that a line tells, and the line with another; absent where it tells none.
std::optional<double> amount_in(const session::Event& event);
std::optional<session::Corrected::Says> with_amount(const session::Event& event, double amount);

}
