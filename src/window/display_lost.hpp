// Xlib ends the program by itself when its connection breaks: exit(1), beside running threads.
#pragma once

#include <functional>

namespace window {

// Has `last_words` called first, once, and ends with _exit(3) instead. Replaces what was set
// before; an empty function leaves only the other ending. Does nothing where Xlib is not loaded.
void when_display_is_lost(std::function<void()> last_words);

}
