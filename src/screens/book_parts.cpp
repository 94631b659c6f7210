#include "screens/book_parts.hpp"

#include "bench/pads_shared.hpp"
#include "screens/measure.hpp"
#include "screens/phrases.hpp"
#include "words/book_says.hpp"
#include "words/photos_says.hpp"
#include "words/screens_says.hpp"

namespace screens {

using bench::BookPad;
using Say = words::BookSay;
using words::say;

CostSaid cost_said(const bench::BookView& book) {
  const session::Cost& cost = *book.cost;
  const double sum = cost.sum();
  CostSaid out;
  const auto join = [](std::string& to, const std::string& more) {
    to += (to.empty() ? "" : ", ") + more;
  };
  join(out.sum, say(Say::book_cost, {money_words(sum, book.currency)}));
  if (book.a_pan_costs && sum > 0)
    join(out.sum, say(Say::cost_a_pan, {money_words(*book.a_pan_costs, book.currency)}));
  const auto add = [&](words::Sentence what, double of) {
    if (of > 0) join(out.shares, say(what, {words::number(100 * of / sum, 0)}));
  };
  add(Say::cost_pigment, cost.pigment);
  add(Say::cost_binder, cost.binder);
  add(Say::cost_gum, cost.gum);
  add(Say::cost_honey, cost.honey);
  add(Say::cost_rest, cost.rest);
  if (!out.shares.empty()) out.shares = say(Say::cost_shares, {out.shares});
  std::string unknown;
  for (const session::Card& card : cost.unknown) join(unknown, card.name);
  if (unknown.empty()) return out;
  out.without = say(Say::cost_without, {unknown});
  out.without_how_many = say(Say::cost_without_many, {std::to_string(cost.unknown.size())});
  return out;
}

namespace {

Say went(bench::PaperWay way) {
  switch (way) {
  case bench::PaperWay::into_folder: return Say::paper_written;
  case bench::PaperWay::to_print: return Say::paper_printed;
  case bench::PaperWay::saved: return Say::paper_saved;
  }
  return Say::paper_written;
}

std::string paper_now(const bench::PaperDesk& paper) {
  if (paper.failure) return words::message(*paper.failure);
  if (paper.writing) return say(Say::paper_writing);
  if (!paper.written.empty()) return say(went(paper.way), {paper.written});
  if (paper.in_browser) return say(Say::paper_by_browser);
  return say(Say::paper_folder, {paper.folder});
}

}

void on_paper(Sheet& sheet, const bench::PaperDesk& paper) {
  if (sheet.view.layout.more.w <= 0) return; // a field is there
  panel(sheet, sheet.view.layout.more);
  labels(sheet, inset(sheet.view.layout.more, 1.5), plain(sheet.theme),
         {{paper_now(paper), {cap::small, false, cap::small}, false, 3}}, Anchor::left);
}

void draw_list_paper(Sheet& sheet, const bench::BookView& book) {
  panel(sheet, sheet.view.layout.more);
  const std::size_t count = book.marked.value_or(book.listed);
  const Say one = book.marked ? Say::paper_of_marked_one : Say::paper_of_one;
  const Say all = book.marked ? Say::paper_of_marked : Say::paper_of_all;
  const std::string of = count == 1 ? say(one) : say(all, {std::to_string(count)});
  labels(sheet, inset(sheet.view.layout.more, 4), plain(sheet.theme),
         {{of, clean_bold, false, 2},
          {say(Say::paper_about), clean_letters, false, 6},
          {paper_now(*book.paper), {cap::small, false, cap::small}, false, 4}},
         Anchor::left);
  for (const bench::Pad& at : sheet.view.layout.pads) {
    if (at.id.kind == bench::SharedPad::leave)
      pad(sheet, at, plain(sheet.theme),
          {{say(words::ScreensSay::pad_leave_number), clean_letters}});
    const auto own = at.id.kind.as<BookPad>();
    if (own && *own != BookPad::label_line) paper_pad(sheet, at, *own); // that is a text field
  }
}

void paper_pad(Sheet& sheet, const bench::Pad& at, BookPad which) {
  const Say what = which == BookPad::sheet         ? Say::paper_sheet
                   : which == BookPad::labels      ? Say::paper_labels
                   : which == BookPad::table       ? Say::paper_table
                   : which == BookPad::paint_list  ? Say::paper_paint_list
                   : which == BookPad::swatch_card ? Say::paper_swatch_card
                   : which == BookPad::mark        ? Say::paper_mark
                                                   : Say::book_paper;
  pad(sheet, at, plain(sheet.theme), {{say(what), clean_letters}});
}

void photos_pad(Sheet& sheet, const bench::Pad& at, const std::vector<std::string>& photos) {
  using words::PhotosSay;
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  Rect r = at.box;
  if (!photos.empty()) {
    const Rect top = inset(slice(r, r.h - 8.5), 1.6);
    framed(sheet, top, photos.front(), g.ink);
  }
  const std::string what = photos.empty() ? say(PhotosSay::pad_first)
                           : photos.size() == 1
                               ? say(PhotosSay::pad)
                               : say(PhotosSay::many, {std::to_string(photos.size())});
  labels(sheet, r, g, {{what, clean_letters, false, photos.empty() ? 2 : 1}});
}

}
