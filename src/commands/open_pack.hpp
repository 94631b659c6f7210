// A packed studio opened by hand, as a file manager does.
#pragma once

#include "words/error.hpp"

#include <filesystem>
#include <iosfwd>

namespace commands {

using Path = std::filesystem::path;

// The studio's folder in `home`, unpacked there if it is not there yet, which is said on `out`. It
// is named after the file and after what is in it: the same pack finds it again, with all that was
// done there since, and another one of the same name does not. Errors: those of studio::unpack.
words::Result<Path> open_pack(const Path& file, const Path& home, std::ostream& out);

}
