#include "paint/mull_time.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace paint {

namespace {

constexpr double step = 0.06; // of ln T
constexpr std::size_t most_batches = 40, most_dots = 40;

double ln_minutes(std::size_t cell) { return std::log(0.25) + step * static_cast<double>(cell); }

double below(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); } // normal

// Where specks become few, as a share of the time in which they go.
double share_to_few() {
  const double many = specks_said(SpeckWord::many).middle;
  const double few = specks_said(SpeckWord::few).high, none = specks_said(SpeckWord::none).high;
  return std::log(many / few) / std::log(many / none);
}

double chance_of(const MullDot& dot, double ln_t, const MullScatter& scatter) {
  const double at = std::log(dot.minutes), judging = scatter.of_judging;
  const double none = below((at - ln_t) / judging);
  const double many = below((ln_t + std::log(share_to_few()) - at) / judging);
  const double said = dot.specks == SpeckWord::none   ? none
                      : dot.specks == SpeckWord::many ? many
                                                      : std::max(0.0, 1 - none - many);
  return (1 - scatter.slips) * said + scatter.slips / 3;
}

void scale(MullTime& time, double to) {
  for (double& x : time) x *= to;
}

void normalise(MullTime& time) { scale(time, 1 / std::accumulate(time.begin(), time.end(), 0.0)); }

MullTime chances_of(const MullBatch& dots, const MullScatter& scatter) {
  MullTime out;
  out.fill(1);
  const std::size_t first = dots.size() > most_dots ? dots.size() - most_dots : 0;
  for (std::size_t d = first; d < dots.size(); ++d) {
    if (!(dots[d].minutes > 0) || !std::isfinite(dots[d].minutes)) continue;
    for (std::size_t i = 0; i < mull_cells; ++i)
      out[i] *= chance_of(dots[d], ln_minutes(i), scatter);
  }
  return out;
}

// What a scatter makes of it; beyond its ends the grid goes on as there.
MullTime smoothed(const MullTime& from, double sd) {
  const int reach = static_cast<int>(std::ceil(4 * sd / step));
  std::vector<double> weights;
  for (int k = -reach; k <= reach; ++k)
    weights.push_back(std::exp(-0.5 * std::pow(k * step / sd, 2)));
  const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
  MullTime out{};
  for (int i = 0; i < static_cast<int>(mull_cells); ++i)
    for (int k = -reach; k <= reach; ++k) {
      const int at = std::clamp(i + k, 0, static_cast<int>(mull_cells) - 1);
      out[i] += weights[k + reach] / sum * from[at];
    }
  return out;
}

// Of something between many factors, each of which may be small: its logarithm is summed.
struct Product {
  MullTime ln{};

  void times(const MullTime& factor) {
    for (std::size_t i = 0; i < mull_cells; ++i) ln[i] += std::log(std::max(factor[i], 1e-300));
  }
  double largest() const { return *std::max_element(ln.begin(), ln.end()); }
  MullTime value() const { // the largest is 1
    MullTime out;
    const double most = largest();
    for (std::size_t i = 0; i < mull_cells; ++i) out[i] = std::exp(ln[i] - most);
    return out;
  }
};

// How likely a pigment's dots are for each middle of its batches.
Product chance_of_middle(const MullPigment& batches, double of_batches,
                         const MullScatter& scatter) {
  Product out;
  const std::size_t first = batches.size() > most_batches ? batches.size() - most_batches : 0;
  for (std::size_t b = first; b < batches.size(); ++b)
    if (!batches[b].empty()) out.times(smoothed(chances_of(batches[b], scatter), of_batches));
  return out;
}

MullTime usual(const Decline& guess, double of_classes) {
  const Fineness many = specks_said(SpeckWord::many);
  const auto passes = passes_needed({many.middle, many.middle, many.middle},
                                    specks_said(SpeckWord::none).high, guess);
  const double middle = std::log(passes->middle * guess_pass_min);
  MullTime out;
  for (std::size_t i = 0; i < mull_cells; ++i)
    out[i] = std::exp(-0.5 * std::pow((ln_minutes(i) - middle) / of_classes, 2));
  normalise(out);
  return out;
}

// With one choice of the scatters.
struct Learnt {
  MullTime time{};
  double ln_evidence = 0;
};

