// The words of the page that must be there before the program is: as a script for CMake, which puts
// them into the page's files.
#include "words/app_says.hpp"
#include "words/language_says.hpp"
#include "words/say.hpp"
#include "words/studio_says.hpp"

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

void set_of_keeping() {
  using Say = words::AppSay;
  set("keeping", Say::page_keeping);
  set("keeping_title", Say::page_keeping_title);
  set("done", Say::page_done);
  set("kept_promised", Say::kept_promised);
  set("kept_not_promised", Say::kept_not_promised);
  set("kept_not_answered", Say::kept_not_answered);
  set("kept_private", Say::kept_private);
  set("kept_private_perhaps", Say::kept_private_perhaps);
  set("kept_nothing", Say::kept_nothing);
  set("version_waits", Say::version_waits);
  set("version_take", Say::version_take);
  set("version_after_batch", Say::version_after_batch);
}

// What is wrong with a pack is said as the program on a computer says it.
void set_of_packs() {
  using Say = words::AppSay;
  using Why = words::StudioSay;
  set("pack_hand_on", Say::pack_hand_on);
  set("pack_handed_on", Say::pack_handed_on);
  set("pack_empty", Say::pack_empty);
  set("pack_too_long", Say::pack_too_long);
  set("pack_take_in", Say::pack_take_in);
  set("pack_taken_in", Say::pack_taken_in);
  set("pack_stayed", Say::pack_stayed);
  set("pack_not_taken", Say::pack_not_taken);
  set("pack_not_read", Say::pack_not_read);
  set("pack_wrong_sum", Say::pack_wrong_sum);
  set("pack_ends_early", Say::pack_ends_early);
  set("pack_no_zip", Why::pack_no_zip);
  set("pack_cut", Why::pack_cut);
  set("pack_too_many", Why::pack_too_many);
  set("pack_too_large", Why::pack_too_large);
  set("pack_swells", Why::pack_swells);
  set("entry_leaves", Why::entry_leaves);
  set("entry_odd_name", Why::entry_odd_name);
  set("entry_not_utf8", Why::entry_not_utf8);
  set("entry_elsewhere", Why::entry_elsewhere);
  set("entry_twice", Why::entry_twice);
  set("entry_not_plain", Why::entry_not_plain);
  set("entry_encrypted", Why::entry_encrypted);
  set("entry_packing", Why::entry_packing);
  set("entry_too_large", Why::entry_too_large);
  set("entry_broken", Why::entry_broken);
  set("entry_unlike", Why::entry_unlike);
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
  set("start_again", Say::page_start_again);
  set("other_tab", Say::page_other_tab);
  set("go_on_here", Say::page_go_on_here);
  set("goes_on_elsewhere", Say::page_goes_on_elsewhere);
  set_of_keeping();
  set_of_packs();
}
