// Book: all batches, or one of them whole.
#include "bench/pads_book.hpp"
#include "bench/pads_shared.hpp"
#include "screens/book_parts.hpp"
#include "screens/match.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "screens/trail.hpp"
#include "session/resolve.hpp"
#include "words/book_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"
#include "words/shelf_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using bench::BookPad;
using bench::SharedPad;
using words::number;
using Say = words::BookSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};

// ---- the list

// What could not be read, as a chip where the page's pads leave room.
void faults(Sheet& sheet, const bench::BookView& book) {
  std::vector<std::string> said;
  for (const words::Error& fault : book.faults) said.push_back(words::message(fault));
  if (book.damages == 1) said.push_back(say(Say::book_damage));
  if (book.damages > 1) said.push_back(say(Say::book_damages, {std::to_string(book.damages)}));
  if (said.empty()) return;
  const Rect& list = sheet.view.layout.main;
  const double h = 9;
  Rect chip{list.x, list.bottom() - h, list.w, h};
  for (const bench::Pad& at : sheet.view.layout.pads) {
    if (at.id.kind == SharedPad::page_back)
      chip.x = at.box.right() + 2, chip.w = list.right() - chip.x;
    if (at.id.kind == BookPad::list_paper || at.id.kind == SharedPad::page_on)
      chip.w = std::min(chip.right(), at.box.x - 2) - chip.x;
  }
  if (chip.w < 40) return;
  const Ground g = caution(sheet.theme);
  sheet.shapes.push_back(Box{chip, 1.6, g.fill, clear, 0});
  std::string all;
  for (const std::string& one : said) all += (all.empty() ? "" : "; ") + one;
  labels(sheet, chip, g, {{all, small, false, 2}}, Anchor::left);
}

std::string nothing_listed(const bench::BookView& book) {
  if (!book.search.empty()) return say(Say::book_nothing_found);
  if (!book.reading) return say(Say::book_empty);
  const auto [done, to_come] = *book.reading;
  return say(Say::reading_files, {std::to_string(done), std::to_string(done + to_come)});
}

void draw_list(Sheet& sheet, const bench::BookView& book) {
  if (book.paper) return draw_list_paper(sheet, book);
  if (book.rows.empty()) {
    panel(sheet, sheet.view.layout.main);
    labels(sheet, sheet.view.layout.main, plain(sheet.theme),
           {{nothing_listed(book), clean_letters, true, 3}});
  }
  for (const bench::Pad& at : sheet.view.layout.pads) {
    for (const auto& row : book.rows)
      if (row.pad == at.id) book.by_colour ? paint_tile(sheet, at, row) : batch_row(sheet, at, row);
    if (at.id.kind == BookPad::by_colour)
      pad(sheet, at, plain(sheet.theme),
          {{say(book.by_colour ? Say::book_by_date : Say::book_by_colour), clean_letters}});
    if (at.id.kind == BookPad::list_paper && book.marked)
      pad(sheet, at, dark(sheet.theme),
          {{say(Say::paper_marked, {std::to_string(*book.marked)}), clean_bold}});
    else if (at.id.kind == BookPad::list_paper)
      paper_pad(sheet, at, BookPad::list_paper);
    if (at.id.kind == BookPad::ranges)
      pad(sheet, at, plain(sheet.theme), {{say(words::ScreensSay::book_ranges), clean_letters}});
    if (at.id.kind == BookPad::discarded)
      pad(sheet, at, plain(sheet.theme),
          {{book.discarded ? say(words::ScreensSay::book_to_list) : say(Say::book_discarded),
            clean_letters}});
    if (at.id.kind == SharedPad::leave)
      pad(sheet, at, plain(sheet.theme),
          {{say(words::ScreensSay::pad_leave_number), clean_letters}});
    if (at.id.kind == SharedPad::page_back)
      pad(sheet, at, plain(sheet.theme), {{say(words::ScreensSay::page_back), clean_letters}});
    if (at.id.kind == SharedPad::page_on)
      pad(sheet, at, plain(sheet.theme), {{say(words::ScreensSay::page_on), clean_letters}});
  }
  if (book.discarded)
    labels(sheet, sheet.view.layout.more, plain(sheet.theme),
           {{say(Say::book_discarded_list), small, false, 2}}, Anchor::left);
  if (book.marked)
    labels(sheet, sheet.view.layout.more, plain(sheet.theme),
           {{say(Say::paper_mark_how), clean_bold, false, 2}}, Anchor::left);
  if (book.comparing)
    labels(sheet, sheet.view.layout.more, plain(sheet.theme),
           {{say(Say::book_compare_with, {book.compared}), clean_bold, false, 2}}, Anchor::left);
  faults(sheet, book);
}

// ---- one batch

std::string card_name_of(const session::Batch& batch, const session::Event& event) {
  const std::string id = session::cards_named_by(event).card;
  const auto card = batch.cards.find(id);
  return card == batch.cards.end() ? id : card->second.name;
}

