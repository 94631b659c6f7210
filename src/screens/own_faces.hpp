// Where faces lie that came with the program, as they do in a folder that is carried about.
#pragma once

#include <string>

namespace screens {

// A face there comes before the system's of the same file name. To be called before any is read.
void look_for_faces_in(const std::string& folder);

}
