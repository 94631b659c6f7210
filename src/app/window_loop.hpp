// The program as a person meets it: the window, the bench behind it, and the studio it is kept in.
#pragma once

#include "app/options.hpp"

namespace app {

// Returns the program's exit status once the window is closed: 0 if all lies on the disk, 1 if the
// window does not open or something could not be saved, which stderr says. If the display goes
// away, what is being saved is finished and the process ends with status 3.
int run_window(const WindowOptions& options);

}
