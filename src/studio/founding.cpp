#include "studio/founding.hpp"

#include <cerrno>
#include <utility>

namespace studio {

namespace {

using disk::Done;

class FoundingFiles final : public disk::Files {
public:
  FoundingFiles(std::unique_ptr<disk::Files> inner, Path root)
      : inner_(std::move(inner)), root_(std::move(root)) {}

  Done make_folder(const Path& folder) override {
    if (const Done founded = found(); founded.code != 0) return founded;
    return inner_->make_folder(folder);
  }
  disk::Opened open_new(const Path& file) override { return inner_->open_new(file); }
  Done write(int handle, std::string_view bytes) override { return inner_->write(handle, bytes); }
  Done force(int handle) override { return inner_->force(handle); }
  Done force_folder(const Path& folder) override { return inner_->force_folder(folder); }
  void close(int handle) override { inner_->close(handle); }
  disk::Listed list(const Path& folder) override {
    disk::Listed listed = inner_->list(folder);
    if (!founded_ && listed.code == ENOENT) listed.code = 0;
    return listed;
  }
  disk::Bytes read(const Path& file) override { return inner_->read(file); }

private:
  Done found() {
    if (founded_) return {};
    Path folder = root_.root_path();
    for (const Path& part : root_.relative_path()) {
      const Path parent = folder;
      folder /= part;
      const Done made = inner_->make_folder(folder);
      if (made.code == EEXIST) continue;
      if (made.code != 0) return made;
      if (const Done forced = inner_->force_folder(parent); forced.code != 0) return forced;
    }
    founded_ = true;
    return {};
  }

  const std::unique_ptr<disk::Files> inner_;
  const Path root_;
  bool founded_ = false;
};

}

std::unique_ptr<disk::Files> founding_files(std::unique_ptr<disk::Files> inner,
                                            std::filesystem::path root) {
  return std::make_unique<FoundingFiles>(std::move(inner), std::move(root));
}

}
