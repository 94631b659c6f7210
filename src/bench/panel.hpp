// What lies beside the pads of Slab: the trail and the numbers, or what opened over them.
#pragma once

#include "session/event.hpp"

#include <optional>
#include <variant>

namespace bench {

struct TrailPanel {
  bool operator==(const TrailPanel&) const = default;
};
struct AmountsPanel { // how much the next tap adds
  bool operator==(const AmountsPanel&) const = default;
};
struct BottlesPanel {
  bool operator==(const BottlesPanel&) const = default;
};
struct DropperPanel { // what a bottle said of it
  bool operator==(const DropperPanel&) const = default;
};
struct SpecksPanel {
  bool operator==(const SpecksPanel&) const = default;
};
struct TroublesPanel {
  bool operator==(const TroublesPanel&) const = default;
};
struct RemedyPanel {
  session::TroubleKind of = session::TroubleKind::wont_wet;
  bool operator==(const RemedyPanel&) const = default;
};
struct PigmentsPanel { // one of several
  bool operator==(const PigmentsPanel&) const = default;
};
struct MorePanel {
  bool operator==(const MorePanel&) const = default;
};
struct PaintsPanel { // of other batches
  bool operator==(const PaintsPanel&) const = default;
};
struct MaterialsPanel { // those that no pad of the slab stands for; or all
  enum Why {
    add,
    was,
    choose
  } why = add; // to be added; what a line should have said; for the pads
  int page = 0;
  std::optional<session::Ref> line = {}; // that line
  bool operator==(const MaterialsPanel&) const = default;
};
struct LinesPanel { // what was done, the latest first
  int page = 0;
  std::optional<session::Ref> run = {}; // of these drops alone
  bool operator==(const LinesPanel&) const = default;
};
struct LinePanel { // one of them, to be corrected
  session::Ref line;
  bool operator==(const LinePanel&) const = default;
};
struct FoundPanel {          // how was the paint found?
  std::int64_t since_ms = 0; // since 1970: nobody was there
  bool operator==(const FoundPanel&) const = default;
};
struct NumberPanel {
  std::optional<session::Ref> line; // whose amount it is to be
  bool operator==(const NumberPanel&) const = default;
};

using Panel = std::variant<TrailPanel, AmountsPanel, BottlesPanel, SpecksPanel, TroublesPanel,
                           RemedyPanel, PigmentsPanel, MaterialsPanel, MorePanel, PaintsPanel,
                           LinesPanel, LinePanel, FoundPanel, NumberPanel, DropperPanel>;

template <class P>
bool is_open(const Panel& panel) {
  return std::holds_alternative<P>(panel);
}

}
