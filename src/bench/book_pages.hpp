// The pages of the Book.
#pragma once

#include "bench/scroll.hpp"
#include "bench/view_match.hpp"
#include "paint/range/range.hpp"
#include "session/event.hpp"

#include <optional>
#include <set>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace bench {

struct PigmentRange {
  std::string card;
  paint::Band band;
  double demand = 0, low = 0, high = 0; // flow; nine in ten of what it may be lie between the two
};

struct PigmentStory { // how one pigment came to be known
  struct Note {
    session::Ref line;
    double flow = 0;
    session::Feel as = session::Feel::right;
    bool set_aside = false;
  };
  struct Step {
    std::string batch; // empty: before the first
    std::vector<Note> notes;
    double demand = 0, low = 0, high = 0; // flow, after it
  };
  std::string card;
  std::vector<Step> steps;                      // the latest ones, in order
  std::optional<session::Ref> note;             // chosen
  std::optional<std::pair<double, double>> was; // low and high before a note was set aside
};

struct ListPage {
  bool discarded = false;            // what was discarded, in place of the others
  bool paper = false;                // asked what of all of it shall be put on paper
  bool marking = false;              // some of them are chosen for that
  std::set<std::string> marked = {}; // those
};
struct BatchPage {
  std::string batch;
  std::optional<std::string> note;      // as far as it is written
  std::optional<std::string> name = {}; // likewise, a new one
  bool paper = false;                   // asked what shall be put on paper
};
struct ChoicePage { // the list, to choose another one to compare it with
  BatchPage of;
};
struct ComparePage {
  BatchPage of;
  std::string other;
  bool trails = false; // in place of the colours, where both were read
};
struct RangesPage { // what each pigment wants
  int page = 0;
  std::vector<PigmentRange> of_pigments; // the thirstiest first
};
struct StoryPage { // of one of them
  RangesPage ranges;
  PigmentStory story;
};
using BookPage = std::variant<ListPage, BatchPage, ChoicePage, ComparePage, RangesPage, StoryPage>;

// One paint, of however many batches.
struct PaintMade {
  std::vector<std::string> batches; // newest first
};

struct BookState {
  BookPage page;
  bool by_colour = false;        // the list shows each paint once, by hue and lightness
  std::vector<PaintMade> paints; // so ordered, while it does
  Scroll list;
  std::string search;
  std::vector<std::string> found; // newest first, while something is searched for
  std::optional<MatchView> match; // of the batch, or of the two, that the page shows
};

// What a page is about; empty or null: nothing of the kind.
std::string batch_of(const BookPage& page);
const RangesPage* ranges_of(const BookPage& page);
const ListPage* marking_of(const BookPage& page); // batches are chosen for paper
const PigmentStory* story_of(const BookPage& page);

}
