// Files that are there whole or not at all. Nothing that was there is written into, and what was
// begun is removed again where something fails.
#pragma once

#include "disk/disk.hpp"
#include "disk/files.hpp"

namespace disk {

Failure failure(Operation operation, const Files::Path& path, int code);

// A new file with these bytes, forced; its name is still to be. "open" with EEXIST where anything
// has that name.
std::optional<Failure> write_new(Files& files, const Files::Path& file, std::string_view bytes);

// Written as `beside`, in the same folder, forced, and only then given its right name, which is
// forced too. A file of that name is no more from then on, and is as it was where that fails.
std::optional<Failure> put_in_place(Files& files, const Files::Path& file,
                                    const Files::Path& beside, std::string_view bytes);

}
