// The words of the page that must be there before the program is: as a script for CMake, which puts
// them into the page's files.
#include "words/app_says.hpp"
#include "words/language_says.hpp"
#include "words/say.hpp"

#include <cstdio>

namespace {

// As HTML text, as an attribute's value, and as a JSON string.
std::string escaped(const std::string& text) {
  std::string out;
  for (const char c : text)
    out += c == '&' ? "&amp;" : c == '<' ? "&lt;" : c == '"' ? "&quot;" : std::string(1, c);
  return out;
}

void set(const char* name, words::Sentence sentence) {
  std::printf("set(%s [==[%s]==])\n", name, escaped(std::string(words::pattern(sentence))).c_str());
}

}

int main() {
  using Say = words::AppSay;
  set("language", words::LanguageSay::tag);
  set("description", Say::page_description);
  set("getting_ready", Say::page_getting_ready);
  set("needs_script", Say::page_needs_script);
  set("stopped", Say::page_stopped);
  set("no_webassembly", Say::page_no_webassembly);
}
