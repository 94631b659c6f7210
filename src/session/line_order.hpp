// What no writer does, and a reader says. Used by reader.cpp alone.
#pragma once

#include "session/event.hpp"
#include "words/error.hpp"

#include <optional>
#include <string_view>

namespace session {

bool is_blank(std::string_view text);

// Of two lines of one session that follow each other by their numbers: why the second cannot.
std::optional<words::Error> odd_after(const Line& before, const Line& line);

}
