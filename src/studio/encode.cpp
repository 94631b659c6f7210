#include "studio/encode.hpp"

#include <turbojpeg.h>

#include <memory>

namespace studio {

std::string jpg_of(int width, int height, const std::vector<std::uint8_t>& rgba) {
  constexpr int quality = 85;
  const std::unique_ptr<void, int (*)(void*)> encoder(tjInitCompress(), tjDestroy);
  if (!encoder) return "";
  unsigned char* bytes = nullptr;
  unsigned long size = 0;
  const bool made = tjCompress2(encoder.get(), rgba.data(), width, 0, height, TJPF_RGBA, &bytes,
                                &size, TJSAMP_444, quality, 0) == 0;
  const std::unique_ptr<unsigned char, void (*)(unsigned char*)> held(bytes, tjFree);
  return made ? std::string(reinterpret_cast<const char*>(bytes), size) : "";
}

}
