#include "studio/founding.hpp"

#include "disk/whole_file.hpp"
#include "studio/journal.hpp"

#include <algorithm>
#include <cerrno>
#include <set>
#include <utility>

namespace studio {

namespace {

using disk::Done;

std::string first_word(const std::string& text) {
  return text.substr(0, text.find_first_of(" \r\n"));
}

class FoundingFiles final : public disk::Files {
public:
  FoundingFiles(std::unique_ptr<disk::Files> inner, Path root, bool missing,
                std::optional<Identity> identity)
      : inner_(std::move(inner)), root_(std::move(root)), missing_(missing),
        identity_(std::move(identity)) {}

  Done make_folder(const Path& folder) override {
    if (const Done same = recognise(); same.code != 0) return same;
    if (const Done founded = found(); founded.code != 0) return founded;
    name();
    return inner_->make_folder(folder);
  }
  disk::Opened open_new(const Path& file) override { return inner_->open_new(file); }
  Done write(int handle, std::string_view bytes) override { return inner_->write(handle, bytes); }
  Done force(int handle) override { return inner_->force(handle); }
  Done force_folder(const Path& folder) override { return inner_->force_folder(folder); }
  disk::Sized size_under(int handle, const Path& file) override {
    return inner_->size_under(handle, file);
  }
  void close(int handle) override { inner_->close(handle); }
  Done rename(const Path& from, const Path& to) override { return inner_->rename(from, to); }
  Done remove(const Path& file) override { return inner_->remove(file); }
  disk::Listed list(const Path& folder) override {
    if (const Done same = recognise(); same.code != 0) return {same.code, {}, {}};
    disk::Listed listed = inner_->list(folder);
    if (missing_ && !founded_ && listed.code == ENOENT) listed.code = 0;
    return listed;
  }
  disk::Sized size(const Path& file) override { return inner_->size(file); }
  disk::Bytes read(const Path& file) override { return inner_->read(file); }
  disk::Bytes read_piece(const Path& file, std::uint64_t at, std::size_t most) override {
    return inner_->read_piece(file, at, most);
  }

private:
  // Whether this is the studio that is remembered, if one is.
  Done recognise() {
    if (!identity_) return {};
    there_ = first_word(inner_->read(root_ / id_file).bytes);
    if (there_ == identity_->id) return {};
    if (!identity_->id.empty() && !has_own_session()) return {other_studio};
    if (!there_.empty()) remember(there_);
    return {};
  }

  // A folder that lost its id, or got another when two devices began it at once, is known by that.
  bool has_own_session() {
    const auto names = inner_->list(root_ / sessions_folder).names;
    return std::any_of(names.begin(), names.end(), [&](const std::string& name) {
      return name.find("-" + identity_->device + "-") != std::string::npos;
    });
  }

  // Where it cannot be written the studio has none: nothing of what is saved rests on it.
  void name() {
    if (!identity_ || !there_.empty()) return;
    const std::string id = identity_->id.empty() ? identity_->fresh : identity_->id;
    const Path file = root_ / id_file, beside = file.string() + "." + id + disk::unfinished_ending;
    if (disk::put_in_place(*inner_, file, beside, id + "\n")) return;
    there_ = id;
    remember(id);
  }

  void remember(const std::string& id) {
    if (identity_->id == id) return;
    identity_->id = id;
    if (identity_->remember) identity_->remember(id);
  }

  Done found() {
    if (founded_) return {};
    Path folder = root_.root_path();
    for (const Path& part : root_.relative_path()) {
      const Path parent = folder;
      folder /= part;
      if (const Done made = make(folder); made.code != 0) return made;
      const Done forced = inner_->force_folder(parent);
      if (forced.code != 0 && (made_.count(folder) || !is_closed(forced.code))) return forced;
    }
    founded_ = true;
    return {};
  }

  Done make(const Path& folder) {
    if (!missing_) return {};
    const Done made = inner_->make_folder(folder);
    if (made.code == 0) made_.insert(folder);
    return made.code == EEXIST ? Done{} : made;
  }

  // A folder that may not be read, or lies where nothing can be written, was made by somebody else,
  // and is theirs to force.
  static bool is_closed(int code) { return code == EACCES || code == EPERM || code == EROFS; }

  const std::unique_ptr<disk::Files> inner_;
  const Path root_;
  const bool missing_;
  std::set<Path> made_;
  bool founded_ = false;
  std::optional<Identity> identity_;
  std::string there_; // the id in the folder, when it was last looked at
};

}

std::unique_ptr<disk::Files> founding_files(std::unique_ptr<disk::Files> inner,
                                            std::filesystem::path root, bool missing,
                                            std::optional<Identity> identity) {
  return std::make_unique<FoundingFiles>(std::move(inner), std::move(root), missing,
                                         std::move(identity));
}

}
