#include "session/bytes.hpp"

#include "session/check_value.hpp"
#include "session/event_json.hpp"
#include "words/session_says.hpp"

namespace session {

namespace {

constexpr std::string_view before_start = ",\"p\":\"";
constexpr std::string_view check_start = ",\"c\":\"";
constexpr std::string_view seal_end = "\"}";
constexpr std::size_t digits = 8;
constexpr std::size_t before_length = before_start.size() + digits + 1;
constexpr std::size_t check_length = check_start.size() + digits + seal_end.size();

}

std::uint32_t seed_of(const std::string& session, int part) {
  return crc32c(session + "." + std::to_string(part));
}

std::uint32_t seed_of(const Began& began) {
  return began.version < 2 ? 0 : seed_of(began.session, began.part);
}

namespace {

// `body` without the check value of the line before it.
Encoded sealed_with(std::string body, std::uint32_t before, std::uint32_t seed) {
  body.append(before_start).append(to_hex(before)).append("\"");
  const std::uint32_t check = crc32c(body, before ^ seed);
  body.append(check_start).append(to_hex(check)).append(seal_end).append("\n");
  return {std::move(body), check};
}

}

words::Result<Encoded> encode(const Line& line, std::uint32_t before, std::uint32_t seed) {
  Json j = {{"n", line.n}, {"t", line.t}, {"at", line.at}, {"e", kind_of(line.event)}};
  if (!line.batch.empty()) j["batch"] = line.batch;
  write_fields(line.event, j);
  std::string body = j.dump(-1, ' ', false, Json::error_handler_t::replace);
  // Text is checked where it enters; a replacement sign here would be a silent change of it.
  if (const std::string strict = j.dump(-1, ' ', false, Json::error_handler_t::ignore);
      strict != body)
    return words::failure(words::SessionSay::text_not_utf8);
  body.pop_back(); // the closing brace, which goes behind the check values
  Encoded sealed = sealed_with(std::move(body), before, seed);
  if (sealed.bytes.size() > longest_line)
    return words::failure(words::SessionSay::line_too_long,
                          {std::to_string(sealed.bytes.size()), std::to_string(longest_line)});
  return sealed;
}

Encoded resealed(const Sealed& sealed, std::uint32_t before, std::uint32_t seed) {
  const std::string_view own = sealed.body.substr(0, sealed.body.size() - before_length);
  return sealed_with(std::string(own), before, seed);
}

namespace {

// All of a line but what happened.
struct Head {
  Line line;
  std::string kind;
  Tree tree;
};

words::Result<Head> head_of(std::string_view text) {
  if (text.size() >= longest_line)
    return words::failure(words::SessionSay::line_too_long,
                          {std::to_string(text.size() + 1), std::to_string(longest_line)});
  auto tree = read_tree(text);
  if (!tree) return tl::make_unexpected(tree.error());
  Head head;
  head.tree = *std::move(tree);
  Fields fields(head.tree.object());
  constexpr std::int64_t far = std::int64_t{1} << 53;
  head.line.n = static_cast<std::uint64_t>(fields.integer("n", 0, far));
  head.line.t = fields.integer("t", 0, far);
  head.line.at = fields.integer("at", -far, far);
  head.line.batch = fields.text_or("batch", "");
  if (head.line.batch.empty() && fields.has("batch"))
    fields.reject(words::SessionSay::field_empty, "batch");
  head.kind = fields.text("e");
  if (fields.fault()) return tl::make_unexpected(*fields.fault());
  return head;
}

}

words::Result<Line> decode(std::string_view text) {
  auto head = head_of(text);
  if (!head) return tl::make_unexpected(head.error());
  auto event = read_event(head->kind, head->tree);
  if (!event) return tl::make_unexpected(event.error());
  head->line.event = *std::move(event);
  return std::move(head->line);
}

bool reads_back(const Event& event) {
  Line line;
  line.event = event;
  const auto written = encode(line, 0);
  return written && decode(std::string_view(written->bytes).substr(0, written->bytes.size() - 1));
}

words::Result<Line> decode_newer(std::string_view text) {
  auto head = head_of(text);
  if (!head) return tl::make_unexpected(head.error());
  auto event = read_event(head->kind, head->tree);
  head->line.event = event ? *std::move(event) : unknown_from(head->kind, head->tree);
  return std::move(head->line);
}

std::optional<Sealed> unseal(std::string_view text) {
  if (text.size() < before_length + check_length) return std::nullopt;
  const std::string_view body = text.substr(0, text.size() - check_length);
  const std::string_view before = body.substr(body.size() - before_length);
  const std::string_view seal = text.substr(body.size());
  const bool formed = before.substr(0, before_start.size()) == before_start &&
                      before.back() == '"' && seal.substr(0, check_start.size()) == check_start &&
                      seal.substr(check_start.size() + digits) == seal_end;
  if (!formed) return std::nullopt;
  const auto previous = from_hex(before.substr(before_start.size(), digits));
  const auto check = from_hex(seal.substr(check_start.size(), digits));
  if (!previous || !check) return std::nullopt;
  return Sealed{body, *previous, *check};
}

bool is_intact(const Sealed& sealed, std::uint32_t seed) {
  return crc32c(sealed.body, sealed.before ^ seed) == sealed.check;
}

std::string_view without_cr(std::string_view text) {
  if (text.empty() || text.back() != '\r') return text;
  const std::string_view line = text.substr(0, text.size() - 1);
  return unseal(line) ? line : text;
}

std::string_view without_bom(std::string_view bytes) {
  constexpr std::string_view bom = "\xEF\xBB\xBF";
  return bytes.starts_with(bom) ? bytes.substr(bom.size()) : bytes;
}

bool is_utf8(std::string_view text) {
  return Json(std::string(text)).dump(-1, ' ', false, Json::error_handler_t::ignore) ==
         Json(std::string(text)).dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string first_characters(std::string_view text, std::size_t most) {
  std::size_t seen = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool starts = (static_cast<unsigned char>(text[i]) & 0xC0) != 0x80;
    if (starts && seen++ == most) return std::string(text.substr(0, i));
  }
  return std::string(text);
}

}
