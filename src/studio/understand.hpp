// The bytes of many session files to what they say.
#pragma once

#include "disk/disk.hpp"
#include "session/reader.hpp"

#include <string>
#include <vector>

namespace studio {

// In the order of `files`; `prefix` goes before their names. On two processors where there are two.
std::vector<session::File> understand(const std::vector<disk::FileBytes>& files,
                                      const std::string& prefix);

}
