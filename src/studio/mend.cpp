#include "studio/mend.hpp"

#include "disk/disk.hpp"
#include "session/reader.hpp"
#include "studio/founding.hpp"
#include "studio/journal.hpp"
#include "studio/new_files.hpp"
#include "studio/photos.hpp"
#include "studio/sentences.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
#include <cerrno>
#include <map>
#include <optional>
#include <set>

namespace studio {

namespace {

using Say = words::StudioSay;
using Path = std::filesystem::path;

class Copier {
public:
  Copier(disk::Files& files, Path studio, const Path& folder, Path fallback)
      : files_(files), studio_(std::move(studio)), fallback_(std::move(fallback)),
        made_(files, folder) {}

  words::Result<MendReport> run() {
    if (auto failed = made_.begin()) return tl::make_unexpected(*failed);
    if (auto failed = copy_sessions()) return tl::make_unexpected(*failed);
    if (auto failed = copy_photos()) return tl::make_unexpected(*failed);
    if (auto failed = copy_id()) return tl::make_unexpected(*failed);
    if (auto failed = made_.finish()) return tl::make_unexpected(*failed);
    for (const auto& [file, batch] : named_photos_)
      if (!photos_.count(file)) report_.lost.push_back({Say::photo_missing, {file, batch}});
    return std::move(report_);
  }

private:
  // The folder's files, sorted; none without a folder.
  words::Result<std::vector<std::string>> names_in(const Path& folder) {
    disk::Listed listed = files_.list(folder);
    if (listed.code != 0 && listed.code != ENOENT)
      return tl::make_unexpected(error(disk::Operation::list, folder, listed.code));
    std::erase_if(listed.names,
                  [](const auto& name) { return name.ends_with(disk::unfinished_ending); });
    std::sort(listed.names.begin(), listed.names.end());
    std::sort(listed.odd.begin(), listed.odd.end());
    for (const std::string& name : listed.odd)
      report_.lost.push_back(error(disk::Operation::not_a_file, folder / name, EINVAL));
    return std::move(listed.names);
  }

  // Nothing where it cannot be read, which is said.
  std::optional<std::string> read(const Path& file) {
    if (files_.size(file).bytes > disk::most_file_bytes) {
      report_.lost.push_back(error(disk::Operation::too_large, file, EFBIG));
      return std::nullopt;
    }
    disk::Bytes read = files_.read(file);
    if (read.code == 0) return std::move(read.bytes);
    report_.lost.push_back(error(disk::Operation::read, file, read.code));
    return std::nullopt;
  }

  // As at the next start. Where home has a file of that name that says something else, both are
  // copies of one part.
  Problem add_fallback(std::vector<SessionFile>& sessions) {
    if (fallback_.empty()) return {};
    const Path folder = fallback_ / sessions_folder;
    const auto names = names_in(folder);
    if (!names) return names.error();
    for (const std::string& name : *names) {
      auto bytes = name.ends_with(sessions_ending) ? read(folder / name) : std::nullopt;
      if (!bytes) continue;
      const auto home = std::find_if(sessions.begin(), sessions.end(),
                                     [&](const SessionFile& s) { return s.name == name; });
      if (home == sessions.end())
        sessions.push_back({name, *std::move(bytes)});
      else if (!home->bytes.starts_with(*bytes))
        sessions.push_back({"fallback-" + name, *std::move(bytes)});
    }
    return {};
  }

  Problem copy_sessions() {
    const auto names = names_in(studio_ / sessions_folder);
    if (!names) return names.error();
    std::vector<SessionFile> sessions;
    for (const std::string& name : *names) {
      const std::string file = std::string(sessions_folder) + "/" + name;
      if (!name.ends_with(sessions_ending)) {
        if (auto failed = copy(file, Say::mend_as_it_is)) return failed;
      } else if (auto bytes = read(studio_ / file)) {
        sessions.push_back({name, *std::move(bytes)});
      }
    }
    if (auto failed = add_fallback(sessions)) return failed;
    MendReport mended = mend_sessions(sessions);
    report_.files.insert(report_.files.end(), mended.files.begin(), mended.files.end());
    report_.lost.insert(report_.lost.end(), mended.lost.begin(), mended.lost.end());
    report_.torn = std::move(mended.torn);
    for (const SessionFile& s : sessions) {
      look_at(session::read_file(s.name, s.bytes));
      if (auto failed = made_.put(std::string(sessions_folder) + "/" + s.name, s.bytes))
        return failed;
    }
    return {};
  }

  // As it is in the copy.
  void look_at(const session::File& file) {
    for (const session::Damage& d : file.damage)
      if (!d.ordinary) report_.still.push_back(d);
    for (const session::Line& line : file.lines)
      if (const auto* photo = std::get_if<session::Photo>(&line.event))
        named_photos_.emplace(photo_file(*photo), line.batch);
  }

  Problem copy_photos() {
    const auto names = names_in(studio_ / photos_folder);
    if (!names) return names.error();
    for (const std::string& name : *names) {
      const std::string file = std::string(photos_folder) + "/" + name;
      photos_.insert(file);
      if (auto failed = copy(file, Say::mend_whole)) return failed;
    }
    return {};
  }

  // The copy is to take the studio's place.
  Problem copy_id() {
    const disk::Bytes id = files_.read(studio_ / id_file);
    return id.code == 0 ? made_.put(id_file, id.bytes) : Problem{};
  }

  // What is no session. A file that cannot be read is lost, and said.
  Problem copy(const std::string& file, words::Sentence said) {
    const auto sum = sha256_of_file(files_, studio_ / file);
    if (!sum) {
      report_.lost.push_back(sum.error());
      return {};
    }
    const auto named = named_photos_.find(file);
    if (named != named_photos_.end() && *sum != Path(file).stem()) {
      report_.lost.push_back({Say::photo_changed, {file, named->second}});
      said = Say::mend_as_it_is;
    }
    report_.files.push_back({said, {file}});
    return copy_bytes(file);
  }

  Problem copy_bytes(const std::string& file) {
    const auto place = made_.place_for(file);
    if (!place) return place.error();
    NewFile made(files_);
    if (auto failed = made.open(*place)) return failed;
    const auto write = [&](std::string_view piece) { return made.write(piece); };
    if (auto failed = in_pieces(files_, studio_ / file, write)) return failed;
    return made.force();
  }

  disk::Files& files_;
  const Path studio_, fallback_;
  NewFolder made_;
  std::map<std::string, std::string> named_photos_; // to a batch that names them
  std::set<std::string> photos_;
  MendReport report_;
};

}

words::Result<MendReport> mend(disk::Files& files, const Path& studio, const Path& folder,
                               const Path& fallback) {
  return Copier(files, studio, folder, fallback).run();
}

}
