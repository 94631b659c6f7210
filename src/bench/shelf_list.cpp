#include "bench/shelf_list.hpp"

#include "bench/card_facts.hpp"
#include "bench/recipes.hpp"
#include "bench/stock.hpp"
#include "paint/catalogue.hpp"
#include "words/letter_case.hpp"

#include <algorithm>

namespace bench {

namespace {

struct Listed {
  const session::Card* card;
  bool mine;
  std::int64_t last_used;
};
using Cards = std::vector<Listed>;

Cards of_this_kind(const Bench& bench) {
  Cards out;
  for (const session::Card& card : bench.shelf_page.away ? bench.away : bench.shelf)
    if (shelf_kind(card.kind()) == bench.shelf_page.kind)
      out.push_back({&card, is_mine(bench, card), last_used(bench, card.id)});
  return out;
}

bool is_found(const Bench& bench, const session::Card& card, const std::string& wanted) {
  if (card.kind() == session::CardKind::recipe) return recipe_goes_by(bench, card, wanted);
  return paint::goes_by(card.id, card.name, session::pigment_of(card).index_name, wanted) ||
         words::searchable(card.lot).find(words::searchable(wanted)) != std::string::npos;
}

std::size_t count_mine(const Cards& cards) {
  return static_cast<std::size_t>(
      std::count_if(cards.begin(), cards.end(), [](const Listed& one) { return one.mine; }));
}

bool searches(const ShelfState& page) { return has_search(page.kind) && !page.search.empty(); }

bool lists_all(const ShelfState& page, std::size_t mine) {
  return page.away || page.ticking || searches(page) || mine == 0;
}

// The maker's own before the others, the latest used before those that lie there.
bool lies_before(const Listed& a, const Listed& b) {
  return a.mine != b.mine ? a.mine : a.last_used > b.last_used;
}

// Where each stays under the finger, ticked or not.
std::vector<const session::Card*> in_order_of_catalogue(const Cards& cards) {
  const auto& all = paint::catalogue();
  const auto place = [&](const session::Card* card) {
    return std::find_if(all.begin(), all.end(), [&](const auto& e) { return e.id == card->id; });
  };
  std::vector<const session::Card*> out;
  for (const Listed& one : cards) out.push_back(one.card);
  std::stable_sort(out.begin(), out.end(),
                   [&](const auto* a, const auto* b) { return place(a) < place(b); });
  return out;
}

}

std::vector<const session::Card*> cards_listed(const Bench& bench) {
  const ShelfState& page = bench.shelf_page;
  Cards cards = of_this_kind(bench);
  if (searches(page))
    std::erase_if(cards,
                  [&](const Listed& one) { return !is_found(bench, *one.card, page.search); });
  else if (!lists_all(page, count_mine(cards)))
    std::erase_if(cards, [&](const Listed& one) { return one.mine == page.others; });
  if (page.ticking) return in_order_of_catalogue(cards);
  if (!page.away) std::stable_sort(cards.begin(), cards.end(), lies_before);
  std::vector<const session::Card*> out;
  for (const Listed& one : cards) out.push_back(one.card);
  return out;
}

bool has_search(ShelfKind kind) { return kind == ShelfKind::pigment || kind == ShelfKind::recipe; }

ShelfPad row_pad(const Bench& bench) {
  return bench.shelf_page.ticking ? ShelfPad::own : ShelfPad::card;
}

std::size_t not_listed(const Bench& bench) {
  const Cards all = of_this_kind(bench);
  const std::size_t mine = count_mine(all);
  if (lists_all(bench.shelf_page, mine)) return 0;
  return bench.shelf_page.others ? mine : all.size() - mine;
}

bool is_read(const session::Card& card) { return card.kind() == session::CardKind::pigment; }

bool has_jars(const session::Card& card) {
  return card.kind() == session::CardKind::pigment || session::is_liquid(card.kind());
}

bool shows_batches(const ShelfState& page) {
  return page.on == CardPage::reading ||
         (page.card && page.card->kind() == session::CardKind::recipe);
}

std::vector<std::string> batches_of_card(const Bench& bench) {
  const auto& card = bench.shelf_page.card;
  if (card && card->kind() == session::CardKind::recipe)
    return batches_by(bench, card->id, latest_by_recipe);
  return card ? batches_with(bench, card->id, latest_batches) : std::vector<std::string>{};
}

}
