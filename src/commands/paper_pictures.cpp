#include "commands/paper_pictures.hpp"

#include "commands/picture_images.hpp"
#include "studio/encode.hpp"

#include <cstdint>

namespace commands {

namespace {

// RFC 4648, 4.
std::string base64(const std::string& bytes) {
  constexpr char digits[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  const auto byte = [&](std::size_t i) {
    return i < bytes.size() ? static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[i])) : 0;
  };
  std::string out;
  for (std::size_t i = 0; i < bytes.size(); i += 3) {
    const std::uint32_t three = byte(i) << 16 | byte(i + 1) << 8 | byte(i + 2);
    for (const int shift : {18, 12, 6, 0}) out += digits[three >> shift & 63];
  }
  for (std::size_t i = 0; i < (3 - bytes.size() % 3) % 3; ++i) out[out.size() - 1 - i] = '=';
  return out;
}

std::string as_data(const std::string& image, const PictureHome& home) {
  const auto made = make_image(home, {image, false});
  const std::string jpg = made ? studio::jpg_of(made->width, made->height, made->rgba) : "";
  return jpg.empty() ? image : "data:image/jpeg;base64," + base64(jpg);
}

}

std::string with_pictures(const std::string& html, const PictureHome& home) {
  constexpr std::string_view before = "src=\"";
  std::string out;
  std::size_t from = 0;
  for (std::size_t at; (at = html.find("src=\"photos/", from)) != std::string::npos;) {
    at += before.size();
    const std::size_t end = html.find('"', at);
    if (end == std::string::npos) break;
    out += html.substr(from, at - from) + as_data(html.substr(at, end - at), home);
    from = end;
  }
  return out + html.substr(from);
}

}
