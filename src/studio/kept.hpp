// Small files of this device's own that are written anew as a whole: what it remembers of itself.
#pragma once

#include "disk/files.hpp"
#include "words/error.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace studio {

// The bytes under a name beside it, forced, then in its place, so that there is always a whole one.
// Error: file_not_kept with the system's reason; what was there before is as it was.
words::Result<void> keep(disk::Files& files, const disk::Files::Path& file, std::string_view bytes);

// Absent where there is no such file, or it cannot be read.
std::optional<std::string> kept(disk::Files& files, const disk::Files::Path& file);

}
