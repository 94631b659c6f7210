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

namespace commands {

// Where files that can be printed are written and shown. All empty: there is no such place here.
struct Papers {
  std::string folder; // for people
  std::function<void(HandedFile file)> write;
  std::function<std::optional<bench::Input>()> poll; // what became of them, in order
  std::function<bool()> is_busy;                     // poll() has something, or is to have
};

struct Storage {
  std::unique_ptr<disk::Disk> home;
  std::unique_ptr<disk::Disk> fallback; // where lines go while home fails; null: nowhere
  std::string fallback_folder;          // its name, for people
  // What this device remembers of itself, outside every studio, as one small text that is put in
  // the place of the one before. Both may be empty: nothing is remembered.
  std::function<std::optional<std::string>()> tablet;
  std::function<words::Result<void>(const std::string& text)> keep_tablet;
  // Files by which studios tell each other what they have learnt. All empty: there are none here.
  std::string told_folder; // for people
  std::function<words::Result<std::string>(const paint::ToldRange& told)>
      tell; // where it was written
  std::function<words::Result<std::optional<bench::FriendsFile>>(
      const std::function<bool(const paint::ToldRange&)>& is_own)>
      find_told;
  Papers papers;
};

// `wake` is to be called, perhaps on another thread, whenever a disk has an answer.
using OpenStorage = std::function<Storage(std::function<void()> wake)>;

}
