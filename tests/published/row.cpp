#include "published/row.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdlib>
#include <fstream>

namespace published {

namespace {

const char* name_of(Source kind) {
  switch (kind) {
  case Source::published: return "published";
  case Source::reference_library: return "reference library";
  case Source::common_practice: return "common practice, no source";
  case Source::from_memory: return "from memory";
  }
  return "";
}

// Only where the table is being written: the file that collects the rows.
void keep(const Row& row) {
  const char* file = std::getenv("SLABSIDE_PUBLISHED_ROWS");
  if (!file) return;
  const nlohmann::ordered_json line = {{"formula", row.formula},
                                       {"source", row.source},
                                       {"kind", name_of(row.kind)},
                                       {"expected", row.expected},
                                       {"ours", row.ours},
                                       {"tolerance", row.tolerance},
                                       {"why", row.why}};
  std::ofstream(file, std::ios::app) << line.dump() << '\n';
}

}

void check(const Row& row) {
  INFO(row.formula, " (", row.source, "): expected ", row.expected, ", ours ", row.ours,
       ", tolerance ", row.tolerance);
  CHECK_FALSE(row.formula.empty());
  CHECK_FALSE(row.source.empty());
  CHECK_FALSE(row.why.empty());
  CHECK(row.tolerance >= 0);
  CHECK(std::abs(row.ours - row.expected) <= row.tolerance);
  keep(row);
}

}
