// What can be tapped. Pads are named by what they do and, where there are many of one kind, by
// what they do it to; a script of taps uses the same names ("add gum_12", "felt right").
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tuple>

namespace bench {

enum class PadKind {
  // the strip, for clean hands
  shelf,
  plan,
  slab,
  pans,
  book,
  tablet,
  sound,
  night,
  wipe,
  unlock,
  // the slab
  add, // arg: card
  another,
  bottle,
  undo,
  pass,
  gather,
  back_on_slab,
  close,
  dot,
  trouble,
  felt, // arg: wont_move ... too_runny
  // what opens in the middle of the slab
  amount, // arg: "1 drop", "5 drops", "1/4 tsp", ..., "weigh"
  bottle_of,
  lost_count, // arg: card
  specks,     // arg: many, few, none
  trouble_is, // arg: wont_wet, gelling, gummy
  digit,      // arg: 0 ... 9
  point,
  erase,
  enter,
  leave,
  // plan
  pigment, // arg: card
  binder,  // arg: card
  page_back,
  page_on,
  weigh,
  celsius,
  humidity,
  name,
  search, // text fields
  begin,
  // book
  batch, // arg: batch id
  to_list,
  take_up,
  // this tablet
  hand,
  motion,
  card_smaller,
  card_larger, // arg of both: "" a little, "much"
  bind,        // arg: the name of a pad in keys.hpp
};

struct PadId {
  PadKind kind = PadKind::slab;
  std::string arg;
  bool operator==(const PadId&) const = default;
  bool operator<(const PadId& other) const {
    return std::tie(kind, arg) < std::tie(other.kind, other.arg);
  }
};

std::string name_of(const PadId& pad);                 // "felt right"
std::optional<PadId> pad_named(std::string_view name); // the same, read back

}
