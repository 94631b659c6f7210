// Reading the fields of one JSON object: the first fault is remembered and named, later reads give
// harmless values, so that a reader of an event is a plain list of its fields.
#pragma once

#include "session/event.hpp"
#include "session/strict_json.hpp"
#include "words/error.hpp"
#include "words/session_says.hpp"

#include <limits>
#include <optional>

namespace session {

class Fields {
public:
  explicit Fields(const Json& object) : object_(object) {}

  bool has(const char* name) const { return object_.contains(name); }

  double number(const char* name, double least, double most) {
    const Json* field = find(name);
    if (!field) return least;
    if (!field->is_number()) return fault(words::SessionSay::field_not_a_number, name), least;
    const double value = field->get<double>();
    if (!(value >= least && value <= most))
      return fault(words::SessionSay::field_out_of_range, name, field->dump()), least;
    return value;
  }

  double number_or(const char* name, double least, double most, double otherwise) {
    return has(name) ? number(name, least, most) : otherwise;
  }

  std::int64_t integer(const char* name, std::int64_t least, std::int64_t most) {
    const Json* field = find(name);
    if (!field) return least;
    const bool fits = field->is_number_integer() &&
                      (!field->is_number_unsigned() ||
                       field->get<std::uint64_t>() <=
                           static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max()));
    if (!fits) return fault(words::SessionSay::field_not_whole, name), least;
    const auto value = field->get<std::int64_t>();
    if (value < least || value > most)
      return fault(words::SessionSay::field_out_of_range, name, field->dump()), least;
    return value;
  }

  std::string text(const char* name) {
    const Json* field = find(name);
    if (!field) return "";
    if (!field->is_string()) return fault(words::SessionSay::field_not_text, name), "";
    return field->get<std::string>();
  }

  std::string text_or(const char* name, std::string otherwise) {
    return has(name) ? text(name) : std::move(otherwise);
  }

  std::vector<std::string> texts_or_none(const char* name) {
    std::vector<std::string> out;
    if (!has(name)) return out;
    const Json* field = find(name);
    bool texts = field->is_array();
    for (const Json& each : *field) {
      texts = texts && each.is_string();
      if (texts) out.push_back(each.get<std::string>());
    }
    if (!texts) fault(words::SessionSay::field_not_text, name);
    return out;
  }

  std::vector<Json> objects_or_none(const char* name) {
    std::vector<Json> out;
    if (!has(name)) return out;
    const Json* field = find(name);
    if (!field->is_array()) return fault(words::SessionSay::field_not_list, name), out;
    for (const Json& each : *field) {
      if (!each.is_object()) return fault(words::SessionSay::field_not_object, name), out;
      out.push_back(each);
    }
    return out;
  }

  bool yes(const char* name) {
    if (!has(name)) return false;
    const Json* field = find(name);
    if (!field->is_boolean()) return fault(words::SessionSay::field_not_yes_or_no, name), false;
    return field->get<bool>();
  }

  // A word of a closed list; one that is not in it makes the event unknown, not damaged.
  template <class E>
  E word(const char* name, std::optional<E> (*named)(std::string_view)) {
    const std::string value = text(name);
    const std::optional<E> known = named(value);
    if (!known && !fault_) unknown_word_ = true;
    return known.value_or(E{});
  }

  Json object(const char* name) {
    const Json* field = find(name);
    if (!field) return Json::object();
    if (!field->is_object())
      return fault(words::SessionSay::field_not_object, name), Json::object();
    return *field;
  }

  Ref ref(const char* name) {
    const Json* field = find(name);
    const bool good = field && field->is_array() && field->size() == 2 && (*field)[0].is_string() &&
                      (*field)[1].is_number_unsigned();
    if (!good) return fault(words::SessionSay::field_not_a_line, name), Ref{};
    return {(*field)[0].get<std::string>(), (*field)[1].get<std::uint64_t>()};
  }

  void take_fault_of(const Fields& inner) {
    if (!fault_) fault_ = inner.fault_;
  }

  void reject(words::Sentence why, const char* name = "") { fault(why, name); }

  const std::optional<words::Error>& fault() const { return fault_; }
  bool unknown_word() const { return unknown_word_; }

private:
  const Json* find(const char* name) {
    const auto at = object_.find(name);
    if (at != object_.end()) return &*at;
    fault(words::SessionSay::field_missing, name);
    return nullptr;
  }

  void fault(words::Sentence what, const char* name, std::string value = "") {
    if (!fault_) fault_ = words::Error{what, {name, std::move(value)}};
  }

  const Json& object_;
  std::optional<words::Error> fault_;
  bool unknown_word_ = false;
};

}
