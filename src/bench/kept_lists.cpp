#include "bench/kept_lists.hpp"

#include "bench/choices.hpp"
#include "bench/recipes.hpp"
#include "bench/shelf_list.hpp"
#include "bench/stock.hpp"

#include <algorithm>

namespace bench {

namespace {

using Kept = std::shared_ptr<const KeptList>;

// What the maker owns, and when it was used.
std::string rests_on_cards(const Bench& bench) {
  std::string out;
  for (const std::size_t count :
       {bench.restocked, bench.index.taken, bench.shelf.size(), bench.away.size(), bench.own.size(),
        bench.stock.size(), bench.index.took_ug.size()})
    out += std::to_string(count) + " ";
  return out;
}

std::string shelf_rests_on(const Bench& bench) {
  const ShelfState& page = bench.shelf_page;
  std::string out = rests_on_cards(bench) + std::to_string(static_cast<int>(page.kind));
  for (const bool yes : {page.away, page.others, page.ticking}) out += yes ? " 1" : " 0";
  return out + " " + page.search;
}

std::string finder_rests_on(const Bench& bench) {
  return rests_on_cards(bench) + std::to_string(static_cast<int>(finds(bench))) +
         (bench.plan.all_cards ? " 1 " : " 0 ") + bench.plan.search;
}

std::vector<std::size_t> places(const std::vector<const session::Card*>& cards,
                                const std::vector<session::Card>& in) {
  std::vector<std::size_t> out;
  for (const session::Card* card : cards) out.push_back(static_cast<std::size_t>(card - in.data()));
  return out;
}

bool is_fresh(const Kept& kept, const std::string& rests_on) {
  return kept && kept->rests_on == rests_on;
}

std::size_t own_pigments(const Bench& bench) {
  return static_cast<std::size_t>(
      std::count_if(bench.shelf.begin(), bench.shelf.end(), [&](const session::Card& card) {
        return card.kind() == session::CardKind::pigment && is_mine(bench, card);
      }));
}

}

const std::vector<session::Card>& listed_from(const Bench& bench) {
  return bench.shelf_page.away ? bench.away : bench.shelf;
}

Kept list_of_shelf(const Bench& bench) {
  std::string rests_on = shelf_rests_on(bench);
  if (is_fresh(bench.shelf_list, rests_on)) return bench.shelf_list;
  return std::make_shared<KeptList>(KeptList{
      std::move(rests_on), places(cards_listed(bench), listed_from(bench)), not_listed(bench)});
}

Kept list_of_finder(const Bench& bench) {
  std::string rests_on = finder_rests_on(bench);
  if (is_fresh(bench.finder_list, rests_on)) return bench.finder_list;
  const bool recipes = finds(bench) == Finding::recipe;
  const auto found = recipes ? recipes_found(bench) : pigments_found(bench);
  const bool all = recipes || !bench.plan.search.empty();
  return std::make_shared<KeptList>(
      KeptList{std::move(rests_on), places(found, bench.shelf), all ? 0 : own_pigments(bench)});
}

void keep_lists(Bench& bench) {
  if (bench.screen == Screen::shelf) bench.shelf_list = list_of_shelf(bench);
  if (bench.screen == Screen::plan && finds(bench) != Finding::nothing)
    bench.finder_list = list_of_finder(bench);
}

}
