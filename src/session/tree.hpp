// A line's JSON as it was read: values that stand one behind the other, each with what is inside of
// it right behind it.
#pragma once

#include "session/strict_json.hpp"

#include <cstdint>

namespace session {

// Most names differ in their first letter.
inline bool same_name(std::string_view a, std::string_view b) {
  return a.size() == b.size() && (a.empty() || (a.front() == b.front() && a == b));
}

struct Value {
  enum class Kind : std::uint8_t { none, yes, no, natural, negative, real, text, list, object };

  std::string_view name; // of a field
  std::string_view text;
  union {
    std::uint64_t natural = 0;
    std::int64_t negative;
    double real;
  };
  Kind kind = Kind::object;
  std::uint32_t span = 1; // values, with this one and all inside of it

  const Value* begin() const { return this + 1; }
  const Value* end() const { return this + span; }
  const Value* next() const { return this + span; } // beside it
  const Value* field(std::string_view wanted) const {
    for (const Value* v = begin(); v != end(); v = v->next())
      if (same_name(v->name, wanted)) return v;
    return nullptr;
  }
  bool is_number() const {
    return kind == Kind::natural || kind == Kind::negative || kind == Kind::real;
  }
  double number() const {
    return kind == Kind::natural    ? static_cast<double>(natural)
           : kind == Kind::negative ? static_cast<double>(negative)
                                    : real;
  }
};

struct Tree {
  std::vector<Value> values; // the object first
  std::string_view line;     // as it stands
  Json kept;                 // what the texts stand in, if anything
  const Value& object() const { return values.front(); }
};

// As read_object, with its errors. The texts of a tree are good until the same thread reads the
// next; the line must outlive it.
words::Result<Tree> read_tree(std::string_view line);

Tree tree_of(Json object, std::string_view line);

}
