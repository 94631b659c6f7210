// libarchive reads and writes names in the letters of the thread's locale. While this lives they
// are UTF-8, whatever the computer is set to, on this thread alone.
#pragma once

#include <locale.h>
#if __has_include(<xlocale.h>)
#include <xlocale.h> // macOS
#endif

namespace studio {

class Utf8Letters {
public:
  // Where the system has no such locale all stays as it is, and libarchive refuses other letters.
  Utf8Letters();
  Utf8Letters(const Utf8Letters&) = delete;
  Utf8Letters& operator=(const Utf8Letters&) = delete;
  ~Utf8Letters();

private:
  locale_t own_{}, before_{};
};

}
