#include "screens/fields.hpp"

#include "bench/pads_book.hpp"
#include "bench/pads_photos.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "words/book_says.hpp"
#include "words/lists.hpp"
#include "words/photos_says.hpp"
#include "words/screens_says.hpp"

namespace screens {

using bench::BookPad;
using bench::PlanPad;
using bench::SharedPad;
using bench::ShelfPad;
using Say = words::ScreensSay;

namespace {

// A tool bears what somebody wrote on it; what is used up comes in a jar.
words::Sentence lot_words(session::CardKind kind) {
  using session::CardKind;
  const bool used_up =
      kind == CardKind::pigment || kind == CardKind::paint || session::is_liquid(kind);
  return used_up ? Say::card_lot : Say::card_written;
}

struct Fields {
  std::vector<Field>& out;

  void operator()(const bench::PlanView& plan) const {
    out.push_back({{PlanPad::name, ""}, plan.name, Say::plan_name});
    const bool recipes = plan.finding == bench::Finding::recipe;
    out.push_back(
        {{SharedPad::search, ""}, plan.search, recipes ? Say::recipe_search : Say::plan_search});
  }
  void operator()(const bench::ShelfView& shelf) const {
    const bool recipes = shelf.kind == bench::ShelfKind::recipe;
    out.push_back(
        {{SharedPad::search, ""}, shelf.search, recipes ? Say::recipe_search : Say::plan_search});
    if (!shelf.card) return;
    const session::Card& card = *shelf.card;
    out.push_back({{ShelfPad::says, "name"}, card.name, Say::card_name});
    out.push_back({{ShelfPad::says, "lot"}, card.lot, lot_words(card.kind())});
    out.push_back({{ShelfPad::says, "made_on"}, card.made_on, Say::card_made_on});
    out.push_back({{ShelfPad::says, "keep_until"}, card.keep_until, Say::card_keep_until});
    const session::Bought& jar = shelf.jars.jar;
    out.push_back({{ShelfPad::jar_says, "currency"}, jar.currency, Say::card_currency});
    out.push_back({{ShelfPad::jar_says, "lot"}, jar.lot, Say::card_jar_lot});
    out.push_back({{ShelfPad::jar_says, "on"}, jar.on, Say::card_bought_on});
  }
  void operator()(const bench::BookView& book) const {
    out.push_back({{SharedPad::search, ""},
                   book.search,
                   book.comparing ? Say::book_search_other : Say::book_search});
    out.push_back({{BookPad::label_line, ""}, book.label_line, words::BookSay::paper_label_line});
    if (book.note) out.push_back({{BookPad::note_text, ""}, *book.note, Say::book_note_text});
    if (book.new_name)
      out.push_back({{BookPad::name_text, ""}, *book.new_name, Say::book_name_text});
  }
  void operator()(const bench::PhotosView& photos) const {
    out.push_back({{bench::PhotosPad::folder_text, ""}, photos.folder, words::PhotosSay::folder});
  }
  template <words::one_of<bench::TodayView, bench::SlabView, bench::CompareView, bench::TabletView,
                          bench::PansView, bench::RangesView, bench::StoryView, bench::BinderView>
                None>
  void operator()(const None&) const {}
};

}

std::vector<Field> fields_of(const bench::View& view) {
  std::vector<Field> out;
  std::visit(Fields{out}, view.screen);
  std::erase_if(out, [&](const Field& f) { return !bench::pad_of(view.layout, f.pad); });
  return out;
}

namespace {

void draw_cross(Sheet& sheet, const bench::Pad& at) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Point c = at.box.centre();
  constexpr double r = 1.9;
  sheet.shapes.push_back(Polyline{{{c.x - r, c.y - r}, {c.x + r, c.y + r}}, 0.6, g.ink, 0});
  sheet.shapes.push_back(Polyline{{{c.x - r, c.y + r}, {c.x + r, c.y - r}}, 0.6, g.ink, 0});
}

}

// How it is to be written, in brackets, is seen by what stands there.
std::string caption_of(const Field& field) {
  const std::string meaning = words::say(field.meaning);
  return meaning.substr(0, meaning.find(" ("));
}

namespace {

bool is_captioned(const Field& field) {
  return field.pad.kind.as<ShelfPad>().has_value() && !field.text.empty();
}

}

double caption_mm(const Field& field, const Rect& box) {
  constexpr double alone = 60; // narrower ones stand in a row, where all have theirs above
  if (!is_captioned(field) || box.w < alone) return 0;
  const double caption = width_mm(caption_of(field), cap::small, false) + 3,
               text = width_mm(field.text, cap::clear, false) + 6;
  return caption + text < box.w ? caption : 0;
}

double caption_above_mm(const Field& field, const Rect& box) {
  return is_captioned(field) && caption_mm(field, box) <= 0 ? cap::small + 2.2 : 0;
}

void draw_fields(Sheet& sheet) {
  const Theme& t = sheet.theme;
  for (const bench::Pad& at : sheet.view.layout.pads)
    if (at.id.kind == SharedPad::clear) draw_cross(sheet, at);
  for (const Field& field : fields_of(sheet.view)) {
    const Rect& box = bench::pad_of(sheet.view.layout, field.pad)->box;
    sheet.shapes.push_back(Box{inset(box, outline_mm / 2), radius_mm, t.slab, t.rule, outline_mm});
    const bool empty = field.text.empty();
    const double above = caption_above_mm(field, box), y = box.centre().y + above / 2;
    if (above > 0)
      write(sheet, {box.x + 3, box.y + 1.5 + cap::small}, Anchor::left,
            {cap::small, false, cap::small}, t.quiet, caption_of(field), box.w - 6);
    write(sheet, {box.x + 3, y + cap::clear / 2}, Anchor::left, clean_letters,
          empty ? t.quiet : t.ink, empty ? words::say(field.meaning) : field.text, box.w - 6);
    if (const double caption = caption_mm(field, box); caption > 0)
      write(sheet, {box.right() - 2, box.centre().y + cap::clear / 2}, Anchor::right,
            {cap::small, false, cap::small}, t.quiet, caption_of(field), caption);
  }
}

}
