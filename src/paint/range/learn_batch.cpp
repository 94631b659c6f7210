#include "paint/range/learn_batch.hpp"

#include "paint/range/note_chance.hpp"

#include <algorithm>
#include <cmath>

namespace paint::learning {

namespace {

constexpr double reach = 4.2; // nodes to either side, in sds

// Exponents up to this are safe in products of four exponentials.
constexpr double safe_exponent = 150;
constexpr double lowest_product = -600; // ln

// One note at nodes k: its end above lies at e = exp((c - t) / s) times each[k]; the end below at
// `ratio` of it.
struct FastNote {
  double e = 0, ratio = 0;
  double meant = 0;   // (1 - slips) (1 - ratio)
  double slipped = 0; // slips / 5
  double per_slope = 0;
};

// Nodes are a multiple of this, so that a processor that can takes so many at once.
constexpr int lanes = 4;

// `product` takes on the chance; d1 and d2 are its slope and curvature, in ln, by t. The note comes
// by value: what lies in memory might change with each store, and no lanes would be used.
[[gnu::always_inline]] inline void each_node(const FastNote n, int count,
                                             const double* __restrict each,
                                             double* __restrict product, double* __restrict d1,
                                             double* __restrict d2) {
  for (int k = 0; k < count; ++k) {
    const double above = n.e * each[k], below = n.ratio * above;
    const double a1 = 1 + above, b1 = 1 + below;
    const double both = a1 * b1, meant = n.meant * above;
    const double all = meant + n.slipped * both;
    const double w = 1 / (both * all);
    const double inverse = w * all, share = meant * both * w;
    const double a = b1 * inverse, b = a1 * inverse; // F(-above), F(-below)
    const double g1 = (below * above - 1) * inverse * n.per_slope;
    const double g2 = -(above * a * a + below * b * b) * n.per_slope * n.per_slope;
    product[k] *= all * inverse;
    d1[k] = share * g1;
    d2[k] = share * (g1 * g1 + g2) - d1[k] * d1[k];
  }
}

#if defined(__x86_64__)
// To the same last bit: AVX2 by itself does not fuse a product and a sum.
__attribute__((target("avx2"))) void all_lanes(const FastNote& n, int count,
                                               const double* __restrict each,
                                               double* __restrict product, double* __restrict d1,
                                               double* __restrict d2) {
  each_node(n, count, each, product, d1, d2);
}

bool processor_can() {
  static const bool can = __builtin_cpu_supports("avx2");
  return can;
}
#endif

void at_nodes(const FastNote& n, int count, const double* __restrict each,
              double* __restrict product, double* __restrict d1, double* __restrict d2) {
#if defined(__x86_64__)
  if (processor_can()) return all_lanes(n, count, each, product, d1, d2);
#endif
  each_node(n, count, each, product, d1, d2);
}

void add_to(int count, double factor, const double* __restrict from, double* __restrict to) {
  for (int k = 0; k < count; ++k) to[k] += factor * from[k];
}

void take_alone(int count, double share, const double* __restrict d1, const double* __restrict d2,
                double* __restrict first, double* __restrict second) {
  const double squared = share * share;
  for (int k = 0; k < count; ++k) {
    first[k] += share * d1[k];
    second[k] += squared * d2[k];
  }
}

double inner(int count, const double* __restrict a, const double* __restrict b) {
  double sum = 0;
  for (int k = 0; k < count; ++k) sum += a[k] * b[k];
  return sum;
}

double inner(int count, const double* __restrict a, const double* __restrict b,
             const double* __restrict c) {
  double sum = 0;
  for (int k = 0; k < count; ++k) sum += a[k] * b[k] * c[k];
  return sum;
}

int pair_of(int i, int j) { return i >= j ? i * (i + 1) / 2 + j : j * (j + 1) / 2 + i; }

}

int nodes_for(double sd, double slope) {
  const double needed = 1 + 12 * sd / slope;
  if (!(needed < most_nodes)) return most_nodes + 1;
  return 23 + 8 * std::max(0, static_cast<int>(std::ceil((needed - 23) / 8)));
}

void BatchSum::place_nodes(int nodes) {
  if (nodes == placed) return;
  placed = nodes;
  count = (nodes + lanes - 1) / lanes * lanes;
  for (Spread& s : spreads) s.sd = -1;
  for (auto* row_of : {&q, &weight, &d1, &d2, &product, &logarithm})
    row_of->assign(static_cast<std::size_t>(count), 0.0); // those that fill up weigh nothing
  const double h = 2 * reach / (nodes - 1);
  for (std::size_t k = 0; k < static_cast<std::size_t>(nodes); ++k) {
    q[k] = -reach + h * static_cast<double>(k);
    weight[k] = h * 0.3989422804014327 * std::exp(-0.5 * q[k] * q[k]);
  }
}

void BatchSum::begin(const Limits& limits, double batch_sd, int nodes, int directions) {
  place_nodes(nodes);
  ln_slipped = limits.slips > 0 ? std::log(limits.slips / 5) : -infinite;
  at = limits;
  sd = batch_sd;
  directions_count = directions;
  std::fill(product.begin(), product.end(), 1.0);
  flushed = false;
  at_least = 0;
  first.assign(static_cast<std::size_t>(directions * count), 0.0);
  second.assign(static_cast<std::size_t>(directions * (directions + 1) / 2 * count), 0.0);
}

const BatchSum::Spread& BatchSum::spread(double slope_of_note) {
  const auto holds = [&](const Spread& s) {
    return s.sd == sd && s.slope == slope_of_note && s.limits == at;
  };
  if (holds(spreads[0])) return spreads[0];
  std::swap(spreads[0], spreads[1]);
  Spread& s = spreads[0];
  if (holds(s)) return s;
  s.limits = at;
  s.sd = sd;
  s.slope = slope_of_note;
  for (std::size_t word = 0; word < s.widths.size(); ++word) {
    const bool outermost = word == 0 || word == 4;
    const double in_slopes = outermost ? infinite : (at.c[word] - at.c[word - 1]) / slope_of_note;
    const double meant = (1 - at.slips) * -std::expm1(-in_slopes);
    s.widths[word] = {std::exp(-in_slopes), meant, std::log(meant)};
  }
  const auto n = static_cast<std::size_t>(count);
  s.rising.resize(n);
  s.falling.resize(n);
  for (std::size_t k = 0; k < n; ++k) s.rising[k] = std::exp(sd / slope_of_note * q[k]);
  std::reverse_copy(s.rising.begin(), s.rising.begin() + placed, s.falling.begin());
  std::fill(s.falling.begin() + placed, s.falling.end(), 1.0);
  return s;
}

void BatchSum::add(const SeenNote& note, const std::vector<NoteShare>& moves) {
  if (!add_fast(note)) add_slow(note);
  take(moves);
}

bool BatchSum::add_fast(const SeenNote& note) {
  const double s = note.slope, to_side = reach * sd / s;
  const bool lowest = note.felt == 0, highest = note.felt == 4;
  // The last word is the first word seen from the other side.
  const auto word = static_cast<std::size_t>(note.felt);
  const double above = highest ? (note.t - at.c[3]) / s : (at.c[word] - note.t) / s;
  const double below = lowest || highest ? -infinite : (at.c[word - 1] - note.t) / s;
  if (std::abs(above) + to_side > safe_exponent) return false;
  if (!std::isinf(below) && std::abs(below) + to_side > safe_exponent) return false;
  const Spread& common = spread(s);
  const Width& width = common.widths[word];
  if (!(width.meant > 0)) return false;
  // ln of the least chance at any node
  const double far = std::min(0.0, above - to_side) + std::min(0.0, -below - to_side) - 1.5;
  const double least = std::max(far + width.ln_meant, ln_slipped);
  if (at_least + least < lowest_product) flush();
  at_least += least;
  at_nodes({std::exp(above), width.ratio, width.meant, at.slips / 5, highest ? -1 / s : 1 / s},
           count, highest ? common.falling.data() : common.rising.data(), product.data(), d1.data(),
           d2.data());
  return true;
}

// The same by logarithms, for a note far from where anybody would have felt it.
void BatchSum::add_slow(const SeenNote& note) {
  flush();
  const double s = note.slope;
  const auto word = static_cast<std::size_t>(note.felt);
  for (std::size_t k = 0; k < d1.size(); ++k) {
    const double x = note.t - sd * q[k];
    const WordChance w = word_chance(note.felt == 0 ? -infinite : (at.c[word - 1] - x) / s,
                                     note.felt == 4 ? infinite : (at.c[word] - x) / s);
    const double g1 = -(w.by_above + w.by_below) / s;
    const double g2 = (w.by_above_2 + w.by_below_2 + 2 * w.by_both) / (s * s);
    const double meant = std::log1p(-at.slips) + w.ln_p;
    const double slipped = at.slips > 0 ? std::log(at.slips / 5) : -infinite;
    const double most = std::max(meant, slipped);
    const double all = most + std::log(std::exp(meant - most) + std::exp(slipped - most));
    const double share = std::exp(meant - all);
    logarithm[k] += all;
    d1[k] = share * g1;
    d2[k] = share * (g1 * g1 + g2) - d1[k] * d1[k];
  }
}

void BatchSum::take(const std::vector<NoteShare>& moves) {
  if (moves.size() == 1) {
    const int i = moves[0].direction;
    take_alone(count, moves[0].share, d1.data(), d2.data(), row(first, i),
               row(second, pair_of(i, i)));
    return;
  }
  for (std::size_t i = 0; i < moves.size(); ++i) {
    const NoteShare& one = moves[i];
    add_to(count, one.share, d1.data(), row(first, one.direction));
    for (std::size_t j = 0; j <= i; ++j) {
      const NoteShare& other = moves[j];
      // The lower half holds each pair once; directions of one note differ.
      add_to(count, one.share * other.share, d2.data(),
             row(second, pair_of(one.direction, other.direction)));
    }
  }
}

void BatchSum::flush() {
  if (!flushed) std::fill(logarithm.begin(), logarithm.end(), 0.0);
  flushed = true;
  at_least = 0;
  for (std::size_t k = 0; k < product.size(); ++k) {
    logarithm[k] += std::log(product[k]);
    product[k] = 1;
  }
}

void BatchSum::end() {
  double off = 0;
  if (flushed) {
    flush();
    for (std::size_t k = 0; k < product.size(); ++k) logarithm[k] += std::log(weight[k]);
    off = *std::max_element(logarithm.begin(), logarithm.end());
    for (std::size_t k = 0; k < product.size(); ++k) product[k] = std::exp(logarithm[k] - off);
  } else {
    for (std::size_t k = 0; k < product.size(); ++k) product[k] *= weight[k];
  }
  double sum = 0;
  for (const double share : product) sum += share;
  value = off + std::log(sum);
  for (double& share : product) share /= sum;
  slope.resize(directions_count);
  curvature.resize(directions_count, directions_count);
  for (int i = 0; i < directions_count; ++i) slope[i] = inner(count, product.data(), row(first, i));
  for (int i = 0; i < directions_count; ++i)
    for (int j = 0; j <= i; ++j)
      curvature(i, j) = curvature(j, i) =
          inner(count, product.data(), row(second, pair_of(i, j))) +
          inner(count, product.data(), row(first, i), row(first, j)) - slope[i] * slope[j];
}

}
