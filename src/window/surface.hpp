// What a window and a picture share: ImGui on a GL context (gl.hpp), and pixels read back.
// No font is loaded here; whoever draws puts its faces into ImGui's atlas before the first frame.
#pragma once

#include <cstdint>
#include <vector>

namespace window {

struct Extent { // pixels
  int w = 0, h = 0;
  bool operator==(const Extent&) const = default;
};

struct Colour { // 0 to 1
  float r = 0, g = 0, b = 0;
};

struct Picture {
  Extent size;
  std::vector<unsigned char> rgb; // three bytes a pixel, the top row first
};

// To be called between two frames after faces came or went in ImGui's atlas.
void rebuild_font_texture();

// Ends ImGui's frame, and nothing of it is drawn.
void drop_frame();

// How often it was made anew: pictures drawn with another one are no longer true.
std::uint64_t font_textures();

// ImGui deals one click out over several frames: true while it holds back some of what came.
bool input_waits();
bool text_is_typed(); // a text field has the keys

// The rest is for whoever has made a context, with it current.

using GlLoader = void (*(*)(const char* name))();

// False where the context lacks what gl.hpp asks for. Makes ImGui's context, which writes nothing
// to disk.
bool start_drawing(GlLoader loader);
void stop_drawing();
void renew_drawing(); // the graphics' memory was taken away: all that start_drawing put there, and
                      // faces

// Ends ImGui's frame and draws it on the bound framebuffer.
void draw_frame(Extent size, Colour clear);

// The buffer that is bound for reading.
Picture read_pixels(Extent size);

}
