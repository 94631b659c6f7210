// A script played in a window, for eyes.
#pragma once

#include <string>
#include <vector>

namespace app {

// `given`: as for commands::run, its first word "play". Closing the window ends the playing with a
// goodbye. Returns the exit status.
int watch(const std::vector<std::string>& given);

}
