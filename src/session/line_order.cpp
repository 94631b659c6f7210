#include "session/line_order.hpp"

#include "words/session_says.hpp"

namespace session {

using Say = words::SessionSay;

bool is_blank(std::string_view text) {
  return text.find_first_not_of(" \t\r") == std::string_view::npos;
}

std::optional<words::Error> odd_after(const Line& before, const Line& line) {
  if (std::holds_alternative<Left>(before.event)) return words::Error{Say::line_behind_left, {}};
  if (line.t >= before.t) return std::nullopt;
  const double back_s = static_cast<double>(before.t - line.t) / 1000;
  return words::Error{Say::line_back_in_time, {words::Number(back_s, 1)}};
}

}
