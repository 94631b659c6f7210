#include "touch/pictures.hpp"

#define STB_IMAGE_WRITE_STATIC
#define STB_IMAGE_WRITE_IMPLEMENTATION
#include <stb/stb_image_write.h>

#include <algorithm>
#include <cstdlib>

namespace touch {

namespace {

std::string file_name(std::string text) {
  std::replace(text.begin(), text.end(), '/', '-');
  return text;
}

}

bool pictures_wanted() { return std::getenv("SLABSIDE_PICTURES") != nullptr; }

void keep_picture(const Pixels& pixels, int number, const std::string& what) {
  const Path folder = Path(std::getenv("SLABSIDE_PICTURES")) /
                      file_name(doctest::getContextOptions()->currentTest->m_name);
  std::filesystem::create_directories(folder);
  const std::string digits = std::to_string(1000 + number).substr(1);
  const std::string file = (folder / file_name(digits + " " + what + ".png")).string();
  REQUIRE(stbi_write_png(file.c_str(), pixels.w, pixels.h, 3, pixels.rgb.data(), pixels.w * 3));
}

}
