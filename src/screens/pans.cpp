// Pans: pouring, when the next layer may go on, and what became of the paint.
#include "bench/pads_pans.hpp"
#include "bench/pads_shared.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/bench_says.hpp"
#include "words/pans_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using bench::PansPad;
using bench::PansView;
using words::number;
using Say = words::PansSay;
using words::say;

namespace {

constexpr Lettering big_bold{cap::head, true, cap::body};

bool is_bad(session::Became became) {
  return became != session::Became::good && became != session::Became::full;
}

bool stands(const PansView& pans, session::Became became) {
  return pans.said && pans.said->as == became;
}

// ---- a pan

std::string pan_word(const PansView::Said& said) {
  return said.early ? say(Say::pans_drying) : became_words(said.as);
}

bool words_fit(const std::string& words, double width) {
  return !words.empty() && width_mm(words, cap::body, false) <= width;
}

// With its word where that has room.
std::string share_words(const PansView::Pan& pan, double room) {
  double mL = 0;
  for (const double layer : pan.layers_mL) mL += layer;
  if (!(pan.brim_mL > 0)) return "";
  const std::string share = number(100 * mL / pan.brim_mL, 0);
  for (const Say words : {Say::pans_share_full, Say::pans_share_dry})
    if (const std::string told = say(words, {share}); words_fit(told, room)) return told;
  return say(Say::pans_share, {share});
}

// Its number, and beside it how it is: how full, or what was said of it, as a word where one is to
// be judged, else as a mark.
void pan_head(Sheet& sheet, const Rect& r, const PansView::Pan& pan, bool judging,
              const Ground& g) {
  const double y = r.y + 1.7 + cap::head, half = r.w / 2 - padding_mm;
  write(sheet, {r.x + padding_mm, y}, Anchor::left, big_bold, g.ink, std::to_string(pan.number),
        half * 0.8);
  const Point mark{r.right() - padding_mm - 2, y - cap::head / 2};
  std::string word = pan.said ? pan_word(*pan.said) : pan.full ? say(Say::pans_full) : "";
  const double room =
      2 * half - width_mm(std::to_string(pan.number), cap::head, true) - 1.5; // beside the number
  if (!pan.said && !words_fit(word, room)) word = share_words(pan, room);
  if (words_fit(word, room) && (judging || !pan.said))
    write(sheet, {r.right() - padding_mm, y}, Anchor::right, slab_letters,
          pan.said ? g.ink : g.quiet, word, room);
  else if (pan.said && !pan.said->early && is_bad(pan.said->as))
    caution_sign(sheet, mark, 4.4);
  else if (pan.said && !pan.said->early)
    tick(sheet, mark, 3.2, g.ink);
}

void pan_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans, const PansView::Pan& pan) {
  const Ground g = pad_box(sheet, at, choosable(sheet.theme, pan.chosen));
  const Rect& r = at.box;
  pan_head(sheet, r, pan, pans.judging, g);
  const double top = r.y + cap::head + 3.8, side = std::max(3.2, (r.w - 22) / 2);
  draw_pan(sheet, {r.x + side, top, r.w - 2 * side, r.bottom() - 2.6 - top}, pan, rgb(pans.colour),
           g);
}

// ---- the batch in hand, and the others

std::string old_words(std::int64_t ms) {
  const std::int64_t hours = ms / 3'600'000, days = hours / 24;
  if (days < 1) return say(Say::pans_old_hours, {std::to_string(hours)});
  return days == 1 ? say(Say::pans_old_day) : say(Say::pans_old_days, {std::to_string(days)});
}

std::string layer_words(const PansView& pans) {
  if (pans.layer == 0) return "";
  const words::Args layers{std::to_string(pans.layer), std::to_string(pans.layers_in_all)};
  return say(pans.layers_in_all > pans.layer ? Say::pans_layer_of : Say::pans_layer, layers) +
         " · " + old_words(pans.since_pour_ms);
}

// Its name, and how far it is.
void draw_title(Sheet& sheet, const PansView& pans) {
  const Rect& all = sheet.view.layout.main;
  panel(sheet, all);
  const double h = sheet.view.layout.note.h, heap = 7;
  const Ground g = plain(sheet.theme);
  paint_symbol(sheet, {all.x + 3 + heap / 2, all.y + h / 2 + 0.4}, heap, rgb(pans.colour),
               pans.swatch, g.ink);
  const double x = all.x + 4 + heap, middle = all.x + all.w * 0.5;
  labels(sheet, {x, all.y + 0.4, middle - x, h}, g, {{pans.name, big_bold, false, 2}},
         Anchor::left);
  const std::string left = pans.to_pour_mL > 0 ? say(Say::pans_in_jar, {number(pans.to_pour_mL, 1)})
                                               : say(words::BenchSay::pans_left_none);
  labels(sheet, {middle, all.y + 0.4, all.right() - 2 - middle, h}, g,
         {{layer_words(pans), slab_letters, true, 2}, {left, slab_letters, true, 1}},
         Anchor::right);
}

