// From what the hands did to lines of this session: numbering, time, cards named before use.
#pragma once

#include "bench/bench.hpp"

namespace bench {

// Appends an event of a batch (or of none) to this session's log and to the effects, beginning the
// session first if this is its first line.
void record(Bench& bench, const std::string& batch, session::Event event, const Now& now,
            Effects& effects);

// One of the batch on the slab, which is folded anew; the trail stands in the middle again.
void record_at_slab(Bench& bench, session::Event event, const Now& now, Effects& effects);

// Names a card in full unless this session has done so for this batch.
void lay_out_card(Bench& bench, const std::string& batch, const session::Card& card, const Now& now,
                  Effects& effects);

bool has_begun(const Bench& bench);

bool tells_the_clock(const session::Event& event); // bears what the wall clock shows, and no more

bool by_hand(const session::Event& event); // what a hand did, and can take back

// Notes that somebody set the wall clock, once this session has begun: a minute or more against
// the running clock (less is the clock's own correction); or that summer time began or ended.
void notice_clock(Bench& bench, const Now& now, Effects& effects);

// The line that the undo pad takes back: the latest of this session's own that stands and that a
// hand did at the slab; on Slab, where nothing else stands, that the batch was begun.
struct UndoTarget {
  session::Ref ref;
  session::Event event;    // of a line that was taken back: what that line says
  bool gives_back = false; // such a line
};
std::optional<UndoTarget> undo_target(const Bench& bench); // of the batch on the slab
std::optional<UndoTarget> undo_target(const Bench& bench, const session::Batch& batch);

// A number that is being typed, or a question that opened by itself about anything but that line.
// Undo closes it and takes nothing back.
bool question_stands(const Bench& bench, const std::optional<UndoTarget>& target);
// Closes it, and says that nothing else was done; false where none stands.
bool close_question(Bench& bench, const std::optional<UndoTarget>& target, const Now& now);
// The undo pad would give back a photo.
bool photo_taken_away(const Bench& bench, const session::Batch& batch);
// All lines that one tap takes back or gives back with that one: those that took away one photo.
std::vector<session::Ref> undone_together(const Bench& bench, const session::Batch& batch,
                                          const UndoTarget& target);

// Folds the batch on the slab up to now.
void refold(Bench& bench, const Now& now);
session::Moment moment_of(const Bench& bench, const Now& now);
session::Logs logs_about(const Bench& bench, const std::string& batch);
bool is_newer(const Bench& bench, const std::string& batch); // in part of a newer format

// "2026-11-25T15:32:00+01:00"
std::string local_time(const Now& now);

std::string fresh_id(const Now& now); // twelve hexadecimal digits

}
