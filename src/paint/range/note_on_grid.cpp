#include "paint/range/note_on_grid.hpp"

#include "paint/range/note_chance.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

// exp(from + k * stride): one factor takes it on, for no longer than its error stays small.
class Powers {
public:
  Powers(double from, double stride) : from_(from), stride_(stride), factor_(std::exp(stride)) {}
  double at(int k) { return now_ = k % 64 ? now_ * factor_ : std::exp(from_ + k * stride_); }

private:
  double from_, stride_, factor_, now_ = 0;
};

// A word's chance times `share`, beside what is there.
void add_meant(const PredictionPoint& grid, const NoteOnGrid& note, int felt, double share,
               std::vector<double>& out) {
  const WordEnds ends = ends_of(grid.hand, felt);
  const double s = widened(grid.hand.slope, note.sd), x = note.ln_mL - grid.first;
  const double whole = share * -std::expm1((ends.below - ends.above) / s);
  Powers above((x - ends.above) / s, -grid.step / s), below((ends.below - x) / s, grid.step / s);
  for (int k = 0; k < grid.count; ++k)
    out[static_cast<std::size_t>(k)] += whole / ((1 + above.at(k)) * (1 + below.at(k)));
}

double ln_meant(const PredictionPoint& grid, int place, const NoteOnGrid& note, int felt) {
  const WordEnds ends = ends_of(grid.hand, felt);
  const double s = widened(grid.hand.slope, note.sd);
  const double x = note.ln_mL - (grid.first + place * grid.step);
  return word_chance((ends.below - x) / s, (ends.above - x) / s).ln_p;
}

}

WordEnds ends_of(const NoteModel& h, int felt) {
  const double edges[] = {-infinite,    -h.half_width - h.sticky_reach, -h.half_width,
                          h.half_width, h.half_width + h.loose_reach,   infinite};
  return {edges[felt], edges[felt + 1]};
}

double widened(double slope, double sd) {
  constexpr double three_over_pi_2 = 0.30396355092701331;
  return sd > 0 ? std::sqrt(slope * slope + three_over_pi_2 * sd * sd) : slope;
}

std::optional<words::Error> fault_of(const TodayNote& note) {
  const auto outside = [](const char* field, const char* least, const char* most) {
    return words::Error{words::PaintSay::learn_out_of_range, {"note", field, least, most}};
  };
  if (!(note.mL >= 1e-9 && note.mL <= 1e9)) return outside("mL", "0", "1000000000");
  if (!(note.sd >= 0 && note.sd <= 10)) return outside("sd", "0", "10");
  if (note.felt < 0 || note.felt > 4) return outside("felt", "0", "4");
  if (!(note.stronger >= -1 && note.stronger <= 1)) return outside("stronger", "-1", "1");
  if (!(note.late >= 0 && note.late <= 1)) return outside("late", "0", "1");
  return std::nullopt;
}

NoteOnGrid on_grid(const TodayNote& note, double drying) {
  return {std::log(note.mL) - drying * note.stronger, note.sd, note.felt,
          note.felt < 4 ? note.late : 0};
}

void chances_along(const PredictionPoint& grid, const NoteOnGrid& note, std::vector<double>& out) {
  const double slips = grid.hand.slips;
  out.assign(static_cast<std::size_t>(grid.count), slips / 5);
  add_meant(grid, note, note.felt, (1 - slips) * (1 - note.late), out);
  if (note.late > 0) add_meant(grid, note, note.felt + 1, (1 - slips) * note.late, out);
}

double ln_chance(const PredictionPoint& grid, int place, const NoteOnGrid& note) {
  const double said = ln_meant(grid, place, note, note.felt);
  if (note.late == 0) return said;
  const double wanted = ln_meant(grid, place, note, note.felt + 1), most = std::max(said, wanted);
  return most +
         std::log((1 - note.late) * std::exp(said - most) + note.late * std::exp(wanted - most));
}

}
