#include "studio/studio.hpp"

#include "disk/posix.hpp"
#include "session/check_value.hpp"
#include "studio/bell.hpp"
#include "studio/journal.hpp"
#include "studio/kept.hpp"
#include "studio/sentences.hpp"
#include "studio/understand.hpp"
#include "studio/watch.hpp"

#include <cerrno>
#include <cstdlib>
#include <fstream>
#include <iterator>

namespace studio {

namespace {

std::string four_digits(std::uint32_t random) { return session::to_hex(random).substr(4); }

bool is_device_id(const std::string& text) {
  return text.size() == 4 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

std::string first_word_of(const Path& file) {
  std::ifstream in(file);
  std::string word;
  in >> word;
  return word;
}

// A path as it is without links, whether what it leads to is there now or not: weakly_canonical
// takes a link to a disk that is not there for a name.
Path resolved(const Path& path) {
  constexpr int most_links = 40; // as Linux follows (path_resolution(7))
  std::error_code failed;
  Path left = std::filesystem::absolute(path, failed).lexically_normal();
  Path whole = left.root_path();
  left = left.relative_path();
  for (int links = 0; !left.empty();) {
    const Path first = *left.begin(), there = whole / first;
    Path rest;
    for (auto part = std::next(left.begin()); part != left.end(); ++part) rest /= *part;
    const Path target = std::filesystem::read_symlink(there, failed);
    if (failed || ++links > most_links) {
      whole = first == ".." ? whole.parent_path() : there;
      left = rest;
      continue;
    }
    left = (target.is_absolute() ? target.relative_path() : target) / rest;
    if (target.is_absolute()) whole = target.root_path();
  }
  return whole.has_filename() ? whole : whole.parent_path(); // "studio/" is "studio"
}

// One for a studio however its path is written.
std::string key_of(const Path& studio) {
  return session::to_hex(session::crc32c(resolved(studio).string()));
}

void add(Reading& all, Reading more) {
  std::move(more.files.begin(), more.files.end(), std::back_inserter(all.files));
  std::move(more.faults.begin(), more.faults.end(), std::back_inserter(all.faults));
}

Reading read_one(const Path& root, const std::string& prefix) {
  const Bell bell;
  const auto disk = open(root, std::nullopt, [bell] { bell.ring(); });
  disk->submit(disk::ReadFolder{sessions_folder, sessions_ending});
  Reading all;
  for (;;) {
    const long rings = bell.rings();
    for (const disk::Answer& answer : disk->answers()) {
      add(all, reading_of(answer, prefix));
      if (answer.to_come == 0) return all;
    }
    bell.wait_past(rings, std::chrono::steady_clock::now() + std::chrono::hours(1));
  }
}

}

Path path_from_environment(const char* name) {
  const char* value = std::getenv(name);
  const Path path = value ? value : "";
  return path.is_absolute() ? path : Path();
}

Path default_studio() {
  const Path home = path_from_environment("HOME");
  return home.empty() ? home : home / "Slabside";
}

Path state_folder() {
  const Path state = path_from_environment("XDG_STATE_HOME");
  if (!state.empty()) return state / "slabside";
  const Path home = path_from_environment("HOME");
  return home.empty() ? home : home / ".local" / "state" / "slabside";
}

Path fallback_folder(const Path& state, const Path& studio) {
  if (state.empty()) return {};
  return state / "adrift" / key_of(studio);
}

std::optional<Identity> identity_of(const Path& state, const Path& studio,
                                    const std::string& device,
                                    const std::function<std::uint32_t()>& fresh, bool anew) {
  if (state.empty()) return std::nullopt;
  const Path file = state / "studios" / key_of(studio);
  return Identity{anew ? "" : first_word_of(file), device,
                  session::to_hex(fresh()) + four_digits(fresh()),
                  [state, file](const std::string& id) {
                    const auto files = disk::posix_files();
                    files->make_folder(state.parent_path());
                    files->make_folder(state);
                    // Where it cannot be kept, any studio is as good as this one at the next start.
                    (void)keep(*files, file, id + "\n");
                  }};
}

std::string device_id(const Path& state, const std::function<std::uint32_t()>& fresh) {
  if (state.empty()) return four_digits(fresh());
  const Path file = state / "device";
  if (const std::string kept = first_word_of(file); is_device_id(kept)) return kept;
  const std::string id = four_digits(fresh());
  std::error_code ignored; // what cannot be kept shows in the writing
  std::filesystem::create_directories(state, ignored);
  const Path whole = state / ("device." + id);
  std::ofstream(whole) << id << '\n';
  // Linked into place whole: of two programs that start together, both read the first one's.
  std::error_code failed;
  std::filesystem::create_hard_link(whole, file, failed);
  if (failed && !is_device_id(first_word_of(file))) std::filesystem::rename(whole, file, ignored);
  std::filesystem::remove(whole, ignored);
  const std::string kept = first_word_of(file);
  return is_device_id(kept) ? kept : id;
}

std::unique_ptr<disk::Disk> open(const Path& root, const std::optional<disk::Fault>& fault,
                                 std::function<void()> wake, const MakeFiles& make,
                                 std::optional<Identity> identity) {
  std::error_code ignored;
  const Path whole = std::filesystem::absolute(root, ignored);
  auto files = make();
  const bool missing = files->list(whole).code == ENOENT;
  if (fault && fault->kind != disk::Fault::Kind::silent)
    files = disk::faulty_files(std::move(files), *fault);
  files = founding_files(std::move(files), whole, missing, std::move(identity));
  auto disk = disk::open_disk(whole, std::move(files), std::move(wake));
  if (fault && fault->kind == disk::Fault::Kind::silent) disk = disk::silent_disk(std::move(disk));
  return disk;
}

Reading reading_of(const disk::Answer& answer, const std::string& prefix) {
  Reading out;
  out.files = understand(answer.files, prefix);
  for (const disk::Failure& failure : answer.failures) out.faults.push_back(error(failure));
  return out;
}

Reading read_all(const Path& studio, const Path& fallback) {
  Reading all = read_one(studio, "");
  if (fallback.empty()) return all;
  add(all, read_one(fallback, fallback_prefix));
  return all;
}

}
