// Undo: what it takes back, and whether the last line is saved.
#include "bench/pads_shared.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/slab_says.hpp"

#include <algorithm>

namespace screens {

using Say = words::SlabSay;
using words::say;

std::string undo_words(const bench::UndoView& undo) {
  if (undo.question) return say(Say::undo_question);
  if (undo.target) {
    const std::string what = event_words(*undo.target, undo.card_name);
    return undo.gives_back ? say(Say::undo_gives_back, {what}) : what;
  }
  return say(Say::undo_nothing);
}

namespace {

// What is not saved yet takes one line of three.
std::vector<Label> words_of(const bench::UndoView& undo, double width, bool narrow, bool low) {
  const std::string what = undo_words(undo);
  const bool waits = undo.unsaved > 0 && !narrow;
  const Lettering letters{cap::body, false, low ? cap::small : cap::body};
  const bool two = low && !fitted(what, width - 2 * padding_mm, letters, 2).cut;
  const double head = low ? cap::body : cap::head; // three lines may stand below
  std::vector<Label> out{{say(Say::pad_undo), {head, true, cap::body}, false, 1},
                         {what, letters, true, waits || two ? 2 : 3}};
  if (waits)
    out.push_back({say(Say::undo_unsaved, {std::to_string(undo.unsaved)}),
                   {cap::body, false, cap::small},
                   true,
                   1});
  return out;
}

Ground undo_ground(const Theme& theme) {
  Ground g = plain(theme);
  g.outline = 0.55;
  return g;
}

void small_pad(Sheet& sheet, const bench::Pad& at, const bench::UndoView& undo) {
  const Ground g = pad_box(sheet, at, undo_ground(sheet.theme));
  const Rect& r = at.box;
  constexpr double low_mm = 22;
  if (r.w < 40) return labels(sheet, r, g, words_of(undo, r.w, true, true));
  const double arrow = std::min({11.0, r.h * 0.5, r.w * 0.17}), mark = undo.saved ? 5 : 0;
  undo_arrow(sheet, {r.x + 2.6 + arrow / 2, r.centre().y}, arrow, g.ink);
  const double x = r.x + arrow + 3.4, width = r.right() - x - mark;
  labels(sheet, {x, r.y, width, r.h}, g, words_of(undo, width, false, r.h < low_mm), Anchor::left);
  if (undo.saved) tick(sheet, {r.right() - mark, r.centre().y}, 2.9, g.quiet);
}

// On Slab, where it has the room of two pads.
void wide_pad(Sheet& sheet, const bench::Pad& pad, const bench::UndoView& undo) {
  const Rect& r = pad.box;
  const Ground g = pad_box(sheet, pad, undo_ground(sheet.theme));
  const double arrow = std::min({11.0, r.h * 0.5, r.w * 0.17});
  undo_arrow(sheet, {r.x + 2.6 + arrow / 2, r.centre().y}, arrow, g.ink);
  const double x = r.x + arrow + 5.6, width = r.right() - x - padding_mm;
  const std::string what = undo_words(undo);
  const bool waiting = undo.unsaved > 0;
  const double mark = undo.saved ? 5 : 0; // room for the tick behind the words
  const Lines unsaved =
      fitted(waiting ? say(Say::undo_unsaved, {std::to_string(undo.unsaved)}) : "", width,
             slab_letters, 2);
  const int room = 3 - static_cast<int>(unsaved.lines.size());
  const Lines lines = fitted(what, width - mark, slab_letters, room);
  const auto below = static_cast<double>(lines.lines.size() + unsaved.lines.size());
  const bool full = below > 2; // lines that would reach from edge to edge
  const double head = full ? cap::body : cap::head;
  const double step = cap::body * (full ? 1.5 : line_step);
  const double height = head + step * below + 0.4;
  double y = r.centre().y - height / 2 + head;
  write(sheet, {x, y}, Anchor::left, {head, true, head}, g.ink, say(Say::pad_undo), width);
  y += 0.4;
  for (const std::string& line : lines.lines)
    write(sheet, {x, y += step}, Anchor::left, slab_letters, g.quiet, line, width);
  if (undo.saved && !lines.lines.empty())
    tick(sheet, {x + width_mm(lines.lines.back(), lines.cap_mm, false) + 3, y - cap::body / 2}, 2.9,
         g.quiet);
  for (const std::string& line : unsaved.lines)
    write(sheet, {x, y += step}, Anchor::left, slab_letters, g.quiet, line, width);
}

}

void draw_undo(Sheet& sheet) {
  const auto& pads = sheet.view.layout.pads;
  const auto at = std::find_if(pads.begin(), pads.end(), [](const bench::Pad& pad) {
    return pad.id.kind == bench::SharedPad::undo;
  });
  if (at == pads.end()) return;
  if (const auto* slab = std::get_if<bench::SlabView>(&sheet.view.screen))
    wide_pad(sheet, *at, slab->undo);
  if (const auto* pans = std::get_if<bench::PansView>(&sheet.view.screen))
    small_pad(sheet, *at, pans->undo);
  if (const auto* photos = std::get_if<bench::PhotosView>(&sheet.view.screen))
    small_pad(sheet, *at, photos->undo);
}

}
