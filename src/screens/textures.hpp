// Photos as ImGui draws them: textures that whoever has the pixels hands over, by name.
#pragma once

#include <functional>
#include <optional>
#include <string>

namespace screens {

struct Texture {
  void* id = nullptr;           // an ImTextureID
  double width = 0, height = 0; // pixels, above 0
};

// Asked for every photo of every frame, a small one or a large one. Absent: it is not there yet,
// which whoever has the pixels notes; or it never will be.
using TextureSource = std::function<std::optional<Texture>(const std::string& image, bool large)>;

// As ImGui's atlas is, one a program; an empty one has no textures.
void take_textures_from(TextureSource source);
std::optional<Texture> texture_of(const std::string& image, bool large);

}
