// Labels for pans, in true millimetres.
#pragma once

#include "paper/facts.hpp"
#include "words/error.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace paper {

struct Size {
  double w = 0, h = 0; // mm
  bool operator==(const Size&) const = default;
};

inline constexpr Size a4{210, 297}, letter_size{215.9, 279.4}; // ISO 216; ANSI/ASME Y14.1
inline constexpr Size smallest_label{15, 8};
inline constexpr Size jar_label{60, 38}; // read at arm's length
inline constexpr int most_labels = 1000;

struct LabelPlan {
  Size label{38, 21};
  Size sheet = a4;
  int count = 0;         // 0: as many as one sheet holds
  std::string line = {}; // of the maker's own on each, as whom to ask
};

// "38x21". Error: labels_bad_size, for anything that is not two numbers of at least smallest_label.
words::Result<Size> label_size(std::string_view text);

// 1 to most_labels. Error: labels_bad_count.
words::Result<int> label_count(const std::string& text);

// Labels beside one another and above one another, with room at the edges that printers do not
// reach and for a ruler. Error: labels_bad_size where not one fits.
struct Grid {
  int across = 0, down = 0;
  int on_a_page() const { return across * down; }
};
words::Result<Grid> grid_of(const LabelPlan& plan);

struct LabelOrder {
  Handed handed;
  int count = 1;
};

// One HTML file, a drawing a page. On each label the name, the pigments, what else stays in the pan
// without amounts, the date, the batch, where a pigment asks for care the word to look at its
// safety data sheet, where there is room a code by which a telephone reads name, date and batch,
// and a line to write on. Long names are broken and set smaller. Nothing on it claims that anything
// conforms to anything. Errors: those of grid_of; labels_too_small where the words, as small as can
// be read, have no room.
words::Result<std::string> labels_as_html(const Handed& handed, const LabelPlan& plan);

// Labels of several batches, one after the other on the same sheets; the plan's count is not asked.
// Errors likewise; labels_too_many beyond most_labels.
words::Result<std::string> labels_as_html(const std::vector<LabelOrder>& orders,
                                          const LabelPlan& plan);

// Of a jar of binder, in the words shown while it is made: its name and number, its parts, its
// preservative (so many drops; 0: by the card), its day, until when it keeps; and when it is to be
// thrown away. As large as the label has room for.
words::Result<std::string> binder_labels_as_html(const session::Card& binder, double drops,
                                                 const LabelPlan& plan);

// The same as one drawing. Error besides: labels_one_page where the count needs more than one.
words::Result<std::string> labels_as_svg(const Handed& handed, const LabelPlan& plan);

}
