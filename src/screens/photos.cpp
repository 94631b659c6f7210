// A batch's photos: thumbnails, or one of them large with what is read from it.
#include "bench/pads_photos.hpp"
#include "bench/pads_shared.hpp"
#include "colour/reading.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/photo_frames.hpp"
#include "screens/phrases.hpp"
#include "screens/trail_geometry.hpp"
#include "words/colour_says.hpp"
#include "words/letters.hpp"
#include "words/photos_says.hpp"
#include "words/screens_says.hpp"

#include <algorithm>

namespace screens {

using bench::PhotosPad;
using bench::PhotosPage;
using bench::PhotosView;
using bench::SharedPad;
using Say = words::PhotosSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};
constexpr double caption_mm = 5.6, file_mm = 9.4; // a file's name may be long

std::string of_words(session::PhotoOf of) {
  switch (of) {
  case session::PhotoOf::slab: return say(Say::of_slab);
  case session::PhotoOf::dot: return say(Say::of_dot);
  case session::PhotoOf::swatch: return say(Say::of_swatch);
  case session::PhotoOf::pan: return say(Say::of_pan);
  }
  return "";
}

// ---- thumbnails

bool fits(const std::string& words, double width) {
  return width_mm(words, cap::small, false) <= width;
}

// A file's name without a hyphen of ours, which would seem to be its own: its beginning on one
// line, and on the other what is left of it, or its end.
std::vector<std::string> file_lines(const std::string& name, double width) {
  if (fits(name, width)) return {name};
  std::size_t room = 0, mark = 0; // letters of the first line, and up to a mark that ends a part
  for (std::size_t at = 0; at < name.size();) {
    const std::size_t from = at;
    words::next_letter(name, at);
    if (!fits(name.substr(0, at), width)) break;
    room = at;
    if (name[from] == '_' || name[from] == '-' || name[from] == ' ') mark = at;
  }
  const std::size_t first = mark > room / 2 ? mark : room;
  std::string rest = name.substr(first);
  if (fits(rest, width)) return {name.substr(0, first), rest};
  for (std::size_t at = 0; at < rest.size();) {
    words::next_letter(rest, at);
    if (const std::string end = "…" + rest.substr(at); fits(end, width))
      return {name.substr(0, first), end};
  }
  return {name.substr(0, first)};
}

void caption(Sheet& sheet, const Rect& r, const Ground& g, const PhotosView::Thumb& thumb) {
  const double size = 3.6;
  Rect words = r;
  if (thumb.colour) {
    paint_symbol(sheet, {r.x + 1.4 + size / 2, r.centre().y}, size, rgb(*thumb.colour), true,
                 g.ink);
    words.x += size + 1;
    words.w -= size + 1;
  }
  if (thumb.of)
    return labels(sheet, words, g, {{of_words(*thumb.of), small, false, 1}}, Anchor::left);
  std::vector<Label> lines;
  for (const std::string& line : file_lines(thumb.name, words.w - 2 * padding_mm))
    lines.push_back({line, small, false, 1});
  labels(sheet, words, g, lines, Anchor::left);
}

void thumbnail(Sheet& sheet, const bench::Pad& at, const PhotosView::Thumb& thumb) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  Rect r = inset(at.box, 1);
  Rect picture = slice(r, r.h - (thumb.of ? caption_mm : file_mm));
  picture = inset(picture, 0.6);
  const bool opens = thumb.no_picture && (thumb.no_picture->what == Say::gone ||
                                          thumb.no_picture->what == Say::changed);
  if (thumb.no_picture && !opens) { // one that opens says it all there
    labels(sheet, picture, g, {{words::message(*thumb.no_picture), small, true, 8}});
  } else {
    framed(sheet, picture, thumb.image, g.ink);
  }
  caption(sheet, {r.x - 1, r.y, r.w + 2, r.h}, g, thumb);
}

std::string none_words(const PhotosView& photos) {
  if (photos.batch.empty()) return say(Say::of_none);
  return say(photos.picks ? Say::none_picks : Say::none);
}

void draw_thumbs(Sheet& sheet, const PhotosView& photos) {
  const Rect& main = sheet.view.layout.main;
  if (photos.thumbs.empty()) {
    panel(sheet, main);
    const std::string why = photos.failure                    ? words::message(*photos.failure)
                            : photos.waits                    ? say(Say::looking)
                            : photos.page == PhotosPage::kept ? none_words(photos)
                                                              : "";
    labels(sheet, inset(main, 4), plain(sheet.theme), {{why, clean_letters, false, 5}});
  }
  for (const PhotosView::Thumb& thumb : photos.thumbs)
    if (const bench::Pad* at = bench::pad_of(sheet.view.layout, thumb.pad))
      thumbnail(sheet, *at, thumb);
}

// ---- one, large

