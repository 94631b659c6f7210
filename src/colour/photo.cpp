#include "colour/photo.hpp"

#include <algorithm>
#include <utility>

namespace colour {

namespace {

Box swapped(const Box& box) { return {box.y, box.x, box.height, box.width}; }

Box mirrored(Box box, const Photo& photo) {
  if (mirrored_across(photo.orientation)) box.x = photo.width - box.x - box.width;
  if (mirrored_down(photo.orientation)) box.y = photo.height - box.y - box.height;
  return box;
}

Encoding make_srgb() {
  Encoding made;
  for (auto& curve : made.linear)
    for (std::size_t i = 0; i < 256; ++i)
      curve[i] = static_cast<float>(srgb_to_linear(static_cast<double>(i) / 255));
  made.to_xyz_d50 = srgb_to_xyz_d50();
  return made;
}

}

bool is_grey(const std::vector<std::uint8_t>& rgb) {
  for (std::size_t i = 0; i + 2 < rgb.size(); i += 3)
    if (rgb[i] != rgb[i + 1] || rgb[i] != rgb[i + 2]) return false;
  return true;
}

bool on_its_side(int orientation) { return orientation >= 5; }
bool mirrored_across(int orientation) {
  return orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
}
bool mirrored_down(int orientation) {
  return orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
}

const Encoding& srgb() {
  static const Encoding made = make_srgb();
  return made;
}

Size upright_size(const Photo& photo) {
  const Size stored{photo.width * photo.shrunk, photo.height * photo.shrunk};
  return on_its_side(photo.orientation) ? Size{stored.height, stored.width} : stored;
}

bool lies_in(const Box& box, const Photo& photo) {
  const Size size = upright_size(photo);
  return box.x >= 0 && box.y >= 0 && box.width > 0 && box.height > 0 && box.width <= size.width &&
         box.height <= size.height && box.x <= size.width - box.width &&
         box.y <= size.height - box.height;
}

bool overlap(const Box& one, const Box& other) {
  return one.x < other.x + other.width && other.x < one.x + one.width &&
         one.y < other.y + other.height && other.y < one.y + one.height;
}

Box as_stored(const Box& upright, const Photo& photo) {
  const int by = photo.shrunk;
  const int x = (upright.x + by - 1) / by, y = (upright.y + by - 1) / by;
  const Box inside{x, y, (upright.x + upright.width) / by - x,
                   (upright.y + upright.height) / by - y};
  return mirrored(on_its_side(photo.orientation) ? swapped(inside) : inside, photo);
}

Box as_upright(const Box& stored, const Photo& photo) {
  const Box turned = mirrored(stored, photo);
  const Box here = on_its_side(photo.orientation) ? swapped(turned) : turned;
  const int by = photo.shrunk;
  return {here.x * by, here.y * by, here.width * by, here.height * by};
}

}
