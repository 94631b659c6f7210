// Batches as they were folded last. A step alone folds; layout and views read what is kept here, so
// that a finger on the glass waits for no sum twice.
#pragma once

#include "paint/range/range.hpp"
#include "session/folding.hpp"

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>

namespace bench {

struct Bench;

using Folded = std::shared_ptr<const session::Batch>; // null: there is no such batch

// What a fold was made from; another one makes it anew.
struct FoldVersion {
  std::uint64_t lines = 0;   // how often lines of the batch have come
  std::uint64_t lessons = 0; // how often what is known of this bench's drying has changed
  bool operator==(const FoldVersion&) const = default;
};

struct PaintLeft { // of a batch, or of several
  double jar_mL = 0;
  int pans = 0; // with at least one layer
  bool on_slab = false;
};

struct Folds {
  struct Kept {
    FoldVersion of;
    Folded batch;
    std::uint64_t asked = 0; // the last time, counted in asks
    int ranges = -1;         // what the band was foreseen from; -1: not yet
    std::optional<paint::Band> band;
  };
  std::map<std::string, std::uint64_t> lines; // batch -> FoldVersion::lines; absent: 0
  std::uint64_t lessons = 0;
  std::uint64_t arrivals = 0; // of other devices' sessions; between two only this one's grows
  std::uint64_t asks = 0;
  std::map<std::string, Kept> kept;                              // batch, as of its last line
  std::map<std::string, std::pair<FoldVersion, PaintLeft>> left; // batch; more than is kept folded
  session::Folding open; // of the batch on the slab, which goes on
  std::string open_batch;
  FoldVersion open_of;
  std::uint64_t open_arrivals = 0;
};

// Everywhere that lines of a batch come in, or go.
void lines_came(Bench& bench, const std::string& batch);
void learn_lessons(Bench& bench);

// A batch as of its last line.
Folded fold_of(Bench& bench, const std::string& batch);
// As it is kept: what shows was folded when the last step ended. Null where it was not.
Folded kept_fold(const Bench& bench, const std::string& batch);
std::optional<paint::Band> kept_band(const Bench& bench, const std::string& batch);
// Absent where it was not folded.
std::optional<PaintLeft> kept_left(const Bench& bench, const std::string& batch);
PaintLeft left_of(const session::Batch& batch);

// Its lines, and the first of them that is another than when they were asked for last.
struct LinesOfSlab {
  const session::BatchLines& lines;
  std::size_t changed_from = 0;
};
LinesOfSlab lines_of_slab(Bench& bench);

// The batch on the slab as of a moment; nothing where none lies there.
std::optional<session::Batch> fold_of_slab(Bench& bench, const std::optional<session::Moment>& now);

// At the end of a step: what the screen shows now.
void fold_what_shows(Bench& bench);

}
