// A effect runner in the folders of a computer.
#pragma once

#include "commands/effect_runner.hpp"
#include "disk/faulty.hpp"
#include "studio/studio.hpp"

namespace commands {

struct PictureHome;

struct Setup : Sitting {
  studio::Path studio;
  studio::Path fallback;            // empty: none
  std::optional<disk::Fault> fault; // of the studio's disk
  studio::Path tablet_file;         // where this device's ways are kept; empty: nowhere
  studio::Path thumbs;              // where small pictures of photos are kept; empty: nowhere
  std::string viewer;               // is given what was put on paper; empty: nobody is
  std::optional<studio::Identity> identity = std::nullopt; // of the studio
  studio::MakeFiles home_files = disk::posix_files, fallback_files = disk::posix_files;
};

// As a person means it who names a studio or nothing: the device's own id, a fresh session, the
// folder for when the studio fails. `anew`: the folder is the studio, whatever lay there before.
Setup usual_setup(const std::optional<std::string>& studio, const bench::Now& now,
                  bool anew = false);

PictureHome picture_home(const Setup& setup);

// Opens what the setup names; to be called once.
OpenStorage in_folders(const Setup& setup);

}
