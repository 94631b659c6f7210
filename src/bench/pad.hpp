// What can be tapped. Pads are named by what they do and, where there are many of one kind, by
// what they do it to; a script of taps uses the same names ("add gum_12", "felt right").
//
// Each screen lists its own pads, in pads_SCREEN.hpp. A kind of pad is a list and a place in it, so
// that a new pad is no news to what only lays pads out, presses or names them.
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace bench {

enum class PadList : std::uint8_t {
  top_bar,
  shared,
  today,
  slab,
  choice,
  more,
  number,
  plan,
  shelf,
  book,
  pans,
  tablet,
  binder,
  photos,
};

template <class Pad>
concept listed_pad = requires(Pad pad) {
  { list_of(pad) } -> std::same_as<PadList>;
};

class PadKind {
public:
  PadKind() = default;
  template <listed_pad Pad>
  constexpr PadKind(Pad pad) : list_(list_of(pad)), place_(static_cast<std::uint8_t>(pad)) {}

  constexpr PadList list() const { return list_; }

  // As one of its own list, where it is.
  template <listed_pad Pad>
  constexpr std::optional<Pad> as() const {
    if (list_ != list_of(Pad{})) return std::nullopt;
    return static_cast<Pad>(place_);
  }

  constexpr auto operator<=>(const PadKind&) const = default;

private:
  PadList list_ = PadList::top_bar;
  std::uint8_t place_ = 0;
};

struct PadId {
  PadKind kind;
  std::string arg;
  bool operator==(const PadId&) const = default;
  bool operator<(const PadId& other) const {
    return kind == other.kind ? arg < other.arg : kind < other.kind;
  }
};

std::string name_of(const PadId& pad);                 // "felt right"
std::optional<PadId> pad_named(std::string_view name); // the same, read back

}
