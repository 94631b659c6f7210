// What is put on paper from a page: it goes to the browser's print, or is saved by it as a file.
#pragma once

#include "commands/storage.hpp"

namespace commands {

// There is one, as a page has one print. `wake` is called when something has become of a paper.
Papers browser_paper_desk(std::function<void()> wake);

}
