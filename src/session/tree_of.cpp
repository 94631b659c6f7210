#include "session/tree.hpp"

namespace session {

namespace {

void set_scalar(Value& v, const Json& json) {
  using Kind = Value::Kind;
  if (json.is_boolean()) v.kind = json.get<bool>() ? Kind::yes : Kind::no;
  if (json.is_null()) v.kind = Kind::none;
  if (json.is_string()) {
    v.kind = Kind::text;
    v.text = json.get_ref<const std::string&>();
  }
  if (json.is_number_unsigned()) {
    v.kind = Kind::natural;
    v.natural = json.get<std::uint64_t>();
  } else if (json.is_number_integer()) {
    v.kind = Kind::negative;
    v.negative = json.get<std::int64_t>();
  } else if (json.is_number_float()) {
    v.kind = Kind::real;
    v.real = json.get<double>();
  }
}

void add(Tree& tree, std::string_view name, const Json& json) {
  const std::size_t at = tree.values.size();
  tree.values.emplace_back().name = name;
  if (json.is_object())
    for (const auto& [key, inner] : json.get_ref<const Json::object_t&>()) add(tree, key, inner);
  else if (json.is_array())
    for (const Json& inner : json) add(tree, {}, inner);
  else
    set_scalar(tree.values[at], json);
  if (json.is_array()) tree.values[at].kind = Value::Kind::list;
  tree.values[at].span = static_cast<std::uint32_t>(tree.values.size() - at);
}

}

Tree tree_of(Json object, std::string_view line) {
  Tree tree;
  tree.line = line;
  tree.kept = std::move(object);
  add(tree, {}, tree.kept);
  return tree;
}

}
