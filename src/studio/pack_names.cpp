#include "studio/journal.hpp"
#include "studio/pack.hpp"
#include "studio/photos.hpp"

#include <algorithm>

namespace studio {

namespace {

using words::Say;

// Printable ASCII but for what a path means something by, here or on another system.
bool plain(char c) {
  return c >= 0x20 && c < 0x7F && std::string_view("\\:*?\"<>|").find(c) == std::string_view::npos;
}

std::vector<std::string_view> components(std::string_view name) {
  std::vector<std::string_view> all;
  for (;;) {
    const std::size_t slash = name.find('/');
    all.push_back(name.substr(0, slash));
    if (slash == std::string_view::npos) return all;
    name.remove_prefix(slash + 1);
  }
}

bool leaves(const std::vector<std::string_view>& parts) {
  return std::any_of(parts.begin(), parts.end(), [](std::string_view part) {
    return part.empty() || part == "." || part == "..";
  });
}

bool belongs(const std::vector<std::string_view>& parts) {
  if (parts.size() != 2) return false;
  const std::string_view ending = sessions_ending;
  const std::string_view file = parts[1];
  if (parts[0] == photos_folder) return true;
  return parts[0] == sessions_folder && file.size() > ending.size() &&
         file.substr(file.size() - ending.size()) == ending;
}

std::string in_small_letters(std::string_view name) {
  std::string small(name);
  for (char& c : small)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return small;
}

}

std::optional<words::Error> PackNames::take(std::string_view name) {
  const std::vector<std::string> args{std::string(name)};
  const auto parts = components(name);
  if (!std::all_of(name.begin(), name.end(), [](char c) { return plain(c); }))
    return words::Error{Say::entry_odd_name, args};
  if (leaves(parts)) return words::Error{Say::entry_leaves, args};
  if (!belongs(parts)) return words::Error{Say::entry_elsewhere, args};
  if (!taken_.insert(in_small_letters(name)).second) return words::Error{Say::entry_twice, args};
  if (taken_.size() > most_pack_entries)
    return words::Error{Say::pack_too_many, {std::to_string(most_pack_entries)}};
  return std::nullopt;
}

}
