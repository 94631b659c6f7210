// One batch as numbers: the fold printed, for people or as JSON.
#pragma once

#include "session/batch.hpp"
#include "session/reader.hpp"
#include "words/error.hpp"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace commands {

// By id, by a name that only one batch bears, or "last": the one opened last.
// Errors: show_no_batch, show_name_discarded, show_name_twice, show_no_batches, show_all_discarded.
words::Result<session::Batch> find_batch(const std::vector<session::Log>& logs,
                                         const std::string& wanted);

// An open batch stands as it was at its last line. Amounts are a value and its standard
// uncertainty `u`; absent numbers are null.
std::string shown_as_json(const session::Batch& batch);
// With a line for each of its photos, in the studio at that path: of what, what the hand said of a
// dot, and where the file is gone.
std::string shown_for_people(const session::Batch& batch, const std::vector<session::Log>& logs,
                             const std::filesystem::path& studio);

// One line a batch, oldest first.
std::string list_for_people(const std::vector<session::Log>& logs);

// Text from a file, harmless on a terminal: no control characters.
std::string printable(std::string_view text);

}
