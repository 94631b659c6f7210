// Colours by meaning, for a light and a dark bench, and the sizes of letters. The colours were
// computed in OKLCH so that ink keeps 7:1 (WCAG 2.2, 1.4.6) on every ground here; quiet does so on
// bench and slab only. tests/screens measures both.
#pragma once

#include "screens/shapes.hpp"
#include "session/signs.hpp"

#include <array>

namespace screens {

struct Theme {
  Colour bench, slab, ink, quiet, rule; // rule: lines and ghosts, 3:1 and never text
  Colour right, right_ink, sticky, runny;
  Colour glow; // 3:1 beside bench, slab and ink alike: seen around light pads and dark ones
  Colour caution, caution_ink;
  Colour binder, water, honey, glycerin, wetting_aid;
};

const Theme& theme(bool night);

inline constexpr double outline_mm = 0.34;

// What a pad is drawn with.
struct Ground {
  Colour fill;
  Colour ink;   // words and outlines
  Colour quiet; // lesser words
  double outline = outline_mm;
};

Ground plain(const Theme& theme);
Ground dark(const Theme& theme);                   // the one main thing to do, or what runs
Ground choosable(const Theme& theme, bool chosen); // a heavy outline says which
Ground on(const Theme& theme, Colour fill);
Ground caution(const Theme& theme);

// A pressed pad turns inside out: nothing else on the screen changes as much.
Ground pressed(const Ground& ground);

Colour material_colour(const Theme& theme, session::CardKind kind);
Colour feel_colour(const Theme& theme, session::Feel feel);
session::SignColours sign_colours(const Theme& theme);

// Heights of a capital in mm. At 620 mm 2.9 mm is 16 minutes of arc, the least that is read well
// (NUREG-0700); clean-hands screens are read from nearer.
namespace cap {
inline constexpr double small = 2.3, clear = 2.6, body = 2.9, head = 3.6, timer = 6.4, ratio = 9.2,
                        large = 13;
inline constexpr std::array all{small, clear, body, head, timer, ratio, large};
}

}
