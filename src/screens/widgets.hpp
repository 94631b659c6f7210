// The pieces that every screen is put together from.
#pragma once

#include "bench/view.hpp"
#include "screens/lettering.hpp"
#include "screens/shapes.hpp"
#include "screens/theme.hpp"

#include <string>
#include <vector>

namespace screens {

// A screen while it is being drawn.
struct Sheet {
  const bench::View& view;
  const Theme& theme;
  std::vector<Shape> shapes = {};
};

inline constexpr double radius_mm = 2.2;
inline constexpr double padding_mm = 2.2; // from the edge of a pad to its words
inline constexpr double line_step = 1.72; // from baseline to baseline, in heights of a capital

// Made to fit its max_mm: smaller, down to least_mm, and cut if it must.
Text one_line(Text text, double least_mm);

void write(Sheet& sheet, Point at, Anchor anchor, const Lettering& lettering, Colour colour,
           const std::string& words, double max_mm);

// Who hears the text written last hears it as words of their own, though it may look like the line
// above, and `instead` in its place where it is said otherwise.
void heard_apart(Sheet& sheet, const std::string& instead = "");

// An area that is looked at.
void panel(Sheet& sheet, const Rect& rect);

// A pad's box, turned inside out while it is pressed; returns what to write on it with.
Ground pad_box(Sheet& sheet, const bench::Pad& pad, const Ground& ground);

struct Label {
  std::string words;
  Lettering lettering = {};
  bool quiet = false;
  int max_lines = 2;
};

// One label under the other, centred in a rect or set left in it.
void labels(Sheet& sheet, const Rect& rect, const Ground& ground, const std::vector<Label>& labels,
            Anchor anchor = Anchor::centre);

// The whole of a simple pad.
void pad(Sheet& sheet, const bench::Pad& pad, const Ground& ground,
         const std::vector<Label>& labels);

// What is on or off: the words say it, and a knob at the right of its groove, dark, or at the left.
void toggle_pad(Sheet& sheet, const bench::Pad& pad, const std::string& words, bool on,
                const std::string& below = "");

// A share of 0 to 1 as a bar.
void progress_bar(Sheet& sheet, const Rect& rect, Colour track, Colour done, double share);

// ---- symbols, centred, in a square of `size` mm

void material_symbol(Sheet& sheet, Point centre, double size, session::CardKind kind, Colour fill,
                     Colour outline);
// Of paint: a stroke of it on paper where its swatch was read; else the heap of a pigment, a guess.
void paint_symbol(Sheet& sheet, Point centre, double size, Colour fill, bool swatch,
                  Colour outline);
// A photo, as much of its middle as has room; until its pixels are there the frame alone.
void framed(Sheet& sheet, const Rect& rect, const std::string& image, Colour ink);
void undo_arrow(Sheet& sheet, Point centre, double size, Colour colour);
void tick(Sheet& sheet, Point centre, double size, Colour colour);
void sun(Sheet& sheet, Point centre, double size, Colour colour);
void moon(Sheet& sheet, Point centre, double size, Colour colour, Colour ground);
void bell(Sheet& sheet, Point centre, double size, Colour colour, Colour ground, bool rings);
void chevron(Sheet& sheet, Point centre, double size, Colour colour, bool to_the_right);
void caution_sign(Sheet& sheet, Point centre, double size);
// A feel note: which way from right it was felt, and how far. Read without its colour too.
void feel_sign(Sheet& sheet, Point centre, double size, session::Feel feel);

}
