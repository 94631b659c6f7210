// What passes from the learning worker to the page: "+" and the result, or "-" and an error,
// by its ids and with what goes into it.
#pragma once

#include "words/error.hpp"

#include <string>
#include <string_view>

namespace studio {

std::string written_answer(const words::Result<std::string>& answer);
words::Result<std::string> read_answer(std::string_view bytes);

}
