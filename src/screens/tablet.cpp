// This tablet: how large it is, which hand, what its keys do.
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pads_tablet.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/language_says.hpp"
#include "words/screens_says.hpp"
#include "words/tablet_says.hpp"

namespace screens {

using bench::SharedPad;
using bench::SlabPad;
using bench::TabletPad;
using Say = words::TabletSay;
using words::say;

BankCard bank_card(const Rect& area, double drawn_at) {
  constexpr double card_w = 85.60, card_h = 53.98; // ISO/IEC 7810, ID-1
  const bench::Point c = area.centre();
  const double w = card_w / drawn_at, h = card_h / drawn_at;
  const bool lies = w <= area.w && h <= area.h;
  const double across = lies ? w : std::min(h, area.w), down = std::min(lies ? h : w, area.h);
  return {{c.x - across / 2, c.y - down / 2, across, down}, lies};
}

namespace {

std::string key_does(const bench::PadId& pad) {
  if (pad.kind == SlabPad::felt) return feel_words(*session::feel_named(pad.arg));
  if (pad.kind == SharedPad::undo) return say(Say::key_undo);
  if (pad.kind == SlabPad::pass) return say(Say::key_pass);
  if (pad.kind == SlabPad::dot) return say(words::ScreensSay::pad_dot);
  if (pad.kind == SlabPad::another) return say(words::ScreensSay::pad_another);
  return say(pad.arg == "binder"  ? Say::key_binder
             : pad.arg == "water" ? Say::key_water
                                  : Say::key_honey);
}

constexpr double noticed = 0.97; // less than this is not worth a word

std::string size_words(const bench::TabletView& tablet) {
  const std::string w = words::number(tablet.mm.w, 0), h = words::number(tablet.mm.h, 0);
  if (tablet.drawn_at >= noticed) return say(Say::tablet_size, {w, h});
  return say(Say::tablet_small, {w, h, words::number(100 * tablet.drawn_at, 0)});
}

std::string own_name(words::Language language) {
  return words::pattern(words::LanguageSay::own_name, language);
}

void draw_card(Sheet& sheet, double drawn_at) {
  const Theme& t = sheet.theme;
  const Rect& area = sheet.view.layout.main;
  panel(sheet, area);
  const auto [card, lies] = bank_card(area, drawn_at);
  sheet.shapes.push_back(Box{card, lies ? 3.18 : 0, t.bench, t.ink, outline_mm});
  labels(sheet, inset(card, 4), plain(t),
         {{say(lies ? Say::card_hold : Say::card_hold_upright), clean_bold, false, 3},
          {say(lies ? Say::card_fit : Say::card_fit_across), clean_letters, true, 4}});
}

void draw_row(Sheet& sheet, const bench::Pad& at, const bench::TabletView::Row& row) {
  const Theme& t = sheet.theme;
  const std::string key = row.waits         ? say(Say::key_press_now)
                          : row.key.empty() ? say(Say::key_none)
                                            : row.key;
  pad(sheet, at, row.waits ? dark(t) : plain(t),
      {{key_does(row.does), clean_bold, false, 1}, {key, clean_letters, true, 1}});
}

std::string told_counted(std::size_t pigments, int batches, Say what, words::Args args = {}) {
  args.push_back(words::counted(pigments, Say::told_pigment, Say::told_pigments));
  args.push_back(
      words::counted(static_cast<std::size_t>(batches), Say::told_batch, Say::told_batches));
  return say(what, std::move(args));
}

// What was done last, or is asked; empty: nothing.
std::string told_now(const Sheet& sheet, const bench::TabletView::Sharing& told) {
  if (told.failure && told.found.empty()) return words::message(*told.failure);
  if (!told.found.empty())
    return told_counted(told.found_pigments, told.found_batches, Say::told_found,
                        {told.found, words::date(told.found_at, sheet.view.utc_offset_min)});
  if (!told.written.empty())
    return say(told.folder.empty() ? Say::told_saved : Say::told_written, {told.written});
  if (told.preparing) return say(Say::told_preparing);
  return told.none ? say(Say::told_none) : "";
}

void draw_told(Sheet& sheet, const bench::TabletView::Sharing& told) {
  const Theme& t = sheet.theme;
  labels(sheet, sheet.view.layout.side, plain(t),
         {{say(Say::told_title), clean_bold, false, 1},
          {told.folder.empty() ? say(Say::told_by_hand) : say(Say::told_folder, {told.folder}),
           clean_letters, true, 1}},
         Anchor::left);
  panel(sheet, sheet.view.layout.more);
  std::vector<Label> said;
  if (const std::string now = told_now(sheet, told); !now.empty())
    said.push_back({now, clean_bold, false, 5});
  if (told.failure && !told.found.empty())
    said.push_back({words::message(*told.failure), clean_letters, false, 4});
  if (told.pigments > 0)
    said.push_back({told_counted(told.pigments, told.batches,
                                 told.doubted ? Say::told_is_kept : Say::told_counts),
                    clean_letters, false, 2});
  if (told.doubted) said.push_back({say(Say::told_doubted), clean_letters, false, 3});
  if (said.empty())
    said.push_back({say(told.folder.empty() ? Say::told_about_by_hand : Say::told_about),
                    clean_letters, false, 6});
  labels(sheet, inset(sheet.view.layout.more, 3), plain(t), said, Anchor::left);
}

void draw_told_pad(Sheet& sheet, const bench::Pad& at, const bench::TabletView& tablet) {
  const auto words_of = [&]() -> std::optional<Say> {
    if (at.id.kind == TabletPad::others) return tablet.told ? Say::others_back : Say::others;
    if (at.id.kind == TabletPad::tell) return Say::pad_tell;
    if (at.id.kind == TabletPad::find_told) return Say::pad_find_told;
    if (at.id.kind == TabletPad::take_told) return Say::pad_take_told;
    if (at.id.kind == TabletPad::leave_told) return Say::pad_leave_told;
    if (at.id.kind == TabletPad::forget_told) return Say::pad_forget_told;
    return std::nullopt;
  };
  if (const auto what = words_of())
    pad(sheet, at, plain(sheet.theme), {{say(*what), clean_letters}});
}

}

void draw_tablet(Sheet& sheet, const bench::TabletView& tablet) {
  const Theme& t = sheet.theme;
  draw_card(sheet, tablet.drawn_at);
  if (tablet.told) {
    draw_told(sheet, *tablet.told);
  } else {
    labels(sheet, sheet.view.layout.side, plain(t),
           {{say(Say::tablet_keys), clean_bold, false, 2},
            {size_words(tablet), clean_letters, true, tablet.drawn_at < noticed ? 2 : 1}},
           Anchor::left);
  }
  std::size_t row = 0;
  for (const bench::Pad& at : sheet.view.layout.pads) {
    draw_told_pad(sheet, at, tablet);
    const bool left = tablet.hand == bench::Hand::left;
    const bool much = !at.id.arg.empty();
    if (at.id.kind == TabletPad::hand)
      toggle_pad(sheet, at, say(left ? Say::hand_left : Say::hand_right), !left);
    if (at.id.kind == TabletPad::motion)
      toggle_pad(sheet, at, say(tablet.motion ? Say::motion_on : Say::motion_off), tablet.motion);
    if (at.id.kind == TabletPad::full_screen)
      toggle_pad(sheet, at, say(tablet.full_screen ? Say::full_screen_on : Say::full_screen_off),
                 tablet.full_screen);
    if (at.id.kind == TabletPad::language)
      pad(sheet, at, plain(t), {{say(Say::language, {own_name(tablet.language)}), clean_letters}});
    if (at.id.kind == TabletPad::card_smaller)
      pad(sheet, at, plain(t),
          {{say(much ? Say::card_much_smaller : Say::card_smaller), clean_letters}});
    if (at.id.kind == TabletPad::card_larger)
      pad(sheet, at, plain(t),
          {{say(much ? Say::card_much_larger : Say::card_larger), clean_letters}});
    if (at.id.kind == TabletPad::bind && row < tablet.rows.size())
      draw_row(sheet, at, tablet.rows[row++]);
  }
}

}