void draw_picture(Sheet& sheet, const PhotosView& photos) {
  const Rect& main = sheet.view.layout.main;
  if (!photos.picture) {
    panel(sheet, main);
    const std::string why = photos.failure ? words::message(*photos.failure) : say(Say::reading);
    return labels(sheet, inset(main, 6), plain(sheet.theme), {{why, clean_letters, false, 6}});
  }
  sheet.shapes.push_back(Box{*photos.picture, 0, sheet.theme.slab, clear, 0});
  sheet.shapes.push_back(Picture{*photos.picture, photos.image, true});
  draw_regions(sheet, photos);
  sheet.shapes.push_back(Box{*photos.picture, 0, clear, sheet.theme.ink, outline_mm});
}

// ---- what is said beside it

struct Said {
  std::string words;
  bool bold = false;
};

void add_doubts(const bench::SwatchReading& reading, std::vector<Said>& out) {
  if (reading.graded > 8)
    out.push_back({say(words::ColourSay::graded, {words::Number(reading.graded, 0)})});
  if (reading.glints > 0.001)
    out.push_back({say(words::ColourSay::glints, {words::Number(100 * reading.glints, 1)})});
  if (reading.beyond) out.push_back({say(words::ColourSay::beyond)});
}

std::string measured_words(const session::Measured& m) {
  const auto doubt = [](double sd) { return words::Number(colour::nineteen_in_twenty * sd, 1); };
  return say(Say::colour, {words::Number(m.l, 1), doubt(m.l_u), words::Number(m.a, 1), doubt(m.a_u),
                           words::Number(m.b, 1), doubt(m.b_u)});
}

void add_specks(const PhotosView& photos, std::vector<Said>& out) {
  if (photos.judged)
    out.push_back({say(Say::specks_judged, {specks_words(photos.judged->as)}), true});
  if (photos.specks)
    out.push_back({say(Say::specks_seen, {specks_words(*photos.specks)}), !photos.judged});
  else if (photos.picture)
    out.push_back({say(Say::specks_not_counted)});
  if (!photos.judged) out.push_back({say(Say::specks_ask)});
  out.push_back({say(Say::specks_teach)});
}

std::vector<Said> said_of_open(const PhotosView& photos) {
  std::vector<Said> out;
  if (!photos.photo) return out;
  if (photos.failure && photos.picture) out.push_back({words::message(*photos.failure), true});
  if (photos.waits && photos.picture) out.push_back({say(Say::reading), true});
  if (photos.see_through && !photos.reading) out.push_back({say(Say::see_through)});
  if (photos.photo->measured) {
    out.push_back({measured_words(*photos.photo->measured)});
    if (photos.reading) add_doubts(*photos.reading, out);
    out.push_back({say(Say::colour_means)});
    if (!photos.failure) out.push_back({say(Say::what_next), true});
  }
  if (photos.photo->of == session::PhotoOf::dot) add_specks(photos, out);
  if (photos.regions.empty() || photos.failure) return out;
  if (photos.two) out.push_back({say(Say::two_swatches), true});
  if (photos.photo->measured) return out;
  if (!photos.seen) out.push_back({say(Say::no_swatch), true});
  out.push_back({say(Say::how_to_read)});
  return out;
}

std::vector<Said> said_of_asked(const PhotosView& photos) {
  std::vector<Said> out;
  if (photos.failure && photos.picture) out.push_back({words::message(*photos.failure), true});
  if (photos.picture && !photos.failure)
    out.push_back({say(photos.waits ? Say::not_kept : Say::of_what), true});
  if (photos.see_through) out.push_back({say(Say::see_through)});
  if (photos.more == 1) out.push_back({say(Say::of_what_one_more)});
  if (photos.more > 1) out.push_back({say(Say::of_what_more, {std::to_string(photos.more)})});
  return out;
}

std::vector<Said> said_of_folder(const PhotosView& photos) {
  if (photos.count == 0) return {};
  const bool most = photos.there > photos.count;
  return {{say(most ? Say::folder_count_most : Say::folder_count,
               {std::to_string(photos.count), std::to_string(photos.there)})}};
}

std::vector<Said> said(const PhotosView& photos) {
  switch (photos.page) {
  case PhotosPage::kept:
    if (photos.batch.empty()) return {};
    return {{say(Say::title, {photos.batch}), true}, {say(Say::hint)}};
  case PhotosPage::folder: return said_of_folder(photos);
  case PhotosPage::asked: return said_of_asked(photos);
  case PhotosPage::open: return said_of_open(photos);
  }
  return {};
}

constexpr double between_said_mm = 0.8;

double high_mm(const std::vector<Said>& all, double width, double cap) {
  constexpr int any = 40;
  double lines = 0;
  for (const Said& one : all)
    lines += static_cast<double>(
        fitted(one.words, width, {cap, one.bold, cap::small}, any, false).lines.size());
  return lines * cap * line_step + static_cast<double>(all.size()) * between_said_mm;
}

