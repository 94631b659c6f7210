// What a file's name says of whose it is: …-SESSION[.part].jsonl
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace session {

struct Named {
  std::string session;
  std::optional<int> part;
  bool by_writer = false;               // it is of the form that a writer gives
  std::optional<std::int64_t> began_at; // as such a name says it, to the second
};

Named named_by(const std::string& file);

}
