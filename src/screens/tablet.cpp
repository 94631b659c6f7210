// This tablet: how large it is, which hand, what its keys do.
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pads_tablet.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/screens_says.hpp"
#include "words/tablet_says.hpp"

namespace screens {

using bench::SharedPad;
using bench::SlabPad;
using bench::TabletPad;
using Say = words::TabletSay;
using words::say;

namespace {

constexpr double card_w = 85.60, card_h = 53.98; // ISO/IEC 7810, ID-1

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

void draw_card(Sheet& sheet) {
  const Theme& t = sheet.theme;
  const Rect& area = sheet.view.layout.main;
  panel(sheet, area);
  const bench::Point c = area.centre();
  const Rect card{c.x - card_w / 2, c.y - card_h / 2, card_w, card_h};
  sheet.shapes.push_back(Box{card, 3.18, t.bench, t.ink, outline_mm});
  labels(
      sheet, inset(card, 4), plain(t),
      {{say(Say::card_hold), clean_bold, false, 3}, {say(Say::card_fit), clean_letters, true, 4}});
}

void draw_row(Sheet& sheet, const bench::Pad& at, const bench::TabletView::Row& row) {
  const Theme& t = sheet.theme;
  const std::string key = row.waits         ? say(Say::key_press_now)
                          : row.key.empty() ? say(Say::key_none)
                                            : row.key;
  pad(sheet, at, row.waits ? dark(t) : plain(t),
      {{key_does(row.does), clean_bold, false, 1}, {key, clean_letters, true, 1}});
}

}

void draw_tablet(Sheet& sheet, const bench::TabletView& tablet) {
  const Theme& t = sheet.theme;
  draw_card(sheet);
  labels(sheet, sheet.view.layout.side, plain(t),
         {{say(Say::tablet_keys), clean_bold, false, 2},
          {say(Say::tablet_size, {words::number(tablet.mm.w, 0), words::number(tablet.mm.h, 0)}),
           clean_letters, true, 1}},
         Anchor::left);
  std::size_t row = 0;
  for (const bench::Pad& at : sheet.view.layout.pads) {
    const bool left = tablet.hand == bench::Hand::left;
    const bool much = !at.id.arg.empty();
    if (at.id.kind == TabletPad::hand)
      pad(sheet, at, plain(t), {{say(left ? Say::hand_left : Say::hand_right), clean_letters}});
    if (at.id.kind == TabletPad::motion)
      pad(sheet, at, plain(t),
          {{say(tablet.motion ? Say::motion_on : Say::motion_off), clean_letters}});
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
