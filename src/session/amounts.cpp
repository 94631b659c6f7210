#include "session/amounts.hpp"

#include "paint/bottle.hpp"
#include "paint/measure.hpp"
#include "session/bottles.hpp"
#include "words/lists.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cstring>

namespace session {

namespace {

using Amounts = std::vector<std::optional<paint::Amount>>;

bool goes_into_paint(const Card& card) {
  const CardKind kind = card.kind();
  return is_liquid(kind) || kind == CardKind::pigment || kind == CardKind::paint;
}

words::Result<paint::Amount> grams_of(const Added& added, const Card& of, const Card* tool) {
  if (added.unit == Unit::g && goes_into_paint(of))
    return paint::grams_weighed(added.amount, paint::scale_step_g);
  const auto material = material_of(of);
  if (!material) return tl::make_unexpected(material.error());
  if (added.unit == Unit::spoons)
    return paint::grams_of_spoons(added.amount, spoon_of(*tool), *material);
  return paint::grams_of_drops(added.amount, dropper_of(*tool), *material);
}

void measure(BatchLines& lines, Amounts& amounts) {
  GramsAdded grams_added;
  for (std::size_t i = 0; i < lines.entries.size(); ++i) {
    const Entry& e = lines.entries[i];
    const auto* added = std::get_if<Added>(&e.event);
    if (!added || e.withdrawn) continue;
    if (!lines.cards[i]) {
      lines.warnings.push_back({WarningKind::unknown_card, e.ref, added->of});
      continue;
    }
    const auto& grams = grams_added(*added, *lines.cards[i], lines.tools[i].get());
    if (grams)
      amounts[i] = *grams;
    else
      lines.warnings.push_back({WarningKind::amount_unreadable, e.ref, {}, grams.error()});
  }
}

bool loses_count(const Event& event, const std::string& card) {
  const auto* lost = std::get_if<CountLost>(&event);
  return lost && lost->of == card;
}

bool by_drops(const Event& event, const std::string& card) {
  const auto* added = std::get_if<Added>(&event);
  return added && added->of == card && added->unit == Unit::drops;
}

bool weighs_bottle(const Event& event, const std::string& card) {
  const auto* weighed = std::get_if<BottleWeighed>(&event);
  return weighed && weighed->of == card;
}

// g of one liquid's drops before a line whose count may be wrong: dropped since a count was lost
// before, and not between two weighings of the bottle. Absent where none was dropped since the last
// loss, so that to say it twice says nothing new.
std::optional<double> may_be_miscounted(const BatchLines& lines, const Amounts& amounts,
                                        std::size_t before, const std::string& card) {
  double since_weighing = 0, until_weighing = 0;
  bool weighed = false, lost = false, dropped = false;
  for (std::size_t i = before; i-- > 0;) {
    const Entry& e = lines.entries[i];
    if (e.withdrawn) continue;
    if (weighs_bottle(e.event, card)) {
      weighed = true;
      until_weighing = 0;
    }
    lost = lost || loses_count(e.event, card);
    if (lost || !amounts[i] || !by_drops(e.event, card)) continue;
    dropped = true;
    (weighed ? until_weighing : since_weighing) += amounts[i]->value;
  }
  if (lost && !dropped) return std::nullopt;
  return since_weighing + until_weighing;
}

void lose_counts(const BatchLines& lines, Amounts& amounts) {
  for (std::size_t i = 0; i < lines.entries.size(); ++i) {
    const auto* lost = std::get_if<CountLost>(&lines.entries[i].event);
    if (!lost || lines.entries[i].withdrawn) continue;
    const auto counted = may_be_miscounted(lines, amounts, i, lost->of);
    if (!counted) continue;
    if (const auto unsure = paint::lost_count(*counted)) amounts[i] = *unsure;
  }
}

}

Amounts amounts_of(BatchLines& lines) {
  Amounts amounts(lines.entries.size());
  measure(lines, amounts);
  lose_counts(lines, amounts);
  weigh_bottles(lines, amounts);
  return amounts;
}

const words::Result<paint::Amount>& GramsAdded::operator()(const Added& added, const Card& of,
                                                           const Card* tool) {
  if (!tool && added.unit != Unit::g) {
    const auto material = material_of(of);
    without_tool_ = material ? words::failure(words::SessionSay::card_not_laid_out, {added.with})
                             : tl::make_unexpected(material.error());
    return without_tool_;
  }
  std::uint64_t amount = 0; // bit by bit: of what is no number nothing is less or more
  static_assert(sizeof amount == sizeof added.amount);
  std::memcpy(&amount, &added.amount, sizeof amount);
  const auto known = known_.find({&of, tool, added.unit, amount});
  if (known != known_.end()) return known->second;
  const Measured measured{&of, tool, added.unit, amount};
  return known_.emplace(measured, grams_of(added, of, tool)).first->second;
}

paint::Dropper dropper_of(const Card& card) {
  const auto* dropper = std::get_if<DropperCard>(&card.facts);
  const Volume drop = volume_of(card);
  return {card.id, drop.mL, drop.mL_u,
          paint_kind(dropper ? dropper->calibrated_with : CardKind::water)};
}

paint::Spoon spoon_of(const Card& card) {
  const Volume level = volume_of(card);
  return {card.id, level.mL, level.mL_u};
}

namespace {

words::Result<paint::Material> material(const LiquidCard& card) {
  const auto parts = paint::parts_of(card.recipe);
  if (!parts) return tl::make_unexpected(parts.error());
  return paint::Material{paint_kind(card.kind), *parts, {}};
}

words::Result<paint::Material> material(const PigmentCard& card) {
  paint::Material m{paint::Kind::pigment, {}, card.pigment};
  m.parts.pigment = 1;
  return m;
}

words::Result<paint::Material> material(const PaintCard& card) {
  const auto parts = paint::whole(card.made_of);
  if (!parts) return tl::make_unexpected(parts.error());
  return paint::Material{paint::Kind::other, *parts, card.as_one.pigment};
}

template <words::one_of<DropperCard, SpoonCard, PanCard, SlabCard, MullerCard, RecipeCard> Tool>
words::Result<paint::Material> material(const Tool&) {
  return words::failure(words::SessionSay::card_is_a_tool);
}
}

words::Result<paint::Material> material_of(const Card& card) {
  if (!goes_into_paint(card)) return words::failure(words::SessionSay::card_is_a_tool, {card.name});
  return std::visit([](const auto& facts) { return material(facts); }, card.facts);
}

}
