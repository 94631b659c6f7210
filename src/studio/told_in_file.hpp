// The bytes of a file by which studios tell each other what they have learnt (paint/range/TOLD.md).
#pragma once

#include "paint/range/told.hpp"
#include "words/error.hpp"

#include <string>
#include <string_view>

namespace studio {

// What a file says that another studio wrote. Errors: told_file_refused, with those of
// paint::told_from and paint::implausible.
words::Result<paint::ToldRange> told_in_file(const std::string& name, std::string_view bytes);

}
