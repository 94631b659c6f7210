#include "paper/paint_list.hpp"

#include "paper/facts.hpp"
#include "paper/label.hpp"
#include "paper/palette.hpp"
#include "paper/svg.hpp"
#include "words/paper_says.hpp"
#include "words/say.hpp"

namespace paper {

using Say = words::PaperSay;
using words::say;

namespace {

// No sign here may mean something to HTML: none of < > & and no quotes.
constexpr const char* list_style = R"(
@page { margin: 13mm 16mm; }
* { box-sizing: border-box; }
html { background: #ffffff; color: #18262e; }
body { width: 178mm; margin: 9mm auto; font: 8.4pt/1.36 B612, DejaVu Sans, Verdana, sans-serif;
  overflow-wrap: anywhere; font-variant-numeric: tabular-nums;
  -webkit-print-color-adjust: exact; print-color-adjust: exact; }
@media print { body { margin: 0 auto; } }
h1 { font-size: 21pt; line-height: 1.15; margin: 0 0 0.6mm; }
h2 { font-size: 9.6pt; line-height: 1.2; margin: 1.4mm 0 0.4mm; }
p { margin: 0; }
.quiet { color: #4a5861; }
.wall { display: flex; flex-wrap: wrap; gap: 5mm 4.66mm; margin-top: 5mm; }
.paint { width: 41mm; break-inside: avoid; }
.paint svg { display: block; }
.none { font-weight: bold; }
)";

constexpr double wide = 41, high = 17, line = 0.35;

Markup given(const std::string& name) { return element("bdi", {}, name); }

// A stroke where it was read, else the heap of powder.
Markup swatch(const ListedPaint& paint) {
  const Attributes box{{"x", mm(line / 2)},
                       {"y", mm(line / 2)},
                       {"width", mm(wide - line)},
                       {"height", mm(high - line)},
                       {"rx", "1"},
                       {"fill", paint.swatch ? hex(paint.colour) : css(ink::paper)},
                       {"stroke", paint.swatch ? css(ink::text) : css(ink::rule)},
                       {"stroke-width", mm(line)}};
  std::vector<Markup> inside{element("rect", box)};
  if (!paint.swatch)
    inside.push_back(element("path", {{"d", "M13 13.5C16.5 13.5 17 4 20.5 4S24.5 13.5 28 13.5Z"},
                                      {"fill", hex(paint.colour)},
                                      {"stroke", css(ink::text)},
                                      {"stroke-width", "0.5"},
                                      {"stroke-linejoin", "round"}}));
  return element("svg",
                 {{"xmlns", "http://www.w3.org/2000/svg"},
                  {"width", mm(wide) + "mm"},
                  {"height", mm(high) + "mm"},
                  {"viewBox", "0 0 " + mm(wide) + " " + mm(high)}},
                 inside);
}

std::string left_words(const ListedPaint& paint) {
  std::string out;
  const auto add = [&](const std::string& what) { out += (out.empty() ? "" : ", ") + what; };
  if (paint.jar_mL >= 0.05)
    add(say(Say::paints_jar, {words::number(paint.jar_mL, paint.jar_mL < 10 ? 1 : 0)}));
  if (paint.pans == 1) add(say(Say::paints_pan));
  if (paint.pans > 1) add(say(Say::paints_pans, {std::to_string(paint.pans)}));
  if (paint.on_slab) add(say(Say::paints_slab));
  return out;
}

Markup tile(const ListedPaint& paint) {
  std::vector<Markup> inside{swatch(paint), element("h2", {}, {given(paint.name)})};
  for (const session::Card& pigment : paint.pigments)
    inside.push_back(element("p", {}, {given(pigment_words(pigment))}));
  const std::string left = left_words(paint);
  inside.push_back(left.empty() ? element("p", {{"class", "none"}}, say(Say::paints_none))
                                : element("p", {}, say(Say::paints_left, {left})));
  inside.push_back(element("p", {{"class", "quiet"}},
                           say(Say::paints_batch, {paint.day, short_id(paint.batch)})));
  if (!paint.swatch) inside.push_back(element("p", {{"class", "quiet"}}, say(Say::paints_guess)));
  return element("div", {{"class", "paint"}}, inside);
}

}

std::string paint_list(const std::vector<ListedPaint>& paints, const std::string& day) {
  std::vector<Markup> tiles;
  for (const ListedPaint& paint : paints) tiles.push_back(tile(paint));
  const std::string title = say(Say::paints_title);
  return document(title, list_style,
                  {element("h1", {}, title),
                   element("p", {{"class", "quiet"}},
                           say(Say::paints_about, {std::to_string(paints.size()), day})),
                   element("div", {{"class", "wall"}}, tiles)});
}

}
