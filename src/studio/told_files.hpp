// Files by which studios tell each other what they have learnt (paint/range/TOLD.md), in a folder
// of the studio's own.
#pragma once

#include "disk/files.hpp"
#include "paint/range/told.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>

namespace studio {

inline constexpr const char* told_folder = "told";

// As a file of this day that was not there, and where it lies; one of this day that says the same
// stays the only one. Errors: those of the disk.
words::Result<std::filesystem::path> write_told(disk::Files& files,
                                                const std::filesystem::path& studio,
                                                const std::string& day,
                                                const paint::ToldRange& told);

struct ToldFile {
  std::string name;
  std::int64_t at = 0; // when it was last written, ms since 1970
  paint::ToldRange told;
  std::optional<words::Error> passed_over; // a later file that cannot be used: told_file_refused
};

// Of the folder's files (*.json) that can be used the one which was written last, but for the
// studio's own; absent where there is none. Errors: the disk's, and told_file_refused with those of
// paint::told_from and paint::implausible, where that is all there is.
words::Result<std::optional<ToldFile>>
newest_told(disk::Files& files, const std::filesystem::path& studio,
            const std::function<bool(const paint::ToldRange&)>& is_own);

}
