// The signs of what was told, as shapes: read by their form too, since they may be printed grey.
#pragma once

#include "session/event.hpp"
#include "session/shapes.hpp"

#include <variant>
#include <vector>

namespace session {

struct SignColours {
  shapes::Colour ground, ink;
  shapes::Colour right, sticky, runny;
  shapes::Colour caution, caution_ink;
};

// What has a sign.
using NoteSign = std::variant<Feel, Specks, TroubleKind>;

// Centred, in a square of `size` mm, drawn upon what is in `out` already.
void add_sign(std::vector<shapes::Shape>& out, const NoteSign& sign, Point centre, double size,
              const SignColours& colours);

void add_caution(std::vector<shapes::Shape>& out, Point centre, double size,
                 const SignColours& colours);
void add_tick(std::vector<shapes::Shape>& out, Point centre, double size, shapes::Colour colour);
void add_chevron(std::vector<shapes::Shape>& out, Point centre, double size, shapes::Colour colour,
                 bool to_the_right);

}
