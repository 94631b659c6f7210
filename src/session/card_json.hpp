// The fields of a card in a line. Used by event_json.cpp alone.
#pragma once

#include "session/fields.hpp"

namespace session {

Json number(double value); // whole ones without ".0"

// What a liquid is made of, as its field "parts".
void write_parts(const paint::Recipe& recipe, Json& object);
paint::Recipe read_parts(Fields& fields);

std::string colour_text(std::uint32_t rgb); // "#rrggbb"
std::uint32_t read_colour(Fields& fields);  // "colour"

void write_card(const Card& card, Json& object);
Card read_card(Fields& fields);

}
