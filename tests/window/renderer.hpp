#pragma once

#include "window/gl.hpp"

#include <string>

namespace window {

// Who draws, as GL names it; "llvmpipe ..." is software.
inline std::string renderer() {
  const GLubyte* name = glGetString(GL_RENDERER);
  return name ? reinterpret_cast<const char*>(name) : "";
}

}
