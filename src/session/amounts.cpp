#include "session/amounts.hpp"

#include "paint/measure.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

using Amounts = std::vector<std::optional<paint::Amount>>;

// A count that was lost is taken to be wrong by so many drops, or by so large a share of what had
// been dropped by then, whichever is more. Our own choice, until a bottle is weighed.
constexpr double lost_drops = 3;
constexpr double lost_share = 0.15;
constexpr double drop_g = 0.05;

constexpr double scale_step_g = 0.1;

words::Result<paint::Amount> measured(const Added& added, const Card& of, const Card* tool) {
  if (added.unit == Unit::g) return paint::grams_weighed(added.amount, scale_step_g);
  const auto material = material_of(of);
  if (!material) return tl::make_unexpected(material.error());
  if (!tool) return words::failure(words::Say::card_not_laid_out, {added.with});
  if (added.unit == Unit::spoons)
    return paint::grams_of_spoons(added.amount, {tool->id, tool->tool.mL, tool->tool.mL_u},
                                  *material);
  const paint::Dropper dropper{tool->id, tool->tool.mL, tool->tool.mL_u,
                               paint_kind(tool->tool.calibrated_with)};
  return paint::grams_of_drops(added.amount, dropper, *material);
}

void measure(BatchLines& lines, Amounts& amounts) {
  for (std::size_t i = 0; i < lines.entries.size(); ++i) {
    const Entry& e = lines.entries[i];
    const auto* added = std::get_if<Added>(&e.event);
    if (!added || e.withdrawn) continue;
    if (!lines.cards[i]) {
      lines.warnings.push_back({WarningKind::unknown_card, e.ref, added->of});
      continue;
    }
    auto grams = measured(*added, *lines.cards[i], lines.tools[i]);
    if (grams)
      amounts[i] = *std::move(grams);
    else
      lines.warnings.push_back(
          {WarningKind::amount_unreadable, e.ref, words::message(grams.error())});
  }
}

bool by_hand(const Event& event, const std::string& card) {
  const auto* added = std::get_if<Added>(&event);
  return added && added->of == card && added->unit != Unit::g;
}

bool by_scale(const Event& event, const std::string& card) {
  const auto* added = std::get_if<Added>(&event);
  return added && added->of == card && added->unit == Unit::g;
}

// Everything of one liquid that was dropped or spooned between two weighings of its bottle weighs
// together what the bottle lost, less what was weighed out of it.
void spread_difference(BatchLines& lines, Amounts& amounts, std::size_t before, std::size_t after) {
  const auto& first = std::get<BottleWeighed>(lines.entries[before].event);
  const auto& second = std::get<BottleWeighed>(lines.entries[after].event);
  double counted = 0, weighed = 0;
  for (std::size_t i = before; i < after; ++i) {
    if (!amounts[i]) continue;
    if (by_hand(lines.entries[i].event, first.of)) counted += amounts[i]->value;
    if (by_scale(lines.entries[i].event, first.of)) weighed += amounts[i]->value;
  }
  const double gone = first.g - second.g - weighed;
  if (gone < 0)
    return lines.warnings.push_back(
        {WarningKind::bottle_heavier, lines.entries[after].ref, first.of});
  if (counted <= 0) return;
  const double u = scale_step_g / std::sqrt(12.0) * std::sqrt(2.0);
  const std::string tool = "bottle " + lines.entries[after].ref.session + " " +
                           std::to_string(lines.entries[after].ref.n);
  for (std::size_t i = before; i < after; ++i) {
    if (!amounts[i] || !by_hand(lines.entries[i].event, first.of)) continue;
    const double share = amounts[i]->value / counted;
    amounts[i] = paint::Amount{gone * share, 0, {{tool, u * share}}};
  }
}

void weigh_bottles(BatchLines& lines, Amounts& amounts) {
  std::map<std::string, std::size_t> last;
  for (std::size_t i = 0; i < lines.entries.size(); ++i) {
    const auto* weighed = std::get_if<BottleWeighed>(&lines.entries[i].event);
    if (!weighed || lines.entries[i].withdrawn) continue;
    const auto before = last.find(weighed->of);
    if (before != last.end()) spread_difference(lines, amounts, before->second, i);
    last[weighed->of] = i;
  }
}

// A lost count between two weighings of its bottle does not matter any more.
bool weighed_around(const BatchLines& lines, std::size_t lost, const std::string& card) {
  const auto weighs = [&](const Entry& e) {
    const auto* w = std::get_if<BottleWeighed>(&e.event);
    return w && w->of == card && !e.withdrawn;
  };
  const auto middle = lines.entries.begin() + static_cast<std::ptrdiff_t>(lost);
  return std::any_of(lines.entries.begin(), middle, weighs) &&
         std::any_of(middle, lines.entries.end(), weighs);
}

void lose_counts(const BatchLines& lines, Amounts& amounts) {
  for (std::size_t i = 0; i < lines.entries.size(); ++i) {
    const auto* lost = std::get_if<CountLost>(&lines.entries[i].event);
    if (!lost || lines.entries[i].withdrawn || weighed_around(lines, i, lost->of)) continue;
    double counted = 0;
    for (std::size_t k = 0; k < i; ++k)
      if (amounts[k] && by_hand(lines.entries[k].event, lost->of)) counted += amounts[k]->value;
    const double u = std::max(lost_drops * drop_g, lost_share * counted);
    amounts[i] = paint::Amount{0, u * u, {}};
  }
}

}

Amounts amounts_of(BatchLines& lines) {
  Amounts amounts(lines.entries.size());
  measure(lines, amounts);
  weigh_bottles(lines, amounts);
  lose_counts(lines, amounts);
  return amounts;
}

words::Result<paint::Material> material_of(const Card& card) {
  if (card.is_a == CardKind::pigment) {
    paint::Material m{paint::Kind::pigment, {}, card.pigment};
    m.parts.pigment = 1;
    return m;
  }
  const auto parts = paint::parts_of(card.recipe);
  if (!parts) return tl::make_unexpected(parts.error());
  return paint::Material{paint_kind(card.is_a), *parts, {}};
}

}
