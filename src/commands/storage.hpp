// What a effect runner keeps everything in: the folders of a computer, or a browser's store.
#pragma once

#include "bench/bench.hpp"
#include "commands/handed.hpp"
#include "disk/disk.hpp"
#include "words/error.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace commands {

// Where files that can be printed are written and shown. All empty: there is no such place here.
struct Papers {
  std::string folder; // for people
  // Has whatever such a paper takes fetched, and calls `then`; empty: it is all there.
  std::function<void(const bench::PaperWanted& wanted, std::function<void()> then)> get_ready;
  std::function<void(HandedFile file)> write;
  std::function<std::optional<bench::Input>()> poll; // what became of them, in order
  std::function<bool()> is_busy;                     // poll() has something, or is to have
  bool in_browser = false;                           // there is no folder: see bench::PaperDesk
};

// A picture as it is drawn: turned upright, made smaller, sRGB.
struct DrawnImage {
  std::string image; // as the bench names it
  bool large = false;
  int width = 0, height = 0;
  std::vector<std::uint8_t> rgba; // row by row from the top
};
struct WantedImage {
  std::string image;
  bool large = false;
  bool operator==(const WantedImage&) const = default;
};

// Photos, in a folder or in the studio. All empty: there are none here.
struct Pictures {
  std::string folder; // to take them from, until somebody names another
  std::function<void(bench::PhotoWanted)> ask;
  std::function<std::optional<bench::Input>()> poll;    // what became of that, in order
  std::function<bool()> is_busy;                        // poll() has something, or is to have
  std::function<void(std::vector<WantedImage>)> want;   // in place of what was wanted before
  std::function<std::vector<DrawnImage>()> take_images; // that were made since
  bool picks = false;                                   // see bench::PhotosState
};

// Files by which studios tell each other what they have learnt. All empty: there are none here.
struct ToldFiles {
  using IsOwn = std::function<bool(const paint::ToldRange&)>;
  using Found = words::Result<std::optional<bench::FriendsFile>>;
  std::string folder; // for people; empty: they are saved and picked by hand
  std::function<words::Result<std::string>(const paint::ToldRange& told, const std::string& day)>
      tell;                                                                // as what, or where
  std::function<void(IsOwn is_own, std::function<void(Found)> then)> find; // perhaps later
};

struct Storage {
  std::unique_ptr<disk::Disk> home;
  std::unique_ptr<disk::Disk> fallback; // where lines go while home fails; null: nowhere
  std::string fallback_folder;          // its name, for people
  // What this device remembers of itself, outside every studio, as one small text that is put in
  // the place of the one before. Both may be empty: nothing is remembered.
  std::function<std::optional<std::string>()> tablet;
  std::function<words::Result<void>(const std::string& text)> keep_tablet;
  ToldFiles told;
  bool hands_on = false;                      // see bench::Bench
  std::function<void()> show_where_handed_on; // where it does
  Papers papers;
  Pictures pictures;
};

// `wake` is to be called, perhaps on another thread, whenever a disk has an answer.
using OpenStorage = std::function<Storage(std::function<void()> wake)>;

}
