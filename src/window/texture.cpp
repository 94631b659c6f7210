#include "window/texture.hpp"

#include "window/gl.hpp"

#include <utility>

namespace window {

Texture::Texture(Extent size, const std::vector<std::uint8_t>& rgba) : size_(size) {
  GLint before = 0;
  glGetIntegerv(GL_TEXTURE_BINDING_2D, &before);
  glGenTextures(1, &name_);
  glBindTexture(GL_TEXTURE_2D, name_);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR_MIPMAP_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
  glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
  glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA8, size.w, size.h, 0, GL_RGBA, GL_UNSIGNED_BYTE,
               rgba.data());
  glGenerateMipmap(GL_TEXTURE_2D);
  glBindTexture(GL_TEXTURE_2D, static_cast<GLuint>(before));
}

Texture::Texture(Texture&& other) noexcept
    : name_(std::exchange(other.name_, 0)), size_(other.size_) {}

Texture& Texture::operator=(Texture&& other) noexcept {
  std::swap(name_, other.name_);
  std::swap(size_, other.size_);
  return *this;
}

Texture::~Texture() {
  if (name_) glDeleteTextures(1, &name_);
}

void* Texture::id() const { return reinterpret_cast<void*>(static_cast<std::uintptr_t>(name_)); }

}
