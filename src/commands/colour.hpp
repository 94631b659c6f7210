// What the numbers of a swatch's photo say, in plain words; of two, whether they match.
#pragma once

#include "colour/kept.hpp"
#include "session/event.hpp"
#include "words/error.hpp"

#include <optional>
#include <string>
#include <vector>

namespace commands {

// "x,y,width,height" in pixels of the upright photo, whole numbers. Errors: colour_bad_box.
words::Result<colour::Box> box_of(const std::string& text);

struct ColourWanted {
  std::string bytes;                  // the photo's
  std::string name;                   // as it is called in what is said
  std::optional<colour::Box> swatch;  // without it the largest that is found
  std::vector<colour::Box> paper;     // without any what is found beside the swatch
  std::optional<colour::Box> beside;  // another swatch on the same photo
  std::optional<std::string> against; // another photo's bytes
  std::string against_name;
  std::optional<session::Photo> against_read; // one whose swatch was read and kept, in its place
  colour::Repeats repeats;                    // of this workshop: how far two photos are trusted
};

struct ColourSaid {
  std::string text;        // lines for people
  session::Measured first; // the swatch named, else the largest that is found
  bool chosen = false;     // there is no other on the photo that might be meant
};

// With `against`, or with a second swatch on the photo (named or found), the
// difference of the two as well, as the Book would say it of the same readings: how the second is
// beside the first, and how this photo's is beside that of `against`. Errors: those of
// studio::read_photo; colour_no_swatch; colour_untold with the reason why.
words::Result<ColourSaid> colour_shown(const ColourWanted& wanted);

}
