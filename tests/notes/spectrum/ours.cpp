// The rows of each table named, as JSON, one table a line.
#include "notes/table.hpp"

#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>
#include <iterator>

int main(int count, char** names) {
  for (int at = 1; at < count; ++at) {
    std::ifstream in(names[at], std::ios::binary);
    const std::string bytes((std::istreambuf_iterator<char>(in)), {});
    const auto text = notes::text_of(bytes);
    const auto table = text ? notes::table_of(*text) : tl::make_unexpected(text.error());
    if (!table) {
      std::cerr << names[at] << ": " << words::message(table.error()) << '\n';
      return 1;
    }
    nlohmann::json rows = nlohmann::json::array();
    for (const notes::Row& row : table->rows) rows.push_back(row.cells);
    std::cout << rows.dump() << '\n';
  }
}
