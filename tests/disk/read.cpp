// Reading a folder, and the real system calls at their edges.
#include "disk/faulty.hpp"
#include "disk/rig.hpp"

#include <doctest/doctest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

using namespace rig;

TEST_CASE("a folder is read whole, sorted, and only what ends so") {
  Folder folder;
  std::filesystem::create_directories(folder.path / "sessions/sub.jsonl");
  put(folder.path / "sessions/sub.jsonl/deeper.jsonl", "not this");
  put(folder.path / "sessions/b.jsonl", "b\n");
  put(folder.path / "sessions/a.jsonl", std::string("a\0\r\n", 4));
  put(folder.path / "sessions/B.jsonl", "");
  put(folder.path / "sessions/a.jsonl.tmp", "not this");
  put(folder.path / "sessions/jsonl", "not this");
  put(folder.path / "outside.jsonl", "not this");
  std::filesystem::create_symlink(folder.path / "outside.jsonl", folder.path / "sessions/c.jsonl");
  REQUIRE(::mkfifo((folder.path / "sessions/pipe.jsonl").c_str(), 0600) == 0);

  Opened disk(folder.path);
  const Answer answer = disk.ask(ReadFolder{"sessions", ".jsonl"});
  std::vector<std::string> odd; // a link, a pipe and a folder are said, and not read
  for (const disk::Failure& failure : answer.failures) {
    CHECK(failure.operation == disk::Operation::not_a_file);
    odd.push_back(Path(failure.path).filename());
  }
  CHECK(odd == std::vector<std::string>{"c.jsonl", "pipe.jsonl", "sub.jsonl"});
  REQUIRE(answer.files.size() == 3);
  CHECK(answer.files[0].name == "B.jsonl");
  CHECK(answer.files[0].bytes.empty());
  CHECK(answer.files[1].name == "a.jsonl");
  CHECK(answer.files[1].bytes == std::string("a\0\r\n", 4));
  CHECK(answer.files[2].name == "b.jsonl");
  CHECK(answer.files[2].bytes == "b\n");
  CHECK(disk.ask(ReadFolder{"sessions", ""}).files.size() == 5);
}

TEST_CASE("many files, one of them big") {
  Folder folder;
  std::filesystem::create_directory(folder.path / "s");
  for (int i = 0; i < 500; ++i)
    put(folder.path / "s" / std::to_string(1000 + i), std::to_string(i));
  const std::string big(3'000'000, 'y');
  put(folder.path / "s/9999", big);
  Opened disk(folder.path);
  const Answer answer = disk.read(ReadFolder{"s", ""});
  CHECK(answer.failures.empty());
  REQUIRE(answer.files.size() == 501);
  for (std::size_t i = 0; i < 500; ++i) CHECK(answer.files[i].bytes == std::to_string(i));
  CHECK(answer.files[500].bytes == big);
}

// A file of the kernel's says that it holds nothing, and then holds more, as one does that grows.
TEST_CASE("a file that holds more than it said is read to its end") {
  const auto files = disk::posix_files();
  const disk::Bytes status = files->read("/proc/self/status");
  CHECK(status.code == 0);
  CHECK(status.bytes.find("VmPeak:") != std::string::npos);
  CHECK(status.bytes.back() == '\n');
}

TEST_CASE("a file too large for a session is said and left, and the others are read") {
  Folder folder;
  std::filesystem::create_directory(folder.path / "s");
  for (const char* name : {"a", "b", "c"}) put(folder.path / "s" / name, name);
  std::filesystem::resize_file(folder.path / "s/b", std::uint64_t{2} << 30); // takes no room
  const Answer answer = Opened(folder.path).read(ReadFolder{"s", ""});
  REQUIRE(answer.failures.size() == 1);
  CHECK(answer.failures[0].operation == disk::Operation::too_large);
  CHECK(answer.failures[0].path == (folder.path / "s/b").string());
  REQUIRE(answer.files.size() == 2);
  CHECK(answer.files[0].name == "a");
  CHECK(answer.files[1].name == "c");
}

TEST_CASE("a file of many pieces is read whole, and lines are written between two of them") {
  Folder folder;
  std::filesystem::create_directory(folder.path / "s");
  std::string big(5'500'000, 'y');
  for (std::size_t i = 0; i < big.size(); i += 1000)
    big[i] = static_cast<char>('a' + i / 1000 % 26);
  put(folder.path / "s/big", big);
  Opened disk(folder.path);
  disk.submit(ReadFolder{"s", ""});
  disk.submit(Append{"x", "1"});
  const std::vector<Answer> answers = disk.await(7);
  REQUIRE(answers.size() == 7);
  const auto written = std::find_if(answers.begin(), answers.end(),
                                    [&](const Answer& a) { return a.ticket != answers[0].ticket; });
  CHECK(written < answers.end() - 1);
  REQUIRE(answers.back().files.size() == 1);
  CHECK(answers.back().files[0].bytes == big);
}

