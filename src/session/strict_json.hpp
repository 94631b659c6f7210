// A line's JSON, more strictly than the library reads it: the library keeps the last of two equal
// keys and nests without bound.
#pragma once

#include "words/error.hpp"

#include <nlohmann/json.hpp>

#include <string_view>

namespace session {

using Json = nlohmann::ordered_json;

// One object. Errors: line_not_an_object, field_twice, line_too_deep (more than eight within each
// other).
words::Result<Json> read_object(std::string_view text);

}
