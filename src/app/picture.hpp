// A screen of a studio as a PNG, drawn without a display.
#pragma once

#include "app/options.hpp"

namespace app {

// Reads the studio and never writes in it. Errors: those of commands::find_batch and
// screens::load_faces, picture_no_pad, picture_not_drawn, picture_not_written.
words::Result<void> make_picture(const PictureOptions& options);

}
