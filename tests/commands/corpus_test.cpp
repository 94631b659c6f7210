// What was kept in tests/session/corpus, folded today: every number that was said of it then is
// said still, to the last digit. `keep` in that folder adds a studio.
#include "commands/tool.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace corpus_test {

using namespace tool;
using Json = nlohmann::json;

namespace {

const rig::Path corpus = rig::Path(SLABSIDE_ROOT) / "tests/session/corpus";

std::vector<rig::Path> in_order(const rig::Path& folder) {
  std::vector<rig::Path> found;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    found.push_back(entry.path());
  std::sort(found.begin(), found.end());
  return found;
}

std::string said(const rig::Path& studio, std::vector<std::string> words) {
  words.insert(words.end(), {"--studio", studio.string(), "--fallback", ""});
  const Ran ran = run(words);
  CHECK_MESSAGE(ran.status == 0, ran.err);
  return ran.out;
}

// The first place where `now` does not say what was kept, and both values; empty: there is none. An
// object may say more than it did.
std::string difference(const Json& kept, const Json& now, const std::string& where) {
  if (kept.type() == now.type() && kept.is_object()) {
    for (const auto& [key, value] : kept.items()) {
      if (!now.contains(key)) return where + "/" + key + ": it is not there";
      const std::string inside = difference(value, now[key], where + "/" + key);
      if (!inside.empty()) return inside;
    }
    return "";
  }
  if (kept.is_array() && now.is_array() && kept.size() == now.size()) {
    for (std::size_t i = 0; i < kept.size(); ++i) {
      const std::string inside = difference(kept[i], now[i], where + "/" + std::to_string(i));
      if (!inside.empty()) return inside;
    }
    return "";
  }
  return kept == now ? "" : where + ": " + kept.dump() + " was kept, now it is " + now.dump();
}

std::string difference(const std::string& kept, const std::string& now) {
  std::istringstream then(kept), today(now);
  std::string a, b;
  for (int line = 1;; ++line) {
    const bool more = static_cast<bool>(std::getline(then, a));
    const bool more_today = static_cast<bool>(std::getline(today, b));
    if (!more && !more_today) return "";
    if (more != more_today || a != b)
      return "line " + std::to_string(line) + ": “" + a + "” was kept, now it is “" + b + "”";
  }
}

std::vector<std::string> batches_of(const rig::Path& studio) {
  std::vector<std::string> ids;
  std::istringstream list(said(studio, {"list"}));
  for (std::string line; std::getline(list, line);) ids.push_back(line.substr(0, line.find(' ')));
  std::sort(ids.begin(), ids.end());
  return ids;
}

}

TEST_CASE("every session file that could be read before reads the same") {
  std::size_t batches = 0;
  for (const rig::Path& studio : in_order(corpus)) {
    if (!std::filesystem::is_directory(studio)) continue;
    CAPTURE(studio.filename().string());
    std::vector<std::string> kept;
    for (const rig::Path& file : in_order(studio)) {
      if (file.extension() != ".json" || file.filename() == "range.json") continue;
      kept.push_back(file.stem().string());
      CAPTURE(kept.back());
      const Json now = Json::parse(said(studio, {"show", kept.back(), "--json"}));
      CHECK(difference(Json::parse(rig::bytes_of(file)), now, "") == "");
    }
    CHECK(kept == batches_of(studio));
    batches += kept.size();
    CHECK(difference(rig::bytes_of(studio / "table.csv"), said(studio, {"table"})) == "");
    const Json range = Json::parse(said(studio, {"range", "--json"}));
    CHECK(difference(Json::parse(rig::bytes_of(studio / "range.json")), range, "range") == "");
  }
  CHECK(batches >= 80);
}

TEST_CASE("one digit, one field or one line that is another is named") {
  const Json kept = {{"a", {{{"u", 0.1}}, {{"u", 0.30000000000000004}}}}};
  CHECK(difference(kept, kept, "") == "");
  Json now = kept;
  now["more"] = 1;
  CHECK(difference(kept, now, "") == "");
  now["a"][1]["u"] = 0.3;
  CHECK(difference(kept, now, "") == "/a/1/u: 0.30000000000000004 was kept, now it is 0.3");
  now["a"][1] = {{"v", 0.3}};
  CHECK(difference(kept, now, "") == "/a/1/u: it is not there");
  now["a"].push_back(1);
  CHECK(difference(kept, now, "") != "");
  CHECK(difference("1,2\n", "1,2\n") == "");
  CHECK(difference("1,2\n", "1,2\n3\n") == "line 2: “” was kept, now it is “3”");
}

}
