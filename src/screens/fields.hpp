// Text fields: which are on a screen, what stands in them, and their frames. The field itself,
// where letters are typed, is laid over its frame by paint.cpp.
#pragma once

#include "screens/widgets.hpp"
#include "words/say.hpp"

#include <string>

namespace screens {

struct Field {
  bench::PadId pad;
  std::string text;
  words::Sentence meaning; // stands in it while it is empty
};

std::vector<Field> fields_of(const bench::View& view);

// What it is, beside what was entered: of the fields of a card, which are several; else nothing.
double caption_mm(const Field& field, const Rect& box);
double caption_above_mm(const Field& field, const Rect& box); // where there is no room beside it
std::string caption_of(const Field& field);

void draw_fields(Sheet& sheet);

}
