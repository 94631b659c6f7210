#include "studio/journal.hpp"
#include "studio/new_files.hpp"
#include "studio/pack.hpp"
#include "studio/photos.hpp"
#include "studio/sentences.hpp"
#include "studio/utf8_letters.hpp"
#include "studio/zip_list.hpp"
#include "words/studio_says.hpp"

#include <archive.h>
#include <archive_entry.h>

#include <array>
#include <cerrno>
#include <functional>
#include <memory>

namespace studio {

namespace {

using Say = words::StudioSay;
using Path = std::filesystem::path;

struct Free {
  void operator()(archive* a) const { archive_read_free(a); }
};
using Archive = std::unique_ptr<archive, Free>;

// Where an entry's bytes go.
struct Sink {
  std::function<Problem(const std::string& name)> begin = [](const auto&) { return Problem{}; };
  std::function<Problem(std::string_view bytes)> write = [](auto) { return Problem{}; };
  std::function<Problem()> end = [] { return Problem{}; };
};

// Only zips, and only by their list at the end: an archive that was cut off has none.
Archive new_reader() {
  Archive zip(archive_read_new());
  archive_read_support_format_zip_seekable(zip.get());
  return zip;
}

// An archive, opened, and what is known of it.
struct Opened {
  Archive zip;
  int said = ARCHIVE_OK;
  std::string called;
  std::uint64_t size = 0;
  ReadAt read;
};

class Unpacker {
public:
  Unpacker(const Opened& opened, Sink sink) : opened_(opened), sink_(std::move(sink)) {}

  words::Result<Packed> run() {
    const auto listed = zip_list(opened_.size, opened_.read);
    if (!listed || opened_.said != ARCHIVE_OK) return tl::make_unexpected(*no_list());
    for (const ZipEntry& entry : *listed)
      if (auto problem = allow(entry)) return tl::make_unexpected(*problem);
    for (const ZipEntry& entry : *listed)
      if (auto problem = take(entry)) return tl::make_unexpected(*problem);
    return packed_;
  }

private:
  Problem refused(const words::Error& why) const {
    return words::Error{Say::unpack_refused, {opened_.called, words::Inner(why)}};
  }
  Problem refused(words::Sentence why, words::Args args = {}) const {
    return refused(words::Error{why, std::move(args)});
  }
  // Of what begins as a zip the end was not fetched.
  Problem no_list() const {
    if (!opened_.read(0, 4).starts_with("PK\3\4")) return refused(Say::pack_no_zip);
    return refused(Say::pack_cut, {std::to_string(opened_.size)});
  }
  Problem broken(const ZipEntry& entry) const {
    const char* why = archive_error_string(zip_);
    return refused(Say::entry_broken, {entry.name, why ? why : ""});
  }

  static bool is_own_folder(const ZipEntry& entry) {
    constexpr std::uint32_t kinds = 0170000, folder = 0040000;
    const std::uint32_t kind = entry.mode & kinds;
    return (kind == folder || kind == 0) && (entry.name == std::string(sessions_folder) + "/" ||
                                             entry.name == std::string(photos_folder) + "/");
  }

  // By the list, before anything is read.
  Problem allow(const ZipEntry& entry) {
    constexpr std::uint32_t kinds = 0170000, plain = 0100000;
    if (is_own_folder(entry)) return {}; // made when a file lies in it
    if (const auto why = names_.take(entry.name)) return refused(*why);
    if ((entry.mode & kinds) != plain && (entry.mode & kinds) != 0)
      return refused(Say::entry_not_plain, {entry.name});
    return within_bounds(entry.name, entry.size, listed_bytes_ += entry.size);
  }

  // The next one of the archive, which must be this one of the list.
  Problem take(const ZipEntry& listed) {
    archive_entry* entry = nullptr;
    const int read = archive_read_next_header(zip_, &entry);
    if (read == ARCHIVE_EOF || !lies_as_listed(listed, opened_.read))
      return refused(Say::entry_unlike, {listed.name});
    if (read != ARCHIVE_OK) return broken(listed);
    if (is_own_folder(listed)) return {};
    if (archive_entry_filetype(entry) != AE_IFREG)
      return refused(Say::entry_not_plain, {listed.name});
    if (archive_entry_is_encrypted(entry)) return refused(Say::entry_encrypted, {listed.name});
    // The other ways of packing may ask for any amount of memory.
    const std::string_view packing = archive_format_name(zip_);
    if (!packing.ends_with("(uncompressed)") && !packing.ends_with("(deflation)"))
      return refused(Say::entry_packing, {listed.name, std::string(packing)});
    packed_.files += 1;
    return take_file(listed);
  }

