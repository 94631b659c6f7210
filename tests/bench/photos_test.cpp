// A batch's photos: dropped, chosen, kept, read between regions that a finger moves.
#include "bench/pads_photos.hpp"
#include "photographing.hpp"
#include "words/photos_says.hpp"

#include <algorithm>

namespace photos_test {

using namespace bench;
using namespace photographing;
using words::PhotosSay;

TEST_CASE("a file that is dropped on a batch's page is looked at, asked about and kept with it") {
  Maker h;
  REQUIRE(h.looks_at(h.wanted(Dropped{{"/tmp/one.jpg"}}), "file:/tmp/one.jpg"));
  CHECK(h.b.screen == Screen::photos);
  CHECK_FALSE(h.shows("photo_of swatch")); // not before it is seen to be a picture
  h.give(ImageSeen{"file:/tmp/one.jpg", facts_of_swatch()});
  for (const char* pad : {"photo_of swatch", "photo_of dot", "photo_of pan", "photo_of slab"})
    CHECK(h.shows(pad));
  const auto keep = h.wanted("photo_of dot");
  REQUIRE(keep.size() == 1);
  const auto& wanted = std::get<KeepPicture>(keep.front());
  CHECK(wanted.file == "/tmp/one.jpg");
  CHECK(wanted.batch == h.batch);
  CHECK(wanted.of == session::PhotoOf::dot);
  CHECK_FALSE(h.shows("photo_of dot")); // not twice
  const std::size_t lines = h.lines.size();
  h.wanted(PhotoKept{"/tmp/one.jpg", h.batch, session::Photo{sum_a, "jpg", session::PhotoOf::dot}});
  REQUIRE(h.lines.size() == lines + 1);
  CHECK(h.last_photo()->sha256 == sum_a);
  CHECK(h.lines.back().batch == h.batch);
  REQUIRE(h.photos().thumbs.size() == 1);
  CHECK(h.photos().thumbs.front().image == "photos/" + sum_a + ".jpg");
  h.tap("leave");
  CHECK(h.b.screen == Screen::book);
  CHECK(std::get<BookView>(view(h.b, h.now()).screen).photos.size() == 1);
}

TEST_CASE("several files are asked about one after the other, and each may be left out") {
  Maker h;
  h.wanted(Dropped{{"/tmp/one.jpg", "/tmp/two.jpg"}});
  h.give(ImageSeen{"file:/tmp/one.jpg", facts_of_swatch()});
  CHECK(h.photos().more == 1);
  h.wanted(Dropped{{"/tmp/three.jpg"}}); // while the first is asked about
  CHECK(h.photos().more == 2);
  CHECK(h.looks_at(h.wanted("leave"), "file:/tmp/two.jpg"));
  CHECK(h.looks_at(h.wanted("leave"), "file:/tmp/three.jpg"));
  CHECK(h.wanted("leave").empty());
  CHECK(h.photos().page == PhotosPage::kept);
  CHECK(h.photos().thumbs.empty());
}

TEST_CASE("files that wait go on waiting while the hands are elsewhere") {
  Maker h;
  h.wanted(Dropped{{"/tmp/one.jpg", "/tmp/two.jpg", "/tmp/three.jpg"}});
  h.give(ImageSeen{"file:/tmp/one.jpg", facts_of_swatch()});
  h.wanted("photo_of dot");
  h.tap("today");
  h.give(PhotoKept{"/tmp/one.jpg", h.batch, session::Photo{sum_a, "jpg", session::PhotoOf::dot}});
  h.tap("book");
  if (!h.shows("photos")) h.tap("batch " + h.batch);
  CHECK(h.looks_at(h.wanted("photos"), "file:/tmp/two.jpg"));
  CHECK(h.photos().page == PhotosPage::asked);
  CHECK(h.photos().more == 1);
  CHECK(h.looks_at(h.wanted("leave"), "file:/tmp/three.jpg"));
  h.tap("leave");
  CHECK(h.photos().page == PhotosPage::kept);
  CHECK(h.photos().thumbs.size() == 1);
  h.tap("leave");
  CHECK(h.wanted("photos").empty());
}

TEST_CASE("a file dropped on the slab goes to the batch there, and the way leads back to it") {
  Hands h;
  h.b.photos.there = true;
  h.tap("plan");
  h.begin();
  REQUIRE(h.b.screen == Screen::slab);
  h.give(Dropped{{"/tmp/dot.png"}});
  CHECK(h.b.screen == Screen::photos);
  CHECK(h.b.photos.batch == h.b.batch);
  h.tap("leave");
  h.tap("leave");
  CHECK(h.b.screen == Screen::slab);
}

TEST_CASE("where no batch is open, it is said what a photo wants") {
  Maker h;
  for (const char* pad : {"to_list", "shelf", "plan", "today"}) {
    h.tap(pad);
    h.give(Dropped{{"/tmp/one.jpg"}});
    CHECK(h.b.screen != Screen::photos);
    REQUIRE(h.b.notice.error);
    CHECK(h.b.notice.error->what == words::Sentence(PhotosSay::no_batch));
    h.b.notice = {};
  }
}

TEST_CASE("what is no picture is said by name, and nothing can be kept of it") {
  Maker h;
  h.wanted(Dropped{{"/tmp/film.jpg"}});
  h.give(ImageSeen{"file:/tmp/film.jpg", tl::make_unexpected(no_picture)});
  REQUIRE(h.photos().failure);
  const std::string said = words::message(*h.photos().failure);
  CHECK(said.find("film.jpg") != std::string::npos);
  CHECK(said.find("JPEG or a PNG") != std::string::npos);
  CHECK_FALSE(h.shows("photo_of swatch"));
  CHECK(h.shows("leave"));
}

TEST_CASE("what is kept late asks of no other file in place of the one that is asked about") {
  Maker h;
  h.wanted(Dropped{{"/tmp/one.jpg", "/tmp/two.jpg"}});
  h.give(ImageSeen{"file:/tmp/one.jpg", facts_of_swatch()});
  h.wanted("photo_of dot");
  REQUIRE(h.looks_at(h.wanted("leave"), "file:/tmp/two.jpg"));
  h.give(ImageSeen{"file:/tmp/two.jpg", facts_of_swatch()});
  h.wanted(PhotoKept{"/tmp/one.jpg", h.batch, session::Photo{sum_a, "jpg", session::PhotoOf::dot}});
  CHECK(h.last_photo()->sha256 == sum_a);
  CHECK(h.b.photos.asked == std::vector<std::string>{"/tmp/two.jpg"});
  CHECK(h.shows("photo_of dot"));
}

TEST_CASE("a photo that could not be kept is said to be so, and may be tried again") {
  Maker h;
  h.wanted(Dropped{{"/tmp/one.jpg"}});
  h.give(ImageSeen{"file:/tmp/one.jpg", facts_of_swatch()});
  h.wanted("photo_of pan");
  const std::size_t lines = h.lines.size();
  const words::Error gone{PhotosSay::is_folder, {"/tmp/one.jpg"}};
  h.wanted(PhotoKept{"/tmp/one.jpg", h.batch, tl::make_unexpected(gone)});
  CHECK(h.lines.size() == lines);
  REQUIRE(h.photos().failure);
  CHECK(words::message(*h.photos().failure).find("/tmp/one.jpg") != std::string::npos);
  CHECK(h.shows("photo_of pan"));
}

TEST_CASE("where a browser has the pictures, it is asked for some, and nothing waits for them") {
  Maker h;
  h.b.photos.picks = true;
  h.b.photos.folder.clear();
  h.tap("photos");
  const auto picked = h.wanted("add_photo");
  REQUIRE(picked.size() == 1);
  CHECK(std::holds_alternative<PickPictures>(picked.front()));
  CHECK(h.photos().page == PhotosPage::kept);
  CHECK_FALSE(h.photos().waits); // somebody may think better of it, and nobody is told
  CHECK(h.shows("add_photo"));
  REQUIRE(h.looks_at(h.wanted(Dropped{{"1/IMG_1.jpg"}}), "file:1/IMG_1.jpg"));
  CHECK(h.photos().page == PhotosPage::asked);
}

TEST_CASE("a picture is chosen among the newest of a folder, which the tablet remembers") {
  Maker h;
  h.tap("photos");
  const auto list = h.wanted("add_photo");
  REQUIRE(list.size() == 1);
  CHECK(std::get<ListPictures>(list.front()).folder == "/home/maker/Pictures");
  std::vector<PictureFile> files;
  for (int i = 0; i < 60; ++i) {
    const std::string name = "swatch " + std::to_string(i) + ".jpg";
    files.push_back({"/home/maker/Pictures/" + name, name, 1000 - i});
  }
  h.give(PicturesListed{"/elsewhere", std::vector<PictureFile>()}); // an answer that came late
  CHECK(h.photos().waits);
  h.give(PicturesListed{"/home/maker/Pictures", files});
  CHECK(h.photos().count == 60);
  CHECK(h.shows("choose_photo swatch 0.jpg"));
  CHECK_FALSE(h.shows("choose_photo swatch 59.jpg"));
  for (int i = 0; i < 10 && h.shows("page_on"); ++i) h.tap("page_on");
  CHECK(h.shows("choose_photo swatch 59.jpg"));
  CHECK(h.looks_at(h.wanted("choose_photo swatch 59.jpg"),
                   "file:/home/maker/Pictures/swatch 59.jpg"));

  h.tap("leave"); // another one of the folder may be it
  CHECK(h.photos().page == PhotosPage::folder);
  CHECK(h.shows("choose_photo swatch 59.jpg"));
  h.tap("leave");
  CHECK(h.photos().page == PhotosPage::kept);
  h.wanted("add_photo");
  h.give(Text{{PhotosPad::folder_text, ""}, "/media/camera"});
  h.give(PicturesListed{"/home/maker/Pictures", files}); // of the folder that was left
  const Effects effects = step(h.b, Tap{{PhotosPad::look, ""}}, h.now());
  CHECK(effects.keep_tablet); // the answer ended the wait, whatever is written meanwhile
  CHECK(h.b.tablet.photo_folder == "/media/camera");
  const auto read = read_tablet(written(h.b.tablet));
  REQUIRE(read);
  CHECK(read->photo_folder == "/media/camera");
  const words::Error unread{PhotosSay::folder_unread,
                            {"/media/camera", "The system does not allow it"}};
  h.give(PicturesListed{"/media/camera", tl::make_unexpected(unread)});
  CHECK(h.photos().failure == unread);
  h.b.photos.waits = true;
  h.give(PicturesListed{"/media/camera", std::vector<PictureFile>()});
  CHECK(h.photos().failure->what == words::Sentence(PhotosSay::folder_empty));
}

TEST_CASE("a swatch is read between the regions that are proposed, and kept with them") {
  Maker h;
  h.keep_swatch();
  CHECK(h.photos().regions.size() == 3);
  const auto read = h.wanted("read_swatch");
  REQUIRE(read.size() == 1);
  const auto& wanted = std::get<ReadSwatch>(read.front());
  CHECK(wanted.at.swatch == facts_of_swatch().regions[0]);
  CHECK(wanted.at.paper.size() == 2);
  SwatchReading reading;
  reading.measured.shown = 0x2e4f9a;
  reading.measured.l = 38;
  h.wanted(SwatchRead{wanted.batch, wanted.photo, reading});
  REQUIRE(h.last_photo());
  CHECK(h.last_photo()->measured == reading.measured);
  REQUIRE(h.last_photo()->read_at);
  CHECK(h.last_photo()->read_at->paint == session::PhotoPart{150, 100, 100, 80});
  CHECK(h.last_photo()->read_at->paper.size() == 2);
  CHECK(h.photos().photo->measured == reading.measured);
  h.tap("leave");
  CHECK(h.photos().thumbs.size() == 1); // one photo, whatever was read from it
  CHECK(h.photos().thumbs.front().colour == 0x2e4f9au);
}

TEST_CASE("why a photo cannot tell stays said, and nothing is kept") {
  Maker h;
  h.keep_swatch();
  const auto read = h.wanted("read_swatch");
  const std::size_t lines = h.lines.size();
  const auto& wanted = std::get<ReadSwatch>(read.front());
  h.wanted(SwatchRead{wanted.batch, wanted.photo,
                      tl::make_unexpected(words::Error{PhotosSay::untold, {"why"}})});
  CHECK(h.lines.size() == lines);
  CHECK(h.photos().failure);
  CHECK(h.shows("read_swatch"));
}

TEST_CASE("a thumb drags a region, and a tap beside all of them brings the chosen one there") {
  for (const Size mm : {Size{218, 136}, Size{136, 218}}) {
    Maker h({mm});
    h.keep_swatch();
    const Rect paint = h.photos().regions[0].at;
    const Point from = paint.centre();
    h.point(Pointer::down, from, 1);
    h.point(Pointer::down, {from.x + 1, from.y + 1}, 2); // a palm moves nothing
    h.point(Pointer::move, {from.x + 9, from.y}, 2);
    CHECK(h.photos().regions[0].at == paint);
    h.point(Pointer::move, {from.x + 6, from.y - 4}, 1);
    h.point(Pointer::up, {from.x + 6, from.y - 4}, 1);
    const Rect moved = h.photos().regions[0].at;
    CHECK(moved.x == doctest::Approx(paint.x + 6).epsilon(0.02));
    CHECK(moved.y == doctest::Approx(paint.y - 4).epsilon(0.02));
    CHECK(moved.w == doctest::Approx(paint.w));

    h.tap("region paper");
    CHECK(h.photos().regions[1].chosen);
    const Rect whole = *h.photos().picture;
    const Point corner{whole.right() - 1, whole.y + 1}; // far from all of them
    h.point(Pointer::down, corner);
    h.point(Pointer::up, corner);
    const Rect paper = h.photos().regions[1].at;
    CHECK(paper.right() <= whole.right() + 0.01);
    CHECK(paper.y == doctest::Approx(whole.y).epsilon(0.01));

    h.tap("larger_region");
    CHECK(h.photos().regions[1].at.w > paper.w);
    for (int i = 0; i < 40; ++i) h.tap("smaller_region");
    const auto width_px = [&] { return h.b.photos.regions[1].width; };
    CHECK(width_px() >= 20); // 20 x 20 can still be read
    for (int i = 0; i < 40; ++i) h.tap("larger_region");
    CHECK(width_px() < 400); // the paper around a swatch is never all of a photo
    CHECK(h.photos().regions[1].at.w <= whole.w + 0.01);
  }
}

TEST_CASE("of two swatches on a photo it is said, and a tap takes the frames to the other") {
  Maker h;
  h.keep_swatch();
  CHECK_FALSE(h.photos().two);
  ImageFacts facts = facts_of_swatch();
  facts.others = {{150, 200, 90, 60}, {20, 200, 80, 60}};
  h.give(ImageSeen{"photos/" + sum_a + ".jpg", facts});
  CHECK(h.photos().two);
  const auto frames = [&] { return h.b.photos.regions; };
  const auto tap = [&](const colour::Box& box) {
    const Point middle = on_glass(box, facts, *h.photos().picture).centre();
    h.point(Pointer::down, middle);
    h.point(Pointer::up, middle);
  };
  CHECK(frames() == facts.regions);
  tap(facts.others.front());
  CHECK(frames() == facts.others);
  CHECK(h.photos().regions[0].chosen);
  tap(facts.others.front()); // taken hold of, and let go
  CHECK(frames() == facts.others);
  tap(facts.regions.front());
  CHECK(frames() == facts.regions);
}

TEST_CASE("a photo on which no swatch is seen has its regions in the middle") {
  Maker h;
  h.wanted(Dropped{{"/tmp/one.jpg"}});
  h.give(ImageSeen{"file:/tmp/one.jpg", ImageFacts{40, 9000, {}, {}}});
  h.wanted("photo_of swatch");
  h.wanted(
      PhotoKept{"/tmp/one.jpg", h.batch, session::Photo{sum_b, "png", session::PhotoOf::swatch}});
  h.give(ImageSeen{"photos/" + sum_b + ".png", ImageFacts{40, 9000, {}, {}}});
  CHECK(h.photos().regions.size() == 2);
  CHECK_FALSE(h.photos().seen);
  for (const auto& region : h.photos().regions) {
    CHECK(region.at.x >= h.photos().picture->x - 0.01);
    CHECK(region.at.right() <= h.photos().picture->right() + 0.01);
  }
}

TEST_CASE("a photo can be taken away again, with what was read from it") {
  Maker h;
  h.keep_swatch();
  const auto read = h.wanted("read_swatch");
  const auto& wanted = std::get<ReadSwatch>(read.front());
  h.wanted(SwatchRead{wanted.batch, wanted.photo, SwatchReading{}});
  h.tap("take_photo_away");
  CHECK(h.photos().thumbs.empty());
  CHECK(std::count_if(h.lines.begin(), h.lines.end(), [](const auto& line) {
          return std::holds_alternative<session::Withdrawn>(line.event);
        }) == 2);
  h.tap("leave");
  CHECK_FALSE(std::get<BookView>(view(h.b, h.now()).screen).swatch);
}

TEST_CASE("a device without pictures has no pads for them, and a drop is nothing there") {
  Maker h;
  h.b.photos.there = false;
  CHECK_FALSE(h.shows("photos"));
  CHECK(h.wanted(Dropped{{"/tmp/one.jpg"}}).empty());
  CHECK(h.b.screen == Screen::book);
}

TEST_CASE("every pad beside photos is large enough for a wet thumb") {
  for (const Size mm : {Size{218, 136}, Size{237, 148}, Size{280, 175}, Size{136, 218}}) {
    Maker h({mm});
    h.keep_swatch();
    const auto check = [&] {
      for (const Pad& pad : layout(h.b).pads) {
        if (pad.id.kind.list() != PadList::photos || pad.id.kind == PhotosPad::folder_text)
          continue;
        CHECK(pad.box.w >= 26);
        CHECK(pad.box.h >= 22);
      }
    };
    check();
    h.tap("leave");
    check();
    h.wanted("add_photo");
    h.give(PicturesListed{h.b.photos.folder,
                          std::vector<PictureFile>{{"/tmp/one.jpg", "one.jpg", 1}}});
    check();
  }
}

}
