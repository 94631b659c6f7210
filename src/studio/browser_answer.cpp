#include "studio/browser_answer.hpp"

#include "words/paint_says.hpp"

#include <nlohmann/json.hpp>

namespace studio {

namespace {

using Json = nlohmann::ordered_json;

Json as_json(const words::Error& error);
words::Error error_of(const Json& error);

// No words: the sentences stay with the page, which alone knows its language.
Json as_json(const words::Arg& arg) {
  if (const auto* number = std::get_if<words::Number>(&arg.is))
    return {number->value, number->decimals};
  if (const auto* inner = std::get_if<words::Inner>(&arg.is)) return as_json(**inner);
  return std::get<std::string>(arg.is);
}

words::Arg arg_of(const Json& arg) {
  if (arg.is_array()) return words::Number(arg[0].get<double>(), arg[1].get<int>());
  if (arg.is_object()) return words::Inner(error_of(arg));
  return arg.get<std::string>();
}

Json as_json(const words::Error& error) {
  Json args = Json::array();
  for (const words::Arg& arg : error.args) args.push_back(as_json(arg));
  return {{"table", error.what.table}, {"row", error.what.row}, {"args", args}};
}

words::Error error_of(const Json& error) {
  words::Error out{{error["table"].get<words::Table>(), error["row"].get<int>()}, {}};
  for (const Json& arg : error["args"]) out.args.push_back(arg_of(arg));
  return out;
}

}

std::string written_answer(const words::Result<std::string>& answer) {
  if (answer) return "+" + *answer;
  return "-" + as_json(answer.error()).dump(-1, ' ', false, Json::error_handler_t::replace);
}

words::Result<std::string> read_answer(std::string_view bytes) {
  if (!bytes.empty() && bytes[0] == '+') return std::string(bytes.substr(1));
  const Json all = Json::parse(bytes.substr(bytes.empty() ? 0 : 1), nullptr, false);
  if (!all.is_object()) return words::failure(words::PaintSay::learn_not_json);
  return tl::make_unexpected(error_of(all));
}

}
