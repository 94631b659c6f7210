#include "words/commands_says.hpp"

namespace words {

// A page has no command line, and what is said there is a sixth of all that is said.
std::string_view english(CommandsSay) { return ""; }

}
