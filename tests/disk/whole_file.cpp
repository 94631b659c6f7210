// Whatever call fails: what was there stays as it was, and nothing else lies there.
#include "disk/whole_file.hpp"

#include "disk/faulty.hpp"
#include "disk/rig.hpp"

#include <doctest/doctest.h>

#include <cerrno>

using namespace rig;

namespace {

std::unique_ptr<disk::Files> failing(const char* fault) {
  return disk::faulty_files(disk::posix_files(), *disk::parse_fault(fault));
}

std::size_t files_in(const Path& folder) {
  std::size_t count = 0;
  for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(folder)) ++count;
  return count;
}

struct Wrong {
  const char* fault;
  disk::Operation operation;
};

}

TEST_CASE("a new file is whole, and never written over") {
  Folder folder;
  const auto files = disk::posix_files();
  CHECK_FALSE(disk::write_new(*files, folder.path / "a", "first"));
  const auto failed = disk::write_new(*files, folder.path / "a", "second");
  REQUIRE(failed);
  CHECK(failed->operation == disk::Operation::open);
  CHECK(failed->code == EEXIST);
  CHECK(bytes_of(folder.path / "a") == "first");
}

TEST_CASE("a new file that fails leaves nothing") {
  for (const Wrong& wrong : {Wrong{"fail-open:1:EIO", disk::Operation::open},
                             Wrong{"fail-write:1:EIO", disk::Operation::write},
                             Wrong{"fail-force:1:EIO", disk::Operation::force}}) {
    Folder folder;
    const auto failed = disk::write_new(*failing(wrong.fault), folder.path / "a", "bytes");
    REQUIRE(failed);
    CHECK(failed->operation == wrong.operation);
    CHECK(failed->code == EIO);
    CHECK(failed->path == folder.path / "a");
    CHECK(files_in(folder.path) == 0);
  }
}

TEST_CASE("a file is put in the place of another whole") {
  Folder folder;
  const auto files = disk::posix_files();
  for (const std::string bytes : {"first", "", "third"}) {
    CHECK_FALSE(disk::put_in_place(*files, folder.path / "a", folder.path / "a.new", bytes));
    CHECK(bytes_of(folder.path / "a") == bytes);
    CHECK(files_in(folder.path) == 1);
  }
}

TEST_CASE("what was there stays where its successor fails") {
  for (const Wrong& wrong : {Wrong{"fail-open:1:EIO", disk::Operation::open},
                             Wrong{"fail-write:1:EIO", disk::Operation::write},
                             Wrong{"fail-force:1:EIO", disk::Operation::force},
                             Wrong{"fail-rename:1:EIO", disk::Operation::rename}}) {
    Folder folder;
    put(folder.path / "a", "first");
    const auto failed = disk::put_in_place(*failing(wrong.fault), folder.path / "a",
                                           folder.path / "a.new", "second");
    REQUIRE(failed);
    CHECK(failed->operation == wrong.operation);
    CHECK(failed->code == EIO);
    CHECK(bytes_of(folder.path / "a") == "first");
    CHECK(files_in(folder.path) == 1);
  }
}

TEST_CASE("a name that could not be forced is said") {
  Folder folder;
  const auto failed = disk::put_in_place(*failing("fail-folder:1:EIO"), folder.path / "a",
                                         folder.path / "a.new", "bytes");
  REQUIRE(failed);
  CHECK(failed->operation == disk::Operation::force);
  CHECK(failed->path == folder.path);
}
