// What came from the page and was not fetched yet. For browser_window.cpp.
#pragma once

#include "window/browser.hpp"
#include "window/window.hpp"

#include <map>
#include <vector>

namespace window {

struct Page { // there is one
  std::vector<Event> events;
  std::map<int, Pointer> down; // by finger, where it was last seen
  Turns turns;
};

Page& page();

}
