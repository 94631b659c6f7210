#include "session/file_name.hpp"

#include "words/calendar.hpp"

#include <algorithm>
#include <string_view>

namespace session {

namespace {

// 2026-11-25T143200Z-07bd-5e1f20c70b94, and of a later part .1, then .jsonl
bool is_name_by_writer(std::string_view file) {
  file.remove_prefix(file.rfind('/') + 1); // of none: 0
  constexpr std::string_view form = "dddd-dd-ddTddddddZ-hhhh-hhhhhhhh", ending = ".jsonl";
  constexpr std::string_view digits = "0123456789", hex = "0123456789abcdef";
  if (file.size() < form.size() || !file.ends_with(ending)) return false;
  for (std::size_t i = 0; i < form.size(); ++i) {
    const std::string_view may = form[i] == 'd' ? digits : form[i] == 'h' ? hex : form.substr(i, 1);
    if (may.find(file[i]) == std::string_view::npos) return false;
  }
  std::string_view rest = file.substr(form.size(), file.size() - ending.size() - form.size());
  rest.remove_prefix(std::min(rest.find_first_not_of(hex), rest.size()));
  const bool part = rest.size() > 1 && rest.size() < 8 && rest.front() == '.';
  return rest.empty() || (part && rest.find_first_not_of(digits, 1) == std::string_view::npos);
}

// Of 2026-11-25T143200Z, in ms since 1970.
std::optional<std::int64_t> moment_in(std::string_view name) {
  name.remove_prefix(name.rfind('/') + 1);
  const auto days = words::days_of(name.substr(0, 10));
  const auto two = [&](std::size_t at) { return (name[at] - '0') * 10 + name[at + 1] - '0'; };
  if (!days) return std::nullopt;
  return ((*days * 24 + two(11)) * 60 + two(13)) * 60'000 + two(15) * 1000;
}

}

Named named_by(const std::string& file) {
  const std::size_t dash = file.rfind('-');
  const std::size_t dot = file.find('.', dash == std::string::npos ? 0 : dash);
  if (dash == std::string::npos || dot == std::string::npos) return {};
  Named named{file.substr(dash + 1, dot - dash - 1), std::nullopt, is_name_by_writer(file), {}};
  if (named.by_writer) named.began_at = moment_in(file);
  const std::size_t end = file.find('.', dot + 1);
  const std::string part = end == std::string::npos ? "" : file.substr(dot + 1, end - dot - 1);
  const bool digits =
      !part.empty() && part.size() < 7 && part.find_first_not_of("0123456789") == std::string::npos;
  if (digits) named.part = std::stoi(part);
  return named;
}

}
