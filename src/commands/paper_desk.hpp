// Where what the window hands on is written and shown, beside whoever draws.
#pragma once

#include "commands/picture_home.hpp"
#include "commands/storage.hpp"
#include "disk/files.hpp"

#include <filesystem>

namespace commands {

// Writes into a folder within the studio, which is made when it is first needed. `viewer` is the
// program that is given each file; empty: none is. Throws std::system_error where the system gives
// no thread.
Papers paper_desk(PictureHome home, std::unique_ptr<disk::Files> files, const std::string& viewer,
                  std::function<void()> wake);

// The folder's name within a studio.
inline constexpr const char* paper_folder = "paper";

// A new file, or the one of this name that says the same already. Errors: those of the disk.
words::Result<std::filesystem::path>
write_paper(disk::Files& files, const std::filesystem::path& studio, const HandedFile& file);

}
