#include "commands/picture_home.hpp"
#include "studio/studio.hpp"

#include <fstream>

namespace commands {

namespace {

using Path = std::filesystem::path;
using studio::path_from_environment;

// XDG_PICTURES_DIR="$HOME/Bilder", or an absolute path.
Path pictures_named_in(const Path& file, const Path& home) {
  constexpr std::string_view key = "XDG_PICTURES_DIR=\"", home_word = "$HOME";
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) {
    if (line.compare(0, key.size(), key) != 0) continue;
    std::string value = line.substr(key.size());
    value = value.substr(0, value.find('"'));
    if (value.compare(0, home_word.size(), home_word) == 0)
      value = home.string() + value.substr(home_word.size());
    return value;
  }
  return {};
}

}

Path thumbs_folder() {
  const Path cache = path_from_environment("XDG_CACHE_HOME"), home = path_from_environment("HOME");
  if (!cache.empty()) return cache / "slabside" / "thumbs";
  return home.empty() ? home : home / ".cache" / "slabside" / "thumbs";
}

std::string pictures_folder() {
  const Path home = path_from_environment("HOME");
  if (home.empty()) return "/";
  Path config = path_from_environment("XDG_CONFIG_HOME");
  if (config.empty()) config = home / ".config";
  std::error_code failed;
  for (const Path& folder : {pictures_named_in(config / "user-dirs.dirs", home), home / "Pictures"})
    if (!folder.empty() && std::filesystem::is_directory(folder, failed)) return folder.string();
  return home.string();
}

}
