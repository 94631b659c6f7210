#include "published/studios/workshop.hpp"

#include <algorithm>
#include <cmath>

namespace studios {

using namespace paint;

namespace {

constexpr double tool_sd = 0.03;

std::size_t place(int i) { return static_cast<std::size_t>(i); }

}

double Chance::even() { return (static_cast<double>(engine() >> 11) + 0.5) * 0x1p-53; }

double Chance::normal() {
  const double r = std::sqrt(-2 * std::log(even()));
  return r * std::cos(6.283185307179586 * even());
}

double Chance::heavy() {
  double squares = 0;
  for (int i = 0; i < 3; ++i) {
    const double x = normal();
    squares += x * x;
  }
  return normal() / std::sqrt(squares); // t's variance is 3, so t / sqrt(3)
}

int Chance::whole(int below) { return std::min(static_cast<int>(even() * below), below - 1); }

// Hands differ from studio to studio by half of what the priors allow; alpha, tau as the priors
// say.
Workshop::Workshop(const Truth& of, std::uint64_t seed) : chance(seed), truth(of) {
  const auto priors = usual_theta();
  Theta theta;
  for (std::size_t i = 0; i < theta_count; ++i)
    theta[i] = priors[i].centre + 0.5 * priors[i].sd * chance.normal();
  hand = note_model_of(theta);
  hand.batch_sd = truth.batch_sd;
  const double alpha = 0.4 * chance.normal();
  for (int k = 0; k < pigments + untried; ++k) {
    known.push_back({0.35 * chance.normal(), 0.6, 0});
    demands.push_back(alpha + known.back().ln_oil + known.back().kappa +
                      hand.pigment_sd * chance.normal());
  }
  for (int tool = 0; tool < 2; ++tool) tools.push_back(tool_sd * chance.normal());
}

double Workshop::off_batch() {
  const double of_hand = truth.batch_sd * (truth.heavy_tails ? chance.heavy() : chance.normal());
  return of_hand + pigment_sd * chance.normal();
}

void Workshop::begin(Slab& slab) {
  double wanted = 0;
  for (const auto& [pigment, mL] : slab.pigments) wanted += mL * std::exp(demand(pigment));
  slab.t = std::log(wanted) + drifted + off_batch();
  slab.ln_mL = std::log(wanted) - 0.4 - 0.4 * chance.even();
  slab.tool = chance.whole(2);
  slab.tool_error = tools[place(slab.tool)];
}

Slab Workshop::batch(bool of_untried) {
  Slab slab;
  const auto mL = [&] { return 0.6 + 1.6 * chance.even(); };
  if (of_untried)
    slab.pigments = {{pigments + chance.whole(untried), mL()}};
  else {
    // The first pigments are used more often than the last.
    const int k = std::min(chance.whole(pigments), chance.whole(pigments));
    slab.pigments = {{k, mL()}};
    if (chance.even() < 0.2)
      slab.pigments.emplace_back((k + 1 + chance.whole(pigments - 1)) % pigments, mL());
  }
  begin(slab);
  return slab;
}

Felt Workshop::feel(const Slab& slab, bool knife) {
  const double edges[] = {-hand.half_width - hand.sticky_reach, -hand.half_width, hand.half_width,
                          hand.half_width + hand.loose_reach};
  const double x = slab.ln_mL - slab.t + (knife ? truth.stage : 0);
  const double u = chance.even();
  // A logistic's sd is 1.814 of its scale.
  const double off =
      hand.slope * (truth.heavy_tails ? 1.814 * chance.heavy() : std::log(u / (1 - u)));
  Felt felt{0, 0};
  while (felt.genuine < 4 && x + off > edges[felt.genuine]) ++felt.genuine;
  felt.tapped = chance.even() < truth.random_notes ? chance.whole(5) : felt.genuine;
  return felt;
}

double Workshop::past_edge(const Slab& slab) const { return slab.ln_mL - slab.t - hand.half_width; }

// A maker's own way, without advice: liquid is added until it is felt right, and now and then past
// it.
void Workshop::note_batch(LearnProblem& problem, int batch_number) {
  Slab slab = batch(false);
  problem.batches.push_back({pigment_sd});
  problem.segments.push_back({batch_number, slab.pigments});
  const double stride[] = {0.30, 0.16, 0.10, 0, 0};
  const int beyond = chance.even() < 0.3 ? 1 : 0;
  int rights = 0;
  for (int note = 0; note < 8; ++note) {
    const Felt felt = feel(slab, note < 2);
    // What the tools say: the volume but for their errors and this reading's own.
    problem.notes.push_back({batch_number,
                             slab.ln_mL - slab.tool_error + note_sd * chance.normal(),
                             note_sd,
                             {{slab.tool, 1}},
                             felt.tapped});
    rights += felt.tapped == 2;
    if (felt.tapped > 2 || rights > beyond) break;
    slab.ln_mL += stride[felt.tapped] * (0.6 + 0.8 * chance.even());
  }
}

LearnProblem Workshop::history() {
  LearnProblem problem;
  problem.pigments = known;
  problem.tools = {{tool_sd}, {tool_sd}};
  for (int b = 0; b < batches; ++b) {
    drifted = truth.drift * (b + 1) / batches;
    note_batch(problem, b);
  }
  return problem;
}

}
