#include "session/bytes.hpp"
#include "studio/journal.hpp"
#include "studio/pack.hpp"
#include "studio/photos.hpp"
#include "words/letter_case.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
#include <array>

namespace studio {

namespace {

using Say = words::StudioSay;

// No control sign, and nothing by which a path means something, here or on another system.
bool plain(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte >= 0x20 && byte != 0x7F &&
         std::string_view("\\:*?\"<>|").find(c) == std::string::npos;
}

// Unicode's Bidi_Control and its line ends, by which a name shows as another than it is (Unicode
// 15.0, PropList.txt; UAX #14), and the control signs from U+0080 to U+009F.
bool misleads(std::string_view name) {
  constexpr std::array<std::string_view, 14> signs{"\u061C", "\u200E", "\u200F", "\u2028", "\u2029",
                                                   "\u202A", "\u202B", "\u202C", "\u202D", "\u202E",
                                                   "\u2066", "\u2067", "\u2068", "\u2069"};
  for (std::size_t at = name.find('\xC2'); at != std::string_view::npos;
       at = name.find('\xC2', at + 1))
    if (static_cast<unsigned char>(name[at + 1]) < 0xA0) return true;
  return std::any_of(signs.begin(), signs.end(), [&](std::string_view sign) {
    return name.find(sign) != std::string_view::npos;
  });
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
  if (parts[0] == photos_folder) return is_photo_name(file);
  return parts[0] == sessions_folder && file.size() > ending.size() &&
         file.substr(file.size() - ending.size()) == ending;
}

}

bool is_photo_name(std::string_view file) {
  constexpr std::size_t digits = 64;
  const std::string_view ending = file.substr(std::min(file.size(), digits));
  return file.find_first_not_of("0123456789abcdef") == digits &&
         (ending == ".jpg" || ending == ".png");
}

std::optional<words::Error> PackNames::take(std::string_view name) {
  const words::Args args{std::string(name)};
  const auto parts = components(name);
  if (!session::is_utf8(name)) return words::Error{Say::entry_not_utf8, args};
  if (!std::all_of(name.begin(), name.end(), plain) || misleads(name))
    return words::Error{Say::entry_odd_name, args};
  if (leaves(parts)) return words::Error{Say::entry_leaves, args};
  if (!belongs(parts)) return words::Error{Say::entry_elsewhere, args};
  if (!taken_.insert(words::in_small_letters(name)).second)
    return words::Error{Say::entry_twice, args};
  if (taken_.size() > most_pack_entries)
    return words::Error{Say::pack_too_many, {std::to_string(most_pack_entries)}};
  return std::nullopt;
}

}
