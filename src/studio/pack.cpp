#include "studio/pack.hpp"

#include "disk/disk.hpp"
#include "studio/journal.hpp"
#include "studio/new_files.hpp"
#include "studio/photos.hpp"
#include "studio/sentences.hpp"
#include "studio/utf8_letters.hpp"
#include "words/studio_says.hpp"

#include <archive.h>
#include <archive_entry.h>

#include <algorithm>
#include <cerrno>
#include <memory>

namespace studio {

namespace {

using Say = words::StudioSay;
using Path = std::filesystem::path;

struct Free {
  void operator()(archive* a) const { archive_write_free(a); }
  void operator()(archive_entry* e) const { archive_entry_free(e); }
};

// What a synchroniser, a file manager or a killed program left there stays behind.
bool belongs(const std::string& folder, const std::string& name) {
  if (name.empty() || name[0] == '.' || name.ends_with(disk::unfinished_ending)) return false;
  return folder == sessions_folder ? name.ends_with(sessions_ending) : is_photo_name(name);
}

class Packer {
public:
  Packer(disk::Files& files, Path studio, Path file)
      : files_(files), studio_(std::move(studio)), path_(std::move(file)), file_(files) {}

  words::Result<Packed> run() {
    for (const char* folder : {sessions_folder, photos_folder})
      if (auto failed = list(folder)) return tl::make_unexpected(*failed);
    if (names_.empty()) return words::failure(Say::pack_nothing, {studio_.string()});
    if (auto failed = file_.open(path_)) return tl::make_unexpected(*failed);
    if (auto failed = write_all()) {
      files_.remove(path_); // half a pack is no pack
      return tl::make_unexpected(*failed);
    }
    return packed_;
  }

private:
  words::Error refused(const words::Error& why) const {
    return {Say::pack_refused, {path_.string(), words::Inner(why)}};
  }

  Problem list(const std::string& folder) {
    disk::Listed listed = files_.list(studio_ / folder);
    if (listed.code == ENOENT) return {};
    if (listed.code != 0) return error(disk::Operation::list, studio_ / folder, listed.code);
    std::sort(listed.names.begin(), listed.names.end());
    std::sort(listed.odd.begin(), listed.odd.end());
    for (const std::string& name : listed.odd)
      if (belongs(folder, name))
        packed_.missed.push_back(
            error(disk::Operation::not_a_file, studio_ / folder / name, EINVAL));
    for (const std::string& name : listed.names) {
      const std::string entry = folder + "/" + name;
      if (!belongs(folder, name)) {
        packed_.left_out.push_back(entry);
        continue;
      }
      if (const auto why = allowed_.take(entry)) return refused(*why);
      names_.push_back(entry);
      if (folder == photos_folder) look_at_photo(entry);
    }
    return {};
  }

  // It is packed as it is, and said.
  void look_at_photo(const std::string& entry) {
    const Path file = studio_ / entry;
    const auto is = sha256_of_file(files_, file);
    if (is && *is != file.stem().string())
      packed_.missed.push_back({Say::pack_photo_changed, {file.string()}});
  }

  Problem write_all() {
    const std::unique_ptr<archive, Free> zip(archive_write_new());
    archive_write_set_format_zip(zip.get());
    archive_write_zip_set_compression_store(zip.get());
    const Utf8Letters letters;
    // So names are marked as UTF-8, or refused where the system knows no such letters.
    if (archive_write_set_options(zip.get(), "hdrcharset=UTF-8") != ARCHIVE_OK)
      return went_wrong(zip.get());
    archive_write_set_bytes_in_last_block(zip.get(), 1); // no padding behind the end
    if (archive_write_open2(zip.get(), this, nullptr, on_bytes, nullptr, nullptr) != ARCHIVE_OK)
      return went_wrong(zip.get());
    for (const std::string& name : names_)
      if (auto failed = add(zip.get(), name)) return failed;
    if (archive_write_close(zip.get()) != ARCHIVE_OK) return went_wrong(zip.get());
    if (auto failed = file_.force()) return failed;
    const Path folder = std::filesystem::absolute(path_).parent_path();
    if (const int code = files_.force_folder(folder).code)
      return error(disk::Operation::force, folder, code);
    return {};
  }

  Problem add(archive* zip, const std::string& name) {
    const disk::Sized size = files_.size(studio_ / name);
    if (size.code != 0) return error(disk::Operation::read, studio_ / name, size.code);
    packed_.files += 1;
    packed_.bytes += size.bytes;
    if (size.bytes > most_entry_bytes)
      return refused({Say::entry_too_large, {name, std::to_string(most_entry_bytes)}});
    if (packed_.bytes > most_pack_bytes)
      return refused({Say::pack_too_large, {std::to_string(most_pack_bytes)}});
    // Without times or owners, so that the bytes depend on nothing but the files'.
    const std::unique_ptr<archive_entry, Free> entry(archive_entry_new());
    archive_entry_set_pathname(entry.get(), name.c_str());
    archive_entry_set_filetype(entry.get(), AE_IFREG);
    archive_entry_set_perm(entry.get(), 0644);
    archive_entry_set_size(entry.get(), static_cast<la_int64_t>(size.bytes));
    if (archive_write_header(zip, entry.get()) != ARCHIVE_OK) return went_wrong(zip);
    return add_bytes(zip, name, size.bytes);
  }

  // No more than was announced: a session may have grown meanwhile.
  Problem add_bytes(archive* zip, const std::string& name, std::uint64_t size) {
    std::uint64_t written = 0;
    const auto write = [&](std::string_view piece) -> Problem {
      const la_ssize_t wrote = archive_write_data(zip, piece.data(), piece.size());
      if (wrote != static_cast<la_ssize_t>(piece.size())) return went_wrong(zip);
      written += piece.size();
      return {};
    };
    if (auto failed = in_pieces(files_, studio_ / name, write, size)) return failed;
    if (written < size) return refused({Say::entry_shrank, {name}});
    return {};
  }

  Problem went_wrong(archive* zip) const {
    if (failed_) return failed_;
    const char* why = archive_error_string(zip);
    return words::Error{Say::pack_refused, {path_.string(), why ? why : ""}};
  }

  static la_ssize_t on_bytes(archive*, void* self, const void* bytes, std::size_t count) {
    auto& packer = *static_cast<Packer*>(self);
    if (!packer.failed_)
      packer.failed_ = packer.file_.write({static_cast<const char*>(bytes), count});
    return packer.failed_ ? -1 : static_cast<la_ssize_t>(count);
  }

  disk::Files& files_;
  const Path studio_, path_;
  NewFile file_;
  PackNames allowed_;
  std::vector<std::string> names_;
  Packed packed_;
  Problem failed_; // of a call from inside the library
};

}

words::Result<Packed> pack(disk::Files& files, const Path& studio, const Path& file) {
  return Packer(files, studio, file).run();
}

}
