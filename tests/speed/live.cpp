// The numbers that change while paint dries, a thousand times over. Usage: live ROUNDS
#include "paint/gum.hpp"
#include "paint/mixture.hpp"
#include "paint/range/learn_facts.hpp"
#include "paint/range/range.hpp"
#include "speed/race.hpp"
#include "speed/sitting.hpp"

#include <cmath>

namespace {

using namespace paint;
using speed::timed;

constexpr int times = 1000;

struct Slab {
  Mixture paint;
  Sums sums;
  Band band;
};

Slab slab(bool sweet) {
  const Pigment blue{.g_per_mL = 4.2, .oil_g_per_100g = 30, .family = PigmentClass::mineral};
  const Recipe recipe{.gum = 1, .water = 2, .honey = 0.2, .glycerin = sweet ? 0.1 : 0};
  Slab s;
  put(s.paint, "p", {Kind::pigment, {.pigment = 1}, blue}, exact(12));
  put(s.paint, "b", {Kind::binder, *parts_of(recipe), {}}, exact(6));
  s.sums = sums_of(s.paint.contents);
  s.band = band_seen(*predict(*learn({}), {{{-1, 1, learn_facts(blue)}}, {}, 0}));
  return s;
}

// Each time a little later: what has left, what stands there, and what the hand would say of it.
double live_numbers(const Slab& slab) {
  double sum = 0;
  const double ms = timed([&] {
    for (int i = 0; i < times; ++i) {
      const auto by = dried(slab.paint, slab.sums, Spread::mulling, {22, 0.45}, 0.5 * i);
      const Live now = live(slab.sums, {by->water.lost_g, 0});
      sum += chance_right(slab.band, *now.flow) + *now.over_oil_point + *now.gum_strength +
             (gum_state(slab.sums.gum_g, slab.sums.pigment_mL, usual_marks(PigmentClass::mineral))
                  ? 1
                  : 0);
    }
  });
  speed::need(std::isfinite(sum) && sum > 0, "the numbers make no sense");
  return ms;
}

double whole_standing(const Slab& slab) {
  double sum = 0;
  const double ms = timed([&] {
    for (int i = 0; i < times; ++i) sum += stand(slab.paint).flow_now->value;
  });
  speed::need(sum > 0, "the paint stands nowhere");
  return ms;
}

double exponentials() {
  double sum = 0;
  const double ms = timed([&] {
    for (int i = 0; i < 10 * times; ++i) sum += std::exp(-1e-4 * i);
  });
  speed::need(sum > 0, "exponentials make no sense");
  return ms;
}

}

int main(int count, char** words) {
  speed::need(count == 2, "usage: live ROUNDS");
  const Slab honey = slab(false), glycerin = slab(true);
  speed::race("live",
              {{"exponentials", exponentials},
               {"honey", [&] { return live_numbers(honey); }},
               {"glycerin", [&] { return live_numbers(glycerin); }},
               {"standing", [&] { return whole_standing(honey); }}},
              {speed::count_of(words[1])});
}
