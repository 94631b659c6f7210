// Keeps the display from sleeping, by asking the desktop over D-Bus (the idle inhibition of the
// Freedesktop specifications: org.freedesktop.ScreenSaver), or in a browser with the W3C's Screen
// Wake Lock. Where no bus or no such service is, the display sleeps when it likes.
#pragma once

#include <functional>
#include <memory>
#include <string>

namespace window {

class Awake {
public:
  // why: for a desktop that lists who keeps it awake. refused: called once, on a thread of its own,
  // where the desktop is there and says no, or nothing for 2 s.
  Awake(std::string why, std::function<void(const std::string& answer)> refused);
  ~Awake(); // lets it sleep again
  Awake(const Awake&) = delete;
  Awake& operator=(const Awake&) = delete;

  void keep(bool awake); // returns at once

private:
  struct Asker;
  std::unique_ptr<Asker> asker_;
};

}
