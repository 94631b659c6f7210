// The GL that ImGui draws with: a computer's 3.3 core through glad, or a browser's WebGL 2, which
// needs no loading.
#pragma once

#include "window/surface.hpp"

#ifdef __EMSCRIPTEN__
#include <GLES3/gl3.h>
#else
#include <glad/gl.h>
#endif

namespace window {

#ifdef __EMSCRIPTEN__
inline constexpr const char* glsl_version = "#version 300 es";
inline bool load_gl(GlLoader) { return true; }
#else
inline constexpr const char* glsl_version = "#version 330 core";
inline bool load_gl(GlLoader loader) { return gladLoadGL(loader) >= GLAD_MAKE_VERSION(3, 3); }
#endif

}