TEST_CASE("a folder that is not there is empty, unless the root is gone") {
  Folder folder;
  Opened here(folder.path), gone(folder.path / "gone");
  const Answer empty = here.ask(ReadFolder{"a/b", ".jsonl"});
  CHECK(empty.failures.empty());
  CHECK(empty.files.empty());
  const Answer failed = gone.ask(ReadFolder{"a/b", ".jsonl"});
  REQUIRE(failed.failures.size() == 1);
  CHECK(failed.failures[0].operation == disk::Operation::list);
  CHECK(failed.failures[0].code == ENOENT);
}

TEST_CASE("a file in a folder's place cannot be listed") {
  Folder folder;
  put(folder.path / "sessions", "");
  Opened disk(folder.path);
  const Answer answer = disk.ask(ReadFolder{"sessions", ""});
  REQUIRE(answer.failures.size() == 1);
  CHECK(answer.failures[0].operation == disk::Operation::list);
  CHECK(answer.failures[0].code == ENOTDIR);
}

TEST_CASE("one file cannot be read: it is named, and the rest is read") {
  Folder folder;
  for (const char* name : {"a", "b", "c"}) put(folder.path / name, name);
  std::filesystem::create_directory(folder.path / "s");
  for (const char* name : {"a", "b", "c"}) put(folder.path / "s" / name, name);
  // The third reading call: after the listing and a.
  const auto fault = disk::parse_fault("fail-read:3:EACCES");
  REQUIRE(fault);
  Opened disk(folder.path, disk::faulty_files(disk::posix_files(), *fault));
  const Answer answer = disk.ask(ReadFolder{"s", ""});
  REQUIRE(answer.failures.size() == 1);
  CHECK(answer.failures[0].operation == disk::Operation::read);
  CHECK(answer.failures[0].path == (folder.path / "s/b").string());
  CHECK(answer.failures[0].code == EACCES);
  REQUIRE(answer.files.size() == 2);
  CHECK(answer.files[0].bytes == "a");
  CHECK(answer.files[1].bytes == "c");
}

TEST_CASE("a read finds what was appended before it, and stands among the answers in its place") {
  Folder folder;
  Opened disk(folder.path);
  disk.submit(Append{"s/x", "1"});
  disk.submit(ReadFolder{"s", ""});
  disk.submit(Append{"s/x", "2"});
  disk.submit(Append{"s/y", "3"});
  disk.submit(ReadFolder{"s", ""});
  const std::vector<Answer> answers = disk.await(5);
  REQUIRE(answers.size() == 5);
  for (std::size_t i = 0; i < 5; ++i) CHECK(answers[i].ticket == answers[0].ticket + i);
  REQUIRE(answers[1].files.size() == 1);
  CHECK(answers[1].files[0].bytes == "1");
  REQUIRE(answers[4].files.size() == 2);
  CHECK(answers[4].files[0].bytes == "12");
  CHECK(answers[4].files[1].bytes == "3");
}

// What the calls must say is from open(2), mkdir(2), write(2) and fsync(2).
TEST_CASE("the system calls say what went wrong") {
  Folder folder;
  const auto files = disk::posix_files();
  CHECK(files->make_folder(folder.path).code == EEXIST);
  CHECK(files->make_folder(folder.path / "a/b").code == ENOENT);
  CHECK(files->open_new(folder.path / "a/b").code == ENOENT);
  CHECK(files->write(-1, "x").code == EBADF);
  CHECK(files->force(-1).code == EBADF);
  CHECK(files->force_folder(folder.path / "a").code == ENOENT);
  CHECK(files->force_folder(folder.path).code == 0);
  CHECK(files->list(folder.path / "a").code == ENOENT);
  CHECK(files->read(folder.path / "a").code == ENOENT);
  CHECK(files->read(folder.path).code != 0);
  put(folder.path / "file", "x");
  CHECK(files->force_folder(folder.path / "file").code == ENOTDIR);
  std::filesystem::create_symlink(folder.path / "file", folder.path / "link");
  CHECK(files->read(folder.path / "link").code == ELOOP);
  REQUIRE(::mkfifo((folder.path / "pipe").c_str(), 0600) == 0);
  CHECK(files->read(folder.path / "pipe").code == EINVAL);
}

