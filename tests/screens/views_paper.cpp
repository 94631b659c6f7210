#include "screens/views_paper.hpp"

#include "bench/choices.hpp"
#include "bench/paper.hpp"
#include "screens/views_slab.hpp"
#include "words/commands_says.hpp"
#include "words/paper_says.hpp"

namespace views {

using namespace bench;

namespace {

using words::CommandsSay;
using words::PaperSay;

constexpr const char* stem = "Cerulean-blue-chromium-3-labels";

PaperDesk in_browser() {
  PaperDesk desk;
  desk.in_browser = true;
  return desk;
}

PaperDesk with(PaperDesk desk, std::string written, PaperWay way) {
  desk.written = std::move(written);
  desk.way = way;
  return desk;
}

PaperDesk failed(PaperDesk desk, words::Sentence what, words::Args facts) {
  desk.failure = words::Error{what, std::move(facts)};
  return desk;
}

}

void add_papers(std::vector<Case>& out, const Bench& bench, const BookView& batch,
                const std::string& on) {
  const auto keep = [&](const std::string& what, const PaperDesk& desk, bool asked) {
    Bench b = bench;
    BookView one = batch;
    b.paper = desk;
    std::get<BatchPage>(b.book.page).paper = asked;
    View v = around(b);
    if (asked) one.paper = desk;
    v.screen = one;
    out.push_back({"one batch, " + what + on, b.display.mm, v});
  };
  PaperDesk folder;
  folder.folder = "/home/maker/Slabside/paper";
  keep("paper", folder, false);
  keep("what on paper", folder, true);
  keep("not shown",
       failed(folder, CommandsSay::paper_no_viewer,
              {folder.folder + "/" + stem + ".html", "xdg-open"}),
       true);
  keep("printed by a browser", with(in_browser(), stem, PaperWay::to_print), true);
  keep("saved by a browser",
       with(in_browser(), "Cerulean-blue-chromium-3-table.csv", PaperWay::saved), true);
  keep("not printed by a browser",
       failed(in_browser(), PaperSay::paper_not_printed,
              {stem, "NotAllowedError: The document is not allowed to print"}),
       true);
}

void add_papers_of_card(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  b.screen = Screen::shelf;
  b.shelf_page.card = *shelf_card(b, "gum_12_glycerin");
  const auto keep = [&](const std::string& what, const PaperDesk& desk) {
    b.paper = desk;
    out.push_back({"shelf, " + what + on, mm, view(b, {})});
  };
  keep("label", in_browser());
  keep("label printed", with(in_browser(), stem, PaperWay::to_print));
  keep("label saved", with(in_browser(), stem, PaperWay::saved));
}

}
