// Numbers of a data file: lines that begin with # are about it, the first other one names columns.
#pragma once

#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace published {

inline std::map<std::string, std::vector<double>> columns_of(const std::string& name) {
  std::ifstream file(std::string(SLABSIDE_ROOT) + "/tests/published/data/" + name);
  REQUIRE_MESSAGE(file.good(), name);
  std::map<std::string, std::vector<double>> columns;
  std::vector<std::string> names;
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line[0] == '#') continue;
    const bool naming = names.empty();
    std::istringstream cells(line);
    std::size_t k = 0;
    for (std::string cell; std::getline(cells, cell, ','); ++k)
      if (naming)
        names.push_back(cell);
      else
        columns[names.at(k)].push_back(std::stod(cell));
  }
  return columns;
}

}
