// What an ICC profile says that a photo's pixels mean. In a browser the engine does this.
#pragma once

#include "colour/photo.hpp"

#include <string_view>

namespace studio {

// Of curves and a matrix, as cameras and screens have, the photo's encoding is made, and its
// colours stay as they are, sRGB or wider. Of tables its pixels are turned into sRGB. False where
// the profile cannot be read or is none of RGB; then the photo is as it was.
bool take_profile(std::string_view profile, colour::Photo& photo);

}
