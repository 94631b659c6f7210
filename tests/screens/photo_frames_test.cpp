// The names of the frames on a photo: each is read where it stands.
#include "screens/draw.hpp"
#include "screens/measure.hpp"
#include "screens/trail_geometry.hpp"
#include "screens/views.hpp"
#include "words/photos_says.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace photo_frames_test {

using words::PhotosSay;
using words::say;

namespace {

std::vector<screens::Rect> names_on(const views::Case& c) {
  std::vector<std::string> names;
  for (const PhotosSay name :
       {PhotosSay::paint, PhotosSay::paper, PhotosSay::paint_at_fault, PhotosSay::paper_at_fault})
    names.push_back(say(name));
  std::vector<screens::Rect> out;
  for (const screens::Shape& shape : screens::draw(c.view)) {
    const auto* text = std::get_if<screens::Text>(&shape);
    if (!text || std::find(names.begin(), names.end(), text->words) == names.end()) continue;
    const double w = screens::width_mm(text->words, text->cap_mm, text->bold);
    out.push_back({text->at.x - w / 2, text->at.y - text->cap_mm, w, text->cap_mm});
  }
  return out;
}

}

TEST_CASE("no name of a frame on a photo lies over another") {
  std::size_t looked_at = 0;
  for (const words::Language language : {words::Language::english, words::Language::german}) {
    words::say_in(language);
    for (const views::Case& c : views::all()) {
      const auto* photos = std::get_if<bench::PhotosView>(&c.view.screen);
      if (!photos || photos->regions.empty()) continue;
      const std::vector<screens::Rect> names = names_on(c);
      CHECK(names.size() >= photos->regions.size());
      for (std::size_t i = 0; i < names.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
          CHECK_MESSAGE(!screens::overlap(names[i], names[k]), c.name);
      looked_at += 1;
    }
  }
  words::say_in(words::Language::english);
  CHECK(looked_at > 20);
}

}