  Problem take_file(const ZipEntry& listed) {
    if (auto failed = sink_.begin(listed.name)) return failed;
    std::array<char, 65536> block{};
    std::uint64_t unpacked = 0;
    for (;;) {
      const la_ssize_t got = archive_read_data(zip_, block.data(), block.size());
      if (got < 0) return broken(listed);
      if (got == 0) return sink_.end(); // as many as were announced, or libarchive says broken
      unpacked += static_cast<std::uint64_t>(got);
      packed_.bytes += static_cast<std::uint64_t>(got);
      // Whatever the list says.
      if (auto failed = within_bounds(listed.name, unpacked, packed_.bytes)) return failed;
      if (auto failed = sink_.write({block.data(), static_cast<std::size_t>(got)})) return failed;
    }
  }

  Problem within_bounds(const std::string& name, std::uint64_t entry, std::uint64_t all) const {
    constexpr std::uint64_t spare = 1 << 20;
    if (entry > most_entry_bytes)
      return refused(Say::entry_too_large, {name, std::to_string(most_entry_bytes)});
    if (all > most_pack_bytes)
      return refused(Say::pack_too_large, {std::to_string(most_pack_bytes)});
    if (all > spare && (all - spare) / most_times_larger > opened_.size)
      return refused(Say::pack_swells, {name, std::to_string(most_times_larger)});
    return {};
  }

  const Opened& opened_;
  archive* const zip_ = opened_.zip.get();
  const Sink sink_;
  const Utf8Letters letters_;
  PackNames names_;
  std::uint64_t listed_bytes_ = 0;
  Packed packed_;
};

// `failed` is the errno of the last call that failed.
ReadAt reader_of(disk::Files& files, const Path& file, int& failed) {
  return [&files, &failed, file](std::uint64_t at, std::size_t count) {
    disk::Bytes piece = files.read_piece(file, at, count);
    if (piece.code != 0) failed = piece.code;
    return std::move(piece.bytes);
  };
}

}

words::Result<Packed> unpack(disk::Files& files, const Path& file, const Path& folder) {
  std::error_code failed;
  const Path whole = std::filesystem::canonical(file, failed); // which follows links
  if (failed) return tl::make_unexpected(error(disk::Operation::read, file, failed.value()));
  if (!std::filesystem::is_regular_file(whole, failed))
    return tl::make_unexpected(error(disk::Operation::not_a_file, file, EINVAL));
  NewFolder made(files, folder);
  if (auto there = made.begin()) return tl::make_unexpected(*there);
  NewFile out(files);
  const Sink sink{[&](const std::string& name) -> Problem {
                    const auto place = made.place_for(name);
                    return place ? out.open(*place) : place.error();
                  },
                  [&](std::string_view bytes) { return out.write(bytes); },
                  [&] { return out.force(); }};
  int unread = 0;
  Opened opened{new_reader(), ARCHIVE_OK, file.string(), files.size(whole).bytes,
                reader_of(files, whole, unread)};
  opened.said = archive_read_open_filename(opened.zip.get(), whole.c_str(), 65536);
  auto packed = Unpacker(opened, sink).run();
  // What could not be read says nothing of what is in it.
  if (unread != 0) return tl::make_unexpected(error(disk::Operation::read, file, unread));
  if (!packed) return packed;
  if (auto unsafe = made.finish()) return tl::make_unexpected(*unsafe);
  return packed;
}

words::Result<Packed> inspect(std::string_view bytes) {
  Opened opened{new_reader(), ARCHIVE_OK, words::say(Say::pack_itself), bytes.size(),
                [&](std::uint64_t at, std::size_t count) {
                  return std::string(bytes.substr(static_cast<std::size_t>(at), count));
                }};
  opened.said = archive_read_open_memory(opened.zip.get(), bytes.data(), bytes.size());
  return Unpacker(opened, {}).run();
}

}
