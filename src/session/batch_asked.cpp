// What is asked of a batch once it is folded.
#include "session/amounts.hpp"

#include <algorithm>
#include <map>

namespace session {

double seconds_of(const Batch& batch, Stage stage) {
  double sum = 0;
  for (const Pass& p : batch.passes)
    if (p.stage == stage) sum += p.end.value_or(batch.clock) - p.start;
  return sum;
}

const Pass* running(const Batch& batch) {
  const bool runs = !batch.passes.empty() && !batch.passes.back().end;
  return runs ? &batch.passes.back() : nullptr;
}

namespace {
template <class E>
const E* last_standing(const Batch& batch) {
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e)
    if (const E* found = std::get_if<E>(&e->event); found && !e->withdrawn) return found;
  return nullptr;
}
}

std::int64_t made_at(const Batch& batch) {
  for (const Entry& e : batch.entries)
    if (std::holds_alternative<Added>(e.event) && !e.withdrawn) return e.at;
  return batch.opened_at;
}

std::optional<Specks> last_dot(const Batch& batch) {
  const auto* dot = last_standing<Dot>(batch);
  return dot ? std::optional(dot->specks) : std::nullopt;
}

std::optional<TroubleKind> last_trouble(const Batch& batch) {
  const auto* trouble = last_standing<Trouble>(batch);
  return trouble ? std::optional(trouble->what) : std::nullopt;
}

bool leaves_out(WarningKind kind) {
  switch (kind) {
  case WarningKind::clock_ahead:
  case WarningKind::unknown_plan:
  case WarningKind::nameless:
  case WarningKind::corrected_to_no_name: return false;
  case WarningKind::unknown_event:
  case WarningKind::unknown_card:
  case WarningKind::withdrawn_missing:
  case WarningKind::corrected_missing:
  case WarningKind::corrected_kind:
  case WarningKind::corrected_remark:
  case WarningKind::amount_unreadable:
  case WarningKind::bottle_heavier:
  case WarningKind::bottle_uncounted:
  case WarningKind::not_moved:
  case WarningKind::not_poured:
  case WarningKind::not_weighed:
  case WarningKind::unknown_recipe: return true;
  }
  return true;
}

std::vector<BatchPigment> pigments(const Batch& batch) {
  std::vector<BatchPigment> out;
  double sum = 0;
  for (const Total& t : batch.totals) {
    if (t.card.kind() != CardKind::pigment || t.grams.value <= 0) continue;
    out.push_back({&t.card, t.grams.value / pigment_of(t.card).pigment.g_per_mL});
    sum += out.back().volume_share;
  }
  for (BatchPigment& p : out) p.volume_share /= sum;
  return out;
}

paint::PigmentClass family_of(const Batch& batch) {
  const auto all = pigments(batch);
  const auto largest = std::max_element(
      all.begin(), all.end(), [](auto& a, auto& b) { return a.volume_share < b.volume_share; });
  return largest == all.end() ? paint::PigmentClass::unknown
                              : pigment_of(*largest->card).pigment.family;
}

namespace {

bool is_coloured(const Card& card) {
  return card.kind() == CardKind::pigment || card.kind() == CardKind::paint;
}

std::vector<const Card*> coloured_as_laid_out(const Batch& batch) {
  std::vector<const Card*> out;
  const auto put = [&](const Card& card) {
    if (is_coloured(card)) out.push_back(&card);
  };
  for (const Entry& e : batch.entries)
    if (const auto* laid = std::get_if<LaidOut>(&e.event))
      if (const auto card = batch.cards.find(laid->card->id); card != batch.cards.end())
        put(card->second);
  for (const auto& [id, card] : batch.cards) put(card); // laid out for no batch in particular
  return out;
}

double pigment_mL_of(const Batch& batch, const Card& card) {
  const auto material = material_of(card);
  if (!material || !(material->pigment.g_per_mL > 0)) return 0;
  for (const Total& t : batch.totals)
    if (t.card.id == card.id)
      return t.grams.value * material->parts.pigment / material->pigment.g_per_mL;
  return 0;
}

}

std::uint32_t colour_of(const Batch& batch) {
  if (batch.swatch) return batch.swatch->shown;
  const Card* most = nullptr;
  double most_mL = 0;
  for (const Card* card : coloured_as_laid_out(batch)) {
    const double mL = pigment_mL_of(batch, *card);
    if (most && !(mL > most_mL)) continue;
    most = card;
    most_mL = mL;
  }
  return most ? pigment_of(*most).colour : 0;
}

std::vector<std::string> batch_ids(const Logs& logs) {
  std::map<std::string, std::int64_t> first;
  for (const Log* log : logs)
    for (const Line& line : log->lines) {
      if (!std::holds_alternative<Opened>(line.event) || line.batch.empty()) continue;
      const auto [at, fresh] = first.try_emplace(line.batch, line.at);
      at->second = std::min(at->second, line.at);
    }
  std::vector<std::string> ids;
  for (const auto& [id, at] : first) ids.push_back(id);
  std::stable_sort(ids.begin(), ids.end(),
                   [&](const auto& a, const auto& b) { return first[a] < first[b]; });
  return ids;
}

}