// What is read of a batch that cannot be summed: its lines, the last ones where not all have room.
void line_list(Sheet& sheet, const session::Batch& batch) {
  const Theme& t = sheet.theme;
  panel(sheet, sheet.view.layout.main);
  const Rect area = inset(sheet.view.layout.main, 3.4);
  const double step = cap::clear * 2, time_w = 18;
  std::vector<const session::Entry*> done; // a card laid out is nothing that was done
  for (const session::Entry& e : batch.entries)
    if (!std::holds_alternative<session::LaidOut>(e.event)) done.push_back(&e);
  const auto fit = static_cast<std::size_t>(area.h / step);
  double y = area.y + cap::clear;
  for (std::size_t i = done.size() - std::min(done.size(), fit); i < done.size(); ++i, y += step) {
    const session::Entry& e = *done[i];
    write(sheet, {area.x, y}, Anchor::left, clean_letters, t.quiet, minutes_seconds(e.clock),
          time_w);
    write(sheet, {area.x + time_w + 2, y}, Anchor::left, clean_letters,
          e.withdrawn ? t.quiet : t.ink, event_words(e.event, card_name_of(batch, e.event)),
          area.w - time_w - 2);
  }
}

std::string how_words(const bench::BookView& book, const session::Total& total) {
  const auto measures = book.measures.find(total.card.id);
  return total_words(total, measures == book.measures.end() ? bench::Measures{} : measures->second);
}

void went_in_row(Sheet& sheet, const Rect& r, const bench::BookView& book,
                 const session::Total& total) {
  const Theme& t = sheet.theme;
  const double size = 5, y = r.centre().y + cap::clear / 2;
  const bool heap = total.card.kind() == session::CardKind::pigment;
  material_symbol(sheet, {r.x + size / 2, r.centre().y}, size, total.card.kind(),
                  heap ? rgb(pigment_of(total.card).colour) : material_colour(t, total.card.kind()),
                  t.ink);
  const double grams_w = 17, x = r.x + size + 3;
  write(sheet, {r.right(), y}, Anchor::right, clean_letters, t.ink, grams_words(total.grams),
        grams_w);
  const double left = r.right() - grams_w - 2 - x;
  const std::string how = how_words(book, total);
  const double name_w = width_mm(total.card.name, cap::clear, false) + 0.1;
  const bool beside = name_w + 3 + width_mm(how, cap::clear, false) <= left;
  if (!beside && r.h > 3 * cap::clear) {
    labels(sheet, {x - 2, r.y, left + 4, r.h}, plain(t),
           {{total.card.name, clean_letters, false, 1}, {how, small, true, 1}}, Anchor::left);
    return;
  }
  const double name_room = beside ? name_w : left * 0.6;
  write(sheet, {x, y}, Anchor::left, clean_letters, t.ink, total.card.name, name_room);
  write(sheet, {r.right() - grams_w - 2, y}, Anchor::right, clean_letters, t.quiet, how,
        left - name_room - 2);
}

void went_in(Sheet& sheet, const bench::BookView& book) {
  const session::Batch& batch = *book.batch;
  const Theme& t = sheet.theme;
  panel(sheet, sheet.view.layout.side);
  const Rect area = inset(sheet.view.layout.side, 3.4);
  double y = area.y + cap::clear;
  write(sheet, {area.x, y}, Anchor::left, clean_bold, t.ink, say(words::SessionSay::book_went_in),
        area.w);
  const paint::Amount& lost = batch.dried_mL;
  const double foot = cap::clear * 1.7; // of the last line
  const auto rows = static_cast<double>(batch.totals.size());
  y += 2.6;
  const double step = std::min(9.6, (area.bottom() - foot - y) / std::max(1.0, rows));
  for (const session::Total& total : batch.totals) {
    went_in_row(sheet, {area.x, y, area.w, step}, book, total);
    y += step;
  }
  std::string last =
      say(words::SessionSay::book_room, {reading_words(batch.places.room.celsius),
                                         reading_words(batch.places.room.humidity * 100)});
  if (batch.room_guessed) last += ", " + say(words::SessionSay::plan_guess);
  if (batch.newer)
    last = say(words::SessionSay::batch_of_newer_format);
  else if (batch.damaged)
    last = say(words::ScreensSay::batch_damaged);
  else if (const std::string left_out = left_out_words(batch.warnings); !left_out.empty())
    last = left_out;
  else if (lost.value >= 0.05)
    last = say(Say::book_dried_off, {number_words(lost, 1)}) + " · " + last;
  write(sheet, {area.x, std::min(y + foot, area.bottom())}, Anchor::left, clean_letters, t.quiet,
        last, area.w);
}

// A number with a line above it and one below.
void figure(Sheet& sheet, const Rect& r, const std::string& above, const std::string& number,
            const std::string& below) {
  const Theme& t = sheet.theme;
  panel(sheet, r);
  const double free = (r.h - 2 * cap::clear - cap::timer) / 4.2, width = r.w - 5;
  double y = r.y + free * 1.1 + cap::clear;
  write(sheet, {r.x + 3, y}, Anchor::left, clean_letters, t.quiet, above, width);
  write(sheet, {r.x + 3, y += free * 0.95 + cap::timer}, Anchor::left,
        {cap::timer, true, cap::head}, t.ink, number, width);
  write(sheet, {r.x + 3, y + free * 0.95 + cap::clear}, Anchor::left, clean_letters, t.quiet, below,
        width);
}

