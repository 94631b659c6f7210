#include "window/browser_keys.hpp"

#include <cctype>

namespace window {

namespace {

struct Named {
  const char* key;
  const char* name;
  ImGuiKey imgui = ImGuiKey_None;
};
constexpr Named named_keys[] = {{" ", "Space", ImGuiKey_Space},
                                {"Enter", "Enter", ImGuiKey_Enter},
                                {"Escape", "Escape", ImGuiKey_Escape},
                                {"Backspace", "Backspace", ImGuiKey_Backspace},
                                {"Tab", "Tab", ImGuiKey_Tab},
                                {"ArrowLeft", "Left", ImGuiKey_LeftArrow},
                                {"ArrowRight", "Right", ImGuiKey_RightArrow},
                                {"ArrowUp", "Up", ImGuiKey_UpArrow},
                                {"ArrowDown", "Down", ImGuiKey_DownArrow},
                                {"PageUp", "Page Up", ImGuiKey_PageUp},
                                {"PageDown", "Page Down", ImGuiKey_PageDown},
                                {"Home", "Home", ImGuiKey_Home},
                                {"End", "End", ImGuiKey_End},
                                {"Insert", "Insert", ImGuiKey_Insert},
                                {"Delete", "Delete", ImGuiKey_Delete},
                                {"Shift", "Shift"},
                                {"Control", "Ctrl"},
                                {"Alt", "Alt"}};

const Named* find(const std::string& key) {
  for (const Named& named : named_keys)
    if (key == named.key) return &named;
  return nullptr;
}

bool is_function_key(const std::string& key) {
  return key.size() > 1 && key[0] == 'F' &&
         key.find_first_not_of("0123456789", 1) == std::string::npos;
}

// One letter of ASCII in its small form; any other text as it is.
std::string small(std::string text) {
  if (text.size() == 1)
    text[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(text[0])));
  return text;
}

bool is_typed(const std::string& key) { // one sign, however many bytes
  std::size_t signs = 0;
  for (const char c : key) signs += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
  return signs == 1;
}

}

std::string key_name(const std::string& key, const std::string& code, int location) {
  const bool right = location == 2;
  if (const Named* named = find(key))
    return (right && named->imgui == ImGuiKey_None ? "Right " : "") + std::string(named->name);
  if (is_function_key(key)) return key;
  if (is_typed(key)) return small(key);
  return "key " + (code.empty() ? key : code);
}

ImGuiKey imgui_key(const std::string& key) {
  if (const Named* named = find(key)) return named->imgui;
  const std::string letter = small(key);
  if (letter.size() == 1 && letter[0] >= 'a' && letter[0] <= 'z')
    return static_cast<ImGuiKey>(ImGuiKey_A + (letter[0] - 'a'));
  return ImGuiKey_None;
}

}
