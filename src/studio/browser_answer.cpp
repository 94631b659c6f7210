#include "studio/browser_answer.hpp"

#include "words/paint_says.hpp"

#include <nlohmann/json.hpp>

namespace studio {

namespace {

using Json = nlohmann::json;

Json as_json(const words::Arg& arg) {
  if (const auto* number = std::get_if<words::Number>(&arg.is))
    return {number->value, number->decimals};
  return words::written(arg);
}

words::Arg arg_of(const Json& arg) {
  if (arg.is_array()) return words::Number(arg[0].get<double>(), arg[1].get<int>());
  return arg.get<std::string>();
}

}

std::string written_answer(const words::Result<std::string>& answer) {
  if (answer) return "+" + *answer;
  Json args = Json::array();
  for (const words::Arg& arg : answer.error().args) args.push_back(as_json(arg));
  const words::Sentence what = answer.error().what;
  const Json all = {{"table", what.table}, {"row", what.row}, {"args", args}};
  return "-" + all.dump(-1, ' ', false, Json::error_handler_t::replace);
}

words::Result<std::string> read_answer(std::string_view bytes) {
  if (!bytes.empty() && bytes[0] == '+') return std::string(bytes.substr(1));
  const Json all = Json::parse(bytes.substr(bytes.empty() ? 0 : 1), nullptr, false);
  if (!all.is_object()) return words::failure(words::PaintSay::learn_not_json);
  words::Args args;
  for (const Json& arg : all["args"]) args.push_back(arg_of(arg));
  return words::failure(words::Sentence{all["table"].get<words::Table>(), all["row"].get<int>()},
                        std::move(args));
}

}