TEST_CASE("a piece of a file is as long as was asked, or ends with the file") {
  Folder folder;
  put(folder.path / "file", std::string("01234\0\n789", 10));
  Memory memory;
  const auto opened = memory.files()->open_new("/root/file");
  memory.files()->write(opened.handle, std::string_view("01234\0\n789", 10));
  const auto check = [](disk::Files& files, const Path& root) {
    const auto piece = [&](std::uint64_t at, std::size_t most) {
      const disk::Bytes read = files.read_piece(root / "file", at, most);
      CHECK(read.code == 0);
      return read.bytes;
    };
    CHECK(piece(0, 3) == "012");
    CHECK(piece(3, 4) == std::string("34\0\n", 4));
    CHECK(piece(7, 3) == "789");
    CHECK(piece(7, 4) == "789");
    CHECK(piece(10, 4).empty());
    CHECK(piece(11, 4).empty());
    CHECK(piece(0, 0).empty());
    CHECK(files.read_piece(root / "none", 0, 1).code == ENOENT);
  };
  check(*disk::posix_files(), folder.path);
  check(*memory.files(), "/root");
}

TEST_CASE("a piece is read of plain files only, and its reading can fail") {
  Folder folder;
  put(folder.path / "file", "x");
  std::filesystem::create_symlink(folder.path / "file", folder.path / "link");
  REQUIRE(::mkfifo((folder.path / "pipe").c_str(), 0600) == 0);
  const auto files = disk::posix_files();
  CHECK(files->read_piece(folder.path / "link", 0, 1).code == ELOOP);
  CHECK(files->read_piece(folder.path / "pipe", 0, 1).code == EINVAL);
  CHECK(files->read_piece(folder.path, 0, 1).code == EINVAL);
  // pread(2): an offset that does not fit is EINVAL.
  CHECK(files->read_piece(folder.path / "file", ~std::uint64_t{0}, 1).code == EINVAL);
  const auto failing =
      disk::faulty_files(disk::posix_files(), *disk::parse_fault("fail-read:2:EIO"));
  CHECK(failing->read_piece(folder.path / "file", 0, 1).bytes == "x");
  CHECK(failing->read_piece(folder.path / "file", 0, 1).code == EIO);
}

TEST_CASE("a file of a known size that goes meanwhile is tried, and that it is gone is said") {
  Folder folder;
  std::filesystem::create_directory(folder.path / "s");
  put(folder.path / "s/a", "1");
  // The second reading call asks for its size.
  Opened disk(folder.path,
              disk::faulty_files(disk::posix_files(), *disk::parse_fault("fail-read-from:2:EIO")));
  const Answer answer = disk.ask(ReadFolder{"s", "", {{"a", 1}}});
  REQUIRE(answer.failures.size() == 1);
  CHECK(answer.failures[0].operation == disk::Operation::read);
}

// proc(5): the first page of a program is no memory, so that reading it fails with EIO, and its
// folders lie on no disk that could be forced.
TEST_CASE(
    "a disk that fails while it is read says so; a folder that cannot be forced need not be") {
  const auto files = disk::posix_files();
  CHECK(files->read("/proc/self/mem").code == EIO);
  CHECK(files->read_piece("/proc/self/mem", 0, 1).code == EIO);
  CHECK(files->force_folder("/proc/self").code == 0);
}

TEST_CASE("what says that a folder cannot be forced, and what says that it went wrong") {
  for (const int code : {EINVAL, EBADF, ENOSYS, EOPNOTSUPP})
    CHECK(disk::has_no_force_for_folders(code));
  for (const int code : {0, EIO, ENOSPC, EDQUOT, EROFS, EACCES, ENOENT})
    CHECK_FALSE(disk::has_no_force_for_folders(code));
}

TEST_CASE("what cannot be told of a file does not hide it") {
  Folder folder;
  std::filesystem::permissions(folder.path, std::filesystem::perms(0755));
  const Path closed = folder.path / "closed"; // its names can be read, and nothing else
  std::filesystem::create_directory(closed);
  put(closed / "a", "1");
  std::filesystem::permissions(closed, std::filesystem::perms(0444));
  const uid_t before = ::geteuid(), nobody = 65534;
  if (before == 0) REQUIRE(::seteuid(nobody) == 0);
  const auto listed = disk::posix_files()->list(closed);
  const auto read = disk::posix_files()->read(closed / "a");
  if (before == 0) REQUIRE(::seteuid(before) == 0);
  std::filesystem::permissions(closed, std::filesystem::perms(0755));
  CHECK(listed.code == 0);
  CHECK(listed.names == std::vector<std::string>{"a"});
  CHECK(read.code == EACCES);
}
