#include "paper/facts.hpp"

#include "words/paper_says.hpp"
#include "words/say.hpp"

#include <algorithm>

namespace paper {

using namespace session;

std::string title_of(std::size_t many, const Batch* first, words::Sentence several) {
  return many == 1 && first ? first->name : words::say(several, {std::to_string(many)});
}

int offset_of(const Handed& handed, const Ref& line) {
  return session::offset_of(handed.offsets, line).value_or(0);
}

int offset_of(const Handed& handed) {
  return session::offset_of(handed.offsets, handed.batch).value_or(0);
}

bool knows_zone(const Handed& handed) {
  return std::all_of(handed.batch.entries.begin(), handed.batch.entries.end(), [&](const Entry& e) {
    return session::offset_of(handed.offsets, e.ref).has_value();
  });
}

bool is_coloured(const Card& card) {
  return card.kind() == CardKind::pigment || card.kind() == CardKind::paint;
}

std::vector<Card> pigments_of(const Batch& batch) {
  std::vector<Card> out;
  for (const Total& total : batch.totals)
    if (is_coloured(total.card)) out.push_back(total.card);
  if (!out.empty()) return out;
  for (const auto& [id, card] : batch.cards)
    if (is_coloured(card)) out.push_back(card);
  return out;
}

std::string pigment_words(const Card& pigment) {
  const std::string& index_name = pigment_of(pigment).index_name;
  if (index_name.empty()) return pigment.name;
  return words::say(words::PaperSay::paper_pigment, {pigment.name, index_name});
}

namespace {

Total& counted(std::vector<Total>& totals, const Batch& batch, const std::string& id) {
  for (Total& total : totals)
    if (total.card.id == id) return total;
  Total fresh;
  const auto card = batch.cards.find(id);
  if (card != batch.cards.end()) fresh.card = card->second;
  fresh.card.id = id;
  if (fresh.card.name.empty()) fresh.card.name = id;
  totals.push_back(std::move(fresh));
  return totals.back();
}

}

std::vector<Total> went_in(const Batch& batch) {
  if (!batch.newer) return batch.totals;
  std::vector<Total> out;
  for (const Entry& e : batch.entries) {
    const auto* added = std::get_if<Added>(&e.event);
    if (!added || e.withdrawn) continue;
    Total& total = counted(out, batch, added->of);
    if (added->unit == Unit::drops) total.drops += added->amount;
    if (added->unit == Unit::spoons) total.spoons[added->with] += added->amount;
    if (added->unit == Unit::g) total.weighed_g += added->amount;
  }
  return out;
}

std::string card_name(const Batch& batch, const std::string& id) {
  const auto card = batch.cards.find(id);
  return card == batch.cards.end() || card->second.name.empty() ? id : card->second.name;
}

}
