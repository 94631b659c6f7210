// Where photos lie.
#pragma once

#include "disk/files.hpp"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>

namespace commands {

struct PictureHome {
  std::filesystem::path studio;                        // absolute
  std::function<std::unique_ptr<disk::Files>()> files; // of the studio
  std::filesystem::path thumbs; // where small pictures are kept; empty: nowhere
  std::string folder;           // to take photos from, until somebody names another
};

// $XDG_CACHE_HOME/slabside/thumbs or ~/.cache/slabside/thumbs; empty where neither is known.
std::filesystem::path thumbs_folder();
// Where this person's pictures are (XDG user directories), else the home folder.
std::string pictures_folder();

}
