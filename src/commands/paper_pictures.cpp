#include "commands/paper_pictures.hpp"

#include "commands/picture_images.hpp"
#include "paper/markup.hpp"
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

// The element that shows it, or words in its place.
std::string shown(const std::string& element, const std::string& image, const PictureHome& home) {
  const auto made = make_image(home, {image, false});
  if (!made) return paper::element("p", {}, words::message(made.error())).bytes();
  const std::string jpg = studio::jpg_of(made->width, made->height, made->rgba);
  std::string out = element;
  return out.replace(out.find(image), image.size(), "data:image/jpeg;base64," + base64(jpg));
}

}

std::string with_pictures(const std::string& html, const PictureHome& home) {
  constexpr std::string_view before = "<img src=\"", after = "</img>";
  std::string out;
  std::size_t from = 0;
  for (std::size_t at; (at = html.find("<img src=\"photos/", from)) != std::string::npos;) {
    const std::size_t name = at + before.size(), last = html.find(after, at);
    if (last == std::string::npos) break;
    const std::size_t end = last + after.size();
    const std::string image = html.substr(name, html.find('"', name) - name);
    out += html.substr(from, at - from) + shown(html.substr(at, end - at), image, home);
    from = end;
  }
  return out + html.substr(from);
}

}
