// What a disk says, and what a session lacks, as errors.
#pragma once

#include "disk/disk.hpp"
#include "session/reader.hpp"
#include "words/error.hpp"

#include <filesystem>
#include <string>

namespace studio {

words::Error error(const disk::Failure& failure);

words::Error missing(const std::string& session, const session::Span& span);

// What an errno says, in words.
words::Error error_of_system(int code);

// The same of one call under the disk: `code` an errno.
words::Error error(disk::Operation operation, const std::filesystem::path& path, int code);

}
