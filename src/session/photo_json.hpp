// The fields of a photo in a line. Used by event_json.cpp alone.
#pragma once

#include "session/fields.hpp"

namespace session {

void write_photo(const Photo& photo, Json& object);
Photo read_photo(Fields& fields);

}
