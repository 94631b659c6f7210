// A workshop to be packed, and packs that are refused.
#pragma once

#include "disk/rig.hpp"
#include "studio/pack.hpp"
#include "studio/zip.hpp"
#include "words/studio_says.hpp"

#include <archive.h>
#include <archive_entry.h>
#include <doctest/doctest.h>

namespace packs {

using rig::Path;
using Say = words::StudioSay;
using Tree = std::map<std::string, std::string>;

// As one is called whose SHA-256 ends so, all else being zeros.
inline std::string photo(const std::string& end) {
  return "photos/" + std::string(64 - end.size(), '0') + end + ".jpg";
}

inline const auto files = disk::posix_files();

inline Tree tree(const Path& folder) {
  Tree all;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
    if (entry.is_regular_file())
      all[entry.path().lexically_relative(folder).string()] = rig::bytes_of(entry.path());
  return all;
}

struct Workshop : rig::Folder {
  Path studio = path / "studio", pack = path / "p.zip", out = path / "new";
  Workshop() {
    std::filesystem::create_directories(studio / "sessions");
    std::filesystem::create_directories(studio / "photos");
    put("sessions/b.jsonl", "two\n");
    put("sessions/a.jsonl", "one\n");
    put("sessions/empty.jsonl", "");
    put(photo("0"), std::string(100'000, '\0') + "jpg");
  }
  void put(const std::string& name, const std::string& bytes) const {
    rig::put(studio / name, bytes);
  }
  // Nothing else lies beside the studio.
  std::size_t beside() const {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(path))
      count += entry.path() != studio && entry.path() != pack ? 1 : 0;
    return count;
  }
};

// Why a pack is refused; that nothing is left of it, and that the error names the file and the
// entry, is looked at each time.
inline std::string refused(const std::string& bytes, const std::string& entry = "") {
  const Workshop w;
  rig::put(w.pack, bytes);
  const auto unpacked = studio::unpack(*files, w.pack, w.out);
  REQUIRE(!unpacked);
  CHECK(unpacked.error().what == Say::unpack_refused);
  CHECK(unpacked.error().args.at(0) == w.pack.string());
  const std::string why = written(unpacked.error().args.at(1));
  CHECK(why.find(entry) != std::string::npos);
  CHECK(w.beside() == 0);
  const auto inspected = studio::inspect(bytes);
  REQUIRE(!inspected);
  CHECK(written(inspected.error().args.at(1)) == why);
  return why;
}

inline std::string entry_refused(const zip::Entry& entry) {
  return refused(zip::of({{"sessions/good.jsonl", "good\n"}, entry}));
}

inline std::string why(words::Sentence reason, const std::string& name) {
  return words::say(reason, {name});
}

// By the library: what is made by hand cannot compress.
inline std::string deflated(const std::string& name, std::size_t zeros) {
  std::string bytes(1'000'000, '\0');
  std::size_t used = 0;
  archive* a = archive_write_new();
  archive_write_set_format_zip(a);
  archive_write_set_bytes_in_last_block(a, 1);
  REQUIRE(archive_write_open_memory(a, bytes.data(), bytes.size(), &used) == ARCHIVE_OK);
  archive_entry* e = archive_entry_new();
  archive_entry_set_pathname(e, name.c_str());
  archive_entry_set_filetype(e, AE_IFREG);
  archive_entry_set_perm(e, 0644);
  REQUIRE(archive_write_header(a, e) == ARCHIVE_OK);
  const std::string block(1 << 20, '\0');
  for (; zeros > 0; zeros -= std::min(zeros, block.size()))
    REQUIRE(archive_write_data(a, block.data(), std::min(zeros, block.size())) > 0);
  archive_entry_free(e);
  REQUIRE(archive_write_close(a) == ARCHIVE_OK);
  archive_write_free(a);
  return bytes.substr(0, used);
}

}
