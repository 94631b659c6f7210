// Numbers in a language with a decimal comma: people read it, machines never do.
#include "paper/hand.hpp"
#include "paper/labels.hpp"
#include "paper/sheet.hpp"
#include "paper/table.hpp"
#include "words/speaking.hpp"

#include <doctest/doctest.h>

#include <regex>

namespace language_test {

using namespace hand;
using paper::additions_table;
using paper::totals_table;
using words::Language;
using words::Speaking;

namespace {

// Tags with their attributes, and style sheets: what a browser computes with.
std::string for_machines(const std::string& page) {
  const std::regex machine("<style>[^<]*</style>|<[^>]*>");
  std::string out;
  for (std::sregex_iterator at(page.begin(), page.end(), machine), end; at != end; ++at)
    out += at->str() + "\n";
  return out;
}

std::string for_people(const std::string& page) {
  return std::regex_replace(page, std::regex("<style>[^<]*</style>|<[^>]*>"), "\n");
}

bool has_number(const std::string& text, const char* sign) {
  return std::regex_search(text, std::regex(std::string("[0-9]") + sign + "[0-9]"));
}

void check_page(std::string (*make)(const paper::Handed&), const std::string& ratio) {
  const Batch batch = ordinary();
  const std::string english = make({batch, offsets()});
  CHECK(has(for_people(english), ratio + "."));
  CHECK(has_number(for_machines(english), "\\."));
  CHECK_FALSE(has_number(for_machines(english), ","));
  const Speaking other(Language::pseudo);
  const std::string page = make({batch, offsets()});
  CHECK(has(for_people(page), ratio + ","));
  CHECK_FALSE(has(for_people(page), ratio + "."));
  CHECK(has_number(for_machines(page), "\\."));
  CHECK_FALSE(has_number(for_machines(page), ","));
}

}

TEST_CASE("a sheet's CSS and SVG have points, its words have the language's sign") {
  check_page([](const paper::Handed& facts) { return paper::sheet(facts); }, "5");
}

TEST_CASE("a label's SVG has points in every language") {
  const Batch batch = ordinary();
  const Speaking other(Language::pseudo);
  const std::string label = paper::labels_as_svg({batch, offsets()}, {.count = 1}).value();
  CHECK(has_number(for_machines(label), "\\."));
  CHECK_FALSE(has_number(for_machines(label), ","));
}

TEST_CASE("tables are the same in every language") {
  const std::vector<Batch> batches{ordinary()};
  const auto tables = [&] {
    return additions_table(batches, offsets()) + totals_table(batches, offsets());
  };
  const std::string english = tables();
  const Speaking other(Language::pseudo);
  CHECK(tables() == english);
  CHECK(has_number(english, "\\."));
}

TEST_CASE("a page names its language") {
  CHECK(has(paper::sheet({ordinary(), offsets()}), " lang=\"en\""));
}

}
