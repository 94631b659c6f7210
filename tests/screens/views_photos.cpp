// Views of a batch's photos, as views.cpp makes the others.
#include "bench/pads_book.hpp"
#include "bench/pads_photos.hpp"
#include "screens/views_pans.hpp"
#include "words/colour_says.hpp"
#include "words/photos_says.hpp"
#include "words/studio_says.hpp"

namespace views {

using namespace bench;

namespace {

session::Photo photo_of(char digit, session::PhotoOf of) {
  return {std::string(64, digit), "jpg", of};
}

session::Photo read_photo() {
  session::Photo photo = photo_of('c', session::PhotoOf::swatch);
  photo.measured = session::Measured{0x2E4F9A, 38.4, 11.2, -58.6, 12.2, 11.8, 13.2};
  return photo;
}

// A batch with these photos, on the screen of its photos.
Bench bench_with_photos(Size mm, Hand hand, int many) {
  Bench b = bench_with_batches(mm, hand, Screen::photos);
  session::Batch batch = batch_of_pans(3);
  batch.name = long_name;
  for (int i = 0; i < many; ++i)
    batch.entries.push_back(
        entry_of(100 + i, photo_of(static_cast<char>('d' + i), session::PhotoOf::dot)));
  batch.entries.push_back(entry_of(200, read_photo()));
  b.folds.kept["one"].batch = std::make_shared<const session::Batch>(std::move(batch));
  b.photos.there = true;
  b.photos.batch = "one";
  b.photos.folder = "/home/maker/Pictures/of the workshop in autumn";
  return b;
}

void add_entry(Bench& b, session::Entry entry) {
  session::Batch batch = *b.folds.kept["one"].batch;
  batch.entries.push_back(std::move(entry));
  b.folds.kept["one"].batch = std::make_shared<const session::Batch>(std::move(batch));
}

ImageFacts facts() {
  return {4000, 3000, {{1500, 1000, 1000, 900}, {300, 1000, 900, 900}, {2700, 1000, 900, 900}}, {}};
}

// Frames that lie near each other, as on a printed card.
ImageFacts on_a_card() {
  ImageFacts out{1263, 898, {}, {}};
  out.regions = {{200, 376, 560, 256},
                 {110, 300, 60, 330},
                 {790, 300, 40, 330},
                 {150, 300, 620, 40},
                 {150, 660, 620, 30}};
  out.others = {{900, 376, 200, 256}, {1120, 376, 60, 256}};
  return out;
}

}

void add_photos(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_with_photos(mm, hand, 2);
  const auto keep = [&](const std::string& what) {
    out.push_back({"photos, " + what + on, mm, view(b, {})});
  };
  b.photos.no_pictures[image_of(photo_of('d', session::PhotoOf::dot))] =
      words::Error{words::StudioSay::photo_not_decoded, {}};
  keep("kept");
  b.photos.page = PhotosPage::folder;
  b.photos.waits = true;
  keep("looking");
  b.photos.waits = false;
  b.photos.failure =
      words::Error{words::PhotosSay::folder_unread,
                   {"/home/maker/Pictures/of the workshop", "The system does not allow it"}};
  keep("folder that cannot be read");
  b.photos.failure.reset();
  for (int i = 0; i < 60; ++i) {
    const std::string name = "IMG_20261125_1432" + std::to_string(10 + i) + ".jpg";
    b.photos.pictures.push_back({"/p/" + name, name, 1000 - i});
  }
  b.photos.in_folder = 4000;
  b.photos.list.at = 1;
  keep("folder");
  b.photos.list = {};
  b.photos.page = PhotosPage::asked;
  b.photos.asked = {"/p/IMG_1.jpg", "/p/IMG_2.jpg", "/p/IMG_3.jpg"};
  b.photos.waits = true;
  keep("being read");
  b.photos.waits = false;
  b.photos.failure = words::Error{
      words::PhotosSay::of_picture,
      {"IMG_1.jpg", words::Inner(words::Error{words::StudioSay::photo_too_large_in_scans,
                                              {"12000", "9000", words::Number(33.6, 1)}})}};
  keep("no picture");
  b.photos.failure.reset();
  b.photos.facts = facts();
  b.photos.facts->see_through = true;
  keep("of what");
  b.photos.page = PhotosPage::open;
  b.photos.open = std::string(64, 'c');
  b.photos.regions = facts().regions;
  SwatchReading reading;
  reading.graded = 12;
  reading.glints = 0.021;
  reading.beyond = true;
  b.photos.reading = reading;

  keep("read");
  b.photos.reading.reset();
  b.photos.open = std::string(64, 'b');
  const session::Batch before = *b.folds.kept["one"].batch;
  add_entry(b, entry_of(250, photo_of('b', session::PhotoOf::swatch)));
  b.photos.facts = on_a_card();
  b.photos.regions = on_a_card().regions;
  keep("two swatches");
  b.photos.facts->others.clear();
  b.photos.failure =
      words::Error{words::PhotosSay::untold,
                   {words::Inner(words::Error{words::ColourSay::untold_like_paper, {}})}};
  b.photos.at_fault = {0};
  keep("no paint");
  b.photos.failure.reset();
  b.photos.facts = facts();
  b.photos.regions = facts().regions;
  b.photos.open = std::string(64, 'c');
  b.folds.kept["one"].batch = std::make_shared<const session::Batch>(before);
  b.photos.region = 2;
  b.photos.at_fault = {0, 1};
  b.photos.failure =
      words::Error{words::PhotosSay::untold,
                   {"the swatch shines, or bare paper shows through: turn it away from the light"}};
  keep("cannot be told");
  b.photos.failure.reset();
  b.photos.open = key_of(photo_of('e', session::PhotoOf::dot));
  b.photos.regions.clear();
  b.photos.facts->specks = session::Specks::few;
  keep("a dot");
  session::Photo judged = photo_of('e', session::PhotoOf::dot);
  judged.specks = session::SpecksSeen{session::Specks::many, session::Specks::few};
  add_entry(b, entry_of(300, judged));
  keep("a dot, judged");
  b.photos.page = PhotosPage::kept;
  session::Entry gone = entry_of(301, photo_of('f', session::PhotoOf::slab));
  gone.withdrawn = true;
  add_entry(b, gone);
  add_entry(b, entry_of(302, session::Withdrawn{{"s", 301}}));
  b.sitting.picked_out = {302};
  keep("one taken away");
  b.sitting.picked_out.clear();
  b.photos.picks = true;
  keep("in a browser");
  b.folds.kept["one"].batch = std::make_shared<const session::Batch>(batch_of_pans(3));
  keep("none yet in a browser");
}

}
