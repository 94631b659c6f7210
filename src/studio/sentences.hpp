// What a disk says, in words.
#pragma once

#include "disk/disk.hpp"

#include <string>

namespace studio {

std::string sentence(const disk::Failure& failure);

}
