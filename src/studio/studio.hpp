// One workshop's folder: where it lies, who this device is, and what its files say.
#pragma once

#include "disk/disk.hpp"
#include "disk/faulty.hpp"
#include "session/reader.hpp"
#include "studio/founding.hpp"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace studio {

using Path = std::filesystem::path;

// The absolute path that a variable such as XDG_STATE_HOME holds; empty where there is none:
// relative ones are ignored, as the XDG Base Directory Specification 0.8 says.
Path path_from_environment(const char* name);

// ~/Slabside: a folder to be seen, copied and synchronised. Empty where there is no HOME.
Path default_studio();

// $XDG_STATE_HOME/slabside, or ~/.local/state/slabside (XDG Base Directory Specification 0.8).
// Outside every studio, so that a copied studio is not a copied device. Empty where there is none.
Path state_folder();

// Where the lines of this studio go while the studio itself fails. `state` may be empty: none.
Path fallback_folder(const Path& state, const Path& studio);

// Four hexadecimal digits, kept in `state` from the first use on. Where they cannot be kept, a
// fresh one for this run: it only has to differ from other devices'.
std::string device_id(const Path& state, const std::function<std::uint32_t()>& fresh);

// Which studio lay under this name when this device last used it, and where that is remembered; of
// none where nothing can be. `anew`: whatever lies there now is the studio from now on.
std::optional<Identity> identity_of(const Path& state, const Path& studio,
                                    const std::string& device,
                                    const std::function<std::uint32_t()>& fresh, bool anew);

using MakeFiles = std::function<std::unique_ptr<disk::Files>()>;

// A disk below `root` (made absolute), which is made with the first file if it is not there now.
// `wake` as for disk::open_disk. `make` gives the system calls under it. With an identity it is a
// disk of that studio alone.
std::unique_ptr<disk::Disk> open(const Path& root, const std::optional<disk::Fault>& fault,
                                 std::function<void()> wake,
                                 const MakeFiles& make = disk::posix_files,
                                 std::optional<Identity> identity = std::nullopt);

struct Reading {
  std::vector<session::File> files;
  std::vector<words::Error> faults; // what could not be read at all
};

// An answer to a ReadFolder of the sessions folder; `prefix` goes before the files' names.
Reading reading_of(const disk::Answer& answer, const std::string& prefix = "");

// Everything that is kept of one studio, at home and in the fallback (which may be empty or not
// there). Waits for the disk.
Reading read_all(const Path& studio, const Path& fallback);

}
