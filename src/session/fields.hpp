// Reading the fields of one JSON object: the first fault is remembered and named, later reads give
// harmless values, so that a reader of an event is a plain list of its fields.
#pragma once

#include "session/event.hpp"
#include "session/tree.hpp"
#include "words/error.hpp"
#include "words/session_says.hpp"

#include <limits>
#include <optional>

namespace session {

namespace most {                          // that a line may say of one thing
inline constexpr double gross_g = 100000; // with what it lies in, or of a jar
inline constexpr double drops = 10000;
inline constexpr double spoons = 1000;
}

class Fields {
  using Kind = Value::Kind;

public:
  explicit Fields(const Value& object) : object_(object) {}

  bool has(const char* name) const { return object_.field(name) != nullptr; }

  double number(const char* name, double least, double most) {
    const Value* field = find(name);
    if (!field) return least;
    if (!field->is_number()) return fault(words::SessionSay::field_not_a_number, name), least;
    const double value = field->number();
    if (!(value >= least && value <= most))
      return fault(words::SessionSay::field_out_of_range, name, written(*field)), least;
    return value;
  }

  double number_or(const char* name, double least, double most, double otherwise) {
    return has(name) ? number(name, least, most) : otherwise;
  }

  std::int64_t integer(const char* name, std::int64_t least, std::int64_t most) {
    constexpr auto largest = static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max());
    const Value* field = find(name);
    if (!field) return least;
    const bool fits = field->kind == Kind::negative ||
                      (field->kind == Kind::natural && field->natural <= largest);
    if (!fits) return fault(words::SessionSay::field_not_whole, name), least;
    const auto value =
        field->kind == Kind::negative ? field->negative : static_cast<std::int64_t>(field->natural);
    if (value < least || value > most)
      return fault(words::SessionSay::field_out_of_range, name, written(*field)), least;
    return value;
  }

  std::string text(const char* name) {
    const Value* field = find(name);
    if (!field) return "";
    if (field->kind != Kind::text) return fault(words::SessionSay::field_not_text, name), "";
    return std::string(field->text);
  }

  std::string text_or(const char* name, std::string otherwise) {
    return has(name) ? text(name) : std::move(otherwise);
  }

  std::vector<std::string> texts_or_none(const char* name) {
    std::vector<std::string> out;
    if (!has(name)) return out;
    const Value* field = find(name);
    bool texts = field->kind == Kind::list;
    for (const Value* each = field->begin(); each != field->end(); each = each->next()) {
      texts = texts && each->kind == Kind::text;
      if (texts) out.emplace_back(each->text);
    }
    if (!texts) fault(words::SessionSay::field_not_text, name);
    return out;
  }

  std::vector<const Value*> objects_or_none(const char* name) {
    std::vector<const Value*> out;
    if (!has(name)) return out;
    const Value* field = find(name);
    if (field->kind != Kind::list) return fault(words::SessionSay::field_not_list, name), out;
    for (const Value* each = field->begin(); each != field->end(); each = each->next()) {
      if (each->kind != Kind::object) return fault(words::SessionSay::field_not_object, name), out;
      out.push_back(each);
    }
    return out;
  }

  bool yes(const char* name) {
    if (!has(name)) return false;
    const Value* field = find(name);
    const bool known = field->kind == Kind::yes || field->kind == Kind::no;
    if (!known) return fault(words::SessionSay::field_not_yes_or_no, name), false;
    return field->kind == Kind::yes;
  }

  // A word of a closed list; one that is not in it makes the event unknown, not damaged.
  template <class E>
  E word(const char* name, std::optional<E> (*named)(std::string_view)) {
    const std::string value = text(name);
    const std::optional<E> known = named(value);
    if (!known && !fault_) unknown_word_ = true;
    return known.value_or(E{});
  }

  const Value& object(const char* name) {
    static const Value nothing{};
    const Value* field = find(name);
    if (!field) return nothing;
    if (field->kind != Kind::object)
      return fault(words::SessionSay::field_not_object, name), nothing;
    return *field;
  }

  Ref ref(const char* name) {
    const Value* field = find(name);
    const bool filled = field && field->kind == Kind::list && field->begin() != field->end();
    const Value* session = filled ? field->begin() : nullptr;
    const Value* n = filled && session->next() != field->end() ? session->next() : nullptr;
    const bool good =
        n && n->next() == field->end() && session->kind == Kind::text && n->kind == Kind::natural;
    if (!good) return fault(words::SessionSay::field_not_a_line, name), Ref{};
    return {std::string(session->text), n->natural};
  }

  void take_fault_of(const Fields& inner) {
    if (!fault_) fault_ = inner.fault_;
  }

  void reject(words::Sentence why, const char* name = "") { fault(why, name); }

  const std::optional<words::Error>& fault() const { return fault_; }
  bool unknown_word() const { return unknown_word_; }

private:
  const Value* find(const char* name) {
    const Value* at = object_.field(name);
    if (!at) fault(words::SessionSay::field_missing, name);
    return at;
  }

  static std::string written(const Value& number) {
    if (number.kind == Kind::natural) return Json(number.natural).dump();
    return (number.kind == Kind::negative ? Json(number.negative) : Json(number.real)).dump();
  }

  void fault(words::Sentence what, const char* name, std::string value = "") {
    if (!fault_) fault_ = words::Error{what, {name, std::move(value)}};
  }

  const Value& object_;
  std::optional<words::Error> fault_;
  bool unknown_word_ = false;
};

}
