#include "commands/browser_picture_desk.hpp"

#include "commands/browser_text.hpp"
#include "commands/picture_facts.hpp"
#include "commands/picture_images.hpp"
#include "disk/browser_questions.hpp"
#include "studio/engine_pixels.hpp"
#include "studio/picture.hpp"
#include "words/lists.hpp"
#include "words/photos_says.hpp"
#include "words/studio_says.hpp"

#include <emscripten/emscripten.h>

#include <algorithm>
#include <cstdlib>
#include <deque>
#include <memory>
#include <utility>

// browser_picture_desk.js. All but the first are answered once, later, by
// slabside_picture_answered.
extern "C" {
void slabside_pictures_pick(); // within the tap itself, as browsers want it
void slabside_picture_bytes(int id, const char* image);
void slabside_picture_keep(int id, const char* image, const char* ending);
void slabside_picture_pixels(int id, const char* bytes, std::size_t count, int by, int longest);
}

namespace commands {

namespace {

using words::PhotosSay;

struct Answer {
  std::string failure; // "gone", "changed", "full", "damaged" or the browser's words; empty: none
  std::string bytes;
  int width = 0, height = 0;
};

disk::BrowserQuestions<Answer>& questions() {
  static disk::BrowserQuestions<Answer> all;
  return all;
}

words::Error failure_of(const std::string& image, const std::string& failure) {
  if (failure == "gone") return {PhotosSay::gone, {shortened(image)}};
  if (failure == "changed") return {PhotosSay::changed, {shortened(image)}};
  if (failure == "full") return {PhotosSay::browser_full, {}};
  if (failure == "damaged") return {words::StudioSay::photo_not_decoded, {}};
  return {PhotosSay::browser_failed, {failure}};
}

// ---- a picture's bytes, and its pixels

// Seen to be a picture that is not too large.
struct PictureBytes {
  std::string bytes;
  studio::PictureHeader header;
};

void with_bytes(const std::string& image,
                const std::function<void(words::Result<PictureBytes>)>& then) {
  const int id = questions().ask([image, then](Answer answer) {
    if (!answer.failure.empty())
      return then(tl::make_unexpected(failure_of(image, answer.failure)));
    const auto header = studio::picture_header(answer.bytes);
    if (!header) return then(tl::make_unexpected(header.error()));
    then(PictureBytes{std::move(answer.bytes), *header});
  });
  slabside_picture_bytes(id, image.c_str());
}

// `by` x `by` of its pixels one, or where `longest` is not 0 that long at most.
void with_pixels(const std::string& bytes, int by, int longest,
                 const std::function<void(words::Result<studio::EnginePixels>)>& then) {
  const int id = questions().ask([then](const Answer& answer) {
    if (!answer.failure.empty()) return then(tl::make_unexpected(failure_of("", answer.failure)));
    then(studio::EnginePixels{
        answer.width, answer.height, {answer.bytes.begin(), answer.bytes.end()}});
  });
  slabside_picture_pixels(id, bytes.data(), bytes.size(), by, longest);
}

void with_photo(const std::string& image,
                const std::function<void(const words::Result<colour::Photo>&)>& then) {
  with_bytes(image, [then](words::Result<PictureBytes> file) {
    if (!file) return then(tl::make_unexpected(file.error()));
    const int by = studio::shrunk_for(file->header, studio::most_engine_pixels);
    const auto kept = std::make_shared<std::string>(std::move(file->bytes));
    with_pixels(*kept, by, 0, [then, kept, by](words::Result<studio::EnginePixels> pixels) {
      if (!pixels) return then(tl::make_unexpected(pixels.error()));
      then(studio::photo_of(*kept, *std::move(pixels), by));
    });
  });
}

// ---- what is asked

using Tell = std::function<void(bench::Input)>;

void look_at(const bench::LookAtPicture& wanted, const Tell& tell) {
  with_photo(wanted.image, [wanted, tell](const words::Result<colour::Photo>& photo) {
    if (!photo) return tell(bench::ImageSeen{wanted.image, tl::make_unexpected(photo.error())});
    tell(bench::ImageSeen{wanted.image, facts_of(*photo)});
  });
}

// In the store, and safe, before any line names it.
void keep(const bench::KeepPicture& wanted, const Tell& tell) {
  const std::string image = bench::image_of_file(wanted.file);
  const auto fail = [wanted, tell](words::Error why) {
    tell(bench::PhotoKept{wanted.file, wanted.batch, tl::make_unexpected(std::move(why))});
  };
  with_bytes(image, [wanted, tell, image, fail](const words::Result<PictureBytes>& file) {
    if (!file) return fail(file.error());
    const std::string ending = file->header.kind == studio::PictureKind::jpg ? "jpg" : "png";
    const int id = questions().ask([wanted, tell, image, fail, ending](const Answer& answer) {
      if (!answer.failure.empty()) return fail(failure_of(image, answer.failure));
      tell(bench::PhotoKept{wanted.file, wanted.batch,
                            session::Photo{answer.bytes, ending, wanted.of}});
    });
    slabside_picture_keep(id, image.c_str(), ending.c_str());
  });
}

void read_again(const bench::ReadSwatch& wanted, const Tell& tell) {
  with_photo(bench::image_of(wanted.photo),
             [wanted, tell](const auto& photo) { tell(swatch_read(wanted, photo)); });
}

void answer(const bench::PhotoWanted& wanted, const Tell& tell) {
  std::visit(words::Overloaded{[&](const bench::LookAtPicture& w) { look_at(w, tell); },
                               [&](const bench::KeepPicture& w) { keep(w, tell); },
                               [&](const bench::ReadSwatch& w) { read_again(w, tell); },
                               [](const bench::PickPictures&) {},  // at once, and not in turn
                               [&](const bench::ListPictures& w) { // a page sees no folder
                                 tell(bench::PicturesListed{
                                     w.folder, words::failure(PhotosSay::folder_none, {w.folder})});
                               }},
             wanted);
}

// ---- in turn, since each takes much room

struct PictureDesk {
  std::function<void()> wake = {};
  std::deque<bench::PhotoWanted> asked = {};
  std::deque<WantedImage> wanted = {};
  std::deque<bench::Input> news = {};
  std::vector<DrawnImage> drawn = {};
  WantedImage making = {};
  bool answering = false, drawing = false; // one of them at most
};

PictureDesk& pictures() {
  static PictureDesk one;
  return one;
}

void go_on();

void done() {
  pictures().answering = pictures().drawing = false;
  if (pictures().wake) pictures().wake();
  go_on();
}

void done(bench::Input input) {
  pictures().news.push_back(std::move(input));
  done();
}

void no_picture(const words::Error& why) {
  done(bench::ImageSeen{std::exchange(pictures().making, {}).image, tl::make_unexpected(why)});
}

void drawn(words::Result<studio::EnginePixels> pixels) {
  if (!pixels) return no_picture(pixels.error());
  studio::lay_over_white(*pixels);
  const WantedImage made = std::exchange(pictures().making, {});
  pictures().drawn.push_back(
      {made.image, made.large, pixels->width, pixels->height, std::move(pixels->rgba)});
  done();
}

void draw(const WantedImage& image) {
  pictures().making = image;
  with_bytes(image.image, [image](const words::Result<PictureBytes>& file) {
    if (!file) return no_picture(file.error());
    with_pixels(file->bytes, 1, image.large ? large_px : thumb_px, drawn);
  });
}

void go_on() {
  PictureDesk& at = pictures();
  if (at.answering || at.drawing) return;
  if (!at.asked.empty()) {
    const bench::PhotoWanted next = std::move(at.asked.front());
    at.asked.pop_front();
    at.answering = true;
    return answer(next, [](bench::Input input) { done(std::move(input)); });
  }
  if (at.wanted.empty()) return;
  const WantedImage next = at.wanted.front();
  at.wanted.pop_front();
  at.drawing = true;
  draw(next);
}

void ask(bench::PhotoWanted wanted) {
  if (std::holds_alternative<bench::PickPictures>(wanted)) return slabside_pictures_pick();
  pictures().asked.push_back(std::move(wanted));
  go_on();
}

void want(std::vector<WantedImage> images) {
  std::erase_if(images, [](const WantedImage& i) { return i == pictures().making; });
  std::stable_partition(images.begin(), images.end(), [](const auto& i) { return i.large; });
  pictures().wanted.assign(images.begin(), images.end());
  go_on();
}

std::optional<bench::Input> next_picture() {
  if (pictures().news.empty()) return std::nullopt;
  std::optional<bench::Input> first = std::move(pictures().news.front());
  pictures().news.pop_front();
  return first;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> out;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    out.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return out;
}

}

Pictures browser_picture_desk(std::function<void()> wake) {
  pictures().wake = std::move(wake);
  Pictures out;
  out.ask = ask;
  out.poll = next_picture;
  out.is_busy = [] {
    return pictures().answering || !pictures().asked.empty() || !pictures().news.empty();
  };
  out.want = want;
  out.take_images = [] { return std::exchange(pictures().drawn, {}); };
  out.picks = true;
  return out;
}

}

extern "C" {

// Their names, one a line.
EMSCRIPTEN_KEEPALIVE void slabside_pictures_picked(char* names) {
  commands::pictures().news.push_back(bench::Dropped{commands::lines_of(commands::taken(names))});
  if (commands::pictures().wake) commands::pictures().wake();
}

EMSCRIPTEN_KEEPALIVE void slabside_picture_answered(int id, char* failure, char* bytes,
                                                    std::size_t count, int width, int height) {
  commands::Answer answer{commands::taken(failure), std::string(bytes, count), width, height};
  std::free(bytes);
  commands::questions().answer(id, std::move(answer));
}
}
