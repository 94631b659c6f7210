#include "session/tree.hpp"

#include <simdjson.h>

#include <algorithm>

namespace session {

namespace {

constexpr int deepest = 8;
constexpr std::size_t usual_values = 20;
constexpr std::size_t most_fields = 32; // to be looked through for one that is there twice

using Element = simdjson::dom::element;
using Type = simdjson::dom::element_type;

// What a line is as a writer writes it, or nothing: any other is for the slower reader to judge,
// which knows what is wrong.
class Quick {
public:
  explicit Quick(std::string_view line) : line_(line) { tree_.line = line; }

  std::optional<Tree> read() {
    thread_local simdjson::dom::parser parser;
    thread_local std::vector<char> padded; // simdjson reads beyond the end
    Element root;
    if (line_.find('\\') != std::string_view::npos) return std::nullopt; // half a letter pair, say
    padded.resize(std::max(padded.size(), line_.size() + simdjson::SIMDJSON_PADDING));
    std::copy(line_.begin(), line_.end(), padded.begin());
    if (parser.parse(padded.data(), line_.size(), false).get(root)) return std::nullopt;
    tree_.values.reserve(usual_values);
    if (root.type() != Type::OBJECT || !add({}, root, 1)) return std::nullopt;
    return std::move(tree_);
  }

private:
  bool add(std::string_view name, Element element, int depth) {
    const std::size_t at = tree_.values.size();
    tree_.values.emplace_back().name = name;
    if (!fill(at, element, depth)) return false;
    tree_.values[at].span = static_cast<std::uint32_t>(tree_.values.size() - at);
    return true;
  }

  bool fill(std::size_t at, Element element, int depth) {
    Value& v = tree_.values[at];
    switch (element.type()) {
    case Type::OBJECT: return depth <= deepest && add_fields(at, element, depth);
    case Type::ARRAY: return depth <= deepest && add_list(at, element, depth);
    case Type::STRING: return set(v, Value::Kind::text, v.text, element);
    case Type::INT64: return set_integer(v, element);
    case Type::UINT64: return set(v, Value::Kind::natural, v.natural, element);
    case Type::DOUBLE: return set(v, Value::Kind::real, v.real, element);
    case Type::BOOL: return set_yes_or_no(v, element);
    case Type::NULL_VALUE: v.kind = Value::Kind::none; return true;
    }
    return false;
  }

  template <class T>
  static bool set(Value& v, Value::Kind kind, T& to, Element element) {
    v.kind = kind;
    return element.get(to) == simdjson::SUCCESS;
  }

  static bool set_yes_or_no(Value& v, Element element) {
    bool yes = false;
    const bool known = element.get(yes) == simdjson::SUCCESS;
    v.kind = yes ? Value::Kind::yes : Value::Kind::no;
    return known;
  }

  // The slower reader tells 0 from -0.
  bool set_integer(Value& v, Element element) const {
    if (element.get(v.negative) != simdjson::SUCCESS) return false;
    v.kind = v.negative < 0 ? Value::Kind::negative : Value::Kind::natural; // the same bits
    return v.negative != 0 || !may_say_minus_nought();
  }

  bool may_say_minus_nought() const {
    for (std::size_t at = line_.find("-0"); at != std::string_view::npos;
         at = line_.find("-0", at + 1))
      if (at > 0 && std::string_view(":[, \t\n\r").find(line_[at - 1]) != std::string_view::npos)
        return true;
    return false;
  }

  bool add_fields(std::size_t at, Element element, int depth) {
    std::size_t fields = 0;
    for (const auto& [key, value] : simdjson::dom::object(element)) {
      const bool twice = ++fields > most_fields || is_there(at, key);
      if (twice || !add(key, value, depth + 1)) return false;
    }
    return true;
  }

  bool add_list(std::size_t at, Element element, int depth) {
    tree_.values[at].kind = Value::Kind::list;
    for (const Element each : simdjson::dom::array(element))
      if (!add({}, each, depth + 1)) return false;
    return true;
  }

  // Behind `at` stands nothing but what is inside of it.
  bool is_there(std::size_t at, std::string_view key) const {
    for (std::size_t i = at + 1; i < tree_.values.size(); i += tree_.values[i].span)
      if (tree_.values[i].name == key) return true;
    return false;
  }

  std::string_view line_;
  Tree tree_;
};

}

words::Result<Tree> read_tree(std::string_view line) {
  if (auto quick = Quick(line).read()) return *std::move(quick);
  auto object = read_object(line);
  if (!object) return tl::make_unexpected(object.error());
  return tree_of(*std::move(object), line);
}

}
