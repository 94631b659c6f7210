#include "speed/race.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <numeric>
#include <random>

namespace speed {

namespace {

// Nearest rank: the smallest value that at least that share of them does not exceed.
double quantile(std::vector<double> values, double share) {
  std::sort(values.begin(), values.end());
  const auto rank = static_cast<std::size_t>(std::ceil(share * static_cast<double>(values.size())));
  return values[std::max<std::size_t>(rank, 1) - 1];
}

double median(const std::vector<double>& values) { return quantile(values, 0.5); }

struct Lane {
  std::vector<double> all, round_medians;

  void run(const Contender& contender, int burst, bool counts) {
    std::vector<double> goes;
    for (int i = 0; i < burst; ++i) goes.push_back(contender.once());
    if (!counts) return;
    all.insert(all.end(), goes.begin(), goes.end());
    round_medians.push_back(median(goes));
  }
};

// Against the baseline, round by round.
struct Against {
  double ratio = 0, more = 0;
};

Against against(const Lane& lane, const Lane& baseline) {
  std::vector<double> ratios, more;
  for (std::size_t i = 0; i < lane.round_medians.size(); ++i) {
    ratios.push_back(lane.round_medians[i] / baseline.round_medians[i]);
    more.push_back(lane.round_medians[i] - baseline.round_medians[i]);
  }
  return {median(ratios), median(more)};
}

void print(const std::string& group, const std::string& name, const Lane& lane, const Against& a) {
  std::printf("row\t%s\t%s\t%zu\t%.6f\t%.6f\t%.6f\t%.6f\n", group.c_str(), name.c_str(),
              lane.all.size(), median(lane.all), quantile(lane.all, 0.99), a.more, a.ratio);
}

}

double timed(const std::function<void()>& what) {
  const auto before = std::chrono::steady_clock::now();
  what();
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - before;
  return took.count();
}

void race(const std::string& group, const std::vector<Contender>& contenders, const Rounds& r) {
  std::mt19937 random(1);
  std::vector<Lane> lanes(contenders.size());
  std::vector<std::size_t> order(contenders.size());
  std::iota(order.begin(), order.end(), 0u);
  for (int round = 0; round < r.warm_up + r.rounds; ++round) {
    std::shuffle(order.begin(), order.end(), random);
    for (const std::size_t i : order) lanes[i].run(contenders[i], r.burst, round >= r.warm_up);
  }
  for (std::size_t i = 0; i < lanes.size(); ++i)
    print(group, contenders[i].name, lanes[i], against(lanes[i], lanes[0]));
  std::fflush(stdout);
}

void need(bool holds, const std::string& what) {
  if (holds) return;
  std::fprintf(stderr, "speed: %s\n", what.c_str());
  std::exit(1);
}

int count_of(const char* text) {
  char* end = nullptr;
  const long count = std::strtol(text, &end, 10);
  need(*text != 0 && *end == 0 && count > 0 && count < 1000000,
       "a count is wanted, not " + std::string(text));
  return static_cast<int>(count);
}

}
