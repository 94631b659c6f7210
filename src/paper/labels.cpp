#include "paper/labels.hpp"

#include "paint/measure.hpp"
#include "paper/label.hpp"
#include "paper/palette.hpp"
#include "paper/svg.hpp"
#include "words/paper_says.hpp"

#include <algorithm>
#include <cmath>

namespace paper {

using Say = words::PaperSay;
using words::say;

namespace {

constexpr double margin = 8;     // what printers do not reach, and some more
constexpr double ruler_high = 6; // above the lower margin

// A page to itself, to the millimetre: its own margins stand in the drawing.
std::string style_of(const Size& sheet) {
  return "@page { size: " + mm(sheet.w) + "mm " + mm(sheet.h) +
         "mm; margin: 0; } html, body { margin: 0; background: #ffffff; } "
         "svg { display: block; break-after: page; break-inside: avoid; } "
         "svg:last-child { break-after: auto; }";
}

// Whoever prints to scale finds out here.
Markup ruler(const Size& sheet) {
  const double x = margin, y = sheet.h - margin;
  const std::string path = "M" + mm(x) + " " + mm(y - 1) + "v1h50v-1";
  Markup out = element(
      "path",
      {{"d", path}, {"fill", "none"}, {"stroke", css(ink::quiet)}, {"stroke-width", "0.2"}});
  out += element("text",
                 {{"x", mm(x + 52)}, {"y", mm(y)}, {"font-size", "2.3"}, {"fill", css(ink::quiet)}},
                 say(Say::labels_ruler));
  return out;
}

Markup page(const SetLabel& set, const LabelPlan& plan, const Grid& grid, int count) {
  const double left = (plan.sheet.w - plan.label.w * grid.across) / 2;
  std::vector<Markup> inside;
  for (int i = 0; i < count; ++i)
    inside.push_back(drawn(set, plan.label, left + plan.label.w * (i % grid.across),
                           margin + plan.label.h * (i / grid.across)));
  inside.push_back(ruler(plan.sheet));
  return element("svg",
                 {{"xmlns", "http://www.w3.org/2000/svg"},
                  {"width", mm(plan.sheet.w) + "mm"},
                  {"height", mm(plan.sheet.h) + "mm"},
                  {"viewBox", "0 0 " + mm(plan.sheet.w) + " " + mm(plan.sheet.h)},
                  {"font-family", "B612, DejaVu Sans, Verdana, sans-serif"}},
                 inside);
}

struct Ready {
  Grid grid;
  SetLabel set;
  int count;
};

words::Result<Ready> ready(const Handed& handed, const LabelPlan& plan) {
  const auto grid = grid_of(plan);
  if (!grid) return tl::make_unexpected(grid.error());
  const auto set = set_label(label_texts(handed), plan.label);
  if (!set)
    return words::failure(Say::labels_too_small,
                          {handed.batch.name, mm(plan.label.w), mm(plan.label.h)});
  return Ready{*grid, *set, plan.count > 0 ? plan.count : grid->on_a_page()};
}

}

words::Result<Size> label_size(std::string_view text) {
  const auto wrong = words::failure(Say::labels_bad_size, {std::string(text)});
  const auto x = text.find('x');
  if (x == std::string_view::npos) return wrong;
  const auto w = paint::typed_number(std::string(text.substr(0, x)));
  const auto h = paint::typed_number(std::string(text.substr(x + 1)));
  if (!w || !h || !(*w >= smallest_label.w) || !(*h >= smallest_label.h)) return wrong;
  return Size{*w, *h};
}

words::Result<int> label_count(const std::string& text) {
  const auto count = paint::typed_number(text);
  if (!count || !(*count >= 1) || *count > most_labels || *count != std::floor(*count))
    return words::failure(Say::labels_bad_count, {text, std::to_string(most_labels)});
  return static_cast<int>(*count);
}

words::Result<Grid> grid_of(const LabelPlan& plan) {
  const double wide = plan.sheet.w - 2 * margin, high = plan.sheet.h - 2 * margin - ruler_high;
  const bool fits = plan.label.w >= smallest_label.w && plan.label.h >= smallest_label.h &&
                    plan.label.w <= wide && plan.label.h <= high;
  if (!fits)
    return words::failure(Say::labels_bad_size, {mm(plan.label.w) + "x" + mm(plan.label.h)});
  constexpr double rounding = 1e-9;
  return Grid{static_cast<int>(wide / plan.label.w + rounding),
              static_cast<int>(high / plan.label.h + rounding)};
}

words::Result<std::string> labels_as_html(const Handed& handed, const LabelPlan& plan) {
  const auto all = ready(handed, plan);
  if (!all) return tl::make_unexpected(all.error());
  std::vector<Markup> pages;
  const int on_a_page = all->grid.on_a_page();
  for (int left = all->count; left > 0; left -= on_a_page)
    pages.push_back(page(all->set, plan, all->grid, std::min(left, on_a_page)));
  return document(handed.batch.name, style_of(plan.sheet).c_str(), pages);
}

words::Result<std::string> labels_as_svg(const Handed& handed, const LabelPlan& plan) {
  const auto all = ready(handed, plan);
  if (!all) return tl::make_unexpected(all.error());
  if (all->count > all->grid.on_a_page())
    return words::failure(Say::labels_one_page, {std::to_string(all->grid.on_a_page())});
  return page(all->set, plan, all->grid, all->count).bytes() + "\n";
}

}
