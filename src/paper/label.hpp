// One label: its words, and how they are set.
#pragma once

#include "paper/labels.hpp"
#include "paper/markup.hpp"
#include "paper/qr.hpp"

#include <optional>
#include <vector>

namespace paper {

struct LabelText {
  std::string words;
  bool title = false; // large and bold
  bool quiet = false;
};

// `line`: the maker's own, as whom to ask; may be empty.
std::vector<LabelText> label_texts(const Handed& handed, const std::string& line = "");
// As it is shown while it is made. `drops`: of a preservative; 0: by the card, in g.
std::vector<LabelText> binder_texts(const session::Card& binder, double drops,
                                    const std::string& line = "");

// Eight signs of a batch's id, which tell those of one studio apart.
std::string short_id(const std::string& id);

struct SetLine {
  std::string words;
  double baseline = 0, size = 0, room = 0; // mm, from the label's top; room across
  bool title = false, quiet = false;
};

struct SetLabel {
  std::vector<SetLine> lines;
  double notes_y = 0; // of the line to write on
  double notes_w = 0;
  std::optional<Qr> qr = {}; // in the lower right corner, beside the last lines
};

// As large as they all have room, up to `most` times what is usual of a pan; absent where they have
// none even as small as can be read. The code of the first of `scanned` beside which the words stay
// nearly as large stands there too.
std::optional<SetLabel> set_label(const std::vector<LabelText>& texts,
                                  const std::vector<std::string>& scanned, const Size& label,
                                  double most = 1);

// What a telephone is to read of it: its name, its day and its id, else these two alone.
std::vector<std::string> label_scanned(const Handed& handed);

// CSS for drawings that are a page each, to the millimetre: their own margins stand in them.
std::string own_page_style(const Size& sheet);

// With its upper left corner there.
Markup drawn(const SetLabel& set, const Size& label, double x, double y);

}
