#include "bench/ranges.hpp"

#include "bench/choices.hpp"
#include "bench/record.hpp"
#include "session/narrowing.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

std::optional<PigmentRange> range_of(const session::Ranges& ranges, const session::Card& card) {
  const auto question = session::range_question(ranges, {{&card, 1}});
  const auto expected = session::expectation(ranges, question);
  const auto d = session::demand_in(ranges, card);
  if (!expected || !d) return std::nullopt;
  const auto [low, middle, high] = session::nine_in_ten(*d);
  return PigmentRange{card.id, expected->band, middle, low, high};
}

PigmentStory::Step step_of(const session::Narrowed& after, const std::string& card) {
  PigmentStory::Step step;
  const auto [low, middle, high] = session::nine_in_ten(after.demand);
  step.demand = middle;
  step.low = low;
  step.high = high;
  if (!after.batch) return step;
  step.batch = after.batch->batch;
  for (const session::Feeling& f : after.batch->notes)
    if (std::any_of(f.pigments.begin(), f.pigments.end(),
                    [&](const auto& part) { return part.first == card; }))
      step.notes.push_back({f.line, f.flow, f.as, f.set_aside});
  return step;
}

// The notes of its batches, and the range after each.
void tell_story(Bench& bench) {
  auto* page = std::get_if<StoryPage>(&bench.book.page);
  if (!page) return;
  PigmentStory& story = page->story;
  story.steps.clear();
  const session::Card* card = shelf_card(bench, story.card);
  if (!card) {
    RangesPage all = std::move(page->ranges);
    bench.book.page = std::move(all);
    return;
  }
  std::vector<const session::TrainingBatch*> all;
  for (const auto& [id, training] : bench.learning.training) all.push_back(&training);
  for (const session::Narrowed& after :
       session::narrowing(bench.learning.ranges, all, *card, steps_of_story(bench.display)))
    story.steps.push_back(step_of(after, story.card));
  if (note_chosen(story)) return;
  story.note.reset();
  for (const PigmentStory::Step& step : story.steps)
    if (!step.notes.empty()) story.note = step.notes.back().line;
}

// The line that set it aside, and stands.
std::optional<session::Ref> line_that_set_aside(Bench& bench, const std::string& batch,
                                                const session::Ref& note) {
  const Folded folded = fold_of(bench, batch);
  std::optional<session::Ref> found;
  for (const session::Entry& e : folded ? folded->entries : session::Grown<session::Entry>{}) {
    const auto* aside = std::get_if<session::SetAside>(&e.event);
    if (aside && !e.withdrawn && aside->line == note) found = e.ref;
  }
  return found;
}

}

void refresh_ranges(Bench& bench) {
  auto* story = std::get_if<StoryPage>(&bench.book.page);
  auto* page = story ? &story->ranges : std::get_if<RangesPage>(&bench.book.page);
  if (!page) return;
  std::vector<PigmentRange>& out = page->of_pigments;
  out.clear();
  for (const session::Card* card : shelf_of(bench, session::CardKind::pigment))
    if (auto range = range_of(bench.learning.ranges, *card)) out.push_back(*std::move(range));
  std::stable_sort(out.begin(), out.end(), [](const PigmentRange& a, const PigmentRange& b) {
    const bool a_felt = a.band.batches > 0, b_felt = b.band.batches > 0;
    return a_felt != b_felt ? a_felt : a.demand > b.demand;
  });
  tell_story(bench);
}

std::size_t steps_of_story(const Display& display) { return display.upright() ? 12 : 6; }

void open_story(Bench& bench, const std::string& card) {
  auto* page = std::get_if<RangesPage>(&bench.book.page);
  if (!page) return;
  StoryPage story{std::move(*page), {}};
  story.story.card = card;
  bench.book.page = std::move(story);
  tell_story(bench);
}

const PigmentStory::Step* step_of_note(const PigmentStory& story) {
  for (const PigmentStory::Step& step : story.steps)
    for (const PigmentStory::Note& note : step.notes)
      if (note.line == story.note) return &step;
  return nullptr;
}

const PigmentStory::Note* note_chosen(const PigmentStory& story) {
  if (const PigmentStory::Step* step = step_of_note(story))
    for (const PigmentStory::Note& note : step->notes)
      if (note.line == story.note) return &note;
  return nullptr;
}

void choose_note(PigmentStory& story, int by) {
  std::vector<session::Ref> all;
  for (const PigmentStory::Step& step : story.steps)
    for (const PigmentStory::Note& note : step.notes) all.push_back(note.line);
  const auto at = std::find(all.begin(), all.end(), story.note);
  const auto to = (at - all.begin()) + by;
  if (to >= 0 && to < static_cast<std::ptrdiff_t>(all.size()))
    story.note = all[static_cast<std::size_t>(to)];
}

void set_aside(Bench& bench, PigmentStory& story, const Now& now, Effects& effects) {
  const PigmentStory::Step* step = step_of_note(story);
  const PigmentStory::Note* note = note_chosen(story);
  if (!note) return;
  if (!note->set_aside) {
    record(bench, step->batch, session::SetAside{note->line}, now, effects);
  } else if (const auto aside = line_that_set_aside(bench, step->batch, note->line)) {
    record(bench, step->batch, session::Withdrawn{*aside}, now, effects);
  }
  story.was = {story.steps.back().low, story.steps.back().high};
  const bool aside = !note->set_aside;
  for (PigmentStory::Step& s : story.steps)
    for (PigmentStory::Note& n : s.notes)
      if (n.line == story.note) n.set_aside = aside;
}

}
