// The fields of each kind of event, written and read. Used by bytes.cpp alone.
#pragma once

#include "session/fields.hpp"

namespace session {

std::string_view kind_of(const Event& event);

// Adds the kind's own fields behind those already there.
void write_fields(const Event& event, Json& into);

// Unknown for a kind or word this version does not know.
words::Result<Event> read_event(const std::string& kind, const Tree& line);

Unknown unknown_from(const std::string& kind, const Tree& line);

}
