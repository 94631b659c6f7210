#include "published/row.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdlib>
#include <fstream>

namespace published {

Source printed(const std::string& where) { return {"published", where}; }
Source library(const std::string& which) { return {"reference library", which}; }
Source apart(const std::string& from) { return {"worked apart", from}; }
Source practice() { return {"common practice, no source", "makers of watercolour"}; }
Source remembered(const std::string& what) { return {"from memory", what}; }
Source consistent_with(const Source& other) { return {"consistency", other.text}; }

namespace {

// Only where the table is being written: the file that collects the rows.
void keep(const Row& row) {
  const char* file = std::getenv("SLABSIDE_PUBLISHED_ROWS");
  if (!file) return;
  const nlohmann::ordered_json line = {{"of", row.of},
                                       {"what", row.what},
                                       {"at", row.at},
                                       {"kind", row.source.kind},
                                       {"source", row.source.text},
                                       {"expected", row.expected},
                                       {"ours", row.ours},
                                       {"tolerance", row.tolerance},
                                       {"why", row.why}};
  std::ofstream(file, std::ios::app) << line.dump() << '\n';
}

}

void check(const Row& row) {
  INFO(row.of, ": ", row.what, " ", row.at, " (", row.source.text, "): expected ", row.expected,
       ", ours ", row.ours, ", tolerance ", row.tolerance);
  for (const std::string& text : {row.of, row.what, row.source.text, row.why})
    CHECK_FALSE(text.empty());
  CHECK(row.tolerance >= 0);
  CHECK(std::abs(row.ours - row.expected) <= row.tolerance);
  keep(row);
}

}
