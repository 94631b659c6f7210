// Closed lists: enums of which something is known for every value, and variants of which something
// is done with every alternative. What a new value needs, the compiler names.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <type_traits>
#include <utility>

namespace words {

template <class... F>
struct Overloaded : F... {
  using F::operator()...;
};
template <class... F>
Overloaded(F...) -> Overloaded<F...>;

// For what is done with several alternatives alike: it lists them, where a template would take
// whatever comes.
template <class T, class... Of>
concept one_of = (std::is_same_v<std::remove_cvref_t<T>, Of> || ...);

namespace lists {

// Compilers spell a value that has no name as "(session::Feel)5".
template <auto value>
constexpr bool is_named() {
  const std::string_view spelt = __PRETTY_FUNCTION__;
  const std::size_t bracket = spelt.rfind(')');
  return spelt[bracket + 1] < '0' || spelt[bracket + 1] > '9';
}

template <class E, std::size_t at = 0>
constexpr std::size_t count() {
  if constexpr (is_named<static_cast<E>(at)>())
    return count<E, at + 1>();
  else
    return at;
}

template <class E, std::size_t... at>
constexpr std::array<E, sizeof...(at)> values(std::index_sequence<at...>) {
  return {static_cast<E>(at)...};
}

}

// Of an enum class whose values count from 0.
template <class E>
inline constexpr std::size_t count_of = lists::count<E>();

template <class E>
inline constexpr std::array<E, count_of<E>>
    all_of = lists::values<E>(std::make_index_sequence<count_of<E>>());

template <class E>
constexpr E next_of(E value) {
  return all_of<E>[(static_cast<std::size_t>(value) + 1) % count_of<E>];
}

// A row for each value of E, in its order; one that misses a row is no program.
template <class E, class Row>
class EnumTable {
public:
  struct Entry {
    E of;
    Row row;
  };

  template <std::size_t n>
  constexpr EnumTable(const Entry (&entries)[n])
      : EnumTable(entries, std::make_index_sequence<n>()) {
    static_assert(n == count_of<E>, "a table has a row for each value of its list");
  }

  constexpr const Row& operator[](E value) const { return rows_[static_cast<std::size_t>(value)]; }

  template <class R, class Field>
  constexpr std::optional<E> find(Field R::*field, const Field& wanted) const {
    for (const E value : all_of<E>)
      if ((*this)[value].*field == wanted) return value;
    return std::nullopt;
  }

private:
  template <std::size_t... at>
  constexpr EnumTable(const Entry* entries, std::index_sequence<at...>)
      : rows_{in_place<at>(entries)...} {}

  template <std::size_t at>
  static constexpr const Row& in_place(const Entry* entries) {
    if (entries[at].of != static_cast<E>(at)) throw "the rows of a table stand in its list's order";
    return entries[at].row;
  }

  std::array<Row, count_of<E>> rows_;
};

}
