// What a JPEG says beside its pixels: which way is up, what its colours mean, how coarse they are.
#pragma once

#include <string>
#include <string_view>

namespace studio {

struct JpgTags {
  int orientation = 1;                    // EXIF's tag 0x0112, 1 to 8
  std::string profile;                    // ICC, put together; empty: none, or not all of it
  int components = 0;                     // 1 grey, 3 colour, 4 for printing; 0: no frame was found
  double light_step = 0, colour_step = 0; // the middle of a block, in levels of 255
};

// Of any bytes: what cannot be made out is as if it were not there. ITU-T T.81 (segments, B.2.4.1
// for the steps), Exif 2.3 (4.5.2, 4.6.2), ICC.1 annex B.4.
JpgTags jpg_tags(std::string_view bytes);

// Of EXIF from its byte order on; 1 where it says nothing of use.
int orientation_of(std::string_view exif);

}
