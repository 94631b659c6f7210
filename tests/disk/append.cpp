// Appends on a disk that works: a real folder, and the memory that knows what a power cut leaves.
#include "disk/rig.hpp"

#include <doctest/doctest.h>

#include <cerrno>

using namespace rig;

TEST_CASE("a confirmed append is in the file") {
  Folder folder;
  Opened disk(folder.path);
  CHECK(confirmed(disk.ask(Append{"sessions/one.jsonl", "first\n"})));
  CHECK(bytes_of(folder.path / "sessions/one.jsonl") == "first\n");
  CHECK(confirmed(disk.ask(Append{"sessions/one.jsonl", "second\n"})));
  CHECK(bytes_of(folder.path / "sessions/one.jsonl") == "first\nsecond\n");
}

TEST_CASE("bytes are bytes: NUL, CR, nothing at all, and more than one write holds") {
  Folder folder;
  Opened disk(folder.path);
  const std::string odd("\0\r\n\xff\xfe", 5);
  const std::string big(5'000'000, 'x');
  CHECK(confirmed(disk.ask(Append{"odd", odd})));
  CHECK(confirmed(disk.ask(Append{"odd", ""})));
  CHECK(confirmed(disk.ask(Append{"odd", big})));
  CHECK(bytes_of(folder.path / "odd") == odd + big);
  CHECK(confirmed(disk.ask(Append{"empty", ""})));
  CHECK(std::filesystem::file_size(folder.path / "empty") == 0);
}

TEST_CASE("a confirmed append outlasts a power cut, its folders too") {
  Memory memory;
  Opened disk(memory);
  CHECK(confirmed(disk.ask(Append{"a/b/c/deep", "1"})));
  CHECK(memory.after_power_cut()["a/b/c/deep"] == "1");
  CHECK(confirmed(disk.ask(Append{"at root", "2"})));
  CHECK(memory.after_power_cut()["at root"] == "2");
  CHECK(confirmed(disk.ask(Append{"a/b/c/deep", "3"})));
  CHECK(memory.after_power_cut()["a/b/c/deep"] == "13");
}

TEST_CASE("a folder whose name was never forced by the run that made it is forced by the next") {
  Memory memory;
  memory.files()->make_folder("/root/sessions");
  Opened disk(memory);
  CHECK(confirmed(disk.ask(Append{"sessions/one", "1"})));
  CHECK(memory.after_power_cut()["sessions/one"] == "1");
}

TEST_CASE("many appends to several files, answered in the order of submission") {
  Folder folder;
  Opened disk(folder.path);
  std::vector<disk::Ticket> tickets;
  std::map<std::string, std::string> expected;
  for (int i = 0; i < 300; ++i) {
    const std::string file = "f" + std::to_string(i % 7 % 3);
    const std::string line = std::to_string(i) + "\n";
    expected[file] += line;
    tickets.push_back(disk.submit(Append{file, line}));
  }
  const std::vector<Answer> answers = disk.await(tickets.size());
  REQUIRE(answers.size() == tickets.size());
  for (std::size_t i = 0; i < tickets.size(); ++i) {
    CHECK(answers[i].ticket == tickets[i]);
    CHECK(confirmed(answers[i]));
  }
  CHECK(expected.size() == 3);
  for (const auto& [file, bytes] : expected) CHECK(bytes_of(folder.path / file) == bytes);
  CHECK(disk.disk->answers().empty());
}

TEST_CASE("a name that exists is never written to, be it a file, a folder or a link") {
  Folder folder;
  put(folder.path / "old", "kept");
  std::filesystem::create_directory(folder.path / "sub");
  std::filesystem::create_symlink(folder.path / "nowhere", folder.path / "link");
  Opened disk(folder.path);
  for (const char* name : {"old", "sub", "link"}) {
    const Answer answer = disk.ask(Append{name, "new"});
    REQUIRE(answer.failures.size() == 1);
    CHECK(answer.failures[0].operation == disk::Operation::open);
    CHECK(answer.failures[0].code == EEXIST);
    CHECK(answer.failures[0].path == (folder.path / name).string());
  }
  CHECK(bytes_of(folder.path / "old") == "kept");
  CHECK_FALSE(std::filesystem::exists(folder.path / "nowhere"));
}

TEST_CASE("a second disk on the same folder cannot write to the first one's file") {
  Folder folder;
  Opened first(folder.path), second(folder.path);
  CHECK(confirmed(first.ask(Append{"s/one", "1"})));
  CHECK_FALSE(confirmed(second.ask(Append{"s/one", "2"})));
  CHECK(confirmed(second.ask(Append{"s/two", "2"})));
  CHECK(confirmed(first.ask(Append{"s/one", "3"})));
  CHECK(bytes_of(folder.path / "s/one") == "13");
}

