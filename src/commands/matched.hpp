// Whether a batch is of the colour of the last good one of its paint.
#pragma once

#include "bench/bench.hpp"
#include "session/reader.hpp"

#include <string>
#include <vector>

namespace commands {

// What a window would have of them; nothing of it is kept.
bench::Bench bench_of(const std::vector<session::Log>& logs, const bench::Now& now);
// By no clock.
bench::Bench bench_of(const std::vector<session::Log>& logs);

// As the Book says it; empty where neither was read.
std::string matched_for_people(const std::vector<session::Log>& logs, const std::string& batch);

}
