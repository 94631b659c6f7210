#include "bench/choices.hpp"
#include "bench/layout_of.hpp"
#include "bench/ranges.hpp"
#include "bench/view_parts.hpp"

#include <algorithm>

namespace bench {

namespace {

std::optional<words::Error> fault_of(const Learning& learning) {
  return learning.failure ? learning.failure : learning.not_heard;
}

}

RangesView ranges_view(const Bench& bench, const RangesPage& page) {
  RangesView v;
  const std::vector<PigmentRange>& all = page.of_pigments;
  const int a_page = ranges_a_page(bench.display);
  v.page = page.page;
  v.failure = fault_of(bench.learning);
  v.pages = pages_for(all.size(), a_page);
  for (const PigmentRange& range : all) {
    v.low = std::min(v.low, range.low);
    v.high = std::max(v.high, range.high);
  }
  const auto first = static_cast<std::size_t>(v.page * a_page);
  const auto last = std::min(all.size(), first + static_cast<std::size_t>(a_page));
  for (std::size_t i = first; i < last; ++i)
    if (const session::Card* card = shelf_card(bench, all[i].card))
      v.rows.push_back(
          {card->name, pigment_of(*card).index_name, pigment_of(*card).colour, all[i]});
  return v;
}

StoryView story_view(const Bench& bench, const StoryPage& page) {
  const PigmentStory& story = page.story;
  StoryView v;
  if (const session::Card* card = shelf_card(bench, story.card)) {
    v.name = card->name;
    v.colour = pigment_of(*card).colour;
  }
  for (const PigmentRange& range : page.ranges.of_pigments)
    if (range.card == story.card) v.range = range;
  v.low = v.range.low / 1.2;
  v.high = v.range.high * 1.2;
  for (const PigmentStory::Step& step : story.steps) {
    const auto entry = bench.index.of.find(step.batch);
    const bool known = entry != bench.index.of.end();
    if (known)
      v.steps.push_back(
          {entry->second.name, made_at(entry->second), entry->second.offset_min, step});
    else
      v.steps.push_back({"", 0, {}, step});
    v.low = std::min(v.low, step.low);
    v.high = std::max(v.high, step.high);
    for (const PigmentStory::Note& note : step.notes) {
      v.low = std::min(v.low, note.flow / 1.1);
      v.high = std::max(v.high, note.flow * 1.1);
    }
  }
  if (const PigmentStory::Note* note = note_chosen(story)) {
    const auto entry = bench.index.of.find(step_of_note(story)->batch);
    const bool known = entry != bench.index.of.end();
    v.chosen = {"", 0, {}, *note};
    if (known)
      v.chosen = {entry->second.name, made_at(entry->second), entry->second.offset_min, *note};
  }
  if (v.steps.empty()) // nobody has felt it: the guess stands alone
    v.steps.push_back({"", 0, {}, {"", {}, v.range.demand, v.range.low, v.range.high}});
  v.was = story.was;
  v.failure = fault_of(bench.learning);
  return v;
}

}
