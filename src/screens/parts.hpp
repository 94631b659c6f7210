// The screens and their pieces, one a file. Where pads lie comes from the view's layout alone.
#pragma once

#include "screens/widgets.hpp"

#include <algorithm>

namespace screens {

void draw_top_bar(Sheet& sheet);

void draw_slab(Sheet& sheet, const bench::SlabView& slab);
void draw_slab_pads(Sheet& sheet);                            // on Slab; else nothing
void draw_numbers(Sheet& sheet, const bench::SlabView& slab); // ratio, advice, what to mind
void draw_panel(Sheet& sheet, const bench::SlabView& slab);   // what opens over the trail
// The pads of a number and, above them, what has been typed.
void draw_number(Sheet& sheet, const bench::NumberView& number);

void draw_today(Sheet& sheet, const bench::TodayView& today);
void draw_plan(Sheet& sheet, const bench::PlanView& plan);
void draw_book(Sheet& sheet, const bench::BookView& book);
void draw_shelf(Sheet& sheet, const bench::ShelfView& shelf);
void draw_reading(Sheet& sheet, const bench::ShelfView& shelf);     // of Shelf: a pigment
void draw_recipe_card(Sheet& sheet, const bench::ShelfView& shelf); // of Shelf
void draw_jars(Sheet& sheet, const bench::ShelfView& shelf);        // of Shelf
std::string rests_on_words(const bench::ShelfView& shelf); // its figures, and how sure they are
// Honey, glycerin and gum that it wants, and what that rests on; empty where nothing can be said.
std::string soft_words(const bench::SoftWanted& soft);
// How much of it is left, with a mark at what a batch takes.
void stock_bar(Sheet& sheet, const Rect& rect, const session::Remaining& left,
               const std::optional<double>& low_g, Colour fill, const Ground& ground);
void draw_pans(Sheet& sheet, const bench::PansView& pans);
struct NextWords { // of the next layer
  std::string about, big, below;
};
NextWords next_words(const Sheet& sheet, const bench::PansView& pans);
void draw_known(Sheet& sheet, const bench::PansView& pans); // what is known, beside the pans
void draw_pan_curve(Sheet& sheet, const Rect& area, const bench::PansView& pans);
void draw_pan(Sheet& sheet, const Rect& rect, const bench::PansView::Pan& pan, Colour paint,
              const Ground& ground);
// How many pans are not drawn, to the left of a point on the line, and how much room that takes.
void pans_beside(Sheet& sheet, Point end, Colour ink, std::size_t more);
double beside_mm(std::size_t more);
std::string undo_words(const bench::UndoView& undo); // what it takes back
void draw_undo(Sheet& sheet);                        // where the screen has it
void draw_photos(Sheet& sheet, const bench::PhotosView& photos);
void draw_ranges(Sheet& sheet, const bench::RangesView& ranges);
void draw_story(Sheet& sheet, const bench::StoryView& story);
void draw_compare(Sheet& sheet, const bench::CompareView& compare);
void draw_tablet(Sheet& sheet, const bench::TabletView& tablet);
// The bank card (ISO/IEC 7810, ID-1) in the middle of its place, in mm, as large as it is on the
// glass where the display draws everything smaller; upright where it cannot lie, and cut where it
// cannot stand.
struct BankCard {
  Rect at;
  bool lies = true;
};
BankCard bank_card(const Rect& area, double drawn_at);
void draw_binder(Sheet& sheet, const bench::BinderView& binder);
void draw_strength(Sheet& sheet, const bench::BinderView& binder); // of a jar of it

// What is taken off the top of an area.
inline Rect slice(Rect& area, double h) {
  const Rect top{area.x, area.y, area.w, std::min(h, area.h)};
  area.y += top.h;
  area.h -= top.h;
  return top;
}

// The letters of slab and of the clean-hands screens; no smaller than these.
inline constexpr Lettering slab_letters{cap::body, false, cap::body};
inline constexpr Lettering slab_bold{cap::body, true, cap::body};
inline constexpr Lettering clean_letters{cap::clear, false, cap::small};
inline constexpr Lettering clean_bold{cap::clear, true, cap::small};

}
