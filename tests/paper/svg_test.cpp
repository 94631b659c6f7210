#include "paper/svg.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace svg_test {

using namespace session::shapes;
using session::Point;
using session::Rect;

namespace {

constexpr Colour ink = rgb(0x18262E), half{0x18, 0x26, 0x2E, 128};

// What stands between the tags of the drawing itself.
std::string inside(const std::vector<Shape>& shapes) {
  const std::string all = paper::drawing("test", {30, 20.5}, shapes).bytes();
  const auto from = all.find('>') + 1, to = all.rfind("</svg>");
  return all.substr(from, to - from);
}

std::size_t count(const std::string& text, const std::string& wanted) {
  std::size_t n = 0;
  for (auto at = text.find(wanted); at != std::string::npos; at = text.find(wanted, at + 1)) ++n;
  return n;
}

}

TEST_CASE("a drawing is as large as it says, in millimetres") {
  CHECK(paper::drawing("test", {30, 20.5}, {}).bytes() ==
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"30mm\" height=\"20.5mm\" "
        "viewBox=\"0 0 30 20.5\" role=\"img\"></svg>");
}

TEST_CASE("every shape as an element") {
  CHECK(inside({Box{{1, 2, 3, 4}, 0.5, ink}}) ==
        "<rect x=\"1\" y=\"2\" width=\"3\" height=\"4\" rx=\"0.5\" fill=\"#18262e\"></rect>");
  CHECK(inside({Disc{{1, 2}, 3, clear, ink, 0.25}}) ==
        "<circle cx=\"1\" cy=\"2\" r=\"3\" fill=\"none\" stroke=\"#18262e\" "
        "stroke-width=\"0.25\"></circle>");
  CHECK(inside({Polygon{{{1, 2}, {3, 4}, {5, 6}}, half}}) ==
        "<polygon points=\"1,2 3,4 5,6\" fill=\"#18262e\" fill-opacity=\"0.502\"></polygon>");
  CHECK(inside({Polyline{{{1, 2}, {3, 4}}, 0.3, ink, 0.9}}) ==
        "<path d=\"M1 2L3 4\" fill=\"none\" stroke=\"#18262e\" stroke-width=\"0.3\" "
        "stroke-dasharray=\"0.9 0.9\"></path>");
  CHECK(inside({Text{{1, 2}, Anchor::right, 0.73, true, ink, "a<b & \"c\""}}) ==
        "<text x=\"1\" y=\"2\" text-anchor=\"end\" font-size=\"1\" font-weight=\"bold\" "
        "fill=\"#18262e\">a&lt;b &amp; &quot;c&quot;</text>");
}

TEST_CASE("a gradient runs from edge to edge of its own rectangle") {
  const std::string svg = inside({Gradient{{10, 0, 20, 5}, {{10, ink}, {15, half}, {30, clear}}}});
  CHECK(svg == "<defs><linearGradient id=\"test-1\">"
               "<stop offset=\"0\" stop-color=\"#18262e\"></stop>"
               "<stop offset=\"0.25\" stop-color=\"#18262e\" stop-opacity=\"0.502\"></stop>"
               "<stop offset=\"1\" stop-color=\"#000000\" stop-opacity=\"0\"></stop>"
               "</linearGradient></defs>"
               "<rect x=\"10\" y=\"0\" width=\"20\" height=\"5\" fill=\"url(#test-1)\"></rect>");
  CHECK(inside({Gradient{{10, 0, 0, 5}, {{10, ink}}}}).empty());
}

TEST_CASE("a clip holds what comes until the next one, and no more") {
  const Disc disc{{1, 1}, 1, ink};
  const std::string one = inside({disc});
  const std::string svg =
      inside({disc, Clip{{0, 0, 2, 2}}, disc, disc, Clip{{1, 1, 2, 2}}, disc, Clip{}, disc});
  CHECK(svg.starts_with(one + "<defs><clipPath id=\"test-1\"><rect "));
  CHECK(count(svg, "<g clip-path=\"url(#test-1)\">" + one + one + "</g>") == 1);
  CHECK(count(svg, "<g clip-path=\"url(#test-2)\">" + one + "</g>" + one) == 1);
  CHECK(svg.ends_with("</g>" + one));
  CHECK(count(inside({Clip{{0, 0, 2, 2}}, disc}), one + "</g>") == 1); // to the end
}

}
