// The working range as this studio's batches have taught it: from what they felt to a problem for
// paint/learn.hpp, and from its result to what the paint in hand wants.
#pragma once

#include "paint/range/notes_seen.hpp"
#include "paint/range/range.hpp"
#include "paint/range/told.hpp"
#include "session/training.hpp"

namespace session {

// The least and the most dry gum in liquids as they were put in, as a share of their mass.
struct DryGums {
  double least = 1, most = 0;
};

// Whom the numbers of a problem mean.
struct RangeNames {
  std::vector<std::string> pigments;      // cards
  std::vector<std::string> tools;         // tool_key
  std::map<std::string, int> batches;     // pigment -> how many it was felt in
  std::map<std::string, int> notes;       // likewise, how often
  std::map<std::string, DryGums> dry_gum; // likewise, in what liquids; absent where it never was
  int of_studio = 0;                      // batches with notes
};

struct RangeProblem {
  paint::LearnProblem problem;
  RangeNames names;
};

// Of all that taught something, in order of opening: of the latest batches with together as many
// notes as can be learnt from in a second or so, for a hand changes in years. What is beyond the
// model's limits (learn.hpp) is left out: more than 200 proportions of a batch, a note out of
// range.
inline constexpr std::size_t most_notes = 10'000;
RangeProblem range_problem(const std::vector<const TrainingBatch*>& training);

// Of what evaporation is said to have taken, relative: own estimate, no source.
inline constexpr double dried_off_u = 0.4;

using SharedTold = std::shared_ptr<const paint::ToldRange>; // null: nothing

struct Ranges {
  paint::RangeFit fit; // found
  RangeNames names;
  SharedTold told = {}; // what another studio told; in the fit, where its `told` says so
};

// What another studio told this one: the last line that says so. Error: that of paint::told_from.
words::Result<SharedTold> told_in(const Logs& logs);

// The problem as it is by that word too.
paint::ToldVariant told_variant(const RangeProblem& asked, const paint::ToldRange& told);

bool is_told(const Ranges& ranges, const Card& pigment); // and it is believed

// What this studio's own notes have come to, for another; `own`: fitted without what another told.
// Only pigments of the catalogue, that still bear its Colour Index name, by their names there;
// absent where none of them was felt. Error: the fit's end where it was not found.
words::Result<std::optional<paint::ToldRange>>
told_by(const paint::RangeFit& own, const RangeNames& of, const std::vector<Card>& shelf);

const Ranges& untrained_ranges(); // what classes and oil absorptions alone let expect

// Whether a result's numbers still mean the same in a later problem.
bool continues(const RangeNames& earlier, const RangeNames& later);

std::vector<TrainingBatch> trainings_of(const Logs& logs); // of all batches that taught something

// All of a studio's batches, folded and learnt from, here and now. Errors: those of paint::learn,
// and its end where it was not found.
words::Result<Ranges> learn_ranges(const Logs& logs);

// A batch's question to what was learnt, in flow: liquid to 1 mL of its pigments.
//
// The same word said again of paint that is no further on is hardly more than one judgement: within
// minutes a hand is off by as much as it was, and each repeat, taken for a new note, would move the
// range and make it surer of itself. So it counts once, by the same tool. What is learnt of the
// batch afterwards counts them all: there what they have in common goes to the batch.
struct RangeQuestion {
  paint::PredictBatch batch;
  std::vector<paint::LearnPigment> usual; // its pigments, without what another studio told
  std::vector<paint::TodayNote> notes;    // felt while its pigments stood in this proportion;
                                          // `stronger` than paint::usual_dry_gum
  int batches = 0, of_studio = 0;         // as Band has them
  bool told = false;                      // likewise

  bool operator==(const RangeQuestion&) const = default;
};
RangeQuestion range_question(const Ranges& ranges, const Batch& batch);
RangeQuestion range_question(const Ranges& ranges, const std::vector<BatchPigment>& pigments,
                             double dry_gum = paint::usual_dry_gum);
// What a batch will want before today's notes. Errors: those of paint::predict.
words::Result<paint::Prediction> foreseen(const Ranges& ranges, const RangeQuestion& question);
double dry_gum_of(const paint::Material& liquid); // its share of the liquid's mass

// ln flow of what a pigment wants by itself where it was felt; else of what its next batch will
// likely want. Absent where nothing can be said.
std::optional<paint::LnSpread> demand_in(const Ranges& ranges, const Card& pigment);

struct NineInTen { // of what it may be, as flows
  double low = 0, middle = 0, high = 0;
};
NineInTen nine_in_ten(const paint::LnSpread& spread);

struct Expectation {
  paint::Prediction prediction; // of ln flow, for liquid as it was put in
  paint::Band band;             // for what is there
  double stronger = 0;          // dry gum's share of that, less that of what was put in
};
// Absent without pigment.
std::optional<Expectation> expectation(const Ranges& ranges, const RangeQuestion& question);
// The same to nine digits, for who asks again and again: `seen` keeps what its notes say.
std::optional<Expectation> expectation(const Ranges& ranges, const RangeQuestion& question,
                                       paint::NotesSeen& seen);

// Its band is for the batch's liquid as it is now: water leaves it, gum stays.
void take_strength(Expectation& expected, const Batch& batch);

// What a batch's pigments want, its own notes counted in. A batch that is among those learnt from
// has its notes counted twice, which makes its band a little too narrow: for pictures, not advice.
std::optional<paint::Band> band_of(const Batch& batch, const Ranges& ranges = untrained_ranges());

}
