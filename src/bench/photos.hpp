// A batch's photos: what is asked of the world outside about them, what comes back, and where the
// hands are with them. Pixels are not the bench's: it knows a picture by a name, which says where
// whoever draws finds it.
#pragma once

#include "bench/geometry.hpp"
#include "bench/scroll.hpp"
#include "colour/reading.hpp"
#include "session/event.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace session {
struct Batch;
}

namespace bench {

struct Bench;
struct Pointer;

// "photos/9f86d081….jpg" within the studio; "file:/home/…/DSC_1.jpg" elsewhere.
std::string image_of(const session::Photo& photo);
// Names one of a batch's: the same picture may be kept as another kind too.
std::string key_of(const session::Photo& photo);
std::string image_of_file(const std::string& path);

struct PictureFile {
  std::string path, name;
  std::int64_t at = 0; // when it was written, ms since 1970
  bool operator==(const PictureFile&) const = default;
};
inline constexpr std::size_t most_pictures = 1000; // of a folder, the newest

// ---- asked of the world outside

struct ListPictures {
  std::string folder;
};
struct PickPictures {}; // by the browser's own way to camera and files; they come as Dropped
struct LookAtPicture {
  std::string image;
};
struct KeepPicture {
  std::string file, batch;
  session::PhotoOf of = session::PhotoOf::swatch;
};
struct ReadSwatch {
  std::string batch;
  session::Photo photo;
  colour::Regions at;
};
using PhotoWanted =
    std::variant<ListPictures, PickPictures, LookAtPicture, KeepPicture, ReadSwatch>;

// ---- what comes back

struct Dropped { // on the window
  std::vector<std::string> files;
};
struct PicturesListed {
  std::string folder;
  words::Result<std::vector<PictureFile>> files; // the newest first
  std::size_t there = 0;                         // in the folder, of which these are the newest
};
struct ImageFacts {
  int width = 0, height = 0;             // upright
  std::vector<colour::Box> regions;      // proposed: a swatch, then bare paper; empty: none is seen
  std::optional<session::Specks> specks; // as they are counted on the paint, were it a dot
  bool see_through = false;              // in part: laid over white
  std::vector<colour::Box> others = {};  // proposed for another swatch on it, likewise
};
struct ImageSeen { // of LookAtPicture; or of what was to be drawn and makes no picture
  std::string image;
  words::Result<ImageFacts> facts;
};
struct PhotoKept {         // the file lies in the studio, and may be named
  std::string file, batch; // as they were wanted
  words::Result<session::Photo> photo;
};
struct SwatchReading {
  session::Measured measured;
  double graded = 0, glints = 0; // as in colour::Reading
  bool beyond = false;
};
struct SwatchRead {
  std::string batch;
  session::Photo photo; // with the regions it was read at
  words::Result<SwatchReading> reading;
  std::vector<std::size_t> at_fault = {}; // regions that tell nothing: 0 the swatch, then paper
};

// ---- the state

enum class PhotosPage {
  kept,   // all that are kept with the batch
  folder, // to take one from
  asked,  // what a picture is of
  open,   // one that is kept
};

struct PhotosState {
  bool there = false; // this device has folders with pictures, or picks them
  bool picks = false; // one is taken from where a browser has them, and not from a folder
  std::string folder; // to take one from, as far as it is written
  std::string listed; // the one that was looked into last
  std::string batch;
  bool from_slab = false;  // the way back leads there
  bool from_trail = false; // and from an open one straight
  PhotosPage page = PhotosPage::kept;
  Scroll list;
  std::vector<PictureFile> pictures; // of the folder that was looked into
  std::size_t in_folder = 0;         // of which those are the newest
  bool waits = false;                // an answer is to come
  std::optional<words::Error> failure;
  std::map<std::string, words::Error> no_pictures; // images that cannot be shown, and why
  std::vector<std::string> asked;                  // files; the first is asked about
  bool chosen = false; // ... that was chosen in the folder, to which the way back leads
  std::map<std::string, std::vector<std::string>> waiting; // likewise, of other batches
  std::string open;                                        // its key
  std::optional<ImageFacts> facts;                         // of the picture that is shown large
  std::vector<colour::Box> regions;                        // a swatch, then bare paper
  std::size_t region = 0;                                  // the one that moves
  std::vector<std::size_t> at_fault; // regions of which the last reading failed
  struct Hold {
    int finger = 0;
    Point from; // of the region's middle, on the glass
  };
  std::optional<Hold> hold;
  std::optional<SwatchReading> reading; // just made
};

// ---- what the other rooms of the bench ask

// Of a batch, each once, the one that was kept last first.
std::vector<session::Photo> photos_of(const session::Batch& batch);
std::optional<session::Photo> open_photo(const Bench& bench);
// What the page shows large; empty: nothing.
std::string image_shown(const Bench& bench);
// Where that picture lies within an area, as large as it may.
Rect place_of_picture(const ImageFacts& facts, const Rect& area);
Rect on_glass(const colour::Box& box, const ImageFacts& facts, const Rect& place);

}
