// What the studio's batches have taught of the range, printed.
#pragma once

#include "session/reader.hpp"
#include "words/error.hpp"

#include <optional>
#include <string>
#include <vector>

namespace commands {

// All pigments that were felt, or the one of that name, card or Colour Index name, felt or not; as
// lines for people or as JSON. Errors: range_no_pigment, and those of session::learn_ranges.
words::Result<std::string> ranges_shown(const std::vector<session::Log>& logs,
                                        const std::optional<std::string>& pigment, bool as_json);

}
