// The words of the page that must be there before the program is: as a script for CMake, which puts
// them into the page's files.
#include "words/app_says.hpp"
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

using words::AppSay;
using words::StudioSay;

struct Named {
  const char* name;
  words::Sentence sentence;
};

// What is wrong with a pack is said as the program on a computer says it.
const Named all[] = {
    {"keeping", AppSay::page_keeping},
    {"keeping_new", AppSay::page_keeping_new},
    {"keeping_title", AppSay::page_keeping_title},
    {"done", AppSay::page_done},
    {"kept_promised", AppSay::kept_promised},
    {"kept_not_promised", AppSay::kept_not_promised},
    {"kept_not_answered", AppSay::kept_not_answered},
    {"kept_private", AppSay::kept_private},
    {"kept_private_perhaps", AppSay::kept_private_perhaps},
    {"kept_nothing", AppSay::kept_nothing},
    {"version_waits", AppSay::version_waits},
    {"version_take", AppSay::version_take},
    {"version_after_batch", AppSay::version_after_batch},
    {"pack_hand_on", AppSay::pack_hand_on},
    {"store_put_back", AppSay::store_put_back},
    {"store_not_put_back", AppSay::store_not_put_back},
    {"pack_handed_on", AppSay::pack_handed_on},
    {"pack_lacks", AppSay::pack_lacks},
    {"copy_choose", AppSay::copy_choose},
    {"copy_make", AppSay::copy_make},
    {"copy_made", AppSay::copy_made},
    {"copy_stayed", AppSay::copy_stayed},
    {"copy_not_made", AppSay::copy_not_made},
    {"copy_not_allowed", AppSay::copy_not_allowed},
    {"pack_empty", AppSay::pack_empty},
    {"pack_too_long", AppSay::pack_too_long},
    {"pack_take_in", AppSay::pack_take_in},
    {"pack_taken_in", AppSay::pack_taken_in},
    {"pack_stayed", AppSay::pack_stayed},
    {"pack_not_taken", AppSay::pack_not_taken},
    {"pack_not_read", AppSay::pack_not_read},
    {"pack_no_room", AppSay::pack_no_room},
    {"pack_wrong_sum", AppSay::pack_wrong_sum},
    {"pack_ends_early", AppSay::pack_ends_early},
    {"pack_no_zip", StudioSay::pack_no_zip},
    {"pack_cut", StudioSay::pack_cut},
    {"pack_too_many", StudioSay::pack_too_many},
    {"pack_too_large", StudioSay::pack_too_large},
    {"pack_swells", StudioSay::pack_swells},
    {"entry_leaves", StudioSay::entry_leaves},
    {"entry_odd_name", StudioSay::entry_odd_name},
    {"entry_not_utf8", StudioSay::entry_not_utf8},
    {"entry_elsewhere", StudioSay::entry_elsewhere},
    {"entry_twice", StudioSay::entry_twice},
    {"entry_not_plain", StudioSay::entry_not_plain},
    {"entry_encrypted", StudioSay::entry_encrypted},
    {"entry_packing", StudioSay::entry_packing},
    {"entry_too_large", StudioSay::entry_too_large},
    {"entry_broken", StudioSay::entry_broken},
    {"entry_unlike", StudioSay::entry_unlike},
    {"description", AppSay::page_description},
    {"getting_ready", AppSay::page_getting_ready},
    {"needs_script", AppSay::page_needs_script},
    {"stopped", AppSay::page_stopped},
    {"no_webassembly", AppSay::page_no_webassembly},
    {"start_again", AppSay::page_start_again},
    {"other_tab", AppSay::page_other_tab},
    {"go_on_here", AppSay::page_go_on_here},
    {"goes_on_elsewhere", AppSay::page_goes_on_elsewhere},
};

std::string in(words::Language language, words::Sentence sentence) {
  return escaped(words::pattern(sentence, language));
}

void set(const std::string& name, const std::string& value) {
  std::printf("set(%s [==[%s]==])\n", name.c_str(), value.c_str());
}

// Of every other language what stands on the page without a script, and all sentences for one.
void set_other_languages() {
  std::string without_script, sentences;
  for (const words::Language language : words::offered_languages) {
    if (language == words::Language::english) continue;
    const std::string lang = " lang=\"" + std::string(words::tag_of(language)) + "\"";
    without_script += "<p" + lang + ">" + in(language, AppSay::page_needs_script) + "</p>\n";
    sentences += "<template" + lang + ">\n";
    for (const Named& each : all)
      sentences +=
          "<p" + lang + " data-say=\"" + each.name + "\">" + in(language, each.sentence) + "</p>\n";
    sentences += "</template>\n";
  }
  set("needs_script_elsewhere", without_script);
  set("other_languages", sentences);
}

}

int main() {
  set("language", std::string(words::tag_of(words::Language::english)));
  for (const Named& each : all) set(each.name, in(words::Language::english, each.sentence));
  set_other_languages();
}
