// The best set of spoons and drops for one amount, with as many scoops as there may be. Usage:
// scoops ROUNDS
#include "paint/scoops.hpp"

#include "speed/race.hpp"

#include <cmath>

namespace {

using namespace paint;
using speed::timed;

constexpr int amounts = 20;

double best_of(const std::vector<Scoop>& scoops, double step_g) {
  double off = 0;
  const double ms = timed([&] {
    for (int i = 1; i <= amounts; ++i) off += std::abs(best_scoops(i * step_g, 0.1, scoops)->off_g);
  });
  speed::need(std::isfinite(off), "the scoops make no sense");
  return ms / amounts;
}

double exponentials() {
  double sum = 0;
  const double ms = timed([&] {
    for (int i = 0; i < 10000; ++i) sum += std::exp(-1e-4 * i);
  });
  speed::need(sum > 0, "exponentials make no sense");
  return ms;
}

}

int main(int count, char** words) {
  speed::need(count == 2, "usage: scoops ROUNDS");
  const std::vector<Scoop> usual{{"tsp", exact(5.6), false, true}, {"dropper", exact(0.037), true}};
  const std::vector<Scoop> all{{"tbsp", exact(16.7)},
                               {"tsp", exact(5.6), false, true},
                               {"half", exact(2.7), false, true},
                               {"pinch", exact(0.4)},
                               {"a", exact(0.037), true},
                               {"b", exact(0.031), true},
                               {"c", exact(0.045), true},
                               {"d", exact(0.052), true}};
  speed::race("scoops",
              {{"exponentials", exponentials},
               {"teaspoon and dropper", [&] { return best_of(usual, 2); }},
               {"four spoons, four droppers", [&] { return best_of(all, 7); }}},
              {speed::count_of(words[1])});
}
