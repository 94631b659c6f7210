// What the bench wants to know or have done about photos, done at once. Beside whoever draws:
// picture_desk.hpp.
#pragma once

#include "bench/bench.hpp"
#include "commands/picture_home.hpp"

namespace commands {

bench::Input answer(const PictureHome& home, const bench::PhotoWanted& wanted);

// The bytes of what the bench calls so, at most those that a photo may have and one more. Errors:
// those of bytes_of_file, is_folder.
words::Result<std::string> bytes_of_image(const PictureHome& home, const std::string& image);

}
