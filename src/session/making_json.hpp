// The fields of a step of making binder. Used by event_json.cpp alone.
#pragma once

#include "session/fields.hpp"

namespace session {

void write_making(const Making& making, Json& object);
Making read_making(Fields& fields);

}
