#include "paint/softness.hpp"

#include <cmath>

namespace paint {

namespace {

constexpr double ln_brittle = -1.966113; // ln 0.14
constexpr double ln_good = -1.139434;    // ln 0.32
constexpr double of_one_verdict = 0.2;
constexpr double of_a_crack = 0.6;
constexpr double between_pigments = 0.15;
constexpr double most_to_gum = 3;

// Too hard is below its mark: the same law, looked at from the other side.
TackMark turned(TackMark mark) {
  mark.ln_middle = -mark.ln_middle;
  return mark;
}

TackMark after_hard(const TackMark& mark, double index, bool too_hard, double ln_noise) {
  TackMark seen = turned(mark);
  seen.ln_noise = ln_noise;
  TackMark after = turned(updated(seen, 1 / index, too_hard).value_or(seen));
  after.ln_noise = mark.ln_noise;
  return after;
}

void count_in(SoftMarks& marks, const SoftVerdict& v) {
  const auto sticky = [&](bool so) {
    marks.sticky = updated(marks.sticky, v.index, so).value_or(marks.sticky);
  };
  switch (v.what) {
  case SoftVerdict::wont_rewet:
    marks.hard = after_hard(marks.hard, v.index, true, marks.hard.ln_noise);
    return;
  case SoftVerdict::cracked: marks.hard = after_hard(marks.hard, v.index, true, of_a_crack); return;
  case SoftVerdict::holds:
    marks.hard = after_hard(marks.hard, v.index, false, marks.hard.ln_noise);
    return sticky(false);
  case SoftVerdict::sticky: return sticky(true);
  }
}

}

SoftMarks usual_soft_marks() {
  const double half = (ln_good - ln_brittle) / 2;
  SoftMarks marks;
  marks.hard.ln_middle = (ln_good + ln_brittle) / 2;
  marks.hard.ln_noise = of_one_verdict;
  marks.hard.ln_u = std::sqrt(half * half - of_one_verdict * of_one_verdict);
  return marks;
}

SoftMarks marks_after(SoftMarks marks, const std::vector<SoftVerdict>& verdicts) {
  for (const SoftVerdict& v : verdicts)
    if (v.index > 0 && v.index <= 100) count_in(marks, v);
  return marks;
}

SoftMarks for_a_pigment(SoftMarks of_its_class) {
  for (TackMark* mark : {&of_its_class.hard, &of_its_class.sticky})
    mark->ln_u = std::hypot(mark->ln_u, between_pigments);
  return of_its_class;
}

SoftRange soft_range(const SoftMarks& marks) {
  const double low = warning_mark(marks.hard), high = caution_mark(marks.sticky);
  if (low <= high) return {low, high};
  const double between = std::sqrt(low * high);
  return {between, between};
}

std::optional<double> softener_g(Softener by, double index, const Wet& has, const Room& room) {
  double Wet::*const part = by == Softener::honey ? &Wet::honey_g : &Wet::glycerin_g;
  const auto reaches = [&](double added) -> std::optional<bool> {
    Wet wet = has;
    wet.*part += added;
    const auto there = tack_index(wet, room);
    return there ? std::optional(*there >= index) : std::nullopt;
  };
  double low = 0, high = most_to_gum * has.gum_g;
  if (!reaches(0) || !reaches(high) || !*reaches(high)) return std::nullopt;
  if (*reaches(0)) return 0;
  for (int halving = 0; halving < 60; ++halving) {
    const double middle = (low + high) / 2;
    (*reaches(middle) ? high : low) = middle;
  }
  return high;
}

}
