#include "session/taught.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

const Card* card_in(const Batch& batch, const std::string& id) {
  const auto card = batch.cards.find(id);
  return card == batch.cards.end() ? nullptr : &card->second;
}

bool of_pigments_alone(const Batch& batch, const Feeling& note) {
  return !note.pigments.empty() &&
         std::all_of(note.pigments.begin(), note.pigments.end(), [&](const auto& part) {
           const Card* card = card_in(batch, part.first);
           return card && card->is_a == CardKind::pigment && part.second > 0;
         });
}

bool counts(const Batch& batch, const Feeling& note) {
  return !note.repeats && of_pigments_alone(batch, note);
}

bool begins(const std::string& text, std::string_view with) {
  return text.compare(0, with.size(), with) == 0;
}

// The note's tools by their keys; what only this batch knows goes into `own_variance`.
std::map<std::string, double> keyed(const Batch& batch, const Feeling& note, double& own_variance) {
  std::map<std::string, double> tools;
  for (const auto& [tool, sd] : note.tools) {
    const std::string key = tool_key(batch, tool);
    if (key.empty())
      own_variance += sd * sd;
    else
      tools[key] += sd;
  }
  return tools;
}

}

std::string tool_key(const Batch& batch, const std::string& tool) {
  if (begins(tool, "tension:") || begins(tool, "heap:")) return tool;
  const Card* card = card_in(batch, tool);
  if (!card || (card->is_a != CardKind::dropper && card->is_a != CardKind::spoon)) return "";
  return tool + " " + words::fixed(card->tool.mL, 4) + " mL";
}

bool teaches(const Taught& taught) {
  return std::any_of(taught.notes.begin(), taught.notes.end(),
                     [](const Feeling& note) { return !note.set_aside; });
}

std::optional<Taught> taught_by(const Batch& batch) {
  if (batch.newer) return std::nullopt;
  Taught taught{batch.id, batch.opened_at, {}, {}, 0};
  double own_variance = 0;
  for (const Feeling& felt : batch.feelings) {
    if (!counts(batch, felt)) continue;
    Feeling note = felt;
    note.tools = keyed(batch, felt, own_variance);
    for (const auto& part : note.pigments)
      taught.pigments[part.first] = card_in(batch, part.first)->pigment;
    taught.notes.push_back(std::move(note));
  }
  if (taught.notes.empty()) return std::nullopt;
  taught.own_tools_sd = std::sqrt(own_variance / static_cast<double>(taught.notes.size()));
  return taught;
}

}
