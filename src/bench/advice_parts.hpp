// The pieces that advise() is put together from: the first helping, too loose, and drop by drop.
#pragma once

#include "bench/advice.hpp"

namespace bench {

// What changed since the last feel note: an addition makes the note old.
struct LastNote {
  std::optional<session::Feel> feel;
  bool added_since = false;
};
LastNote last_note(const session::Batch& batch);

// What the hand would find now, since water may have left after the last note.
paint::PredictionAt now_at(const session::Batch& batch, double stronger);
// Since the last note, by more than a hand would feel.
bool has_dried(const session::Batch& batch);
bool right_is_likeliest(const session::Expectation& expected, const paint::PredictionAt& now);

bool was_mulled(const session::Batch& batch);
bool was_felt(const session::Batch& batch); // once the powder was wetted out

// Seconds of mulling, or of the knife, since something was last put in or felt.
double worked_since_s(const session::Batch& batch, session::Stage stage);
// The pass that was asked for has been made: what comes next is the hand's word.
bool is_worked_since(const session::Batch& batch, const Known& known, bool by_knife = false);

// Minutes until so much has dried off, mulled out, that it flows like that, which rises as the gum
// grows stronger; 0 for more than is mulled at once.
int minutes_to(const session::Batch& batch, const session::Expectation& expected, double ln_flow);
int rounded_minutes(int minutes); // nobody dries paint by the minute

// Beyond what may be right it is far too loose: twice the pigment would have to follow. Own choice.
inline constexpr double times_too_loose = 3;

// A little of every pigment in it, in shares of what is there: a fifth at once is as much as a hand
// can judge.
inline constexpr double most_pigment = 0.2;
std::vector<Advice::Pigment> pigments_to(const session::Batch& batch, double more);

// Felt too loose, or runnier, or far too loose by what went in.
Advice loosened(const session::Batch& batch, const session::Expectation& expected,
                const paint::GumMarks& marks, Advice advice);

// The middle of right; whatever the range says, above what was felt to be stiff by half of what is
// right.
double ln_right(const session::Batch& batch, const session::Expectation& expected);

// More was put in than it likely wants: too loose is not unlikely by now, and nobody has felt it.
bool is_past_right(const session::Batch& batch, const session::Expectation& expected,
                   const Measures& binder);
Advice past_right(const session::Batch& batch, const session::Expectation& expected,
                  const Measures& binder, Advice advice);

// By three times what is right at most: nobody has to feel that.
bool is_far_too_loose(const session::Batch& batch, const session::Expectation& expected);

// Felt right with too little gum: the binder of this round, and how long to mull before it so that
// it flows right with it.
void say_what_gum_takes(const session::Batch& batch, const session::Expectation& expected,
                        const paint::GumMarks& marks, const Measures& binder, Advice& advice);
// Of that round, so much less as went in since; absent once it is in, or anything else went in.
std::optional<Advice> rest_of_gum(const session::Batch& batch, const paint::GumMarks& marks,
                                  const Measures& of, const Known& known, Advice advice);

// The binder that is meant: another than the batch's own where that would make it stay tacky.
const Measures& binder_meant(const Measures& binder, const Known& known, Advice& advice);

Advice first_helping(const session::Batch& batch, const session::Expectation& expected,
                     const Measures& of, const Known& known, Advice advice);

// Of the spoons or drops that would be said at first, so many less as went in. Absent once that is
// there, but for a twentieth.
std::optional<Advice> rest_of_helping(const session::Batch& batch,
                                      const session::Expectation& expected, const Measures& of,
                                      const Known& known, Advice advice);
// However stiff it is: by that rest less than half of the first helping has gone in.
bool is_hardly_wet(const session::Batch& batch, const Advice& rest, const Measures& of);

// Felt stiffer than right, or not felt since something was added.
Advice drop_by_drop(const session::Batch& batch, const session::Expectation& expected,
                    const Measures& binder, const Known& known, Advice advice);

}
