#include "bench/photos.hpp"

#include "bench/bench.hpp"
#include "bench/layout_of.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

std::string image_of(const session::Photo& photo) {
  return "photos/" + photo.sha256 + "." + photo.ending;
}

std::string key_of(const session::Photo& photo) {
  const bool swatch = photo.of == session::PhotoOf::swatch;
  return swatch ? photo.sha256 : photo.sha256 + " " + std::string(session::name_of(photo.of));
}

std::string image_of_file(const std::string& path) { return "file:" + path; }

// One that was read is another line of the same photo: the last line counts, where the first stood.
std::vector<session::Photo> photos_of(const session::Batch& batch) {
  std::vector<session::Photo> out;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    const auto* photo = std::get_if<session::Photo>(&e->event);
    if (!photo || e->withdrawn) continue;
    const auto same = std::find_if(out.begin(), out.end(),
                                   [&](const auto& p) { return key_of(p) == key_of(*photo); });
    if (same == out.end()) out.push_back(*photo);
  }
  return out;
}

std::optional<session::Photo> open_photo(const Bench& bench) {
  const Folded batch = kept_fold(bench, bench.photos.batch);
  if (!batch || bench.photos.page != PhotosPage::open) return std::nullopt;
  for (const session::Photo& photo : photos_of(*batch))
    if (key_of(photo) == bench.photos.open) return photo;
  return std::nullopt;
}

std::string image_shown(const Bench& bench) {
  const PhotosState& state = bench.photos;
  if (state.page == PhotosPage::asked && !state.asked.empty())
    return image_of_file(state.asked.front());
  const auto photo = open_photo(bench);
  return photo ? image_of(*photo) : "";
}

Rect place_of_picture(const ImageFacts& facts, const Rect& area) {
  const double scale = std::min(area.w / facts.width, area.h / facts.height);
  const double w = facts.width * scale, h = facts.height * scale;
  return {area.x + (area.w - w) / 2, area.y + (area.h - h) / 2, w, h};
}

Rect on_glass(const colour::Box& box, const ImageFacts& facts, const Rect& place) {
  const double scale = place.w / facts.width;
  return {place.x + box.x * scale, place.y + box.y * scale, box.width * scale, box.height * scale};
}

}
