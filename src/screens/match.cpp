// Two swatches beside each other: how far apart, which way, and what differs that may be why.
#include "screens/match.hpp"

#include "bench/match_words.hpp"
#include "bench/pads_book.hpp"
#include "screens/measure.hpp"
#include "words/book_says.hpp"
#include "words/colour_says.hpp"
#include "words/moments.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace screens {

using bench::blame_words;
using bench::BookPad;
using bench::MatchView;
using bench::seen_words;
using bench::unusual_words;
using bench::Way;
using bench::way_words;
using bench::ways_of;
using bench::ways_words;
using words::ColourSay;
using words::Number;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};

std::string number_words(const colour::Match& m) { return words::number(m.difference, 1); }

std::string limits_words(const colour::Match& m) {
  return say(ColourSay::match_limits, {Number(m.low, 1), Number(m.high, 1)});
}

}

void both_colours(Sheet& sheet, const Rect& r, const MatchView& match) {
  sheet.shapes.push_back(Box{{r.x, r.y, r.w / 2, r.h}, 0, rgb(match.a.colour), clear, 0});
  sheet.shapes.push_back(Box{{r.x + r.w / 2, r.y, r.w / 2, r.h}, 0, rgb(match.b.colour), clear, 0});
  sheet.shapes.push_back(Box{r, 0, clear, sheet.theme.ink, outline_mm});
}

void match_pad(Sheet& sheet, const bench::Pad& at, const MatchView& match) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  Rect r = inset(at.box, 2.2);
  const Rect colours{r.x, r.y, std::min(44.0, r.w * 0.36), r.h};
  both_colours(sheet, colours, match);
  const Rect words{colours.right(), at.box.y, at.box.right() - colours.right(), at.box.h};
  const std::string ways = ways_words(match.match);
  labels(sheet, words, g,
         {{ways.empty() ? say(ColourSay::second_as) : ways, clean_bold, false, 2},
          {say(ColourSay::match_against, {match.a.name}), clean_letters, false, 1},
          {"ΔE00 " + number_words(match.match) + " (" + limits_words(match.match) +
               "): " + seen_words(match.match),
           small, true, 2}},
         Anchor::left);
}

