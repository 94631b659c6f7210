#include "paint/range/notes_seen.hpp"

#include "paint/range/note_on_grid.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace paint {

namespace {

constexpr double places_to_a_slope = 5;
constexpr double spare = 0.25; // of a grid, to either side: it may move so far
constexpr double most_places = 200'000;
constexpr double least_product = 1e-250;

// Of a polynomial through even places, by the barycentric formula: binomials of alternating sign.
constexpr std::array<double, 14> along{1,     -13,  78,   -286, 715, -1287, 1716,
                                       -1716, 1287, -715, 286,  -78, 13,    -1};
constexpr int before_it = 6; // places of them that lie before the one asked for

double between(const std::vector<double>& values, double place) {
  const double whole = std::floor(place);
  const double* from = values.data() + static_cast<std::ptrdiff_t>(whole) - before_it;
  if (place == whole) return from[before_it];
  double sum = 0, shares = 0;
  for (std::size_t i = 0; i < along.size(); ++i) {
    const double share = along[i] / (place - whole + before_it - static_cast<double>(i));
    sum += share * from[i];
    shares += share;
  }
  return sum / shares;
}

// Their chances together, as far as they do not vanish; goes on at the note that is left.
const TodayNote* multiply(const PredictionPoint& at, const TodayNote* note, const TodayNote* to,
                          double drying, std::vector<double>& product) {
  std::vector<double> chances;
  double least = 1;
  product.assign(static_cast<std::size_t>(at.count), 1.0);
  for (; note != to && least * at.hand.slips / 5 > least_product; ++note) {
    least *= at.hand.slips / 5;
    chances_along(at, on_grid(*note, drying), chances);
    for (std::size_t k = 0; k < product.size(); ++k) product[k] *= chances[k];
  }
  return note;
}

void weigh_by(Prediction& now, const std::vector<double>& ln) {
  const double most = *std::max_element(ln.begin(), ln.end());
  double sum = 0;
  for (std::size_t k = 0; k < ln.size(); ++k) sum += now.weights[k] *= std::exp(ln[k] - most);
  for (double& weight : now.weights) weight /= sum;
}

}

bool NotesSeen::holds(const Prediction& before, double up) const {
  constexpr auto behind_it = static_cast<double>(along.size()) - before_it;
  const auto same = [&](const Table& table, const PredictionPoint& p) {
    const double first = (p.first - up - table.at.first) / table.at.step;
    const double last = first + (p.count - 1) * p.step / table.at.step;
    return table.at.hand == p.hand && first >= before_it && last + behind_it < table.at.count;
  };
  return drying_ == before.drying && std::equal(tables_.begin(), tables_.end(),
                                                before.points.begin(), before.points.end(), same);
}

void NotesSeen::begin(const Prediction& before, double up) {
  notes_.clear();
  tables_.clear();
  drying_ = before.drying;
  for (const PredictionPoint& p : before.points) {
    const double wide = (p.count - 1) * p.step;
    const double step = std::max(p.hand.slope / places_to_a_slope, wide / most_places);
    const double beside = spare * wide + static_cast<double>(along.size()) * step;
    const int count = static_cast<int>(std::ceil((wide + 2 * beside) / step)) + 1;
    tables_.push_back({{p.hand, p.first - up - beside, step, count},
                       std::vector<double>(static_cast<std::size_t>(count))});
  }
}

void NotesSeen::count(const TodayNote* from, const TodayNote* to, double sign) {
  std::vector<double> product;
  for (Table& table : tables_)
    for (const TodayNote* note = from; note != to;) {
      const TodayNote* next = multiply(table.at, note, to, drying_, product);
      if (next != note) {
        for (std::size_t k = 0; k < product.size(); ++k) table.ln[k] += sign * std::log(product[k]);
        note = next;
        continue;
      }
      const NoteOnGrid seen = on_grid(*note++, drying_);
      for (int k = 0; k < table.at.count; ++k)
        table.ln[static_cast<std::size_t>(k)] += sign * ln_chance(table.at, k, seen);
    }
}

// Mostly the same ones, and one more or less at the end.
void NotesSeen::bring_to(const std::vector<TodayNote>& notes) {
  const auto same = static_cast<std::size_t>(
      std::mismatch(notes_.begin(), notes_.end(), notes.begin(), notes.end()).first -
      notes_.begin());
  const TodayNote *were = notes_.data(), *are = notes.data();
  if (notes_.size() - same > same) {
    for (Table& table : tables_) std::fill(table.ln.begin(), table.ln.end(), 0.0);
    count(are, are + notes.size(), 1);
  } else {
    count(were + same, were + notes_.size(), -1);
    count(are + same, are + notes.size(), 1);
  }
  notes_ = notes;
}

Prediction NotesSeen::weigh(Prediction before, double dry_gum,
                            const std::vector<TodayNote>& notes) {
  std::vector<TodayNote> sound = notes;
  std::erase_if(sound, [](const TodayNote& note) { return fault_of(note).has_value(); });
  if (sound.empty() || before.points.empty()) return before;
  const double up = before.drying * (dry_gum - usual_dry_gum);
  if (!holds(before, up)) begin(before, up);
  bring_to(sound);
  std::vector<double> ln;
  ln.reserve(before.weights.size());
  for (std::size_t i = 0; i < tables_.size(); ++i) {
    const PredictionPoint &p = before.points[i], &at = tables_[i].at;
    for (int k = 0; k < p.count; ++k)
      ln.push_back(between(tables_[i].ln, (p.first - up + k * p.step - at.first) / at.step));
  }
  weigh_by(before, ln);
  return before;
}

}
