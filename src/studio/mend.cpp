#include "studio/mend.hpp"

#include "disk/disk.hpp"
#include "session/reader.hpp"
#include "studio/journal.hpp"
#include "studio/new_files.hpp"
#include "studio/photos.hpp"
#include "studio/sentences.hpp"

#include <algorithm>
#include <cerrno>
#include <map>
#include <optional>
#include <set>

namespace studio {

namespace {

using words::Say;
using Path = std::filesystem::path;

class Copier {
public:
  Copier(disk::Files& files, Path studio, const Path& folder)
      : files_(files), studio_(std::move(studio)), made_(files, folder) {}

  words::Result<MendReport> run() {
    if (auto failed = made_.begin()) return tl::make_unexpected(*failed);
    if (auto failed = copy_sessions()) return tl::make_unexpected(*failed);
    if (auto failed = copy_photos()) return tl::make_unexpected(*failed);
    if (auto failed = made_.finish()) return tl::make_unexpected(*failed);
    for (const auto& [file, batch] : named_photos_)
      if (!photos_.count(file)) report_.lost.push_back({Say::photo_missing, {file, batch}});
    return std::move(report_);
  }

private:
  // The folder's files, sorted; none without a folder.
  words::Result<std::vector<std::string>> names_in(const char* folder) {
    disk::Listed listed = files_.list(studio_ / folder);
    if (listed.code != 0 && listed.code != ENOENT)
      return tl::make_unexpected(error("list", studio_ / folder, listed.code));
    std::erase_if(listed.names,
                  [](const auto& name) { return name.ends_with(disk::unfinished_ending); });
    std::sort(listed.names.begin(), listed.names.end());
    return std::move(listed.names);
  }

  // Nothing where it cannot be read, which is said.
  std::optional<std::string> read(const std::string& file) {
    disk::Bytes read = files_.read(studio_ / file);
    if (read.code == 0) return std::move(read.bytes);
    report_.lost.push_back(error("read", studio_ / file, read.code));
    return std::nullopt;
  }

  Problem copy_sessions() {
    const auto names = names_in(sessions_folder);
    if (!names) return names.error();
    std::vector<SessionFile> sessions;
    for (const std::string& name : *names) {
      const std::string file = std::string(sessions_folder) + "/" + name;
      auto bytes = read(file);
      if (!bytes) continue;
      if (name.ends_with(sessions_ending))
        sessions.push_back({name, *std::move(bytes)});
      else if (auto failed = copy(file, *bytes, Say::mend_as_it_is))
        return failed;
    }
    MendReport mended = mend_sessions(sessions);
    report_.files.insert(report_.files.end(), mended.files.begin(), mended.files.end());
    report_.lost.insert(report_.lost.end(), mended.lost.begin(), mended.lost.end());
    for (const SessionFile& s : sessions) {
      note_photos(s);
      if (auto failed = made_.put(std::string(sessions_folder) + "/" + s.name, s.bytes))
        return failed;
    }
    return {};
  }

  void note_photos(const SessionFile& s) {
    for (const session::Line& line : session::read_file(s.name, s.bytes).lines)
      if (const auto* photo = std::get_if<session::Photo>(&line.event))
        named_photos_.emplace(photo_file(*photo), line.batch);
  }

  Problem copy_photos() {
    const auto names = names_in(photos_folder);
    if (!names) return names.error();
    for (const std::string& name : *names) {
      const std::string file = std::string(photos_folder) + "/" + name;
      const auto bytes = read(file);
      photos_.insert(file); // one that cannot be read was said to be lost
      if (!bytes) continue;
      const auto named = named_photos_.find(file);
      const bool changed = named != named_photos_.end() && sha256(*bytes) != name.substr(0, 64);
      if (changed) report_.lost.push_back({Say::photo_changed, {file, named->second}});
      if (auto failed = copy(file, *bytes, changed ? Say::mend_as_it_is : Say::mend_whole))
        return failed;
    }
    return {};
  }

  Problem copy(const std::string& file, const std::string& bytes, Say said) {
    report_.files.push_back({said, {file}});
    return made_.put(file, bytes);
  }

  disk::Files& files_;
  const Path studio_;
  NewFolder made_;
  std::map<std::string, std::string> named_photos_; // to a batch that names them
  std::set<std::string> photos_;
  MendReport report_;
};

}

words::Result<MendReport> mend(disk::Files& files, const Path& studio, const Path& folder) {
  return Copier(files, studio, folder).run();
}

}
