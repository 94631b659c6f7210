// Lines of the batch on the slab that can be corrected, and how.
#pragma once

#include "bench/bench.hpp"

namespace bench {

inline constexpr int lines_a_page = 4;

// The latest first: what hands did, and still stands.
std::vector<const session::Entry*> correctable(const Bench& bench);

// What the list shows: a line, or a run of drops of one material that followed each other closely.
struct ListedLine {
  PadId pad;                              // line ..., or run ...
  std::vector<const session::Entry*> all; // the latest first
};
std::vector<ListedLine> lines_listed(const Bench& bench, const LinesPanel& panel);

std::string arg_of(const session::Ref& line); // "c41e08d5 12"
std::optional<session::Ref> line_named(std::string_view arg);

const session::Entry* line_chosen(const Bench& bench);

// A tap on a material then says what that line's was.
bool corrects_material(const Bench& bench);

// By how much corrections have moved it, in ms.
std::int64_t moved_by_ms(const Bench& bench, const session::Entry& line);

// The number that a line tells, and the line with another; absent where it tells none.
std::optional<double> amount_in(const session::Event& event);
// The line with another material, measured by `tool`. Errors: powder_is_weighed, bottle_of_liquid.
bool has_material(const session::Event& event);
words::Result<session::Corrected::Says>
with_material(const session::Event& event, const session::Card& card, const std::string& tool);

std::optional<session::Corrected::Says> with_amount(const session::Event& event, double amount);

}
