#include "bench/pours.hpp"

#include "bench/pan_times.hpp"

#include <algorithm>
#include <optional>

namespace bench {

namespace {

constexpr double least_mm = 0.5;

double least_rest_mL(const session::Batch& batch) {
  constexpr double of_a_pan = 1.0 / 3;
  std::optional<double> smallest;
  for (const session::Pan& pan : batch.pans)
    smallest = std::min(smallest.value_or(volume_of(pan.card).mL), volume_of(pan.card).mL);
  return std::max(least_left_mL, of_a_pan * smallest.value_or(0));
}

// As it will stand once what was poured is dry.
struct Filling {
  double brim_mL = 0, dry_mL = 0, least_mL = 0;
  int layers = 0;
};

std::vector<Filling> fillings_of(const session::Batch& batch) {
  std::vector<Filling> out;
  for (const session::Pan& pan : batch.pans)
    out.push_back({volume_of(pan.card).mL, session::dry_mL(pan), least_pour_mL(pan.card),
                   static_cast<int>(pan.layers.size())});
  return out;
}

// Those with room that share so much; the fullest go without first.
std::vector<Filling*> sharing(std::vector<Filling>& all, double mL) {
  std::vector<Filling*> out;
  for (Filling& pan : all)
    if (pan.dry_mL < full_share * pan.brim_mL) out.push_back(&pan);
  std::stable_sort(out.begin(), out.end(), [](const Filling* a, const Filling* b) {
    return a->dry_mL / a->brim_mL < b->dry_mL / b->brim_mL;
  });
  while (!out.empty() && mL / static_cast<double>(out.size()) < out.back()->least_mL)
    out.pop_back();
  return out;
}

// What is left after it.
double pour(std::vector<Filling*>& pans, double mL, double dry_share) {
  const double each = mL / static_cast<double>(pans.size());
  for (Filling* pan : pans) {
    const double poured = std::min(each, pan->brim_mL - pan->dry_mL);
    pan->dry_mL += poured * dry_share;
    ++pan->layers;
    mL -= poured;
  }
  return mL;
}

int most_layers(const std::vector<Filling>& pans) {
  int most = 0;
  for (const Filling& pan : pans) most = std::max(most, pan.layers);
  return most;
}

}

double least_pour_mL(const session::Card& pan) { return area_cm2(pan) * least_mm / 10; }

double dry_share_to_pour(const session::Batch& batch) {
  constexpr double usual = 0.55;
  const auto known = session::dry_share(batch.places, poured_from(batch));
  return known ? known->middle : usual;
}

bool is_worth_pouring(const session::Batch& batch) {
  return to_pour_mL(batch) >= least_rest_mL(batch);
}

bool is_enough_for_layer(const session::Batch& batch, int meant) {
  double least_mL = 0;
  for (const session::Pan& pan : batch.pans)
    if (!is_full(pan) && (meant == 0 || pan.number == meant)) least_mL += least_pour_mL(pan.card);
  return is_worth_pouring(batch) && to_pour_mL(batch) >= least_mL;
}

std::vector<const session::Pan*> pans_that_share(const session::Batch& batch,
                                                 std::vector<const session::Pan*> pans) {
  if (!is_worth_pouring(batch)) return {};
  const double mL = to_pour_mL(batch);
  const auto is_fuller = [](const session::Pan* a, const session::Pan* b) {
    return session::dry_mL(*a) / volume_of(a->card).mL <
           session::dry_mL(*b) / volume_of(b->card).mL;
  };
  while (!pans.empty()) {
    const double each = mL / static_cast<double>(pans.size());
    const bool spreads = std::all_of(pans.begin(), pans.end(), [&](const session::Pan* pan) {
      return each >= least_pour_mL(pan->card);
    });
    if (spreads) break;
    const auto last = std::max_element(pans.rbegin(), pans.rend(), is_fuller);
    pans.erase(std::next(last).base());
  }
  return pans;
}

PoursToCome pours_to_come(const session::Batch& batch) {
  constexpr int most = 20; // what goes on longer than that is not counted on
  const double dry_share = dry_share_to_pour(batch);
  std::vector<Filling> pans = fillings_of(batch);
  double mL = to_pour_mL(batch);
  const double least_mL = least_rest_mL(batch);
  PoursToCome out;
  while (out.layers < most && mL >= least_mL) {
    std::vector<Filling*> take = sharing(pans, mL);
    if (take.empty()) break;
    mL = pour(take, mL, dry_share);
    ++out.layers;
  }
  out.last = most_layers(pans);
  return out;
}

}
