// Book: how one pigment came to be known, the earliest batch above.
#include "bench/pads_book.hpp"
#include "screens/measure.hpp"
#include "screens/range_chart.hpp"
#include "session/in_words.hpp"
#include "words/moments.hpp"
#include "words/ranges_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using bench::BookPad;
using bench::PigmentStory;
using bench::StoryView;
using Say = words::RangesSay;
using words::say;

namespace {

constexpr double note_mm = 4;
constexpr double tallest_mm = 26; // of a row

std::string number(double flow) { return words::number(flow, 2); }

void background(Sheet& sheet, const RangeChart& c, const paint::Band& band) {
  const Theme& t = sheet.theme;
  sheet.shapes.push_back(Gradient{c.bars, band_stops(band, c.scale, 0, t.slab, t.right)});
  const auto [low, high] = band_edges(band);
  for (const double edge : {low, high})
    if (edge > c.scale.low && edge < c.scale.high)
      sheet.shapes.push_back(
          Polyline{{{c.scale.x(edge), c.bars.y}, {c.scale.x(edge), c.bars.bottom()}},
                   0.3,
                   t.right_ink,
                   0.9});
}

void note_mark(Sheet& sheet, Point at, const PigmentStory::Note& note, bool chosen) {
  const Theme& t = sheet.theme;
  if (chosen) sheet.shapes.push_back(Disc{at, note_mm * 0.85, clear, t.ink, 0.6});
  feel_sign(sheet, at, note_mm, note.as);
  const double r = note_mm * 0.7;
  if (note.set_aside)
    sheet.shapes.push_back(Polyline{{{at.x - r, at.y + r}, {at.x + r, at.y - r}}, 0.6, t.ink, 0});
}

void step_row(Sheet& sheet, const RangeChart& c, std::size_t i, const StoryView& story) {
  const StoryView::Step& step = story.steps[i];
  const Rect names = c.row(c.names, i), bars = c.row(c.bars, i);
  const bool guess = step.of.batch.empty();
  labels(
      sheet, names, plain(sheet.theme),
      {{guess ? say(words::SessionSay::known_guess) : step.name,
        {cap::clear, !guess, cap::small},
        guess,
        2},
       {guess ? "" : words::date(step.made_at, step.offset_min.value_or(sheet.view.utc_offset_min)),
        clean_letters, true, 1}},
      Anchor::left);
  const double y = bars.y + bars.h * 0.72;
  interval(sheet, c, y, step.of.low, step.of.demand, step.of.high, !guess);
  for (const PigmentStory::Note& note : step.of.notes)
    note_mark(sheet, {c.scale.x(note.flow), bars.y + bars.h * 0.3}, note,
              story.chosen && note.line == story.chosen->note.line);
}

// The interval as it was before a note was taken out, or in.
void was(Sheet& sheet, const RangeChart& c, const StoryView& story) {
  if (!story.was || story.steps.empty()) return;
  const Rect row = c.row(c.bars, story.steps.size() - 1);
  const double y = row.y + row.h * 0.92;
  const auto [low, high] = *story.was;
  sheet.shapes.push_back(
      Polyline{{{c.scale.x(low), y}, {c.scale.x(high), y}}, 0.4, sheet.theme.quiet, 0.9});
  write(sheet, {c.knowns.right(), y + cap::small / 2}, Anchor::right,
        {cap::small, false, cap::small}, sheet.theme.quiet, say(Say::range_was), c.knowns.w);
}

std::string said_of_note(const StoryView& story, int utc_offset_min) {
  if (!story.chosen) return say(Say::range_not_felt);
  const auto& [name, made_at, offset_min, note] = *story.chosen;
  const std::string said =
      say(Say::range_note, {name, words::date(made_at, offset_min.value_or(utc_offset_min)),
                            session::feel_words(note.as)});
  return note.set_aside ? said + " (" + say(Say::range_left_out) + ")" : said;
}

void way(Sheet& sheet, const bench::Pad& at, const StoryView& story) {
  const Ground g = plain(sheet.theme);
  const auto words = [&](words::Sentence id) { pad(sheet, at, g, {{say(id), clean_letters}}); };
  if (at.id.kind == BookPad::to_list) words(Say::range_to_all);
  if (at.id.kind == BookPad::note_before) words(Say::range_note_back);
  if (at.id.kind == BookPad::note_after) words(Say::range_note_on);
  if (at.id.kind == BookPad::set_aside)
    words(story.chosen->note.set_aside ? Say::range_take_in : Say::range_set_aside);
}

}

void draw_story(Sheet& sheet, const StoryView& story) {
  const Theme& t = sheet.theme;
  const bench::Layout& layout = sheet.view.layout;
  panel(sheet, layout.main);
  const auto rows = static_cast<std::size_t>(std::ceil(layout.lower.h / tallest_mm));
  const RangeChart c =
      range_chart(layout.lower, std::max(rows, story.steps.size()), story.low, story.high);
  background(sheet, c, story.range.band);
  range_axis(sheet, c);
  const double y = layout.main.y + 4 + cap::clear, half = (layout.main.w - 10) / 2;
  write(sheet, {layout.main.x + 4, y}, Anchor::left, clean_bold, t.ink, story.name, half);
  const bench::PigmentRange& range = story.range;
  write(sheet, {layout.main.right() - 4, y}, Anchor::right, clean_letters, t.ink,
        say(Say::range_wants, {number(range.demand), number(range.low), number(range.high)}), half);
  for (std::size_t i = 0; i < story.steps.size(); ++i) step_row(sheet, c, i, story);
  was(sheet, c, story);
  const std::string said = story.failure
                               ? say(Say::range_not_learnt, {words::message(*story.failure)})
                               : said_of_note(story, sheet.view.utc_offset_min);
  labels(sheet, layout.more, plain(t), {{said, clean_letters, false, 2}}, Anchor::left);
  for (const bench::Pad& at : layout.pads) way(sheet, at, story);
}

}
