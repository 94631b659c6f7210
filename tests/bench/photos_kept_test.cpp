// What is kept of a photo: taken away and given back, kept twice, read where it cannot be.
#include "photographing.hpp"
#include "words/photos_says.hpp"

namespace photos_kept_test {

using namespace photographing;
using words::PhotosSay;

TEST_CASE("a photo that was taken away is given back by undo, with its colour") {
  Maker h;
  h.keep_swatch();
  const auto read = h.wanted("read_swatch");
  const auto& wanted = std::get<ReadSwatch>(read.front());
  SwatchReading reading;
  reading.measured.shown = 0x2e4f9a;
  h.wanted(SwatchRead{wanted.batch, wanted.photo, reading});
  h.tap("take_photo_away");
  REQUIRE(h.shows("undo"));
  CHECK(h.photos().undo.gives_back);
  h.tap("undo");
  REQUIRE(h.photos().thumbs.size() == 1);
  CHECK(h.photos().thumbs.front().colour == 0x2e4f9au);
  CHECK_FALSE(h.shows("undo"));
  h.tap("photo " + sum_a);
  h.give(ImageSeen{"photos/" + sum_a + ".jpg", facts_of_swatch()});
  h.tap("take_photo_away"); // and again
  CHECK(h.photos().thumbs.empty());
  h.tap("undo");
  CHECK(h.photos().thumbs.size() == 1);
}

TEST_CASE("a photo kept as a dot too leaves the swatch that was read from it") {
  Maker h;
  h.keep_swatch();
  const auto read = h.wanted("read_swatch");
  const auto& wanted = std::get<ReadSwatch>(read.front());
  SwatchReading reading;
  reading.measured.shown = 0x2e4f9a;
  h.wanted(SwatchRead{wanted.batch, wanted.photo, reading});
  h.tap("leave");
  const auto keep = [&](session::PhotoOf of) {
    h.wanted(Dropped{{"/tmp/one.jpg"}});
    h.give(ImageSeen{"file:/tmp/one.jpg", facts_of_swatch()});
    h.wanted("photo_of " + std::string(session::name_of(of)));
    h.wanted(PhotoKept{"/tmp/one.jpg", h.batch, session::Photo{sum_a, "jpg", of}});
  };
  keep(session::PhotoOf::dot);
  REQUIRE(h.photos().thumbs.size() == 2);
  CHECK(h.photos().thumbs[1].colour == 0x2e4f9au);
  const std::size_t lines = h.lines.size();
  keep(session::PhotoOf::swatch); // once more: as it is
  CHECK(h.lines.size() == lines);
  REQUIRE(h.photos().photo);
  CHECK(h.photos().photo->measured);
  h.tap("leave");
  h.tap("photo " + sum_a + " dot");
  h.give(ImageSeen{"photos/" + sum_a + ".jpg", facts_of_swatch()});
  h.tap("take_photo_away");
  REQUIRE(h.photos().thumbs.size() == 1);
  CHECK(h.photos().thumbs.front().colour == 0x2e4f9au);
}

TEST_CASE("the regions that tell nothing are marked until they are moved") {
  Maker h;
  h.keep_swatch();
  const auto read = h.wanted("read_swatch");
  const auto& wanted = std::get<ReadSwatch>(read.front());
  h.wanted(SwatchRead{wanted.batch,
                      wanted.photo,
                      tl::make_unexpected(words::Error{PhotosSay::untold, {"why"}}),
                      {2}});
  CHECK_FALSE(h.photos().regions[0].at_fault);
  CHECK_FALSE(h.photos().regions[1].at_fault);
  CHECK(h.photos().regions[2].at_fault);
  h.tap("region paper");
  h.tap("smaller_region");
  CHECK_FALSE(h.photos().regions[2].at_fault);
}

TEST_CASE("of a folder with more pictures than are listed it is said how many there are") {
  Maker h;
  h.tap("photos");
  h.wanted("add_photo");
  const std::vector<PictureFile> files(1, {"/home/maker/Pictures/a.jpg", "a.jpg", 1});
  h.give(PicturesListed{"/home/maker/Pictures", files, 4000});
  CHECK(h.photos().count == 1);
  CHECK(h.photos().there == 4000);
  CHECK(h.photos().folder == "/home/maker/Pictures");
}

namespace {

// Kept as a dot, and looked at.
void keep_dot(Maker& h, std::optional<session::Specks> counted) {
  h.wanted(Dropped{{"/tmp/one.jpg"}});
  h.give(ImageSeen{"file:/tmp/one.jpg", facts_of_swatch()});
  h.wanted("photo_of dot");
  h.wanted(PhotoKept{"/tmp/one.jpg", h.batch, session::Photo{sum_a, "jpg", session::PhotoOf::dot}});
  h.tap("photo " + sum_a + " dot");
  ImageFacts facts = facts_of_swatch();
  facts.specks = counted;
  h.give(ImageSeen{"photos/" + sum_a + ".jpg", facts});
}

}

TEST_CASE("what is counted on a dot is proposed, the hand decides, and both are kept") {
  Maker h;
  keep_dot(h, session::Specks::few);
  CHECK(h.photos().specks == session::Specks::few);
  CHECK_FALSE(h.photos().judged);
  h.tap("specks_on_photo many");
  REQUIRE(h.photos().judged);
  CHECK(h.photos().judged->as == session::Specks::many);
  CHECK(h.photos().judged->counted == session::Specks::few);
  const std::size_t lines = h.lines.size();
  h.tap("specks_on_photo many"); // as it is
  CHECK(h.lines.size() == lines);
  h.tap("specks_on_photo none");
  CHECK(h.photos().judged->as == session::Specks::none);
}

TEST_CASE("a dot's photo on the trail opens large by a tap, and leads straight back") {
  Hands h;
  h.b.photos.there = true;
  h.begin();
  h.tap("add pb28");
  h.tap("leave");
  h.tap("add gum_12");
  h.wait(60);
  h.give(PhotoKept{"/tmp/one.jpg", h.b.batch, session::Photo{sum_a, "jpg", session::PhotoOf::dot}});
  const Effects effects = step(h.b, Tap{*pad_named("dot_photo " + sum_a + " dot")}, h.now());
  CHECK(h.b.screen == Screen::photos);
  REQUIRE(effects.photos.size() == 1);
  CHECK(std::get<LookAtPicture>(effects.photos.front()).image == "photos/" + sum_a + ".jpg");
  CHECK(std::get<PhotosView>(view(h.b, h.now()).screen).from_trail);
  h.tap("leave");
  CHECK(h.b.screen == Screen::slab);
}

TEST_CASE("the hand's word on specks can be taken back: the photo stays, and asks again") {
  Maker h;
  keep_dot(h, session::Specks::few);
  CHECK_FALSE(bench::pad_of(layout(h.b), *pad_named("take_word_back")));
  h.tap("specks_on_photo many");
  h.tap("specks_on_photo none");
  h.tap("take_word_back");
  CHECK_FALSE(h.photos().judged);
  CHECK(h.photos().specks == session::Specks::few);
  REQUIRE(h.photos().photo);
  CHECK_FALSE(bench::pad_of(layout(h.b), *pad_named("take_word_back")));
  h.tap("specks_on_photo few");
  CHECK(h.photos().judged->as == session::Specks::few);
}

TEST_CASE("where a photo cannot tell of specks, the hand's word is kept alone") {
  Maker h;
  keep_dot(h, std::nullopt);
  h.tap("specks_on_photo few");
  REQUIRE(h.photos().judged);
  CHECK_FALSE(h.photos().judged->counted);
}

TEST_CASE("a photo that is kept or read after the window was closed writes no line any more") {
  Maker h;
  h.keep_swatch();
  const auto read = h.wanted("read_swatch");
  const auto& wanted = std::get<ReadSwatch>(read.front());
  h.give(Leaving{});
  const std::size_t lines = h.lines.size();
  h.give(SwatchRead{wanted.batch, wanted.photo, SwatchReading{}});
  h.give(
      PhotoKept{"/tmp/two.jpg", h.batch, session::Photo{sum_b, "jpg", session::PhotoOf::swatch}});
  CHECK(h.lines.size() == lines);
  REQUIRE_FALSE(h.lines.empty());
  CHECK(std::holds_alternative<session::Left>(h.lines.back().event));
}

}
