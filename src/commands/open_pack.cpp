#include "commands/open_pack.hpp"

#include "commands/show.hpp"
#include "studio/pack.hpp"
#include "studio/pieces.hpp"
#include "words/commands_says.hpp"

#include <ostream>

namespace commands {

words::Result<Path> open_pack(const Path& file, const Path& home, std::ostream& out) {
  const auto files = disk::posix_files();
  const auto sum = studio::sha256_of_file(*files, file);
  if (!sum) return tl::make_unexpected(sum.error());
  const Path folder = home / ("Slabside-" + file.stem().string() + "-" + sum->substr(0, 8));
  std::error_code failed;
  if (!std::filesystem::is_directory(folder, failed))
    if (const auto unpacked = studio::unpack(*files, file, folder); !unpacked)
      return tl::make_unexpected(unpacked.error());
  out << printable(words::say(words::CommandsSay::pack_opened, {folder.string()})) << std::endl;
  return folder;
}

}
