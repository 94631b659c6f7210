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
  add,      // arg: card
  pigments, // where there are several
  another,
  more,
  undo,
  pass,
  gather,
  back_on_slab,
  to_pans,
  close,
  dot,
  trouble,
  felt, // arg: wont_move ... too_runny
  // what opens in the middle of the slab
  amount, // arg: "1 drop", "5 drops", "1/4 tsp", ..., "weigh"
  bottle_of,
  lost_count, // arg: card
  specks,     // arg: many, few, none
  trouble_is, // arg: wont_wet, gelling, gummy, gritty, foams, separates, smells
  bottle,
  weigh_paint,
  to_jar, // arg: half, all
  from_jar,
  spilt,
  other_paint,
  paint_of, // arg: batch
  lines,    // what was done, to be corrected
  earlier,  // of them
  line,     // arg: SESSION N
  other_amount,
  five_earlier, // five minutes
  take_back,
  found, // arg: wet, dry
  digit, // arg: 0 ... 9
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
  parts,     // arg: card
  by_volume, // else by weight
  want,      // what the number says
  pan_size,
  cautions, // open
  cautions_read,
  name,
  search, // text fields
  begin,
  go_on, // with the batch that was left open; arg: batch
  // shelf
  kind_of, // arg: pigment, binder, liquid, dropper, spoon, pan, glass
  card,    // arg: card
  new_card,
  dropper,   // another one, for the next drops
  kept_away, // those put away, and back
  put_away,
  bring_back,
  fact,   // a number of the card; arg: which
  says,   // a text field of the card; arg: name, lot, made_on, keep_until
  choice, // what the card turns over at each tap; arg: which
  card_done,
  // book
  batch, // arg: batch id
  to_list,
  ranges,
  range_of, // arg: card
  note_before,
  note_after,
  set_aside, // and back
  take_up,
  make_again,
  compare,
  note,
  note_text, // a text field
  keep,      // the note
  // pans
  pan, // arg: its number; pours into it, or chooses it
  new_pan,
  pour_all,
  pour_g, // how much the pan poured last took
  weigh_pan,
  pan_card, // another size
  judge,    // from pouring to judging, and back
  became,   // arg: good ... mould
  all_pans, // are meant, not one
  more_pans,
  batch_back, // an older one
  batch_on,
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
