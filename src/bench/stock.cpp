#include "bench/stock.hpp"

#include "bench/choices.hpp"

namespace bench {

namespace {

const session::Stock& entered(const session::Stocks& stocks, const std::string& card) {
  static const session::Stock none;
  const auto stock = stocks.find(card);
  return stock == stocks.end() ? none : stock->second;
}

const session::Uses& uses_of(const BookIndex& index, const std::string& card) {
  static const session::Uses none;
  const auto uses = index.used_ug.find(card);
  return uses == index.used_ug.end() ? none : uses->second;
}

}

bool is_in_use(const Bench& bench, const std::string& card) {
  return bench.stock.count(card) > 0 || bench.pigments_in_recipes.count(card) > 0 ||
         last_used(bench, card) > 0;
}

bool is_mine(const Bench& bench, const session::Card& card) {
  return bench.own.count(card.id) > 0 || is_in_use(bench, card.id);
}

std::int64_t last_used(const Bench& bench, const std::string& card) {
  const auto took = bench.index.took_ug.find(card);
  const bool used = took != bench.index.took_ug.end() && !took->second.empty();
  return used ? took->second.rbegin()->first.first : 0;
}

std::vector<std::string> batches_with(const Bench& bench, const std::string& card,
                                      std::size_t most) {
  std::vector<std::string> out;
  const auto took = bench.index.took_ug.find(card);
  if (took == bench.index.took_ug.end()) return out;
  for (auto batch = took->second.rbegin(); batch != took->second.rend(); ++batch) {
    if (out.size() == most) break;
    if (!is_discarded(bench, batch->first.second)) out.push_back(batch->first.second);
  }
  return out;
}

std::vector<std::string> batches_by(const Bench& bench, const std::string& recipe,
                                    std::size_t most) {
  std::vector<std::string> out;
  const auto made = bench.index.made_by.find(recipe);
  if (made == bench.index.made_by.end()) return out;
  for (auto batch = made->second.rbegin(); batch != made->second.rend(); ++batch) {
    if (out.size() == most) break;
    if (!is_discarded(bench, batch->second)) out.push_back(batch->second);
  }
  return out;
}

std::optional<session::Remaining> stock_of(const BookIndex& index, const session::Stocks& stock,
                                           const session::Card& card) {
  return session::left_of(card, entered(stock, card.id), uses_of(index, card.id));
}

std::optional<session::Remaining> stock_of(const Bench& bench, const session::Card& card) {
  return stock_of(bench.index, bench.stock, card);
}

std::optional<double> low_mark(const BookIndex& index, const std::string& card) {
  constexpr std::size_t enough = 3; // more than that many are not looked at
  std::vector<double> latest;
  const auto took = index.took_ug.find(card);
  if (took == index.took_ug.end()) return std::nullopt;
  for (auto batch = took->second.rbegin(); batch != took->second.rend(); ++batch) {
    if (latest.size() == enough) break;
    latest.push_back(static_cast<double>(batch->second) * 1e-6);
  }
  return session::taken_by_a_batch(latest);
}

std::optional<double> low_mark(const Bench& bench, const std::string& card) {
  return low_mark(bench.index, card);
}

std::optional<double> days_left(const Bench& bench, const session::Card& card,
                                std::int64_t now_ms) {
  const auto left = stock_of(bench, card);
  return left ? session::days_left(*left, uses_of(bench.index, card.id), now_ms) : std::nullopt;
}

session::Prices prices(const Bench& bench) { return session::prices_of(bench.shelf, bench.stock); }

std::optional<session::Cost> cost_of(const Bench& bench, const session::Batch& batch) {
  const session::Prices known = prices(bench);
  if (known.currency.empty()) return std::nullopt;
  std::vector<session::Taken> taken;
  for (const session::Total& total : batch.totals)
    taken.push_back({&total.card, total.grams.value});
  return session::cost_of(taken, known);
}

namespace {

std::vector<session::Wanted> wanted_by(const Bench& bench, const Planned& plan) {
  std::vector<session::Wanted> out;
  for (const PlannedPigment& pigment : plan.pigments) out.push_back({pigment.card, pigment.grams});
  if (shelf_card(bench, bench.plan.binder)) out.push_back({bench.plan.binder, plan.binder_g});
  for (const PlannedPigment& extra : plan.extras) out.push_back({extra.card, extra.grams});
  return out;
}

}

std::optional<session::Cost> cost_of(const Bench& bench, const Planned& plan) {
  const session::Prices known = prices(bench);
  if (known.currency.empty()) return std::nullopt;
  std::vector<session::Taken> taken;
  for (const session::Wanted& wanted : wanted_by(bench, plan))
    if (const session::Card* card = shelf_card(bench, wanted.card))
      taken.push_back({card, wanted.g});
  return session::cost_of(taken, known);
}

std::vector<session::ToBuy> to_buy(const Bench& bench, const Planned& plan) {
  const auto wanted = wanted_by(bench, plan);
  std::map<std::string, double> left;
  for (const session::Wanted& one : wanted)
    if (const session::Card* card = shelf_card(bench, one.card))
      if (const auto there = stock_of(bench, *card)) left[one.card] = there->g;
  return session::to_buy(wanted, left);
}

std::optional<session::Ref> last_entry(const Bench& bench, const std::string& card) {
  const session::Stock& stock = entered(bench.stock, card);
  if (stock.jars.empty() && !stock.weighed) return std::nullopt;
  const bool jar =
      !stock.jars.empty() && (!stock.weighed || stock.jars.back().at >= stock.weighed->at);
  return jar ? stock.jars.back().line : stock.weighed->line;
}

}
