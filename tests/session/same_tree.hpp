// A line's JSON by the quick reader, held against the slower one that knows every rule.
#pragma once

#include "session/tree.hpp"

#include <cstring>

namespace same_tree {

using namespace session;

inline bool same(const Value& a, const Value& b) {
  const bool alike = a.kind == b.kind && a.span == b.span && a.name == b.name && a.text == b.text;
  return alike && std::memcmp(&a.natural, &b.natural, sizeof a.natural) == 0; // a double's bits too
}

inline bool same(const Tree& a, const Tree& b) {
  if (a.values.size() != b.values.size()) return false;
  for (std::size_t i = 0; i < a.values.size(); ++i)
    if (!same(a.values[i], b.values[i])) return false;
  return true;
}

inline bool read_alike(std::string_view line) {
  const auto quick = read_tree(line);
  auto slow = read_object(line);
  if (!quick || !slow) return !quick && !slow && quick.error() == slow.error();
  return same(*quick, tree_of(*std::move(slow), line));
}

}