TEST_CASE("a file where a folder should be") {
  Folder folder;
  put(folder.path / "sessions", "");
  Opened disk(folder.path);
  const Answer answer = disk.ask(Append{"sessions/one", "1"});
  REQUIRE(answer.failures.size() == 1);
  CHECK(answer.failures[0].code == ENOTDIR);
}

TEST_CASE("a root that is not there is a failure and is not made") {
  Folder folder;
  Opened disk(folder.path / "gone");
  const Answer answer = disk.ask(Append{"sessions/one", "1"});
  REQUIRE(answer.failures.size() == 1);
  CHECK(answer.failures[0].operation == disk::Operation::make_folder);
  CHECK(answer.failures[0].code == ENOENT);
  CHECK_FALSE(confirmed(disk.ask(Append{"one", "1"})));
  CHECK_FALSE(std::filesystem::exists(folder.path / "gone"));
}

TEST_CASE("bad names are refused before anything is touched") {
  Folder outside;
  const Path root = outside.path / "root";
  std::filesystem::create_directory(root);
  Opened disk(root);
  const std::string bad[] = {
      "",
      "/",
      "/tmp/slipped",
      "..",
      "../slipped",
      "a/../../slipped",
      "a/..",
      ".",
      "./a",
      "a/./b",
      "a//b",
      "a/",
      "//a",
      "a/../b",
      std::string("a\0b", 3),
      std::string("\0", 1),
  };
  for (const std::string& name : bad) {
    CAPTURE(name);
    for (const auto& request :
         {disk::Request(Append{name, "1"}), disk::Request(ReadFolder{name, ""})}) {
      const Answer answer = disk.ask(request);
      REQUIRE(answer.failures.size() == 1);
      CHECK(answer.failures[0].operation == disk::Operation::name);
      CHECK(answer.failures[0].path == name);
      CHECK(answer.failures[0].code == EINVAL);
    }
  }
  CHECK(std::filesystem::is_empty(root));
  CHECK(std::distance(std::filesystem::directory_iterator(outside.path), {}) == 1);
}

TEST_CASE("odd but good names are taken as they are") {
  Folder folder;
  Opened disk(folder.path);
  for (const char* name : {"...", "..a", ".hidden", "a b", "ä/ö\n", "a\\b", "-"}) {
    CAPTURE(name);
    CHECK(confirmed(disk.ask(Append{name, name})));
    CHECK(bytes_of(folder.path / name) == name);
  }
}

TEST_CASE("a file that is no more under its name, or no more what was written, fails and says so") {
  const std::string name = "s/x";
  const std::initializer_list<std::function<void(const Path&)>> ways{
      [&](const Path& root) { std::filesystem::remove(root / name); },
      [&](const Path& root) { std::filesystem::rename(root / name, root / "s/y"); },
      [&](const Path& root) { std::filesystem::remove_all(root / "s"); },
      [&](const Path& root) { std::filesystem::rename(root / "s", root / "t"); },
      [&](const Path& root) {
        put(root / "other", "1");
        std::filesystem::rename(root / "other", root / name);
      },
      [&](const Path& root) { std::filesystem::resize_file(root / name, 0); },
      [&](const Path& root) { put(root / name, "other"); }};
  for (const auto& way : ways) {
    Folder folder;
    Opened disk(folder.path);
    CHECK(confirmed(disk.ask(Append{name, "1"})));
    way(folder.path);
    for (int again = 0; again < 2; ++again) {
      const Answer answer = disk.ask(Append{name, "2"});
      REQUIRE(answer.failures.size() == 1);
      CHECK(answer.failures[0].operation == disk::Operation::gone);
      CHECK(answer.failures[0].path == (folder.path / name).string());
    }
    CHECK(confirmed(disk.ask(Append{"s/z", "3"})));
    CHECK(bytes_of(folder.path / "s/z") == "3");
  }
}

TEST_CASE("a name beside it, or another name for it, does no harm to a file") {
  Folder folder;
  Opened disk(folder.path);
  CHECK(confirmed(disk.ask(Append{"s/x", "1"})));
  std::filesystem::create_hard_link(folder.path / "s/x", folder.path / "s/y");
  std::filesystem::rename(folder.path / "s", folder.path / "t");
  std::filesystem::create_symlink(folder.path / "t", folder.path / "s"); // as some people move
  CHECK(confirmed(disk.ask(Append{"s/x", "2"})));
  CHECK(bytes_of(folder.path / "t/x") == "12");
}
