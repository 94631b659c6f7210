// Photos in a page: picked by the browser's own way to camera and files, kept in its store, decoded
// by its engine.
#pragma once

#include "commands/storage.hpp"

namespace commands {

// There is one. What is asked is answered one after the other; what is to be drawn comes behind it,
// of that only what was wanted last. `wake` is called whenever there is an answer.
Pictures browser_picture_desk(std::function<void()> wake);

}
