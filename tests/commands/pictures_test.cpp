// Photos on their way from a file to a batch, through the desk beside the window, and every file
// that is none.
#include "bench/pads_photos.hpp"
#include "bench/view.hpp"
#include "commands/folders.hpp"
#include "commands/picture_images.hpp"
#include "commands/tool.hpp"
#include "studio/bell.hpp"
#include "studio/photos.hpp"
#include "words/photos_says.hpp"

#include <unistd.h>

#include <algorithm>

namespace pictures_test {

using namespace tool;
using bench::PhotosPage;

namespace {

const std::string pictures = SLABSIDE_ROOT "/tests/studio/pictures/";

// The small batch's page, and a folder with photos beside the studio.
struct Open : Studio {
  rig::Folder other;
  commands::Setup setup;
  std::unique_ptr<commands::EffectRunner> runner;
  std::uint32_t ids = 0x20000000;

  Open() {
    REQUIRE(play(small_batch).status == 0);
    setup.studio = path;
    setup.session = "0a0a0a0a";
    setup.device = "0b0b";
    setup.looks_again = false;
    setup.thumbs = other.path / "thumbs";
    setup.wake = [] {};
    runner = std::make_unique<commands::EffectRunner>(setup, now());
    settle();
    tap("book");
    tap("batch " + runner->bench().batches.back());
  }
  bench::Now now() {
    return {1795617120000, 5000000, 60, [this] { return ++ids; }};
  }
  void settle() { REQUIRE(runner->settle(now(), std::chrono::minutes(5))); }
  void tap(const std::string& pad) {
    runner->feed(bench::Tap{*bench::pad_named(pad)}, now());
    settle();
  }
  void drop(const rig::Path& file) {
    runner->feed(bench::Dropped{{file.string()}}, now());
    settle();
  }
  rig::Path file(const std::string& name, const std::string& bytes) const {
    rig::put(other.path / name, bytes);
    return other.path / name;
  }
  const bench::PhotosState& photos() const { return runner->bench().photos; }
  std::string said() const { return photos().failure ? words::message(*photos().failure) : ""; }
  commands::PictureHome home() const { return commands::picture_home(setup); }
};

// A PNG that says it has 10,000 x 10,000 pixels.
std::string hundred_megapixels() {
  std::string png = rig::bytes_of(pictures + "two.png");
  const std::string side{'\0', '\0', '\x27', '\x10'};
  return png.replace(16, 4, side).replace(20, 4, side);
}

session::Photo kept_as_dot(Open& s) {
  s.drop(s.file("a.jpg", rig::bytes_of(pictures + "base.jpg")));
  s.tap("photo_of dot");
  const auto kept = bench::photos_of(*bench::kept_fold(s.runner->bench(), s.photos().batch));
  REQUIRE(kept.size() == 1);
  return kept.front();
}

}

TEST_CASE(
    "a photo that is dropped lies in the studio before its line, and the file stays as it is") {
  Open s;
  const std::string bytes = rig::bytes_of(pictures + "base.jpg");
  const rig::Path file = s.file("IMG 1.jpg", bytes);
  s.drop(file);
  REQUIRE(s.photos().facts);
  s.tap("photo_of pan");
  CHECK(s.said() == "");
  CHECK(s.photos().page == PhotosPage::kept);
  const std::string kept = studio::sha256(bytes) + ".jpg";
  CHECK(rig::bytes_of(s.path / "photos" / kept) == bytes);
  CHECK(rig::bytes_of(file) == bytes);
  CHECK(s.runner->unsaved() == 0);
  for (int again = 0; again < 2; ++again) { // the same as another kind, and as that once more
    s.drop(file);
    s.tap("photo_of dot");
    CHECK(s.said() == "");
    CHECK(bench::photos_of(*bench::kept_fold(s.runner->bench(), s.photos().batch)).size() == 2);
  }
  s.runner.reset();
  CHECK(run({"check", s.name}).status == 0);
}

TEST_CASE("a photo whose file is gone says so, and what to do, wherever it would be shown") {
  Open s;
  const session::Photo kept = kept_as_dot(s);
  const std::string image = bench::image_of(kept);
  std::filesystem::remove(s.path / image);
  s.tap("photo " + bench::key_of(kept));
  CHECK(has(s.said(), "not in the studio any more. Put " + image.substr(0, 19) + "….jpg"));
  const bench::View v = bench::view(s.runner->bench(), s.now());
  CHECK(v.no_pictures.count(image) == 1);
}

TEST_CASE("a photo whose file was replaced by another picture is not shown as if it were true") {
  Open s;
  const session::Photo kept = kept_as_dot(s);
  const std::string image = bench::image_of(kept);
  REQUIRE(commands::make_image(s.home(), {image, true}));
  std::filesystem::copy_file(pictures + "clear.png", s.path / image,
                             std::filesystem::copy_options::overwrite_existing);
  for (const bool large : {false, true}) {
    const auto shown = commands::make_image(s.home(), {image, large});
    REQUIRE_FALSE(shown);
    CHECK(has(words::message(shown.error()), "is not the photo that was taken"));
  }
}

TEST_CASE("what is see-through of a photo counts as white, and that is said") {
  Open s;
  const rig::Path file = s.file("clear.png", rig::bytes_of(pictures + "clear.png"));
  s.drop(file);
  REQUIRE(s.photos().facts);
  CHECK(s.photos().facts->see_through);
  const auto image = commands::make_image(s.home(), {bench::image_of_file(file.string()), true});
  REQUIRE(image);
  CHECK(image->rgba[0] == 255); // black, were it not see-through
  CHECK(image->rgba[4 * 12] == 0xc0);
  s.tap("leave");
  s.drop(s.file("two.png", rig::bytes_of(pictures + "base.jpg")));
  REQUIRE(s.photos().facts);
  CHECK_FALSE(s.photos().facts->see_through);
}

TEST_CASE("what is no photo is said by its name, and nothing is kept") {
  struct Bad {
    const char *name, *said;
    std::string bytes;
  };
  const Bad all[] = {
      {"empty.jpg", "empty", ""},
      {"film.jpg", "JPEG or a PNG", std::string("\0\0\0\x18", 4) + "ftypmp42 and more"},
      {"cut.jpg", "damaged", rig::bytes_of(pictures + "base.jpg").substr(0, 285)},
      {"vast.png", "10000", hundred_megapixels()},
  };
  Open s;
  for (const Bad& bad : all) {
    const std::string name = bad.name;
    CAPTURE(name);
    s.drop(s.file(bad.name, bad.bytes));
    CHECK(has(s.said(), bad.name));
    CHECK(has(s.said(), bad.said));
    s.tap("leave");
  }
  s.drop(s.other.path);
  CHECK(has(s.said(), "folder"));
  s.tap("leave");
  s.drop(s.other.path / "gone.jpg");
  CHECK(has(s.said(), "gone.jpg"));
  CHECK_FALSE(std::filesystem::exists(s.path / "photos"));
}

TEST_CASE("a file that goes between the look and the answer is said to be gone") {
  Open s;
  const rig::Path file = s.file("one.png", rig::bytes_of(pictures + "two.png"));
  s.drop(file);
  std::filesystem::remove(file);
  s.tap("photo_of swatch");
  CHECK(has(s.said(), "one.png"));
  CHECK(s.photos().page == PhotosPage::asked);
}

TEST_CASE("a folder shows its newest pictures, and says why where it shows none") {
  Open s;
  s.tap("photos");
  const auto look = [&](const std::string& folder) {
    s.runner->feed(bench::Text{{bench::PhotosPad::folder_text, ""}, folder}, s.now());
    s.tap("look_there");
  };
  s.tap("add_photo");
  look((s.other.path / "none").string());
  CHECK(has(s.said(), "none"));
  look(s.other.path.string());
  CHECK(has(s.said(), "no JPEG and no PNG"));
  s.file("b.PNG", "2");
  s.file("a.jpg", "1");
  s.file("notes.txt", "3");
  std::filesystem::last_write_time(s.other.path / "b.PNG",
                                   std::filesystem::last_write_time(s.other.path / "a.jpg") +
                                       std::chrono::seconds(9));
  look(s.other.path.string());
  REQUIRE(s.photos().pictures.size() == 2);
  CHECK(s.photos().pictures.front().name == "b.PNG");
  if (::geteuid() == 0) return; // who may read everything
  std::filesystem::permissions(s.other.path, std::filesystem::perms::none);
  look(s.other.path.string());
  CHECK(has(s.said(), "cannot be read"));
  std::filesystem::permissions(s.other.path, std::filesystem::perms::owner_all);
}

TEST_CASE("a thumbnail is made once, and made again where what was kept of it is not whole") {
  Open s;
  const rig::Path file = s.file("one.jpg", rig::bytes_of(pictures + "base.jpg"));
  const commands::WantedImage wanted{bench::image_of_file(file.string()), false};
  const auto first = commands::make_image(s.home(), wanted);
  REQUIRE(first);
  CHECK(std::max(first->width, first->height) <= commands::thumb_px);
  CHECK(first->rgba.size() == static_cast<std::size_t>(first->width) * first->height * 4);
  std::vector<rig::Path> thumbs;
  for (const auto& entry : std::filesystem::directory_iterator(s.setup.thumbs))
    thumbs.push_back(entry.path());
  REQUIRE(thumbs.size() == 1);
  const std::string kept = rig::bytes_of(thumbs[0]);
  const auto second = commands::make_image(s.home(), wanted);
  REQUIRE(second);
  CHECK(second->rgba == first->rgba);
  for (const std::string& broken : {std::string(), kept.substr(0, kept.size() - 1),
                                    "99999" + kept.substr(5), "x" + kept.substr(1)}) {
    std::filesystem::remove(thumbs[0]);
    rig::put(thumbs[0], broken);
    const auto again = commands::make_image(s.home(), wanted);
    REQUIRE(again);
    CHECK(again->rgba == first->rgba);
  }
}

TEST_CASE("a frame's thumbnails come from the desk, and one that is no picture says so") {
  Open s;
  const rig::Path file = s.file("one.jpg", rig::bytes_of(pictures + "base.jpg"));
  const std::string good = bench::image_of_file(file.string()),
                    bad = bench::image_of_file(s.file("two.jpg", "").string());
  studio::Bell bell;
  s.runner->want_images({{good, false}, {bad, false}, {good, true}});
  std::vector<commands::DrawnImage> drawn;
  constexpr int many_looks =
      60000; // a desk that makes nothing fails the test, and does not hang it
  for (int look = 0; look < many_looks; ++look) {
    s.runner->poll(s.now());
    for (commands::DrawnImage& image : s.runner->take_images()) drawn.push_back(std::move(image));
    if (drawn.size() >= 2 && s.photos().no_pictures.count(bad) > 0) break;
    usleep(1000);
  }
  REQUIRE(drawn.size() == 2);
  for (const commands::DrawnImage& image : drawn) {
    CHECK(image.image == good);
    CHECK(image.rgba.size() == static_cast<std::size_t>(image.width) * image.height * 4);
    CHECK(image.width == 16);
  }
  CHECK(drawn[0].large); // what is looked at comes before what is beside it
  CHECK_FALSE(drawn[1].large);
  REQUIRE(s.photos().no_pictures.count(bad) == 1);
  CHECK(has(words::message(s.photos().no_pictures.at(bad)), "empty"));
  CHECK(s.photos().no_pictures.count(good) == 0);
}

}
