// A language for as long as this lives.
#pragma once

#include "words/say.hpp"

namespace words {

struct Speaking {
  explicit Speaking(Language language) { say_in(language); }
  ~Speaking() { say_in(Language::english); }
  Speaking(const Speaking&) = delete;
  Speaking& operator=(const Speaking&) = delete;
};

}
