// The root folder itself: made with the first file where it is not there yet, an empty one to
// readers until then, and its name forced in either case.
#pragma once

#include "disk/files.hpp"

namespace studio {

// `missing`: the root was not there when the program began, and may be made. One that goes away
// later was a drive pulled out, and nothing is made in its place. One that is there may have been
// made by a run that was killed before it forced the name; so with the first file all names on the
// way to it are forced once more. `root` is absolute.
std::unique_ptr<disk::Files> founding_files(std::unique_ptr<disk::Files> inner,
                                            std::filesystem::path root, bool missing);

}
