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

using Labels = std::vector<const SetLabel*>; // one after the other

Markup page(const Labels& labels, const LabelPlan& plan, const Grid& grid) {
  const double left = (plan.sheet.w - plan.label.w * grid.across) / 2;
  std::vector<Markup> inside;
  for (std::size_t at = 0; at < labels.size(); ++at) {
    const int i = static_cast<int>(at);
    inside.push_back(drawn(*labels[at], plan.label, left + plan.label.w * (i % grid.across),
                           margin + plan.label.h * (i / grid.across)));
  }
  inside.push_back(ruler(plan.sheet));
  return element("svg",
                 {{"xmlns", "http://www.w3.org/2000/svg"},
                  {"width", mm(plan.sheet.w) + "mm"},
                  {"height", mm(plan.sheet.h) + "mm"},
                  {"viewBox", "0 0 " + mm(plan.sheet.w) + " " + mm(plan.sheet.h)},
                  {"font-family", "B612, DejaVu Sans, Verdana, sans-serif"}},
                 inside);
}

// What one label says, and how often.
struct Wanted {
  std::string name;
  std::vector<LabelText> texts;
  int count = 0;                         // 0: a sheet full
  std::vector<std::string> scanned = {}; // by a telephone
  double most = 1;                       // how large it may be set, to what is usual
};

struct Ready {
  Grid grid;
  std::vector<SetLabel> sets; // of each that is wanted
  std::vector<int> counts;

  Labels labels() const {
    Labels out;
    for (std::size_t i = 0; i < sets.size(); ++i)
      out.insert(out.end(), static_cast<std::size_t>(counts[i]), &sets[i]);
    return out;
  }
};

words::Result<Ready> ready(const std::vector<Wanted>& all, const LabelPlan& plan) {
  const auto grid = grid_of(plan);
  if (!grid) return tl::make_unexpected(grid.error());
  Ready out{*grid, {}, {}};
  for (const Wanted& one : all) {
    auto set = set_label(one.texts, one.scanned, plan.label, one.most);
    if (!set)
      return words::failure(Say::labels_too_small, {one.name, mm(plan.label.w), mm(plan.label.h)});
    out.sets.push_back(*std::move(set));
    out.counts.push_back(one.count > 0 ? one.count : grid->on_a_page());
  }
  return out;
}

std::string as_html(const std::string& title, const Ready& all, const LabelPlan& plan) {
  std::vector<Markup> pages;
  const auto on_a_page = static_cast<std::size_t>(all.grid.on_a_page());
  const Labels labels = all.labels();
  for (std::size_t i = 0; i < labels.size(); i += on_a_page) {
    const auto begin = labels.begin() + static_cast<std::ptrdiff_t>(i);
    const std::size_t count = std::min(on_a_page, labels.size() - i);
    pages.push_back(page({begin, begin + static_cast<std::ptrdiff_t>(count)}, plan, all.grid));
  }
  return document(title, own_page_style(plan.sheet).c_str(), pages);
}

Wanted wanted_of(const Handed& handed, const LabelPlan& plan, int count) {
  return {handed.batch.name, label_texts(handed, plan.line), count, label_scanned(handed)};
}

}

std::string own_page_style(const Size& sheet) {
  return "@page { size: " + mm(sheet.w) + "mm " + mm(sheet.h) +
         "mm; margin: 0; } html, body { margin: 0; background: #ffffff; } "
         "svg { display: block; break-after: page; break-inside: avoid; } "
         "svg:last-child { break-after: auto; }";
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
  const auto all = ready({wanted_of(handed, plan, plan.count)}, plan);
  if (!all) return tl::make_unexpected(all.error());
  return as_html(handed.batch.name, *all, plan);
}

words::Result<std::string> labels_as_html(const std::vector<LabelOrder>& orders,
                                          const LabelPlan& plan) {
  std::vector<Wanted> wanted;
  long count = 0;
  for (const LabelOrder& order : orders) {
    count += order.count;
    wanted.push_back(wanted_of(order.handed, plan, order.count));
  }
  if (count > most_labels)
    return words::failure(Say::labels_too_many,
                          {std::to_string(count), std::to_string(most_labels)});
  const auto all = ready(wanted, plan);
  if (!all) return tl::make_unexpected(all.error());
  return as_html(title_of(orders.size(), orders.empty() ? nullptr : &orders[0].handed.batch,
                          Say::labels_title),
                 *all, plan);
}

words::Result<std::string> binder_labels_as_html(const session::Card& binder, double drops,
                                                 const LabelPlan& plan) {
  constexpr double most = 3; // of the letters of a pan's label
  const auto all =
      ready({{binder.name, binder_texts(binder, drops, plan.line), plan.count, {}, most}}, plan);
  if (!all) return tl::make_unexpected(all.error());
  return as_html(binder.name, *all, plan);
}

words::Result<std::string> labels_as_svg(const Handed& handed, const LabelPlan& plan) {
  const auto all = ready({wanted_of(handed, plan, plan.count)}, plan);
  if (!all) return tl::make_unexpected(all.error());
  const Labels labels = all->labels();
  if (labels.size() > static_cast<std::size_t>(all->grid.on_a_page()))
    return words::failure(Say::labels_one_page, {std::to_string(all->grid.on_a_page())});
  return page(labels, plan, all->grid).bytes() + "\n";
}

}
