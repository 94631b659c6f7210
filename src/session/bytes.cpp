#include "session/bytes.hpp"

#include "session/check_value.hpp"
#include "session/event_json.hpp"

#include <set>

namespace session {

namespace {

constexpr std::string_view seal_start = ",\"c\":\"";
constexpr int deepest = 8;

// nlohmann keeps the last of two equal keys and nests without bound; both are damage here.
struct Shape {
  std::vector<std::set<std::string>> keys;
  bool twice = false;
  bool too_deep = false;

  bool operator()(int depth, Json::parse_event_t event, Json& value) {
    too_deep |= depth > deepest;
    if (event == Json::parse_event_t::object_start) keys.emplace_back();
    if (event == Json::parse_event_t::object_end) keys.pop_back();
    if (event == Json::parse_event_t::key)
      twice |= !keys.back().insert(value.get<std::string>()).second;
    return true;
  }
};

}

words::Result<Encoded> encode(const Line& line, std::uint32_t before) {
  Json j = {{"n", line.n}, {"t", line.t}, {"at", line.at}, {"e", kind_of(line.event)}};
  if (!line.batch.empty()) j["batch"] = line.batch;
  write_fields(line.event, j);
  std::string body = j.dump(-1, ' ', false, Json::error_handler_t::replace);
  // Text is checked where it enters; a replacement sign here would be a silent change of it.
  if (const std::string strict = j.dump(-1, ' ', false, Json::error_handler_t::ignore);
      strict != body)
    return words::failure(words::Say::text_not_utf8);
  body.pop_back(); // the closing brace, behind which the check value goes
  const std::uint32_t check = crc32c(body, before);
  std::string bytes = body + std::string(seal_start) + to_hex(check) + "\"}\n";
  if (bytes.size() > longest_line)
    return words::failure(words::Say::line_too_long,
                          {std::to_string(bytes.size()), std::to_string(longest_line)});
  return Encoded{std::move(bytes), check};
}

words::Result<Line> decode(std::string_view text) {
  if (text.size() >= longest_line)
    return words::failure(words::Say::line_too_long,
                          {std::to_string(text.size() + 1), std::to_string(longest_line)});
  Shape shape;
  const Json j = Json::parse(text.begin(), text.end(), std::ref(shape), false);
  if (j.is_discarded() || !j.is_object()) return words::failure(words::Say::line_not_an_object);
  if (shape.twice) return words::failure(words::Say::field_twice);
  if (shape.too_deep) return words::failure(words::Say::line_too_deep);
  Fields fields(j);
  constexpr std::int64_t far = std::int64_t{1} << 53;
  Line line;
  line.n = static_cast<std::uint64_t>(fields.integer("n", 0, far));
  line.t = fields.integer("t", 0, far);
  line.at = fields.integer("at", -far, far);
  line.batch = fields.text_or("batch", "");
  const std::string kind = fields.text("e");
  if (fields.fault()) return tl::make_unexpected(*fields.fault());
  auto event = read_event(kind, j);
  if (!event) return tl::make_unexpected(event.error());
  line.event = *std::move(event);
  return line;
}

std::optional<Sealed> unseal(std::string_view text) {
  if (text.size() < seal_length) return std::nullopt;
  const std::string_view body = text.substr(0, text.size() - seal_length);
  const std::string_view seal = text.substr(body.size());
  if (seal.substr(0, 6) != seal_start || seal.substr(14) != "\"}") return std::nullopt;
  const auto check = from_hex(seal.substr(6, 8));
  if (!check) return std::nullopt;
  return Sealed{body, *check};
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
