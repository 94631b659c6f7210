// The root folder itself: made with the first file where it is not there yet, an empty one to
// readers until then, and its name forced in either case. And which studio it is.
#pragma once

#include "disk/files.hpp"

#include <cerrno>
#include <functional>
#include <optional>
#include <string>

namespace studio {

// Bears the studio's id, twelve hexadecimal digits, from its first line on, and never changes.
inline constexpr const char* id_file = "studio-id";

// What this device remembers of the studio that lay under a name.
struct Identity {
  std::string id;     // empty: none was there
  std::string device; // this one's; a folder with sessions of it is the studio, whatever its id
  std::string fresh;  // id of a studio that has none
  std::function<void(const std::string& id)> remember;
};

// `missing`: the root was not there when the program began, and may be made. One that goes away
// later was a drive pulled out, and nothing is made in its place. One that is there may have been
// made by a run that was killed before it forced the name; so with the first file all names on the
// way to it are forced once more. `root` is absolute.
//
// With an identity, a folder that is not the studio that is remembered (a mount point without its
// disk, another disk) is neither listed nor written into, each time until it is: other_studio.
std::unique_ptr<disk::Files> founding_files(std::unique_ptr<disk::Files> inner,
                                            std::filesystem::path root, bool missing,
                                            std::optional<Identity> identity = std::nullopt);

// The code of such a refusal: “no medium found”.
inline constexpr int other_studio = ENOMEDIUM;

}