// Before the first pour: the pans that one tap would fill.
void draw_first(Sheet& sheet, const PansView& pans) {
  const Rect& all = sheet.view.layout.main;
  const double top = sheet.view.layout.note.bottom() + 3,
               h = std::min(24.0, all.bottom() - 4 - top);
  constexpr double step = 26, wide = 20;
  const int a_row = static_cast<int>((all.w - 6) / step),
            rows = std::max(1, static_cast<int>((all.bottom() - top) / (h + 5))),
            room = a_row * rows, count = pans.all > room ? room - 1 : pans.all;
  const auto place = [&](int i) {
    return Rect{all.x + 5 + i % a_row * step, top + i / a_row * (h + 5), wide, h};
  };
  const Ground g = plain(sheet.theme);
  for (int i = 0; i < count; ++i) draw_pan(sheet, place(i), pans.fresh, rgb(pans.colour), g);
  if (count < pans.all)
    labels(sheet, place(count), g,
           {{say(Say::pans_beside, {std::to_string(pans.all - count)}), big_bold}});
  if (count < pans.all)
    heard_apart(sheet, say(Say::pans_beside_heard, {std::to_string(pans.all - count)}));
}

std::string waits_words(const PansView::Other& other) {
  using Other = PansView::Other;
  const std::int64_t days = other.since_pour_ms / session::a_day_ms;
  const std::string layer = std::to_string(other.layer);
  switch (other.what) {
  case Other::layer_now: return say(Say::pans_can_go_on, {layer});
  case Other::layer_later:
    return say(Say::pans_later, {layer, span_words(other.low_h, other.high_h)});
  case Other::look:
    return days == 1 ? say(Say::pans_look_soon) : say(Say::pans_look, {std::to_string(days)});
  case Other::on_slab: return say(Say::pans_waits_on_slab, {number(other.mL, 1)});
  case Other::in_jar: return say(Say::pans_waits_in_jar, {number(other.mL, 1)});
  case Other::dries: return since_pour_words(other.since_pour_ms);
  }
  return "";
}

void other_pad(Sheet& sheet, const bench::Pad& at, const PansView::Other& other) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Rect& r = at.box;
  constexpr double wide = 5, step = 6.2, high = 8;
  constexpr int most = 3;
  const int all = static_cast<int>(other.pans.size()), count = all > most ? most - 1 : all;
  const double more_mm = count < all ? beside_mm(static_cast<std::size_t>(all - count)) : 0;
  const double marks =
      std::max(8.5, std::min(all, most) * step + 1.4 + std::max(0.0, more_mm - step));
  for (int i = 0; i < count; ++i)
    draw_pan(sheet, {r.right() - marks + i * step, r.bottom() - high - 2.6, wide, high},
             other.pans[static_cast<std::size_t>(i)], rgb(other.colour), g);
  if (count < all)
    pans_beside(sheet, {r.right() - 1.4, r.bottom() - 2.6 - (high - cap::small) / 2}, g.quiet,
                static_cast<std::size_t>(all - count));
  if (count == 0)
    paint_symbol(sheet, {r.right() - 5.6, r.bottom() - 5.6}, 6, rgb(other.colour), other.swatch,
                 g.ink);
  labels(sheet, {r.x, r.y, r.w - marks, r.h}, g,
         {{other.name, slab_bold, false, 2}, {waits_words(other), slab_letters, true, 2}},
         Anchor::left);
}

// ---- the other pads

std::string pour_head(const PansView& pans) {
  return pans.all_layer > 0 ? say(Say::pans_pour_layer, {std::to_string(pans.all_layer)})
                            : say(Say::pans_pour);
}

std::string into_words(int pans) {
  return pans == 1 ? say(Say::pans_into_one) : say(Say::pans_into, {std::to_string(pans)});
}

// What it does; where it does nothing yet, from when.
void pour_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const Theme& t = sheet.theme;
  if (pans.all > 0) {
    const std::string firm = pans.first ? "" : say(Say::pans_if_firm);
    return pad(sheet, at, dark(t),
               {{pour_head(pans), big_bold, false, 3},
                {into_words(pans.all), slab_letters, true, 2},
                {firm, slab_letters, true, 3}});
  }
  const NextWords next = next_words(sheet, pans);
  pad(sheet, at, plain(t),
      {{next.about, slab_bold, false, 2},
       {next.big, slab_letters, false, 3},
       {pans.wet ? say(Say::pans_pour_wait) : "", slab_letters, true, 2}});
}

