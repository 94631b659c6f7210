// Copies of a studio: mended, packed, unpacked. What is there already is never written over.
#pragma once

#include "words/error.hpp"

#include <filesystem>
#include <iosfwd>

namespace commands {

using Path = std::filesystem::path;

// One line for each file, for each thing that could not be had back, and for each that is wrong in
// the copy too. The exit status: 0 if the copy says all that the studio did, however much of it was
// written anew; 1 if something is lost or still wrong. Errors: those of studio::mend.
words::Result<int> mend(const Path& studio, const Path& fallback, const Path& folder,
                        std::ostream& out);

// One line for each file that was left out, and how much was packed. `in the fallback`: where lines
// may lie that were saved while the studio failed; that they are not in the pack is said. Errors:
// those of studio::pack and studio::unpack.
words::Result<int> pack(const Path& studio, const Path& fallback, const Path& file,
                        std::ostream& out);
words::Result<int> unpack(const Path& file, const Path& folder, std::ostream& out);

}
