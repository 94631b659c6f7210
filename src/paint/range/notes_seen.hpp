// What all notes of today together say: kept, so that a note costs the same on the thousandth as on
// the first, and what goes in between two of them costs nothing for any note.
//
// A note is weighed against the demand in liquid of the usual strength, where nothing that is added
// later moves it. For each point of a prediction the logarithm of all notes' chances together
// stands at even places, a fifth of a slope apart, and is a polynomial through 14 of them between:
// what after() gives note by note, to 1e-9 of a weight for as many notes as a batch has.
#pragma once

#include "paint/range/predict.hpp"

namespace paint {

class NotesSeen {
public:
  // As after() with one after the other, in any order: `stronger` of each than usual_dry_gum, and
  // `dry_gum` is the batch's. Those that after() refuses say nothing.
  Prediction weigh(Prediction before, double dry_gum, const std::vector<TodayNote>& notes);

private:
  struct Table {
    PredictionPoint at;
    std::vector<double> ln;
  };

  bool holds(const Prediction& before, double up) const;
  void begin(const Prediction& before, double up);
  void bring_to(const std::vector<TodayNote>& notes);
  void count(const TodayNote* from, const TodayNote* to, double sign);

  std::vector<Table> tables_;
  double drying_ = 0;
  std::vector<TodayNote> notes_;
};

}
