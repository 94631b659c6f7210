#include "colour/reading.hpp"

namespace colour {

namespace {

enum class Whose { swatch, paper, either, photo };

Whose whose(Untold why) {
  switch (why) {
  case Untold::clipped:
  case Untold::gloss:
  case Untold::several:
  case Untold::like_paper: return Whose::swatch;
  case Untold::no_paper:
  case Untold::paper_clipped:
  case Untold::paper_dark: return Whose::paper;
  case Untold::outside:
  case Untold::overlapping:
  case Untold::too_small:
  case Untold::too_dark: return Whose::either;
  case Untold::no_colours: return Whose::photo;
  }
  return Whose::photo;
}

bool fails_so(const Photo& photo, const Box& swatch, const Box& paper, Untold why) {
  const auto reading = read_swatch(photo, {swatch, {paper}});
  return !reading && reading.error() == why;
}

}

std::vector<std::size_t> regions_at_fault(const Photo& photo, const Regions& regions, Untold why) {
  const Whose whose_fault = whose(why);
  if (whose_fault == Whose::photo) return {};
  if (whose_fault == Whose::swatch) return {0};
  std::vector<std::size_t> all, alone;
  for (std::size_t i = 0; i < regions.paper.size(); ++i) {
    all.push_back(i + 1);
    if (fails_so(photo, regions.swatch, regions.paper[i], why)) alone.push_back(i + 1);
  }
  // With whatever paper it fails in the same way: then the swatch is to blame, where it may be;
  // with one paper that does not tell which.
  const bool whatever = alone.size() == all.size();
  if (whose_fault == Whose::either && whatever)
    return all.size() == 1 ? std::vector<std::size_t>{0, 1} : std::vector<std::size_t>{0};
  return alone.empty() ? all : alone;
}

}
