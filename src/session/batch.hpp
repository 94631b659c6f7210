// One batch, folded from the lines of all sessions that speak of it. Everything a screen, a table
// or a lesson wants to know about a batch stands here; nothing here is ever written down.
#pragma once

#include "session/grown.hpp"
#include "session/pans.hpp"
#include "session/reader.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace session {

enum class Progress { open, gathered, closed };

// One line of the batch in order, with where the paint stood just after it.
struct Entry {
  Ref ref;
  Clock clock = 0;
  std::int64_t at = 0;
  Event event;
  bool withdrawn = false;
  bool confirmed = false;            // a weighing: a later line says that its figure is right
  bool corrected = false;            // `event`, `at` and `clock` are as a later line says
  std::optional<double> flow_before; // live flow just before and after; absent without pigment
  std::optional<double> flow;
  std::optional<paint::Amount> grams = {}; // what it put in, before any later weighing of the paint
  Place place = Place::slab;               // and where
};

// A feel note with the paint as it was when it was felt: what may be learnt from it.
struct Feeling {
  Ref line;
  Feel as = Feel::right;
  By by = By::muller;
  // Stiff while powder was still dry within it: hardly worked in as yet, or found dry, until the
  // water that was given back had soaked in. Kept, and it says nothing of the range.
  bool unwetted = false;
  double mulled_s = 0;   // in all passes before it
  double flow = 0;       // live, above 0
  double dry_gum = 0;    // its share of the liquid's mass then
  double gum_put_in = 0; // and of all that was put in, before any of it dried off
  double scatter = 0;    // relative standard uncertainty of the liquid put in: its own part
  double lost_mL = 0;    // water that had left
  double dried_off = 0;  // that, to 1 mL of the liquid then
  std::map<std::string, double> tools; // relative, signed: what each put into the liquid's. Not how
                                       // gum and honey were made: all batches have that alike
  double pigment_sd = 0;               // relative, of the pigment's mass
  std::vector<std::pair<std::string, double>> pigments; // card, mL
  bool repeats = false; // the same word as before it, and nothing changed between
  bool set_aside = false;

  bool operator==(const Feeling&) const = default;
};

struct TrailPoint {
  Clock clock = 0;
  double flow = 0;        // live
  bool after_gap = false; // nobody was there between this point and the one before
};

// What went in of one material.
struct Total {
  Card card;
  paint::Amount grams;
  double drops = 0;
  std::map<std::string, double> spoons; // spoon card -> count
  double weighed_g = 0;
  bool count_lost = false;
};

struct Pass {
  Stage stage = Stage::wetting_out;
  int number = 0; // mulling passes count 1, 2, 3; else 0
  Clock start = 0;
  std::optional<Clock> end;  // absent while it runs
  bool cut_short = false;    // it ended with its session, and nobody put the tool away
  bool left_running = false; // nothing was told for hours: it had ended at some moment before
};

enum class WarningKind {
  unknown_event,
  unknown_card,      // an addition of a card no session has laid out
  unknown_plan,      // a plan names such a card
  withdrawn_missing, // the line to be withdrawn is not there
  corrected_missing, // the line to be corrected is not there
  corrected_kind,    // it is not of the kind that the correction says
  corrected_remark,  // it only speaks of another line
  corrected_to_no_name,
  nameless,          // opened without a name
  amount_unreadable, // an addition that paint refuses
  bottle_heavier,    // weighed more after than before, or lost less than was weighed out
  bottle_uncounted,  // weighed again, and nothing was counted meanwhile
  not_moved,         // paint that could not be moved, or be lost, as told
  not_poured,        // there was none, or into a pan nobody knows
  not_weighed,       // a bottle or paint that cannot weigh so much, or be as it was
  unknown_recipe,    // a liquid's parts cannot be made into a composition
  clock_ahead,       // stamped more than a day after now, by another session: one clock is wrong
};

// Whether what it is about is missing from the sums.
bool leaves_out(WarningKind kind);

// Facts alone: in_words makes a sentence of them where one is shown.
struct Warning {
  WarningKind kind = WarningKind::unknown_event;
  Ref ref;
  std::string of;                    // the card, line or kind of event it is about
  std::optional<words::Error> why{}; // where paint refused
};

struct Judged {
  Ref line;
  std::int64_t at = 0;
  Verdict verdict;
};

