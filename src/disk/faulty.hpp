// Disks that fail on purpose, for the tests and for the program's own --fault option.
#pragma once

#include "disk/disk.hpp"
#include "disk/files.hpp"

#include <chrono>
#include <string_view>

namespace disk {

struct Fault {
  enum class Kind {
    slow,   // every force, of files and of folders, takes so long
    fail,   // calls fail
    silent, // appends are neither done nor ever answered
  };
  enum class Call {
    any,
    write,
    force,  // of a file's bytes
    open,   // of a new file
    folder, // making a folder, forcing a folder
    read,   // listing a folder, reading a file
    rename, // giving a file another name, removing it
    name,   // whether a name is still the file's; not counted among any
  };

  Kind kind = Kind::fail;
  std::chrono::milliseconds delay{0}; // of slow
  Call call = Call::any;              // of fail, as the rest:
  int nth = 1;                        // counted among its own kind, from 1
  bool from = false;                  // the n-th and all after it, not the n-th alone
  int code = 0;                       // errno

  bool operator==(const Fault&) const = default;
};

// "slow:150" in milliseconds; "silent"; "fail:7", "fail-from:7", and the same for one kind of call:
// "fail-write:3", "fail-write-from:3", also -force, -open, -folder, -read, -rename, -name. A
// failure is ENOSPC, or what is named behind it, "fail:7:EIO": ENOSPC, EIO, EROFS, EMFILE, EACCES,
// EDQUOT or ESTALE. Nothing for any other text. Numbers are from 1 to 1 000 000.
std::optional<Fault> parse_fault(std::string_view text);

// Passes every call on, except as the fault wants it. A write that fails has written the first half
// of its bytes, as a full disk does; any other call that fails has done nothing. Closing never
// fails and is not counted. A silent fault changes nothing here: see below.
std::unique_ptr<Files> faulty_files(std::unique_ptr<Files> inner, Fault fault);

// Storage that never confirms: reads pass through, appends vanish and are not answered. Its submit
// and answers are for one thread, unlike those of open_disk.
std::unique_ptr<Disk> silent_disk(std::unique_ptr<Disk> inner);

}
