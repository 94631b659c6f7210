// A maker who keeps photos with a batch.
#pragma once

#include "hands.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace photographing {

using namespace bench;
using hands::Hands;

inline const std::string sum_a(64, 'a'), sum_b(64, 'b');

inline const words::Error no_picture{words::StudioSay::photo_not_known, {}};

inline ImageFacts facts_of_swatch() {
  return {400, 300, {{150, 100, 100, 80}, {20, 100, 80, 80}, {300, 100, 80, 80}}, {}};
}

// The page of a batch that was gathered, on a device that has pictures.
struct Maker : Hands {
  std::string batch;
  std::vector<PhotoWanted> asked;

  explicit Maker(Display display = {}) : Hands(display) {
    b.photos.there = true;
    b.photos.folder = "/home/maker/Pictures";
    tap("plan");
    gather();
    tap("book");
    batch = b.batches.back();
    tap("batch " + batch);
  }
  // What an input wants to know of the world outside.
  std::vector<PhotoWanted> wanted(Input input) {
    Effects effects = step(b, std::move(input), now());
    lines.insert(lines.end(), effects.append.begin(), effects.append.end());
    return effects.photos;
  }
  std::vector<PhotoWanted> wanted(const std::string& pad) { return wanted(Tap{*pad_named(pad)}); }
  PhotosView photos() { return std::get<PhotosView>(view(b, now()).screen); }
  bool looks_at(const std::vector<PhotoWanted>& all, const std::string& image) {
    const auto* one = all.size() == 1 ? std::get_if<LookAtPicture>(&all.front()) : nullptr;
    return one && one->image == image;
  }
  // Kept as a swatch, and looked at.
  void keep_swatch() {
    wanted(Dropped{{"/tmp/one.jpg"}});
    give(ImageSeen{"file:/tmp/one.jpg", facts_of_swatch()});
    wanted("photo_of swatch");
    const session::Photo photo{sum_a, "jpg", session::PhotoOf::swatch};
    const auto then = wanted(PhotoKept{"/tmp/one.jpg", batch, photo});
    REQUIRE(looks_at(then, "photos/" + sum_a + ".jpg"));
    give(ImageSeen{"photos/" + sum_a + ".jpg", facts_of_swatch()});
  }
  const session::Photo* last_photo() {
    return lines.empty() ? nullptr : std::get_if<session::Photo>(&lines.back().event);
  }
};

}
