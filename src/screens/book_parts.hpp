// Parts of one batch's page in the Book.
#pragma once

#include "bench/pads_book.hpp"
#include "screens/parts.hpp"

#include <string>

namespace screens {

// What a batch cost: "cost € 5.12, a pan € 0.43"; what is not in that, by name or by number;
// "pigment 98 %, gum 2 %". Each is a line of its own, empty where there is nothing of it.
struct CostSaid {
  std::string sum, without, without_how_many, shares;
};
CostSaid cost_said(const bench::BookView& book);

void draw_told(Sheet& sheet, const bench::BookView& book);

// A batch among all, by date.
void batch_row(Sheet& sheet, const bench::Pad& at, const bench::BookView::Row& row);

// A paint among all that are made, by colour.
void paint_tile(Sheet& sheet, const bench::Pad& at, const bench::BookView::Row& row);

// Of all that is listed: what can be put on paper.
void draw_list_paper(Sheet& sheet, const bench::BookView& book);

// Where what is put on paper goes, or went.
void on_paper(Sheet& sheet, const bench::PaperDesk& paper);

// One of those that put something on paper, or ask what.
void paper_pad(Sheet& sheet, const bench::Pad& at, bench::BookPad which);

// What leads to the photos, with the latest of them on it.
void photos_pad(Sheet& sheet, const bench::Pad& at, const std::vector<std::string>& photos);

}