// What a bottle lost between two weighings beside what was counted out of it.
struct BottleChecked {
  Ref since, line;       // the two weighings
  paint::Amount weighed; // by them, less what the scale saw go in, g
  paint::Amount counted; // g
  bool stands = true;    // false: they contradict each other, and nobody said that it is so
};

struct Plan {
  Ref line;
  Planned of;
};

struct Batch {
  std::string id;
  std::string name;
  std::string again_of; // empty: none
  bool cautions_seen = false;
  std::int64_t opened_at = 0; // ms since 1970
  std::int64_t last_at = 0;
  Progress progress = Progress::open;
  bool discarded = false;
  bool room_guessed = true;
  std::map<std::string, Card> cards; // by id, as last laid out in a session of this batch
  Grown<Entry> entries;              // in order, withdrawn ones too
  std::vector<Total> totals;         // in order of first addition
  Places places;                     // what lies where, at `clock`
  std::optional<Plan> plan;
  std::vector<Pass> passes;
  std::vector<Pan> pans; // in order of first pour
  std::vector<BottleChecked> bottles;
  std::vector<Judged> verdicts;
  std::optional<Measured> swatch; // the last that was read
  bool powder_is_dry = false; // pigment was added since it was last worked in, or felt worked in
  Grown<Feeling> feelings;    // in order; those withdrawn, or of no flow, are not there
  Grown<TrailPoint> trail;
  paint::Standing standing; // of the paint in hand
  paint::Amount dried_mL;   // water that left all of it, before the first pour took some away
  Clock clock = 0;          // up to which the batch was folded
  std::vector<Warning> warnings;
  bool moved = false;   // a correction has put one of its lines at another moment
  bool damaged = false; // one of its files is: entries may be missing
  bool newer = false;   // one of its files is of a newer format: nothing was summed
};

using Logs = std::vector<const Log*>;
Logs all_of(const std::vector<Log>& logs);

// The present, for a batch that lies on the slab: by the wall clock, and if the onlooker is itself
// a session, by that session's own clock too (which the wall clock's jumps do not reach).
struct Moment {
  std::int64_t at = 0; // ms since 1970
  std::string session;
  std::int64_t t = 0;
};

// Batch ids that the logs speak of, in order of their first line.
std::vector<std::string> batch_ids(const Logs& logs);

inline constexpr std::int64_t a_day_ms = 86'400'000;

// The bench's rate, and what stays on the tools, after one batch that taught it.
struct Lesson {
  std::string batch;
  std::int64_t opened_at = 0;
  paint::BenchRate after;
  paint::ToolsLoss loss = {};
  bool operator==(const Lesson&) const = default;
};
using Lessons = std::vector<Lesson>; // in order of opening

// Folds all that weighed their paint or brought its water back, the first first, each with what the
// ones before it taught.
Lessons lessons_of(const Logs& logs);

// Folds one batch, with what earlier ones taught of the bench. With `now` an open batch goes on
// drying up to that moment; without it the fold ends at the batch's last line, or, where a pass
// runs, at the last line of the session that began it. Absent if no log opened that batch.
std::optional<Batch> fold(const Logs& logs, const std::string& batch,
                          const std::optional<Moment>& now = std::nullopt,
                          const Lessons& lessons = {});

// Seconds of wetting out and of mulling; a running pass counts up to the batch's clock.
double seconds_of(const Batch& batch, Stage stage);

// The pass that runs now.
const Pass* running(const Batch& batch);
// ms since 1970: when the first of it was put in; until then when it was opened, which may have
// been days before.
std::int64_t made_at(const Batch& batch);
// The last test dot that stands.
std::optional<Specks> last_dot(const Batch& batch);
// The last trouble that stands.
std::optional<TroubleKind> last_trouble(const Batch& batch);

// Pigments with their share of the pigment volume.
struct BatchPigment {
  const Card* card = nullptr;
  double volume_share = 0;
};
std::vector<BatchPigment> pigments(const Batch& batch);
paint::PigmentClass family_of(const Batch& batch); // of the largest part of them

// One colour for all of it: that of its swatch, where one was read; else that of the pigment (or of
// the paint of another batch) with the largest share of the pigment volume, of equal ones the one
// laid out first; so too before any is weighed. No mixture: averaged light of blue and yellow is
// grey, where their paint is green.
std::uint32_t colour_of(const Batch& batch);

}
