// What is found in the Book, and what waits under Today, without folding every batch: a few facts
// of each, read from its lines once and again where it changed.
#pragma once

#include "bench/pan_times.hpp"
#include "session/stock.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <unordered_map>
#include <vector>

namespace bench {

struct Bench;
struct Now;

// The last time that a batch measured something, and with which tool.
struct ToolUse {
  std::int64_t at = 0;
  session::Ref line;
  std::string tool;
  bool operator<(const ToolUse& other) const {
    return std::tie(at, line, tool) < std::tie(other.at, other.line, other.tool);
  }
};
using Measured = std::pair<session::Unit, std::string>; // how, and of which card

struct BookEntry {
  std::string name;
  std::int64_t opened_at = 0;    // ms since 1970
  std::int64_t first_in_at = 0;  // likewise, when the first of it was put in; 0: nothing was
  std::optional<int> offset_min; // east of UTC, by the clock there
  std::string again_of;          // batch; empty: none
  std::string recipe;            // card that it was planned by; empty: none
  std::vector<session::Judged> verdicts;
  std::string text; // all that is searched in, in small letters
  bool has_left_slab = false;
  // Paint that was never poured: on the slab since it was last touched there, in the jar since it
  // was put there.
  enum Lies { nowhere, on_slab, in_jar } lies = nowhere;
  std::int64_t lies_since = 0;         // ms since 1970
  std::int64_t lies_from = 0;          // likewise, on the slab since it was first put there
  std::set<std::string> pigments;      // cards
  bool of_paint = false;               // paint of an earlier batch was laid out for it
  std::optional<std::uint32_t> swatch; // its colour, as it was read last
  std::vector<session::Photo> read;    // photos of swatches, each as it was read last
  std::optional<session::Photo> photo; // the one that shows it: of a swatch, else of what came last
  bool discarded = false;
  std::int64_t poured_at = 0; // the last time; 0: never
  // Of pans, once they were looked at: from when the next layer may go on, where they have room and
  // paint is left; how much is left of it, unless they were judged or no pan can take it; and which
  // is to be weighed.
  std::optional<std::int64_t> layer_at;
  std::int64_t dry_at = 0; // all of its pans, at the soonest, by the curve; 0: not known
  double left_mL = 0;
  std::optional<WeighAgain> weigh_again;
  std::map<Measured, ToolUse> tools;
  std::map<std::string, session::Uses> used_ug; // by card
};
// When it is said to have been made: see session::made_at.
inline std::int64_t made_at(const BookEntry& entry) {
  return entry.first_in_at > 0 ? entry.first_in_at : entry.opened_at;
}

// An entry as far as its lines were read.
struct ReadEntry {
  BookEntry entry;
  std::string pigments; // by all their names
  bool opened = false;
  bool some_in_jar = false;
  std::size_t lines = 0;
};

struct BookIndex {
  std::unordered_map<std::string, BookEntry> of; // batch
  std::set<std::string> asked;                   // of them, what may wait for something
  std::set<std::string> stale;                   // have changed since
  bool lists_stale = false;                      // bench.batches and bench.discarded are
  std::map<Measured, std::set<ToolUse>> tools;   // of all of them
  std::map<std::string, session::Uses> used_ug;  // by card, of all of them
  // By card, what each batch took of it: when it was opened, and which.
  std::map<std::string, std::map<std::pair<std::int64_t, std::string>, std::int64_t>> took_ug;
  // By recipe, the batches that were planned by it: when each was opened, and which.
  std::map<std::string, std::set<std::pair<std::int64_t, std::string>>> made_by;
  // By pigment, of batches of it alone: the colour that was read from the swatch.
  std::map<std::string, std::map<std::pair<std::int64_t, std::string>, std::uint32_t>> swatches;
  std::set<std::string> read_again; // batches whose paint was read on more than one photo
  std::size_t taken = 0;            // how often what was taken has changed
  // Of the batch on the slab: some on the way, and all of its lines.
  std::vector<ReadEntry> of_slab;
  std::string slab;
};

// Pans are looked at when the studio is read if they were poured within this; those that wait
// longer when their batch is looked through, see study. The other: binder in the making goes
// unasked after it, and pans stood open for long.
inline constexpr std::int64_t asks_lapse_ms = 60 * session::a_day_ms;
inline constexpr std::int64_t waits_lapse_ms = 30 * session::a_day_ms;

void index_all(Bench& bench, const Now& now);
void refresh_index(Bench& bench, const Now& now); // what is stale
// What waits for a layer or to be poured, of a batch that was folded for another reason.
void look_at_pans(Bench& bench, const std::string& batch, const session::Batch* folded);

bool is_discarded(const Bench& bench, const std::string& batch);
bool lists_discarded(const Bench& bench); // the Book does

// Of the batch on the slab, when lines of another session came for it.
words::Error news_of_slab(const Bench& bench);

// Batches, newest first, that bear this text: name, pigments by all their names, verdicts, date
// ("2026-11", "26 Nov"). Where none bears it in one piece, those that bear all of its words.
std::vector<std::string> batches_found(const Bench& bench, const std::string& text);

// Puts what is found into bench.book.
void find_batches(Bench& bench);

}
