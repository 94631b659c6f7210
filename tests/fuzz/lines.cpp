// One line: what is read of it can be written, and is read the same again.
#include "fuzz/must.hpp"
#include "fuzz/seal.hpp"
#include "session/bytes.hpp"
#include "session/same_tree.hpp"
#include "words/session_says.hpp"

using fuzz::must;

namespace {

void written_and_read_again(const session::Line& line) {
  const auto encoded = session::encode(line, 0x5ea1);
  if (!encoded) {
    const bool longer = encoded.error().what == words::SessionSay::line_too_long;
    return must(longer, "what was read is UTF-8");
  }
  must(encoded->bytes.back() == '\n', "a line ends with LF");
  const std::string_view text =
      std::string_view(encoded->bytes).substr(0, encoded->bytes.size() - 1);
  must(text.find('\n') == std::string_view::npos, "a line is one line");
  const auto seal = fuzz::seal_of(text);
  must(seal && seal->p == 0x5ea1 && seal->c == encoded->check && fuzz::fits(text, *seal),
       "a line is sealed as the format page says");
  const auto again = session::decode(text);
  must(again.has_value(), "what was written is read");
  must(*again == line, "what was written is read the same");
}

}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto sealed = session::unseal(text);
  const auto seal = fuzz::seal_of(text);
  must(sealed.has_value() == seal.has_value(), "there is a seal or none");
  if (sealed) must(session::is_intact(*sealed) == fuzz::fits(text, *seal), "the seal fits or not");

  must(same_tree::read_alike(text), "two readers read the same");
  const auto line = session::decode(text);
  const auto newer = session::decode_newer(text);
  if (!line) return 0;
  must(newer.has_value() && *newer == *line, "what is read is read the same of a newer format");
  written_and_read_again(*line);
  return 0;
}
