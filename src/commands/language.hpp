// Which language is spoken: what the command line asks for, else what the system is set to.
#pragma once

#include "words/error.hpp"

#include <optional>
#include <string>
#include <vector>

namespace commands {

// Takes "--language de" out of what stands behind the program's name, wherever it stands before a
// "--". Errors: no_such_language, option_twice, option_without_value.
words::Result<std::optional<words::Language>> take_language(std::vector<std::string>& given);

// LC_ALL, LC_MESSAGES or LANG, the first that says anything; English where that is no language that
// is offered.
words::Language language_of_system();

}
