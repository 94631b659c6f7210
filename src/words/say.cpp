#include "words/say.hpp"

#include <iomanip>
#include <locale>
#include <sstream>

namespace words {

namespace {

Language spoken = Language::english;

std::string fill(std::string_view form, const std::vector<std::string>& args) {
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

}

void say_in(Language language) { spoken = language; }

std::string say(Say id, const std::vector<std::string>& args) {
  return spoken == Language::pseudo ? fill(pseudo(pattern(id)), args) : fill(pattern(id), args);
}

std::string fixed(double value, int decimals) {
  std::ostringstream text;
  text.imbue(std::locale::classic()); // a point, and nothing between thousands, in any language
  text << std::fixed << std::setprecision(decimals) << value;
  const std::string out = text.str();
  const bool minus_nothing = out[0] == '-' && out.find_first_not_of("-0.") == std::string::npos;
  return minus_nothing ? out.substr(1) : out;
}

}
