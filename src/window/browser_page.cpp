#include "window/browser_page.hpp"

#include "window/browser_keys.hpp"

#include <emscripten/emscripten.h>
#include <imgui.h>

#include <cstdlib>

namespace window {

Page& page() {
  static Page one;
  return one;
}

namespace {

void take(const Pointer& pointer) {
  if (pointer.phase == Pointer::down || pointer.phase == Pointer::move)
    page().down[pointer.finger] = pointer;
  else
    page().down.erase(pointer.finger);
  page().events.push_back(pointer);
}

// ImGui knows one finger, and where it presses only.
void tell_imgui(const Pointer& pointer) {
  ImGuiIO& io = ImGui::GetIO();
  io.AddMousePosEvent(static_cast<float>(pointer.x), static_cast<float>(pointer.y));
  if (pointer.phase == Pointer::move) return;
  io.AddMouseButtonEvent(ImGuiMouseButton_Left, pointer.phase == Pointer::down);
}

void tell_imgui(ImGuiKey key, bool down) {
  if (key != ImGuiKey_None) ImGui::GetIO().AddKeyEvent(key, down);
}

std::string taken(char* text) {
  std::string out = text;
  std::free(text);
  return out;
}

}

}

// Called by browser_page.js.
extern "C" {

using namespace window;

EMSCRIPTEN_KEEPALIVE void slabside_pointer(int phase, double x, double y, int finger, double ago_ms,
                                           int primary) {
  constexpr Pointer::Phase phases[] = {Pointer::down, Pointer::move, Pointer::up, Pointer::lost};
  const Pointer pointer{phases[phase], x, y, finger, ago_ms};
  take(pointer);
  if (primary) tell_imgui(pointer);
}

EMSCRIPTEN_KEEPALIVE void slabside_lost() {
  for (const auto& [finger, last] : std::map(page().down)) {
    Pointer lost = last;
    lost.phase = Pointer::lost;
    lost.ago_ms = 0;
    take(lost);
    tell_imgui(lost);
  }
  ImGui::GetIO().ClearInputKeys();
}

// A key that repeats is a new one to ImGui, which does not count time, and none to the bench.
EMSCRIPTEN_KEEPALIVE void slabside_key(char* key, char* code, int location, int down, int repeat,
                                       int held) {
  const std::string name = taken(key), place = taken(code);
  ImGuiIO& io = ImGui::GetIO();
  io.AddKeyEvent(ImGuiMod_Ctrl, held & 1);
  io.AddKeyEvent(ImGuiMod_Shift, held & 2);
  io.AddKeyEvent(ImGuiMod_Alt, held & 4);
  io.AddKeyEvent(ImGuiMod_Super, held & 8);
  if (repeat) tell_imgui(imgui_key(name), false);
  tell_imgui(imgui_key(name), down != 0);
  if (!repeat) page().events.push_back(Key{key_name(name, place, location), down != 0});
}

EMSCRIPTEN_KEEPALIVE void slabside_character(unsigned code) {
  ImGui::GetIO().AddInputCharacter(code);
  page().events.push_back(Character{code});
}

// A tablet's keyboard says what it did and names no key.
EMSCRIPTEN_KEEPALIVE void slabside_erase() {
  tell_imgui(ImGuiKey_Backspace, true);
  tell_imgui(ImGuiKey_Backspace, false);
  page().events.push_back(Character{'\b'});
}

EMSCRIPTEN_KEEPALIVE int slabside_typing() { return text_is_typed(); }

EMSCRIPTEN_KEEPALIVE void slabside_resized() {
  page().events.push_back(Resized{});
  page().events.push_back(Exposed{});
}

EMSCRIPTEN_KEEPALIVE void slabside_exposed() { page().events.push_back(Exposed{}); }

EMSCRIPTEN_KEEPALIVE void slabside_restored() {
  renew_drawing();
  page().events.push_back(Restored{});
}

EMSCRIPTEN_KEEPALIVE void slabside_close() { page().events.push_back(CloseAsked{}); }

EMSCRIPTEN_KEEPALIVE void slabside_hear() {
  if (page().turns.hear) page().turns.hear();
}

EMSCRIPTEN_KEEPALIVE void slabside_show() {
  if (page().turns.show) page().turns.show();
}
}
