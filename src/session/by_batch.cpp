#include "session/by_batch.hpp"

namespace session {

std::map<std::string, Logs> by_batch(const Logs& logs) {
  std::map<std::string, Logs> all;
  for (const Log* log : logs)
    for (const Line& line : log->lines) {
      if (line.batch.empty()) continue;
      Logs& about = all[line.batch];
      if (about.empty() || about.back() != log) about.push_back(log);
    }
  return all;
}

}
