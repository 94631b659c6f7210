// Files by which studios tell each other, where a browser saves and picks them.
#pragma once

#include "commands/storage.hpp"

namespace commands {

// There is one. `wake` is called when a file was picked.
ToldFiles browser_told_desk(std::function<void()> wake);

}
