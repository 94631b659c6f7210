// What the Book shows of what was learnt: every pigment's range, and how one of them came about.
#pragma once

#include "bench/bench.hpp"
#include "bench/ranges.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bench {

// What each pigment wants, the thirstiest first.
struct RangesView {
  struct Row {
    std::string name, index_name;
    std::uint32_t colour = 0;
    PigmentRange range;
  };
  std::vector<Row> rows;    // this page's
  double low = 1, high = 6; // flows that hold every page's
  int page = 0, pages = 1;
  std::optional<words::Error> failure; // what was felt since could not be learnt from
};

// How one pigment came to be known.
struct StoryView {
  struct Step {
    std::string name;              // of the batch; empty: before the first
    std::int64_t made_at = 0;      // ms since 1970
    std::optional<int> offset_min; // by the clock there, where it is known
    PigmentStory::Step of;
  };
  std::string name;
  std::uint32_t colour = 0;
  std::vector<Step> steps;
  PigmentRange range;       // as it stands
  double low = 1, high = 6; // flows that hold everything
  struct Chosen {
    std::string name; // of its batch
    std::int64_t made_at = 0;
    std::optional<int> offset_min;
    PigmentStory::Note note;
  };
  std::optional<Chosen> chosen;
  std::optional<std::pair<double, double>> was;
  std::optional<words::Error> failure; // what was felt since could not be learnt from
};

}
