#include "bench/card_facts.hpp"
#include "paint/binder.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"
#include "words/typed_date.hpp"

namespace bench {

using session::Card;
using session::CardKind;

std::optional<words::Error> fault_of_figures(const Card& card) {
  if (!session::is_liquid(card.kind())) return std::nullopt;
  const auto parts = paint::parts_of(session::recipe_of(card));
  if (!parts) return parts.error();
  return card.kind() == CardKind::binder ? paint::fault_of_recipe(session::recipe_of(card))
                                         : std::nullopt;
}

void read_typed_dates(Card& card, std::int64_t today) {
  card.made_on = words::typed_date(card.made_on, today, words::WithoutYear::last);
  card.keep_until = words::typed_date(card.keep_until, today, words::WithoutYear::next);
}

std::optional<words::Error> fault_of(const Card& card, std::int64_t today) {
  if (card.name.empty()) return words::Error{words::BenchSay::card_needs_name, {}};
  for (const std::string& date : {card.made_on, card.keep_until})
    if (!date.empty() && !words::days_of(date))
      return words::Error{words::BenchSay::not_a_date, {date, words::typed_example()}};
  if (!card.made_on.empty() && *words::days_of(card.made_on) > today)
    return words::Error{words::BenchSay::made_in_future, {card.made_on}};
  const auto made = words::days_of(card.made_on), until = words::days_of(card.keep_until);
  if (made && until && *until < *made)
    return words::Error{words::BenchSay::kept_before_made, {card.keep_until, card.made_on}};
  return fault_of_figures(card);
}

}
