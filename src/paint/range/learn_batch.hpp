// One batch's chance, integrated over what the batch has for itself: a sum over evenly spaced
// nodes. Private to learn*.cpp.
#pragma once

#include <Eigen/Dense>

#include <array>
#include <vector>

namespace paint::learning {

// The words' limits at one theta.
struct Limits {
  std::array<double, 4> c{};
  double slope = 0;
  double slips = 0;

  bool operator==(const Limits&) const = default;
};

struct NoteShare {
  int direction = 0;
  double share = 0;
};

struct SeenNote {
  int felt = 0;
  double t = 0; // where it lies but for what the batch has for itself
  double slope = 0;
};

// How many nodes a batch of this sd needs: spaced by 0.7 slopes or less, 23 at least. In steps of
// 8, so that a small change of theta seldom changes the sum's own error.
int nodes_for(double sd, double slope);
inline constexpr int most_nodes = 20000;

// Value, first and second derivatives by the directions that the batch's notes move along (demand
// of each segment, error of each tool).
class BatchSum {
public:
  double value = 0;
  Eigen::VectorXd slope;
  Eigen::MatrixXd curvature;

  void begin(const Limits& limits, double sd, int nodes, int directions);
  void add(const SeenNote& note, const std::vector<NoteShare>& moves); // how t moves
  void end();

private:
  struct Width { // of a word: exp(-width / slope), chance that it is meant in its middle
    double ratio = 0, meant = 0, ln_meant = 0;
  };
  struct Spread { // what notes of one slope have in common
    Limits limits;
    double sd = -1, slope = -1;
    std::array<Width, 5> widths;
    std::vector<double> rising, falling; // exp(+- sd q / slope)
  };

  void place_nodes(int nodes);
  const Spread& spread(double slope);
  bool add_fast(const SeenNote& note);
  void add_slow(const SeenNote& note);
  void take(const std::vector<NoteShare>& moves);
  void flush();
  double* row(std::vector<double>& rows, int i) { return rows.data() + i * count; }

  Limits at;
  double sd = 0;
  int placed = 0, count = 0; // nodes; with those that fill up the lanes
  int directions_count = 0;
  std::vector<double> q, weight; // nodes in sds of the batch; spacing times normal density
  std::array<Spread, 2> spreads; // of knife and muller, as a rule; the last used comes first
  double ln_slipped = 0;
  std::vector<double> d1, d2;             // of one note at each node
  std::vector<double> product, logarithm; // of all notes' chances
  double at_least = 0;                    // ln of what the product may have come down to
  bool flushed = false;
  std::vector<double> first, second; // sums of d1 and d2 along directions
};

}
