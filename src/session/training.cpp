#include "session/training.hpp"

#include "paint/film.hpp"
#include "session/amounts.hpp"

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
           return card && card->kind() == CardKind::pigment && part.second > 0;
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
  if (!card || (card->kind() != CardKind::dropper && card->kind() != CardKind::spoon)) return "";
  return tool + " " + words::invariant(volume_of(*card).mL, 4) + " mL";
}

bool has_training_notes(const TrainingBatch& training) {
  return std::any_of(training.notes.begin(), training.notes.end(),
                     [](const Feeling& note) { return !note.set_aside && !note.unwetted; });
}

std::optional<TrainingBatch> training_of(const Batch& batch) {
  if (batch.newer || batch.discarded) return std::nullopt;
  TrainingBatch training;
  training.batch = batch.id;
  training.opened_at = batch.opened_at;
  training.family = family_of(batch);
  training.gum = gum_verdict(batch);
  double own_variance = 0;
  for (const Feeling& felt : batch.feelings) {
    if (!counts(batch, felt)) continue;
    Feeling note = felt;
    note.tools = keyed(batch, felt, own_variance);
    for (const auto& part : note.pigments)
      training.pigments[part.first] = pigment_of(*card_in(batch, part.first)).pigment;
    training.notes.push_back(std::move(note));
  }
  if (training.notes.empty() && !training.gum) return std::nullopt;
  if (!training.notes.empty())
    training.own_tools_sd = std::sqrt(own_variance / static_cast<double>(training.notes.size()));
  return training;
}

namespace {

// All that went in, dry.
paint::Wet put_in(const Batch& batch) {
  paint::Wet dry;
  for (const Total& t : batch.totals)
    if (const auto material = material_of(t.card)) {
      dry.gum_g += t.grams.value * material->parts.gum;
      dry.glycerin_g += t.grams.value * material->parts.glycerin;
      dry.honey_g += t.grams.value * material->parts.honey;
    }
  return dry;
}

// Sticky for other reasons than gum.
bool is_too_sweet(const paint::Wet& dry, const Batch& batch) {
  if (dry.glycerin_g + dry.honey_g <= 0) return false;
  const auto index = paint::tack_index(dry, batch.places.room);
  const auto tack = index ? paint::tack(*index) : tl::make_unexpected(index.error());
  return tack && *tack != paint::Tack::dries;
}

// No layer is dry so soon.
bool is_early(const Batch& batch, std::int64_t at) {
  return std::any_of(batch.pans.begin(), batch.pans.end(), [&](const Pan& pan) {
    return !pan.layers.empty() && at >= pan.layers.back().at &&
           at - pan.layers.back().at < a_day_ms;
  });
}

std::optional<paint::GumVerdict::What> said_of_gum(Became became, bool otherwise_sticky) {
  switch (became) {
  case Became::rubs_off: return paint::GumVerdict::rubs_off;
  case Became::cracked: return paint::GumVerdict::too_much;
  case Became::sticky:
    return otherwise_sticky ? std::nullopt : std::optional(paint::GumVerdict::too_much);
  case Became::good: return paint::GumVerdict::holds;
  case Became::full:
  case Became::sunken:
  case Became::wont_rewet:
  case Became::mould: return std::nullopt;
  }
  return std::nullopt;
}

double pigment_mL(const Batch& batch) {
  double mL = 0;
  for (const Total& t : batch.totals)
    if (const auto* card = std::get_if<PigmentCard>(&t.card.facts);
        card && card->pigment.g_per_mL > 0)
      mL += t.grams.value / card->pigment.g_per_mL;
  return mL;
}

}

std::optional<paint::GumVerdict> gum_verdict(const Batch& batch) {
  const double mL = pigment_mL(batch);
  const paint::Wet dry = put_in(batch);
  if (!(mL > 0) || !(dry.gum_g > 0)) return std::nullopt;
  const bool too_sweet = is_too_sweet(dry, batch);
  for (auto judged = batch.verdicts.rbegin(); judged != batch.verdicts.rend(); ++judged)
    if (const auto what = said_of_gum(judged->verdict.as, too_sweet || is_early(batch, judged->at)))
      return paint::GumVerdict{*what, dry.gum_g / mL};
  return std::nullopt;
}

namespace {

std::vector<std::string> pigments_of(const Batch& batch) {
  std::vector<std::string> out;
  for (const Total& t : batch.totals)
    if (t.card.kind() == CardKind::pigment && t.grams.value > 0) out.push_back(t.card.id);
  std::sort(out.begin(), out.end());
  return out;
}

std::optional<Judged> tells_of_dry_paint(const Batch& batch) {
  for (auto judged = batch.verdicts.rbegin(); judged != batch.verdicts.rend(); ++judged)
    switch (judged->verdict.as) {
    case Became::good:
    case Became::cracked:
    case Became::rubs_off:
    case Became::wont_rewet: return *judged;
    case Became::sticky:
      if (!is_early(batch, judged->at)) return *judged;
      break;
    case Became::full:
    case Became::sunken:
    case Became::mould: break;
    }
  return std::nullopt;
}

}

std::optional<DriedPaint> dried_paint(const Batch& batch) {
  if (batch.newer || batch.discarded) return std::nullopt;
  const auto judged = tells_of_dry_paint(batch);
  DriedPaint out;
  out.pigments = pigments_of(batch);
  if (!judged || out.pigments.empty()) return std::nullopt;
  out.family = family_of(batch);
  out.as = judged->verdict.as;
  out.at = judged->at;
  const paint::Wet dry = put_in(batch);
  out.index = paint::tack_index(dry, batch.places.room).value_or(0);
  const double mL = pigment_mL(batch);
  out.gum_g_per_mL = mL > 0 ? dry.gum_g / mL : 0;
  out.gum = gum_verdict(batch);
  return out;
}

std::optional<paint::SoftVerdict> soft_verdict(const DriedPaint& dried) {
  using paint::SoftVerdict;
  if (!(dried.index > 0)) return std::nullopt;
  switch (dried.as) {
  case Became::good: return SoftVerdict{SoftVerdict::holds, dried.index};
  case Became::cracked: return SoftVerdict{SoftVerdict::cracked, dried.index};
  case Became::sticky: return SoftVerdict{SoftVerdict::sticky, dried.index};
  case Became::wont_rewet: return SoftVerdict{SoftVerdict::wont_rewet, dried.index};
  case Became::rubs_off:
  case Became::full:
  case Became::sunken:
  case Became::mould: return std::nullopt;
  }
  return std::nullopt;
}

paint::GumMarks marks_of(const GumVerdicts& verdicts, paint::PigmentClass family) {
  const paint::GumMarks usual = paint::usual_marks(family);
  const auto said = verdicts.find(family);
  return said == verdicts.end() ? usual : paint::marks_after(usual, said->second);
}

}
