// Where photos are read, made smaller and kept, beside whoever draws.
#pragma once

#include "commands/picture_home.hpp"
#include "commands/storage.hpp"

namespace commands {

// What is asked comes first, then what is to be drawn, the large before the small; of that only
// what was wanted last. Throws std::system_error where the system gives no thread.
Pictures picture_desk(PictureHome home, std::function<void()> wake);

}
