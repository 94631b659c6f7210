// What the screen of a batch's photos shows.
#pragma once

#include "bench/pad.hpp"
#include "bench/photos.hpp"
#include "bench/view_pans.hpp"

namespace bench {

struct PhotosView {
  struct Thumb {
    PadId pad;
    std::string image, name; // of a file
    std::optional<session::PhotoOf> of = {};
    std::optional<std::uint32_t> colour = {};    // that was read from it
    std::optional<words::Error> no_picture = {}; // why it cannot be shown
  };
  struct Region {
    Rect at;
    bool paper = false, chosen = false, at_fault = false;
  };
  PhotosPage page = PhotosPage::kept;
  bool picks = false;        // photos come from where a browser has them
  bool from_trail = false;   // the way back leads there
  std::string batch;         // its name
  std::vector<Thumb> thumbs; // this page's
  std::size_t count = 0;     // of all
  std::size_t there = 0;     // in the folder
  UndoView undo;             // of the batch
  std::string folder;
  bool waits = false; // for an answer
  std::optional<words::Error> failure;
  std::string image;           // shown large
  std::optional<Rect> picture; // where, once its size is known
  std::vector<Region> regions;
  bool see_through = false;                  // it is, in part: laid over white
  bool seen = false;                         // a swatch was found on it
  bool two = false;                          // ... and another
  std::size_t more = 0;                      // files that are still to be asked about
  std::optional<session::Photo> photo;       // that is open
  std::optional<SwatchReading> reading;      // of it, just made
  std::optional<session::SpecksSeen> judged; // of a dot, by the hand
  std::optional<session::Specks> specks;     // of a dot, as they are counted on it
};

}