// As running text, each from a new line on; a stroke of the paint over it, where it was read.
void draw_said(Sheet& sheet, const PhotosView& photos) {
  panel(sheet, sheet.view.layout.more);
  Rect area = inset(sheet.view.layout.more, 3);
  if (photos.photo && photos.photo->measured) {
    const Rect wash = slice(area, 7);
    sheet.shapes.push_back(
        Box{wash, 1.2, rgb(photos.photo->measured->shown), sheet.theme.ink, outline_mm});
    slice(area, 2);
  }
  const std::vector<Said> all = said(photos);
  const double cap = high_mm(all, area.w, cap::clear) <= area.h ? cap::clear : cap::small;
  const double step = cap * line_step;
  double y = area.y + cap;
  for (const Said& one : all) {
    const Lettering l{cap, one.bold, cap::small};
    const int room = static_cast<int>((area.bottom() - y) / step + 1.0001);
    if (room < 1) return;
    const Lines lines = fitted(one.words, area.w, l, room, false);
    for (const std::string& line : lines.lines) {
      write(sheet, {area.x, y}, Anchor::left, {lines.cap_mm, one.bold, cap::small}, sheet.theme.ink,
            line, area.w);
      if (&line == &lines.lines.front()) heard_apart(sheet);
      y += step;
    }
    y += between_said_mm;
  }
}

// ---- pads

std::string of_pad_words(const std::string& of) {
  const auto kind = session::photo_of_named(of);
  return kind ? of_words(*kind) : of;
}

bool paper_chosen(const PhotosView& photos) {
  for (const PhotosView::Region& region : photos.regions)
    if (region.chosen) return region.paper;
  return false;
}

// Dark: proposed, while the hand has not said; then what it said has the heavy outline.
void specks_pad(Sheet& sheet, const bench::Pad& at, const PhotosView& photos) {
  const auto of = session::specks_named(at.id.arg);
  if (!of) return;
  const bool chosen = photos.judged && photos.judged->as == *of;
  const bool proposed = !photos.judged && photos.specks == of;
  pad(sheet, at, proposed ? dark(sheet.theme) : choosable(sheet.theme, chosen),
      {{specks_words(*of), chosen || proposed ? clean_bold : clean_letters}});
}

void own_pad(Sheet& sheet, const bench::Pad& at, PhotosPad which, const PhotosView& photos) {
  const Theme& t = sheet.theme;
  const auto plainly = [&](Say what) { pad(sheet, at, plain(t), {{say(what), clean_letters}}); };
  const auto darkly = [&](Say what) { pad(sheet, at, dark(t), {{say(what), clean_bold}}); };
  switch (which) {
  case PhotosPad::add:
    return pad(sheet, at, dark(t),
               {{say(photos.picks ? Say::add_picks : Say::add), clean_bold, false, 3}});
  case PhotosPad::look: return plainly(Say::look);
  case PhotosPad::larger: return plainly(Say::larger);
  case PhotosPad::smaller: return plainly(Say::smaller);
  case PhotosPad::take_away: return plainly(Say::take_away);
  case PhotosPad::unsay: return plainly(Say::unsay);
  case PhotosPad::read:
    return darkly(photos.photo && photos.photo->measured ? Say::read_again : Say::read);
  case PhotosPad::of: return pad(sheet, at, plain(t), {{of_pad_words(at.id.arg), clean_bold}});
  case PhotosPad::region: {
    const bool paper = at.id.arg == "paper", chosen = paper == paper_chosen(photos);
    return pad(
        sheet, at, choosable(t, chosen),
        {{say(paper ? Say::move_paper : Say::move_paint), chosen ? clean_bold : clean_letters}});
  }
  case PhotosPad::specks: return specks_pad(sheet, at, photos);
  case PhotosPad::photo:
  case PhotosPad::choose:      // thumbnails
  case PhotosPad::folder_text: // a text field
    return;
  }
}

words::Sentence way_back(const PhotosView& photos) {
  switch (photos.page) {
  case PhotosPage::kept: return Say::to_batch;
  case PhotosPage::open: return photos.from_trail ? Say::to_batch : Say::to_all;
  case PhotosPage::asked:
    if (photos.more > 0) return Say::leave_out;
    return words::ScreensSay::pad_leave_number;
  case PhotosPage::folder: return words::ScreensSay::pad_leave_number;
  }
  return {};
}

void draw_pads(Sheet& sheet, const PhotosView& photos) {
  using words::ScreensSay;
  for (const bench::Pad& at : sheet.view.layout.pads) {
    const auto plainly = [&](ScreensSay what) {
      pad(sheet, at, plain(sheet.theme), {{say(what), clean_letters}});
    };
    if (at.id.kind == SharedPad::leave)
      pad(sheet, at, plain(sheet.theme), {{say(way_back(photos)), clean_letters}});
    if (at.id.kind == SharedPad::page_back) plainly(ScreensSay::page_back);
    if (at.id.kind == SharedPad::page_on) plainly(ScreensSay::page_on);
    if (const auto own = at.id.kind.as<PhotosPad>()) own_pad(sheet, at, *own, photos);
  }
}

}

void draw_photos(Sheet& sheet, const PhotosView& photos) {
  if (photos.page == PhotosPage::kept || photos.page == PhotosPage::folder)
    draw_thumbs(sheet, photos);
  else
    draw_picture(sheet, photos);
  draw_said(sheet, photos);
  draw_pads(sheet, photos);
}

}