namespace {

// ---- both colours, with their photos beside them

void photo_of(Sheet& sheet, Rect r, const MatchView::Of& of) {
  const Theme& t = sheet.theme;
  panel(sheet, r);
  r = inset(r, 1.6);
  Rect name{r.x, r.bottom() - 11, r.w, 11};
  const Rect picture{r.x, r.y, r.w, r.h - name.h - 0.6};
  if (of.image.empty()) {
    sheet.shapes.push_back(Box{picture, 0, rgb(of.colour), t.ink, outline_mm});
  } else {
    framed(sheet, picture, of.image, t.ink);
  }
  const std::string day =
      words::date(of.made_at, of.offset_min.value_or(sheet.view.utc_offset_min));
  labels(sheet, {name.x - padding_mm, name.y, name.w + 2 * padding_mm, name.h}, plain(t),
         {{of.name, {cap::clear, true, cap::small}, false, 1}, {day, small, true, 1}},
         Anchor::left);
}

void draw_both(Sheet& sheet, const MatchView& match) {
  const Rect& area = sheet.view.layout.main;
  const double side = std::min(46.0, area.w * 0.26), gap = bench::gap_mm;
  photo_of(sheet, {area.x, area.y, side, area.h}, match.a);
  photo_of(sheet, {area.right() - side, area.y, side, area.h}, match.b);
  both_colours(sheet, {area.x + side + gap, area.y, area.w - 2 * (side + gap), area.h}, match);
}

// ---- how far apart

constexpr std::array<double, 6> steps{0, 1, 2, 3.5, 5, 7}; // where the words change, and an end

double along(const Rect& r, double difference) {
  return r.x + r.w * std::min(difference, steps.back()) / steps.back();
}

// A disc where it lies; at an end, and pointing on, where it lies beyond.
void reading_mark(Sheet& sheet, Point at, double radius, int beyond) {
  const Theme& t = sheet.theme;
  if (beyond == 0) return sheet.shapes.push_back(Disc{at, radius, t.ink, clear, 0});
  const double back = -1.7 * radius * beyond;
  for (const double off : {0.0, 1.3 * back})
    sheet.shapes.push_back(Polyline{{{at.x + off + back, at.y - 1.5 * radius},
                                     {at.x + off, at.y},
                                     {at.x + off + back, at.y + 1.5 * radius}},
                                    0.6,
                                    t.ink,
                                    0});
}

// What nobody, or only a practised eye, sees is green.
void difference_bar(Sheet& sheet, const Rect& r, const colour::Match& m) {
  const Theme& t = sheet.theme;
  const double thick = 2.8, y = r.bottom() - cap::small - 1.6 - thick;
  for (std::size_t i = 0; i + 1 < steps.size(); ++i) {
    const Rect part{along(r, steps[i]) + 0.2, y, along(r, steps[i + 1]) - along(r, steps[i]) - 0.4,
                    thick};
    sheet.shapes.push_back(Box{part, 0.6, i < 2 ? t.right : t.bench, t.ink, outline_mm});
    write(sheet, {along(r, steps[i]), r.bottom()}, i == 0 ? Anchor::left : Anchor::centre, small,
          t.quiet, words::number(steps[i], steps[i] == 3.5 ? 1 : 0), 8);
  }
  write(sheet, {r.right(), r.bottom()}, Anchor::right, small, t.quiet, "ΔE00", 12);
  const double middle = y - 2.2;
  sheet.shapes.push_back(
      Polyline{{{along(r, m.low), middle}, {along(r, m.high), middle}}, 0.5, t.ink, 0});
  reading_mark(sheet, {along(r, m.difference), middle}, 1.1, m.difference > steps.back() ? 1 : 0);
}

std::string taken_words(const MatchView& match) {
  if (match.taken == colour::Taken::one_photo) return say(ColourSay::one_photo);
  if (match.repeats == 0) return say(ColourSay::two_photos);
  return match.repeats == 1 ? say(ColourSay::repeat_photo)
                            : say(ColourSay::repeat_photos, {std::to_string(match.repeats)});
}

void draw_how_far(Sheet& sheet, const MatchView& match) {
  const Theme& t = sheet.theme;
  const Rect& box = sheet.view.layout.lower;
  panel(sheet, box);
  Rect area = inset(box, 3);
  const double pad = padding_mm;
  write(sheet, {area.x, area.y + cap::clear}, Anchor::left, clean_bold, t.ink,
        say(ColourSay::how_far), area.w);
  slice(area, cap::clear + 1.6);
  const Rect foot{area.x - pad, area.bottom() - 9, area.w + 2 * pad, 9.4};
  labels(sheet, foot, plain(t), {{taken_words(match), small, true, 2}}, Anchor::left);
  area.h -= 9.6;
  const Rect bar{area.x, area.bottom() - 11.4, area.w, 11};
  difference_bar(sheet, bar, match.match);
  area.h -= 12;
  const Lettering big{cap::timer, true, cap::head};
  const double number_w = width_mm(number_words(match.match), big.cap_mm, true) + 3;
  write(sheet, {area.x, area.centre().y + big.cap_mm / 2}, Anchor::left, big, t.ink,
        number_words(match.match), number_w);
  labels(
      sheet, {area.x + number_w - pad, area.y - 1, area.w - number_w + 2 * pad, area.h + 2},
      plain(t),
      {{seen_words(match.match), clean_bold, false, 5}, {limits_words(match.match), small, true}},
      Anchor::left);
}

// ---- which way

constexpr double gauge_end = 5; // steps of the difference to either side

void gauge(Sheet& sheet, const Rect& r, const Way& way) {
  const Theme& t = sheet.theme;
  const double words_w = std::max(width_mm(say(way.less), cap::small, false),
                                  width_mm(say(way.more), cap::small, false));
  const double side = std::clamp(words_w + 2.5, r.w * 0.29, r.w * 0.38), y = r.centre().y + 3.2;
  write(sheet, {r.x + r.w / 2, y - 3.4}, Anchor::centre, clean_bold, t.ink, way_words(way), r.w);
  write(sheet, {r.x, y + cap::small / 2}, Anchor::left, small, t.quiet, say(way.less), side - 1);
  write(sheet, {r.right(), y + cap::small / 2}, Anchor::right, small, t.quiet, say(way.more),
        side - 1);
  const Rect line{r.x + side, y - 1.8, r.w - 2 * side, 3.6};
  const double middle = line.centre().x, step = line.w / 2 / gauge_end;
  const auto at = [&](double by) { return middle + step * std::clamp(by, -gauge_end, gauge_end); };
  sheet.shapes.push_back(Box{{at(-1), line.y, at(1) - at(-1), line.h}, 0.6, t.right, clear, 0});
  sheet.shapes.push_back(Polyline{{{line.x, y}, {line.right(), y}}, 0.3, t.rule, 0});
  sheet.shapes.push_back(Polyline{{{middle, line.y}, {middle, line.bottom()}}, 0.3, t.ink, 0});
  const double doubt = colour::nine_in_ten * way.by.sd;
  sheet.shapes.push_back(
      Polyline{{{at(way.by.by - doubt), y}, {at(way.by.by + doubt), y}}, 0.7, t.ink, 0});
  const int beyond = way.by.by > gauge_end ? 1 : way.by.by < -gauge_end ? -1 : 0;
  reading_mark(sheet, {at(way.by.by), y}, 1.2, beyond);
}

void draw_which_way(Sheet& sheet, const MatchView& match) {
  const Rect& box = sheet.view.layout.more;
  panel(sheet, box);
  Rect area = inset(box, 3);
  write(sheet, {area.x, area.y + cap::clear}, Anchor::left, clean_bold, sheet.theme.ink,
        say(ColourSay::later_is, {match.b.name}), area.w);
  slice(area, cap::clear + 2.6);
  const bench::Grid rows{1, 3, area};
  int row = 0;
  for (const Way& way : ways_of(match.match)) gauge(sheet, rows.cell(0, row++), way);
}

// ---- what may be why

// On one line, or where that is too long on two; false where there is no room left.
bool draw_one_blamed(Sheet& sheet, Rect& area, const MatchView::Blame& one) {
  const std::string what = blame_words(one), unusual = unusual_words(one);
  const double right = width_mm(unusual, cap::small, false) + 0.2, pad = padding_mm;
  const bool beside = width_mm(what, cap::clear, false) + right + 3 < area.w;
  const double high = beside ? 7 : 10.4;
  if (area.h < high) return false;
  const Rect row = slice(area, high);
  std::vector<Label> lines{{what, clean_letters, false, 1}};
  if (!beside) lines.push_back({unusual, small, true, 1});
  labels(sheet, {row.x - pad, row.y, row.w - (beside ? right : 0) + 2 * pad, high},
         plain(sheet.theme), lines, Anchor::left);
  if (beside)
    write(sheet, {row.right(), row.centre().y + cap::small / 2}, Anchor::right, small,
          sheet.theme.quiet, unusual, right);
  return true;
}

void draw_blame(Sheet& sheet, const MatchView& match) {
  const Theme& t = sheet.theme;
  const Rect& box = sheet.view.layout.side;
  panel(sheet, box);
  Rect area = inset(box, 3);
  const std::string guess = say(ColourSay::blame_guess);
  const double guess_w = width_mm(guess, cap::small, false) + 1;
  const bool beside = width_mm(say(ColourSay::blame_head), cap::clear, true) + guess_w < area.w;
  write(sheet, {area.x, area.y + cap::clear}, Anchor::left, clean_bold, t.ink,
        say(ColourSay::blame_head), beside ? area.w - guess_w : area.w);
  if (beside)
    write(sheet, {area.right(), area.y + cap::clear}, Anchor::right, small, t.quiet, guess,
          guess_w);
  slice(area, cap::clear + 1.4);
  if (match.blame.empty())
    return labels(sheet, {area.x - padding_mm, area.y, area.w + 2 * padding_mm, area.h}, plain(t),
                  {{say(ColourSay::blame_none), clean_letters, true, 3}}, Anchor::left);
  for (const MatchView::Blame& one : match.blame)
    if (!draw_one_blamed(sheet, area, one)) return;
}

void colours_pad(Sheet& sheet, const bench::Pad& at, const MatchView& match) {
  const Theme& t = sheet.theme;
  const auto plainly = [&](words::Sentence what) {
    pad(sheet, at, plain(t), {{say(what), clean_letters}});
  };
  if (at.id.kind == BookPad::make_again)
    pad(sheet, at, dark(t), {{say(ColourSay::match_again, {match.a.name}), clean_bold}});
  if (at.id.kind == BookPad::trails) plainly(ColourSay::match_trails);
  if (at.id.kind == BookPad::photos) plainly(ColourSay::match_new_photo);
  if (at.id.kind == BookPad::to_list) plainly(words::BookSay::book_one_back);
}

}

void draw_colours(Sheet& sheet, const bench::CompareView& both) {
  const MatchView& match = *both.match;
  draw_both(sheet, match);
  draw_how_far(sheet, match);
  draw_which_way(sheet, match);
  draw_blame(sheet, match);
  for (const bench::Pad& at : sheet.view.layout.pads) colours_pad(sheet, at, match);
}

}
