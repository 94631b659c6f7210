#include "published/studios/workshop.hpp"

#include "paint/range/learn_facts.hpp"
#include "paint/range/range.hpp"

#include <algorithm>
#include <cmath>

namespace studios {

using namespace paint;

namespace {

constexpr double tool_sd = 0.03, class_sd = 0.15, pigment_apart = 0.2;
constexpr int batches_of_a_bottle = 5, batches_new_to_it = 8;
constexpr double minutes_a_note = 2, minutes_to_loosen = 6;

std::size_t place(int i) { return static_cast<std::size_t>(i); }

PigmentClass family_of(int pigment) {
  constexpr PigmentClass families[] = {PigmentClass::mineral, PigmentClass::organic,
                                       PigmentClass::mineral, PigmentClass::carbon};
  return families[pigment % 4];
}

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

// Hands differ from studio to studio by half of what the priors allow.
Workshop::Workshop(const Truth& of, std::uint64_t seed) : chance(seed), truth(of) {
  const auto priors = usual_theta();
  Theta theta;
  for (std::size_t i = 0; i < theta_count; ++i)
    theta[i] = priors[i].centre + 0.5 * priors[i].sd * chance.normal();
  hand = note_model_of(theta);
  hand.batch_sd = truth.batch_sd;
  add_pigments();
  for (int tool = 0; tool < 2; ++tool) tools.push_back(tool_sd * chance.normal());
  for (int bottle = 0; bottle < 20; ++bottle)
    bottles.push_back(truth.wrong_label * chance.normal());
}

Workshop::Workshop(const Truth& of, std::uint64_t seed, const Workshop& friends, double hands,
                   double lots, double off)
    : Workshop(of, seed) {
  known = friends.known;
  demands = friends.demands;
  const double apart = off + hands * chance.normal();
  for (double& demand : demands) demand += apart + lots * chance.normal();
}

void Workshop::add_pigments() {
  const double alpha = 0.4 * chance.normal();
  const double follows = truth.follows + truth.follows_sd * chance.normal();
  double of_class[4];
  for (double& off : of_class) off = class_sd * chance.normal();
  of_class[2] = of_class[0];
  for (int k = 0; k < pigments + untried; ++k) {
    const ClassPrior family = class_prior(family_of(k));
    const double off = family.oil_sd * chance.normal();
    const Pigment pigment{
        .g_per_mL = 1, .oil_g_per_100g = 93.5 * std::exp(family.oil + off), .family = family_of(k)};
    known.push_back(learn_facts(pigment));
    demands.push_back(alpha + family.over_oil + family.oil + follows * off + of_class[k % 4] +
                      pigment_apart * chance.normal());
  }
}

double Workshop::off_batch() {
  const double of_hand = truth.batch_sd * (truth.heavy_tails ? chance.heavy() : chance.normal());
  return of_hand + pigment_sd * chance.normal();
}

double Workshop::demand(int pigment, int number) const {
  return demands[place(pigment)] + drifted(number) +
         truth.gamma * (binder_gum(number) - usual_dry_gum);
}

Slab Workshop::batch(int number, bool of_untried) {
  Slab slab;
  slab.number = number;
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
  double wanted = 0;
  for (const auto& [pigment, of_it] : slab.pigments)
    wanted += of_it * std::exp(demands[place(pigment)]);
  slab.t = std::log(wanted) + drifted(number) + off_batch();
  if (number % 3 == 2) slab.t += truth.other_hand;
  slab.binder_gum = slab.dry_gum = binder_gum(number);
  slab.label_off = bottles[place(number / batches_of_a_bottle) % bottles.size()];
  slab.tool = chance.whole(2);
  slab.tool_error = tools[place(slab.tool)];
  return slab;
}

void Workshop::add(Slab& slab, double as_said) {
  const double before = std::exp(slab.ln_mL), mL = as_said * std::exp(slab.tool_error);
  const double stays = 1 - truth.dries;
  slab.dry_gum = (before * slab.dry_gum + mL * slab.binder_gum) / (before + mL) / stays;
  slab.ln_mL = std::log((before + mL) * stays);
}

double Workshop::middle(const Slab& slab) const {
  return slab.t + truth.gamma * (slab.dry_gum + slab.label_off - usual_dry_gum);
}

double Workshop::asked_of(const Slab& slab) const {
  return slab.t + truth.gamma * (slab.binder_gum + slab.label_off - usual_dry_gum) -
         slab.tool_error;
}

double Workshop::past_edge(const Slab& slab) const {
  return slab.ln_mL - middle(slab) - hand.half_width;
}

// The first two notes of a batch are felt under the knife.
Felt Workshop::feel(Slab& slab) {
  const double edges[] = {-hand.half_width - hand.sticky_reach, -hand.half_width, hand.half_width,
                          hand.half_width + hand.loose_reach};
  Felt felt{0, 0, slab.notes < 2};
  double x = slab.ln_mL - middle(slab);
  if (felt.knife) x += truth.knife + truth.knife_sd * chance.normal();
  const double minutes = minutes_a_note * std::max(0, slab.notes - 1);
  x += truth.looser_by_mulling * (1 - std::exp(-minutes / minutes_to_loosen));
  const double u = chance.even();
  // A logistic's sd is 1.814 of its scale.
  const double off =
      hand.slope * (truth.heavy_tails ? 1.814 * chance.heavy() : std::log(u / (1 - u)));
  const auto word_at = [&](double where) {
    int word = 0;
    while (word < 4 && where + off > edges[word]) ++word;
    return word;
  };
  felt.genuine = word_at(x);
  const double late = slab.number < batches_new_to_it ? truth.late : 0;
  felt.tapped = chance.even() < truth.random_notes ? chance.whole(5) : word_at(x - late);
  ++slab.notes;
  return felt;
}

Read Workshop::read(const Slab& slab) {
  return {std::exp(slab.ln_mL - slab.tool_error + note_sd * chance.normal()),
          slab.dry_gum - slab.binder_gum};
}

LearnProblem Workshop::nothing_yet() const {
  LearnProblem problem;
  problem.pigments = known;
  problem.tools = {{tool_sd}, {tool_sd}};
  return problem;
}

}
