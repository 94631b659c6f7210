#include "session/by_batch.hpp"

namespace session {

std::map<std::string, Logs> by_batch(const Logs& logs) {
  std::map<std::string, Logs> all;
  for (const Log* log : logs) {
    const std::string* last = nullptr; // lines of one batch mostly follow each other
    for (const Line& line : log->lines) {
      if (line.batch.empty() || (last && *last == line.batch)) continue;
      last = &line.batch;
      Logs& about = all[line.batch];
      if (about.empty() || about.back() != log) about.push_back(log);
    }
  }
  return all;
}

}
