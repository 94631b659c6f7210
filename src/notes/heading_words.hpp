// Words that stand over columns, in English and German.
#pragma once

#include "notes/columns.hpp"

namespace notes {

// What a heading says its column holds; absent where it says nothing that is known.
std::optional<Role> role_in(std::string_view heading);

}
