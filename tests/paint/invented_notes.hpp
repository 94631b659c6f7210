// Notes as an invented studio would have felt them, from a seed.
#pragma once

#include "paint/range/learn.hpp"

#include <cmath>
#include <cstdint>
#include <random>

struct InventedStudio {
  int pigments = 6;
  int batches = 12;
  std::uint64_t seed = 1;
  int tools = 0;
  double blends = 0.25;    // share of batches
  double knife = 0;        // share of notes felt under it
  bool own_binder = false; // each batch of another strength, which dries from note to note
};

class InventedHand {
public:
  explicit InventedHand(std::uint64_t seed) : engine(seed) {}
  double even() { return (static_cast<double>(engine() >> 11) + 0.5) * 0x1p-53; }
  double normal() {
    return std::sqrt(-2 * std::log(even())) * std::cos(6.283185307179586 * even());
  }
  int whole(int below) { return static_cast<int>(even() * below); }
  int word(double x) { // x: ln flow over what is right
    const double edges[] = {-0.42, -0.12, 0.12, 0.37}, u = even();
    int felt = 0;
    while (felt < 4 && std::log(u / (1 - u)) > (edges[felt] - x) / 0.06) ++felt;
    return even() < 0.03 ? whole(5) : felt;
  }

private:
  std::mt19937_64 engine;
};

inline paint::LearnProblem invented_notes(const InventedStudio& studio) {
  InventedHand hand(studio.seed);
  paint::LearnProblem p;
  std::vector<double> demand, tool;
  for (int k = 0; k < studio.pigments; ++k) {
    p.pigments.push_back({0.3 * hand.normal(), 0.7, 0});
    demand.push_back(p.pigments.back().ln_oil + 0.7 + 0.25 * hand.normal());
  }
  for (int t = 0; t < studio.tools; ++t) {
    p.tools.push_back({0.03});
    tool.push_back(0.03 * hand.normal());
  }
  for (int b = 0; b < studio.batches; ++b) {
    p.batches.push_back({0.01});
    p.segments.push_back({b, {}});
    double wanted = 0;
    for (int parts = hand.even() < studio.blends ? 2 : 1; parts > 0; --parts) {
      const int k = b < studio.pigments && parts == 1 ? b : hand.whole(studio.pigments);
      const double mL = 0.5 + 2 * hand.even();
      p.segments.back().pigments.push_back({k, mL});
      wanted += mL * std::exp(demand[static_cast<std::size_t>(k)]);
    }
    const int with = studio.tools > 0 ? hand.whole(studio.tools) : -1;
    double off = -0.08 * hand.normal() - std::log(wanted);
    if (with >= 0) off += tool[static_cast<std::size_t>(with)];
    double ln_mL = std::log(wanted) - 0.7;
    double gum = paint::usual_dry_gum;
    if (studio.own_binder) gum += 0.03 * hand.normal();
    const double stride[] = {0.3, 0.15, 0.1, -0.15, -0.3};
    for (int i = 0; i < 5; ++i) {
      paint::LearnNote note{b, ln_mL, 0.01, {}, hand.word(ln_mL + off)};
      if (with >= 0) note.tools = {{with, 1}};
      if (studio.knife > 0 && hand.even() < studio.knife)
        note.sd = std::hypot(note.sd, paint::knife_sd);
      note.dry_gum = gum;
      if (studio.own_binder) gum *= 1.01;
      p.notes.push_back(note);
      ln_mL += stride[note.felt] * (0.7 + 0.6 * hand.even());
    }
  }
  return p;
}
