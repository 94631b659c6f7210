// The names of keys, from those of the W3C's UI Events (KeyboardEvent key and code Values).
#pragma once

#include <imgui.h>

#include <string>

namespace window {

// As Key::name has it: what is typed, in small letters, or "Page Down", "Right Shift", "F5".
// `location`: 2 for the right one of two.
std::string key_name(const std::string& key, const std::string& code, int location);

// What text fields listen to; none for any other.
ImGuiKey imgui_key(const std::string& key);

}
