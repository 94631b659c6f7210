#include "studio/browser_answer.hpp"

#include <cstdlib>

namespace studio {

std::string written_answer(const words::Result<std::string>& answer) {
  if (answer) return "+" + *answer;
  std::string out = "-" + std::to_string(static_cast<int>(answer.error().what));
  for (const std::string& arg : answer.error().args) out += "\n" + arg;
  return out;
}

words::Result<std::string> read_answer(std::string_view bytes) {
  if (!bytes.empty() && bytes[0] == '+') return std::string(bytes.substr(1));
  std::vector<std::string> lines;
  for (std::size_t from = 1; from <= bytes.size();) {
    const std::size_t to = std::min(bytes.find('\n', from), bytes.size());
    lines.emplace_back(bytes.substr(from, to - from));
    from = to + 1;
  }
  if (lines.empty()) return words::failure(words::Say::learn_not_json);
  const auto what = static_cast<words::Say>(std::atoi(lines[0].c_str()));
  return words::failure(what, {lines.begin() + 1, lines.end()});
}

}
