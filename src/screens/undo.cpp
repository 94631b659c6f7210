// Undo: what it takes back, and whether the last line is saved.
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/slab_says.hpp"

#include <algorithm>

namespace screens {

using Say = words::SlabSay;
using words::say;

std::string undo_words(const bench::UndoView& undo) {
  if (undo.target) return event_words(*undo.target, undo.card_name);
  return say(undo.came_back ? Say::undo_nothing_since : Say::undo_nothing);
}

namespace {

// What is not saved yet takes one line of three.
std::vector<Label> words_of(const bench::UndoView& undo, bool narrow, bool low) {
  const bool no_room = narrow && undo.came_back;
  const std::string what = no_room ? say(Say::undo_nothing) : undo_words(undo);
  const bool waits = undo.unsaved > 0 && !narrow;
  const double head = low ? cap::body : cap::head; // three lines may stand below
  std::vector<Label> out{{say(Say::pad_undo), {head, true, cap::body}, false, 1},
                         {what, slab_letters, true, waits ? 2 : 3}};
  if (waits)
    out.push_back({say(Say::undo_unsaved, {std::to_string(undo.unsaved)}),
                   {cap::body, false, cap::small},
                   true,
                   1});
  return out;
}

}

void draw_undo(Sheet& sheet, const bench::Pad& at, const bench::UndoView& undo) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme), 0.55);
  const Rect& r = at.box;
  constexpr double low_mm = 22;
  if (r.w < 40) return labels(sheet, r, g, words_of(undo, true, true));
  const double arrow = std::min({11.0, r.h * 0.5, r.w * 0.17}), mark = undo.saved ? 5 : 0;
  undo_arrow(sheet, {r.x + 2.6 + arrow / 2, r.centre().y}, arrow, g.ink);
  const double x = r.x + arrow + 3.4, width = r.right() - x - mark;
  labels(sheet, {x, r.y, width, r.h}, g, words_of(undo, false, r.h < low_mm), Anchor::left);
  if (undo.saved) tick(sheet, {r.right() - mark, r.centre().y}, 2.9, g.quiet);
}

}
