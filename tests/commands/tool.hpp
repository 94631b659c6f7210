// Running the commands in a folder of their own, with what they print.
#pragma once

#include "commands/run.hpp"
#include "disk/rig.hpp"
#include "session/bytes.hpp"
#include "session/event.hpp"

#include <doctest/doctest.h>

#include <sstream>

namespace tool {

struct Ran {
  int status = -1;
  std::string out, err;
};

inline Ran run(const std::vector<std::string>& words) {
  std::ostringstream out, err;
  const auto status = commands::run(words, out, err);
  REQUIRE(status.has_value());
  return {*status, out.str(), err.str()};
}

inline bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

// A session file's bytes from its events, all at one moment.
inline std::string bytes_of(const std::vector<std::pair<std::string, session::Event>>& events) {
  std::string bytes;
  std::uint32_t check = 0;
  std::uint64_t n = 0;
  for (const auto& [batch, event] : events) {
    const auto line = session::encode({n++, 0, 1795617120000, batch, event}, check);
    REQUIRE(line);
    bytes += line->bytes;
    check = line->check;
  }
  return bytes;
}

inline session::Began began() {
  session::Began b;
  b.session = "c41e08d5";
  b.device = "a83f";
  b.local = "2026-11-25T15:32:00+01:00";
  return b;
}

struct Studio : rig::Folder {
  rig::Path sessions = path / "sessions";
  std::string name = path.string();
  Studio() { std::filesystem::create_directory(sessions); }

  std::string script(const std::string& text) const {
    rig::put(path / "script", text);
    return (path / "script").string();
  }
  Ran play(const std::string& text, std::vector<std::string> more = {}) const {
    std::vector<std::string> words{"play", script(text), "--studio", name};
    words.insert(words.end(), more.begin(), more.end());
    return run(words);
  }
  // Reads from here alone, whatever this computer keeps elsewhere.
  Ran read(std::vector<std::string> words) const {
    words.insert(words.end(), {"--studio", name, "--fallback", ""});
    return run(words);
  }
  std::map<std::string, std::string> files() const {
    std::map<std::string, std::string> all;
    for (const auto& entry : std::filesystem::directory_iterator(sessions))
      all[entry.path().filename().string()] = rig::bytes_of(entry.path());
    return all;
  }
};

inline const char* small_batch = R"(# a small batch
at 2026-11-20T14:02:00+01:00
seed 7
tap pigment pb29
write name  Evening blue
tap weigh
type 10
tap begin
tap another
tap amount weigh
tap add gum_12
type 5
tap pass
wait 90
tap felt too_sticky
tap add gum_12 x10 every 1.5
tap undo
)";

}
