// The fields of a card in a line. Used by event_json.cpp alone.
#pragma once

#include "session/fields.hpp"

namespace session {

Json number(double value); // whole ones without ".0"

void write_card(const Card& card, Json& object);
Card read_card(Fields& fields);

}
