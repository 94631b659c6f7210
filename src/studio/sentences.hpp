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

// The same of one call under the disk: `operation` as a Failure names it, `code` an errno.
words::Error error(const std::string& operation, const std::filesystem::path& path, int code);

}
