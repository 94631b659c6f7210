// Pictures of what the tests do, for eyes: SLABSIDE_PICTURES names a folder, else there are none.
#pragma once

#include "touch/glass.hpp"

namespace touch {

bool pictures_wanted();

// As FOLDER/test case/NUMBER what.png
void keep_picture(const Pixels& pixels, int number, const std::string& what);

}
