// What a disk says, in words.
#pragma once

#include "disk/disk.hpp"
#include "words/error.hpp"

#include <filesystem>
#include <string>

namespace studio {

std::string sentence(const disk::Failure& failure);
words::Error error(const disk::Failure& failure);

// The same of one call under the disk: `operation` as a Failure names it, `code` an errno.
words::Error error(const std::string& operation, const std::filesystem::path& path, int code);

}
