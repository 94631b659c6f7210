// Nothing is told by colour alone: what differs in meaning differs in shape or in words, with all
// colours taken away. Colour helps those who see it, and some of it is left to every eye.
#include "bench/pads_choice.hpp"
#include "bench/pads_slab.hpp"
#include "screens/colour.hpp"
#include "screens/draw.hpp"
#include "screens/listing.hpp"
#include "screens/theme.hpp"
#include "screens/views.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <set>
#include <sstream>

namespace told_apart_test {

using namespace screens;

namespace {

constexpr session::Feel feels[]{session::Feel::wont_move, session::Feel::too_sticky,
                                session::Feel::right, session::Feel::too_loose,
                                session::Feel::too_runny};

const views::Case& running() {
  static const auto all = views::all();
  return *std::find_if(all.begin(), all.end(),
                       [](const auto& c) { return c.name == "slab, running, 218 x 136"; });
}

std::string listed(const std::vector<Shape>& shapes, bool words) {
  std::string out;
  for (const Shape& shape : shapes)
    if (std::holds_alternative<Text>(shape) == words)
      out += views::line_of(views::colourless(shape)) + "\n";
  return out;
}

// What lies on a pad, seen from its corner.
std::vector<Shape> on_pad(const std::vector<Shape>& shapes, const Rect& pad) {
  std::vector<Shape> out;
  for (const Shape& shape : shapes) {
    const Rect bounds = views::bounds_of(shape);
    if (pad.contains(bounds.centre()) && bounds.w < pad.w - 0.5)
      out.push_back(views::moved(shape, -pad.x, -pad.y));
  }
  return out;
}

std::vector<std::vector<Shape>> on_pads(const views::Case& c, bench::PadKind kind) {
  std::vector<std::vector<Shape>> out;
  const auto shapes = draw(c.view);
  for (const bench::Pad& pad : c.view.layout.pads)
    if (pad.id.kind == kind) out.push_back(on_pad(shapes, pad.box));
  return out;
}

void all_differ(const std::vector<std::string>& list) {
  CHECK(std::set<std::string>(list.begin(), list.end()).size() == list.size());
}

std::string trail_with(std::variant<session::Feel, session::Specks, session::TroubleKind> what) {
  views::Case c = running();
  auto& trail = std::get<bench::SlabView>(c.view.screen).trail;
  trail.marks = {{600, trail.points.back().flow, what}};
  return listed(draw(c.view), false);
}

}

TEST_CASE("materials differ by symbol and by word") {
  std::vector<std::string> symbols, words;
  for (const auto& pad : on_pads(running(), bench::SlabPad::add)) {
    symbols.push_back(listed(pad, false));
    words.push_back(listed(pad, true));
    CHECK_FALSE(symbols.back().empty());
  }
  CHECK(symbols.size() == 6);
  all_differ(symbols);
  all_differ(words);
}

TEST_CASE("feel pads differ by word, specks by symbol and word, on every display") {
  for (const auto& c : views::all()) {
    CAPTURE(c.name);
    for (const bench::PadKind kind :
         {bench::PadKind(bench::SlabPad::felt), bench::PadKind(bench::ChoicePad::specks),
          bench::PadKind(bench::ChoicePad::trouble_is), bench::PadKind(bench::ChoicePad::amount)}) {
      std::vector<std::string> symbols, words;
      for (const auto& pad : on_pads(c, kind)) {
        symbols.push_back(listed(pad, false));
        words.push_back(listed(pad, true));
      }
      all_differ(words);
      if (kind == bench::ChoicePad::specks) all_differ(symbols);
    }
  }
}

// Their words stand beside them only where there is room.
TEST_CASE("flags on the trail differ by shape") {
  std::vector<std::string> marks;
  for (const session::Feel feel : feels) marks.push_back(trail_with(feel));
  for (const auto specks : {session::Specks::many, session::Specks::few, session::Specks::none})
    marks.push_back(trail_with(specks));
  marks.push_back(trail_with(session::TroubleKind::gelling));
  all_differ(marks);
}

TEST_CASE("today's trail is much thicker than the last good batch's") {
  const views::Case c = running();
  std::vector<double> widths; // of the lines that have a step for each drop
  for (const Shape& shape : draw(c.view))
    if (const auto* line = std::get_if<Polyline>(&shape); line && line->points.size() > 20)
      widths.push_back(line->width_mm);
  REQUIRE(widths.size() >= 2);
  const auto [ghost, today] = std::minmax_element(widths.begin(), widths.end());
  CHECK(*today >= 1.5 * *ghost);
}

// What runs, is chosen, or is pressed turns dark: it differs in lightness, which no eye lacks.
TEST_CASE("what is chosen differs in lightness by far more than 3:1, for every eye") {
  for (const bool night : {false, true})
    for (const auto lacks : eyes::all_eyes) {
      const Theme& t = theme(night);
      CHECK(eyes::contrast(eyes::seen(dark(t).fill, lacks), eyes::seen(plain(t).fill, lacks)) >= 7);
    }
}

TEST_CASE("words read on every ground for every eye") {
  for (const bool night : {false, true})
    for (const auto lacks : eyes::all_eyes) {
      const Theme& t = theme(night);
      CAPTURE(night);
      CAPTURE(static_cast<int>(lacks));
      for (const Colour ground : {t.bench, t.slab, t.right, t.sticky, t.runny, t.binder, t.water,
                                  t.honey, t.glycerin, t.wetting_aid})
        CHECK(eyes::contrast(eyes::seen(t.ink, lacks), eyes::seen(ground, lacks)) >= 7);
      CHECK(eyes::contrast(eyes::seen(t.caution_ink, lacks), eyes::seen(t.caution, lacks)) >= 7);
      CHECK(eyes::contrast(eyes::seen(t.right_ink, lacks), eyes::seen(t.slab, lacks)) >= 7);
    }
}

// A second way to tell, where colours are seen: neighbours in the row of feel pads stay apart by
// what a glance can tell, about 5 (common practice, no source; 1 is what can just be told side by
// side, as CIEDE2000 is scaled).
TEST_CASE("sticky, right and runny keep apart for every eye") {
  for (const bool night : {false, true})
    for (const auto lacks : eyes::all_eyes) {
      const Theme& t = theme(night);
      const auto differ = [&](Colour a, Colour b) {
        return eyes::delta_e00(eyes::lab(eyes::seen(a, lacks)), eyes::lab(eyes::seen(b, lacks)));
      };
      CAPTURE(night);
      CAPTURE(static_cast<int>(lacks));
      CHECK(differ(t.sticky, t.right) >= 5);
      CHECK(differ(t.right, t.runny) >= 5);
    }
}

// The supplementary test data of G. Sharma, W. Wu, E. N. Dalal, “The CIEDE2000 Color-Difference
// Formula”, Color Research and Application 30 (2005) 21, table 1: 34 pairs, printed to 4 places.
TEST_CASE("CIEDE2000 gives the published differences") {
  std::ifstream file(SLABSIDE_ROOT "/tests/screens/ciede2000_sharma2005.csv");
  std::string row;
  std::getline(file, row); // the heads of the columns
  int pairs = 0;
  while (std::getline(file, row)) {
    std::replace(row.begin(), row.end(), ',', ' ');
    std::istringstream in(row);
    std::vector<double> v;
    for (double number = 0; in >> number;) v.push_back(number);
    REQUIRE(v.size() == 15); // with G, h, T, SL, SC, SH and RT between
    CAPTURE(v[0]);
    const double d = eyes::delta_e00({v[1], v[2], v[3]}, {v[4], v[5], v[6]});
    CHECK(std::abs(d - v[14]) <= 0.00006);
    ++pairs;
  }
  CHECK(pairs == 34);
}

// White and black are white and black to everybody; what such eyes take for grey is not grey.
TEST_CASE("the simulated eyes keep white, and lose what they are known to lose") {
  for (const auto lacks : eyes::all_eyes) {
    CHECK(eyes::apart(eyes::seen(rgb(0xFFFFFF), lacks), rgb(0xFFFFFF)) <= 1);
    CHECK(eyes::apart(eyes::seen(rgb(0x000000), lacks), rgb(0x000000)) <= 1);
  }
  const auto differ = [](std::uint32_t a, std::uint32_t b, eyes::Lacks lacks) {
    return eyes::delta_e00(eyes::lab(eyes::seen(rgb(a), lacks)),
                           eyes::lab(eyes::seen(rgb(b), lacks)));
  };
  // A red and a green, a blue and a green: far apart for all cones, near without those.
  const double red_green = differ(0xC06A50, 0x8A8A40, eyes::Lacks::nothing);
  CHECK(differ(0xC06A50, 0x8A8A40, eyes::Lacks::middle_cones) < red_green / 3);
  const double blue_green = differ(0x4080B0, 0x409080, eyes::Lacks::nothing);
  CHECK(differ(0x4080B0, 0x409080, eyes::Lacks::short_cones) < blue_green / 3);
}

}
