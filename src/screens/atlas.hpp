// Letters as ImGui draws them: the faces of measure.hpp in every height used, merged into one
// texture.
#pragma once

#include "screens/measure.hpp"

struct ImFont;

namespace screens {

// Puts the faces into ImGui's font atlas in every height used, in place of what is there. To be
// called before the first frame and whenever px_per_mm changes; the back end's texture
// has to be made anew after it. Errors: font_missing, letters_size.
inline constexpr double least_px_per_mm = 1, most_px_per_mm = 40;
words::Result<void> load_faces(double px_per_mm);

// Which letters are wanted is not known before they come. True where a frame has wanted some that a
// face has and the atlas has not.
bool wants_letters();

// True from when a frame has met a letter that no face has.
bool met_unknown_letter();

// Then they are in it, its texture has to be made anew, and the frame drawn again. To be called
// between frames.
bool load_more_letters();

// The font for capitals of a height, which is one of cap::all. For ImGui's own fields: it draws it
// smaller by up to a pixel, since it takes whole pixels for a font's size.
ImFont* font_for(double cap_mm, bool bold);

// A letter as a rectangle of the texture, exactly as high as asked.
struct Letter {
  struct Corner {
    double x = 0, y = 0; // px, from the pen on the baseline
    float u = 0, v = 0;  // in the texture
  };
  Corner from, to;
  double advance = 0; // px
  bool blank = false;
};

// Of a letter that no face has: the sign for what is missing. Blank where the atlas has not got it
// yet, which is noted (wants_letters).
Letter letter_of(char32_t code, double cap_mm, bool bold, double px_per_mm);

}
