// What stands in the fields of a card stays told apart once they are filled.
#include "bench/pads_shelf.hpp"
#include "screens/draw.hpp"
#include "screens/fields.hpp"
#include "screens/views.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace captions_test {

using namespace screens;

TEST_CASE("a filled field of a card says what it is, within its frame") {
  int filled = 0;
  for (const views::Case& c : views::all()) {
    const auto* shelf = std::get_if<bench::ShelfView>(&c.view.screen);
    if (!shelf || !shelf->card || shelf->card->keep_until.empty()) continue;
    CAPTURE(c.name);
    const auto shapes = draw(c.view);
    for (const Field& field : fields_of(c.view)) {
      if (!field.pad.kind.as<bench::ShelfPad>() || field.text.empty()) continue;
      const Rect& box = bench::pad_of(c.view.layout, field.pad)->box;
      const std::string caption = caption_of(field);
      CAPTURE(caption);
      const auto count = std::count_if(shapes.begin(), shapes.end(), [&](const Shape& shape) {
        const auto* text = std::get_if<Text>(&shape);
        return text && text->words == caption && box.contains(text->at);
      });
      CHECK(count == 1);
      CHECK(caption_mm(field, box) * caption_above_mm(field, box) == 0);
      ++filled;
    }
  }
  CHECK(filled >= 8);
}

}
