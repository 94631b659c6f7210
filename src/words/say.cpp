#include "words/say.hpp"

#include <array>
#include <cstdio>

namespace words {

std::string say(Say id, const std::vector<std::string>& args) {
  const std::string_view form = pattern(id);
  std::string out;
  for (std::size_t i = 0; i < form.size(); ++i) {
    const bool slot = form[i] == '{' && i + 2 < form.size() && form[i + 2] == '}';
    if (!slot) {
      out += form[i];
      continue;
    }
    const auto which = static_cast<std::size_t>(form[i + 1] - '0');
    if (which < args.size()) out += args[which];
    i += 2;
  }
  return out;
}

std::string fixed(double value, int decimals) {
  std::array<char, 400> text{};
  const int length = std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
  std::string out(text.data(), static_cast<std::size_t>(length));
  const bool minus_nothing = out[0] == '-' && out.find_first_not_of("-0.") == std::string::npos;
  return minus_nothing ? out.substr(1) : out;
}

}
