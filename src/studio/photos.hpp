// Photos are kept whole, under the SHA-256 of their bytes, before any line names them. So a name
// tells whether its photo is as it was, and the same photo is kept once however often it is added.
#pragma once

#include "disk/disk.hpp"
#include "session/event.hpp"
#include "session/reader.hpp"
#include "studio/bell.hpp"
#include "studio/pieces.hpp"
#include "words/error.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace studio {

inline constexpr const char* photos_folder = "photos";

// The event for a picture's bytes, once they were seen to make a picture. Errors: those of
// decode_picture.
words::Result<session::Photo> photo_from(std::string_view bytes, session::PhotoOf of);

// Below the studio: "photos/9f86d081….jpg"
std::string photo_file(const session::Photo& photo);

// Puts the photo on the disk, and when it is safe there, a session's lines (from its Began on) that
// name it. Waits for the disk; nobody else may be asking it anything. `bell` is what the disk's
// wake rings. Answers with what went wrong: then the photo may be there without the
// lines, never the lines without the photo.
std::optional<words::Error> keep_photo(disk::Disk& disk, const Bell& bell,
                                       const session::Photo& photo, std::string bytes,
                                       std::vector<session::Line> lines);

// A session's lines (from its Began on) by themselves, likewise.
std::optional<words::Error> keep_lines(disk::Disk& disk, const Bell& bell,
                                       std::vector<session::Line> lines);

// One for every photo that a line names and that is missing or was changed, in the order of
// the lines. Reads one after the other, piece by piece.
std::vector<words::Error> photo_faults(disk::Files& files, const std::filesystem::path& studio,
                                       const std::vector<session::File>& sessions);

}
