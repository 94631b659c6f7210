// For a root folder that is not there yet: an empty one to readers, made with the first file.
#pragma once

#include "disk/files.hpp"

namespace studio {

// Only for a root that was missing when the program began: one that goes away later was a drive
// pulled out, and nothing is made in its place. `root` is absolute.
std::unique_ptr<disk::Files> founding_files(std::unique_ptr<disk::Files> inner,
                                            std::filesystem::path root);

}
