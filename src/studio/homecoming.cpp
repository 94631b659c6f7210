#include "studio/homecoming.hpp"

#include "studio/sentences.hpp"
#include "words/say.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
#include <string_view>

namespace studio {

namespace {

// A session begins at home, so what lies elsewhere is always a later part: "….1.jsonl".
bool is_later_part(std::string_view name) {
  name.remove_suffix(std::min(name.size(), std::string_view(sessions_ending).size()));
  return name.find('.') != std::string_view::npos;
}

// Nothing was ever confirmed of a file without a whole line.
bool says_nothing(const std::string& bytes) { return bytes.find('\n') == std::string::npos; }

}

bool Homecoming::take(Location place, const disk::Answer& answer) {
  if (place == Location::home && copies_.erase(answer.ticket) == 1) {
    answered(answer);
    return true;
  }
  if (began_) return false;
  for (const disk::FileBytes& file : answer.files)
    if (is_later_part(file.name)) parts_[place][file.name] = file.bytes;
  for (const disk::Failure& failure : answer.failures)
    if (place == Location::home && failure.operation == disk::Operation::list)
      home_is_there_ = false;
  if (answer.to_come == 0) read_.insert(place);
  if (read_.size() == 2) begin();
  return false;
}

void Homecoming::answered(const disk::Answer& answer) {
  if (answer.failures.empty())
    ++came_;
  else
    said_.push_back(error(answer.failures.front()));
  if (copies_.empty() && came_ > 0)
    said_.push_back({words::StudioSay::came_home, {std::to_string(came_)}});
}

// Where home has a file of that name that says less or something else (the program whose file it is
// was still running when it was copied, say), the copy gets another name. All copies are of the
// same session and part, whatever they are called.
void Homecoming::begin() {
  began_ = true;
  const Files& home = parts_[Location::home];
  for (const auto& [name, bytes] : parts_[Location::fallback]) {
    if (says_nothing(bytes) || !home_is_there_) continue;
    const std::string other_name = "copy-" + std::to_string(bytes.size()) + "-" + name;
    const auto same = home.find(name), other = home.find(other_name);
    if (same != home.end() && same->second.starts_with(bytes)) continue;
    if (other != home.end() && other->second.starts_with(bytes)) continue;
    const std::string& free_name = same == home.end() ? name : other_name;
    copies_.insert(home_.submit(disk::Keep{std::string(sessions_folder) + "/" + free_name, bytes}));
  }
  parts_.clear();
}

}