void judge_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const bool asked = pans.asked_day > 0 && !pans.judging;
  std::vector<Label> words{
      {say(pans.judging ? Say::pans_pour : Say::pans_judge), big_bold, false, 1}};
  constexpr double roomy_mm = 40;
  if (at.box.w > roomy_mm)
    words.push_back(
        {say(pans.judging ? Say::pans_pour_what : Say::pans_judge_what), slab_letters, true, 2});
  pad(sheet, at, asked ? dark(sheet.theme) : plain(sheet.theme), words);
}

// The next tap turns to another one.
void card_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const double mark = 4;
  labels(sheet, {at.box.x, at.box.y, at.box.w - mark, at.box.h}, g,
         {{pans.card_name, slab_bold},
          {say(Say::pans_size, {reading_words(pans.card_mL)}), slab_letters, true}});
  chevron(sheet, {at.box.right() - mark, at.box.centre().y}, 3, g.ink, true);
}

void became_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const auto became = session::became_named(at.id.arg);
  if (!became) return;
  const bool said = stands(pans, *became);
  const Ground g = pad_box(sheet, at, choosable(sheet.theme, said));
  const bool early = said && pans.said->early;
  const double mark = said && !early ? 5 : 0; // room for the tick
  labels(sheet, {at.box.x, at.box.y + mark, at.box.w, at.box.h - mark}, g,
         {{became_words(*became), early ? slab_bold : big_bold},
          {early ? say(Say::pans_still_drying) : "", slab_letters, true, 2}});
  if (said && !early) tick(sheet, {at.box.centre().x, at.box.y + 4.4}, 4, g.ink);
}

void room_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const std::string room = say(words::SessionSay::book_room,
                               {reading_words(pans.celsius), reading_words(pans.humidity * 100)});
  pad(sheet, at, plain(sheet.theme),
      {{room, slab_letters, false, 2},
       {pans.room_guessed ? say(words::SessionSay::plan_guess) : "", slab_letters, true}});
}

// The first line says what it does, the second to what.
std::vector<Label> two(const std::string& does, const std::string& to_what) {
  return {{does, slab_bold, false, 2}, {to_what, slab_letters, true, 2}};
}

void action_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const Theme& t = sheet.theme;
  const Ground g = plain(t);
  const std::string number = std::to_string(pans.pan);
  const auto own = at.id.kind.as<PansPad>();
  if (!own) return;
  switch (*own) {
  case PansPad::pour_all: return pour_pad(sheet, at, pans);
  case PansPad::pour_pan:
    return pad(sheet, at, g, two(say(Say::pans_pour), say(Say::pans_only, {number})));
  case PansPad::pour_g:
    return pad(sheet, at, g, two(say(Say::pans_grams), say(Say::pans_number, {number})));
  case PansPad::weigh_pan:
    return pad(sheet, at, g, two(say(Say::pans_weigh), say(Say::pans_number, {number})));
  case PansPad::new_pan:
    return pad(sheet, at, g,
               two(say(pans.first ? Say::pans_add_first : Say::pans_add), pans.card_name));
  case PansPad::pan_card: return card_pad(sheet, at, pans);
  case PansPad::judge: return judge_pad(sheet, at, pans);
  case PansPad::became: return became_pad(sheet, at, pans);
  case PansPad::all_pans:
    return pad(sheet, at, choosable(t, pans.pan == 0), {{say(Say::pans_all_meant), slab_bold}});
  case PansPad::more_pans: return pad(sheet, at, g, {{say(Say::pans_more), slab_letters}});
  case PansPad::more_batches:
    return pad(sheet, at, g,
               {{say(pans.more_others == 1 ? Say::pans_one_more_batch : Say::pans_more_batches,
                     {std::to_string(pans.more_others)}),
                 slab_letters, false, 3}});
  case PansPad::room: return room_pad(sheet, at, pans);
  case PansPad::pan:
  case PansPad::batch: return; // one each
  }
}

template <class Views>
auto find_view(const Views& views, const bench::PadId& id) {
  return std::find_if(views.begin(), views.end(), [&](const auto& one) { return one.pad == id; });
}

}

void draw_pans(Sheet& sheet, const PansView& pans) {
  if (pans.batch.empty()) {
    panel(sheet, sheet.view.layout.main);
    return labels(sheet, sheet.view.layout.main, plain(sheet.theme),
                  {{say(Say::pans_none), slab_letters, true, 4}});
  }
  draw_known(sheet, pans);
  if (pans.number) return draw_number(sheet, *pans.number);
  draw_title(sheet, pans);
  if (pans.pans.empty()) draw_first(sheet, pans);
  for (const bench::Pad& at : sheet.view.layout.pads) {
    const auto pan = find_view(pans.pans, at.id);
    const auto other = find_view(pans.others, at.id);
    if (pan != pans.pans.end())
      pan_pad(sheet, at, pans, *pan);
    else if (other != pans.others.end())
      other_pad(sheet, at, *other);
    else
      action_pad(sheet, at, pans);
  }
}

}
