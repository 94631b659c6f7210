#include "studio/browser_answer.hpp"

#include "words/paint_says.hpp"

#include <cstdlib>

namespace studio {

std::string written_answer(const words::Result<std::string>& answer) {
  if (answer) return "+" + *answer;
  const words::Sentence what = answer.error().what;
  std::string out =
      "-" + std::to_string(static_cast<int>(what.table)) + " " + std::to_string(what.row);
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
  if (lines.empty()) return words::failure(words::PaintSay::learn_not_json);
  char* row = nullptr;
  const long table = std::strtol(lines[0].c_str(), &row, 10);
  const words::Sentence what{static_cast<words::Table>(table), std::atoi(row)};
  return words::failure(what, {lines.begin() + 1, lines.end()});
}

}
