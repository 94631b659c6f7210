// A screen of a studio as a PNG, drawn without a display.
#pragma once

#include "app/options.hpp"

namespace app {

// Reads the studio and never writes in it. Errors: those of commands::fault_of_studio, read_studio,
// find_batch and write_new and of screens::load_faces, wrong_tap, picture_size, picture_not_drawn.
words::Result<void> make_picture(const PictureOptions& options);

}