std::string passes_words(const session::Batch& batch) {
  const auto count = std::count_if(batch.passes.begin(), batch.passes.end(), [](const auto& pass) {
    return pass.stage == session::Stage::mulling;
  });
  const std::string minutes = number(session::seconds_of(batch, session::Stage::mulling) / 60, 0);
  if (count == 0) return say(words::SessionSay::book_no_pass);
  return count == 1 ? say(Say::book_one_pass, {minutes})
                    : say(Say::book_passes, {std::to_string(count), minutes});
}

void figures(Sheet& sheet, const session::Batch& batch) {
  const bench::Grid halves{2, 1, sheet.view.layout.lower};
  const auto& s = batch.standing;
  const bool ratio = s.binder_ratio && std::isfinite(s.binder_ratio->value);
  figure(sheet, halves.cell(0, 0), say(Say::book_ratio),
         ratio ? number_words(*s.binder_ratio, 2) : "–",
         s.flow_now ? say(Say::book_flow, {number_words(*s.flow_now, 1)}) : "");
  const double at_slab = session::seconds_of(batch, session::Stage::wetting_out) +
                         session::seconds_of(batch, session::Stage::mulling);
  figure(sheet, halves.cell(1, 0), say(words::SessionSay::book_at_slab),
         batch.passes.empty() ? "–" : say(Say::book_minutes, {number(at_slab / 60, 0)}),
         passes_words(batch));
}

// Once something is written there is nothing to cancel.
words::Sentence leave_words(const bench::BookView& book) {
  if (book.paper && !book.paper->written.empty()) return words::ShelfSay::shelf_done;
  return words::ScreensSay::pad_leave_number;
}

void way_on(Sheet& sheet, const bench::Pad& at, const bench::BookView& book) {
  const Theme& t = sheet.theme;
  const bool open = book.batch->progress == session::Progress::open;
  if (at.id.kind == SharedPad::leave)
    pad(sheet, at, plain(t), {{say(leave_words(book)), clean_letters}});
  const auto own = at.id.kind.as<BookPad>();
  if (!own) return;
  switch (*own) {
  case BookPad::make_again: // what is asked for once the batch is done
    return pad(sheet, at, open ? plain(t) : dark(t),
               {{say(Say::book_make_again), open ? clean_letters : clean_bold}});
  case BookPad::compare: return pad(sheet, at, plain(t), {{say(Say::book_compare), clean_letters}});
  case BookPad::note: return pad(sheet, at, plain(t), {{say(Say::book_note), clean_letters}});
  case BookPad::rename: return pad(sheet, at, plain(t), {{say(Say::book_rename), clean_letters}});
  case BookPad::discard: return pad(sheet, at, plain(t), {{say(Say::book_discard), clean_letters}});
  case BookPad::keep_recipe:
    return pad(
        sheet, at, plain(t),
        {{say(book.recipe_kept ? Say::book_use_recipe : Say::book_keep_recipe), clean_letters}});
  case BookPad::have_back: return pad(sheet, at, dark(t), {{say(Say::book_have_back), clean_bold}});
  case BookPad::keep: return pad(sheet, at, dark(t), {{say(Say::book_keep), clean_bold}});
  case BookPad::to_list:
    return pad(sheet, at, plain(t), {{say(words::ScreensSay::book_to_list), clean_letters}});
  case BookPad::take_up: // what is asked for while the batch lies on the slab
    return pad(sheet, at, open ? dark(t) : plain(t),
               {{say(Say::book_take_up), open ? clean_bold : clean_letters}});
  case BookPad::paper:
  case BookPad::list_paper:
  case BookPad::mark:
  case BookPad::paint_list:
  case BookPad::swatch_card:
  case BookPad::sheet:
  case BookPad::labels:
  case BookPad::table: return paper_pad(sheet, at, *own);
  case BookPad::match: return book.match ? match_pad(sheet, at, *book.match) : void();
  case BookPad::photos: return photos_pad(sheet, at, book.photos);
  case BookPad::trails: // of two batches
  case BookPad::batch:
  case BookPad::ranges: // of the list
  case BookPad::discarded:
  case BookPad::by_colour:
  case BookPad::range_of:
  case BookPad::note_before:
  case BookPad::note_after:
  case BookPad::set_aside: // of the ranges
  case BookPad::label_line:
  case BookPad::name_text:
  case BookPad::note_text: return; // text fields
  }
}

}

void draw_book(Sheet& sheet, const bench::BookView& book) {
  if (!book.batch) return draw_list(sheet, book);
  if (book.batch->newer)
    line_list(sheet, *book.batch);
  else
    draw_trail(sheet, sheet.view.layout.main, book.trail, cap::clear);
  went_in(sheet, book);
  figures(sheet, *book.batch);
  if (book.paper && !book.note && !book.new_name)
    on_paper(sheet, *book.paper);
  else
    draw_told(sheet, book);
  for (const bench::Pad& at : sheet.view.layout.pads) way_on(sheet, at, book);
}

}