Learnt learnt(const MullTime& usual, const std::vector<Product>& pigments,
              std::optional<std::size_t> which, double of_pigments, double of_batches) {
  Product of_class, of_others;
  double scales = 0;
  for (std::size_t p = 0; p < pigments.size(); ++p) {
    const MullTime seen = smoothed(pigments[p].value(), of_pigments);
    of_class.times(seen);
    if (p != which) of_others.times(seen);
    scales += pigments[p].largest();
  }
  of_class.times(usual);
  of_others.times(usual);
  const MullTime all = of_class.value();
  MullTime middle = smoothed(of_others.value(), of_pigments);
  if (which) {
    const MullTime own = pigments[*which].value();
    for (std::size_t i = 0; i < mull_cells; ++i) middle[i] *= own[i];
  }
  Learnt out{smoothed(middle, of_batches), 0};
  normalise(out.time);
  out.ln_evidence =
      scales + of_class.largest() + std::log(std::accumulate(all.begin(), all.end(), 0.0));
  return out;
}

double quantile(const MullTime& time, double share) {
  double sum = 0;
  for (std::size_t i = 0; i < mull_cells; ++i) {
    if (sum + time[i] >= share)
      return std::exp(ln_minutes(i) + step * ((share - sum) / time[i] - 0.5));
    sum += time[i];
  }
  return std::exp(ln_minutes(mull_cells - 1));
}

double share_until(SpeckWord until) {
  return until == SpeckWord::none ? 1 : until == SpeckWord::few ? share_to_few() : 0;
}

}

std::optional<MullTime> mull_time(PigmentClass family, const std::vector<MullPigment>& of_class,
                                  std::optional<std::size_t> which, const MullScatter& scatter) {
  const auto guess = decline_guess(family);
  if (!guess) return std::nullopt;
  const MullTime before = usual(*guess, scatter.of_classes);
  std::vector<Learnt> all;
  for (const double of_batches : scatter.of_batches) {
    std::vector<Product> pigments;
    for (const MullPigment& pigment : of_class)
      pigments.push_back(chance_of_middle(pigment, of_batches, scatter));
    for (const double of_pigments : scatter.of_pigments)
      all.push_back(learnt(before, pigments, which, of_pigments, of_batches));
  }
  const auto best = std::max_element(all.begin(), all.end(), [](const Learnt& a, const Learnt& b) {
    return a.ln_evidence < b.ln_evidence;
  });
  MullTime out{};
  for (const Learnt& one : all)
    for (std::size_t i = 0; i < mull_cells; ++i)
      out[i] += std::exp(one.ln_evidence - best->ln_evidence) * one.time[i];
  normalise(out);
  return out;
}

MullTime mull_time_of_blend(const std::vector<MullTime>& pigments, const MullPigment& own) {
  constexpr double of_batches = 0.3;
  const MullTime slowest =
      *std::max_element(pigments.begin(), pigments.end(), [](const MullTime& a, const MullTime& b) {
        return quantile(a, 0.5) < quantile(b, 0.5);
      });
  if (own.empty()) return slowest;
  MullTime middle = chance_of_middle(own, of_batches, {}).value();
  for (std::size_t i = 0; i < mull_cells; ++i) middle[i] *= slowest[i];
  MullTime out = smoothed(middle, of_batches);
  normalise(out);
  return out;
}

MullTime mull_time_after(const MullTime& before, const MullBatch& today) {
  MullTime out = chances_of(today, {});
  for (std::size_t i = 0; i < mull_cells; ++i) out[i] *= before[i];
  normalise(out);
  return out;
}

Interval mull_minutes(const MullTime& time, SpeckWord until) {
  const double share = share_until(until);
  return {share * quantile(time, 0.1), share * quantile(time, 0.5), share * quantile(time, 0.9)};
}

std::optional<Interval> mull_minutes_left(const MullTime& time, const MullBatch& today,
                                          double mulled, SpeckWord until) {
  const double share = share_until(until);
  double ruled_out = 0;
  if (!today.empty()) {
    if (today.back().specks >= until) return Interval{};
    ruled_out = today.back().minutes / share;
  }
  MullTime left = mull_time_after(time, today);
  double sum = 0;
  for (std::size_t i = 0; i < mull_cells; ++i) {
    if (std::exp(ln_minutes(i)) <= ruled_out) left[i] = 0;
    sum += left[i];
  }
  if (!(sum > 1e-6)) return std::nullopt;
  scale(left, 1 / sum);
  const auto to_come = [&](double p) { return std::max(0.0, share * quantile(left, p) - mulled); };
  return Interval{to_come(0.1), to_come(0.5), to_come(0.9)};
}

double usual_pass_after(const std::vector<double>& passes_s) {
  constexpr double as_many = 5;
  double sum = as_many * std::log(usual_pass_s);
  for (const double s : passes_s) sum += std::log(std::clamp(s, 60.0, 900.0));
  return std::exp(sum / (as_many + static_cast<double>(passes_s.size())));
}

}
