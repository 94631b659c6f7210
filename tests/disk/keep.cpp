// Whole files: under its name lies all of a file or nothing.
#include "disk/faulty.hpp"
#include "disk/rig.hpp"

#include <doctest/doctest.h>

#include <cerrno>

using namespace rig;
using disk::Keep;

namespace {

const std::string whole(100'000, 'w');

std::vector<std::string> names_in(const Path& folder) {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    names.push_back(entry.path().filename().string());
  return names;
}

disk::Failure failure_of(const Answer& answer) {
  REQUIRE(answer.failures.size() == 1);
  return answer.failures[0];
}

}

TEST_CASE("a file is kept whole with its folders, and nothing is left beside it") {
  Folder folder;
  Opened disk(folder.path);
  CHECK(confirmed(disk.ask(Keep{"a/b/whole", whole})));
  CHECK(bytes_of(folder.path / "a/b/whole") == whole);
  CHECK(confirmed(disk.ask(Keep{"a/b/empty", ""})));
  CHECK(names_in(folder.path / "a/b").size() == 2);
}

TEST_CASE("the same bytes are kept once more; others are refused, and what was there stays") {
  Folder folder;
  Opened disk(folder.path);
  CHECK(confirmed(disk.ask(Keep{"whole", whole})));
  CHECK(confirmed(disk.ask(Keep{"whole", whole})));
  for (const std::string& other : {whole + "x", whole.substr(1), std::string(whole.size(), 'o')}) {
    const disk::Failure failed = failure_of(disk.ask(Keep{"whole", other}));
    CHECK(failed.operation == disk::Operation::keep);
    CHECK(failed.code == EEXIST);
    CHECK(failed.path == folder.path / "whole");
  }
  CHECK(bytes_of(folder.path / "whole") == whole);
  CHECK(names_in(folder.path).size() == 1);
}

TEST_CASE("a file that was there without having been forced is safe once it was kept again") {
  Memory memory;
  const auto files = memory.files();
  const disk::Opened by_hand = files->open_new("/root/whole");
  files->write(by_hand.handle, whole);
  files->close(by_hand.handle);
  REQUIRE(memory.after_power_cut().empty());
  Opened disk(memory);
  CHECK(confirmed(disk.ask(Keep{"whole", whole})));
  CHECK(memory.after_power_cut()["whole"] == whole);
}

TEST_CASE("a link, a folder or a bad name in the file's place is a failure") {
  Folder folder;
  put(folder.path / "outside", "mine");
  std::filesystem::create_directory(folder.path / "p");
  std::filesystem::create_symlink(folder.path / "outside", folder.path / "p/link");
  std::filesystem::create_directory(folder.path / "p/folder");
  Opened disk(folder.path);
  CHECK(failure_of(disk.ask(Keep{"p/link", "mine"})).operation == disk::Operation::read);
  CHECK(failure_of(disk.ask(Keep{"p/folder", ""})).operation == disk::Operation::read);
  for (const char* bad : {"", "../x", "/x", "p//x", "p/", "."})
    CHECK(failure_of(disk.ask(Keep{bad, ""})).operation == disk::Operation::name);
  CHECK(bytes_of(folder.path / "outside") == "mine");
  CHECK(names_in(folder.path / "p").size() == 2);
}

TEST_CASE(
    "every call fails once, or from then on: whole or not there, and confirmed only if whole") {
  for (const char* kind : {"fail", "fail-from", "fail-write", "fail-force", "fail-open",
                           "fail-folder", "fail-read", "fail-rename"}) {
    int n = 1;
    for (bool failed = true; failed; ++n) {
      REQUIRE(n < 100);
      const std::string text = std::string(kind) + ":" + std::to_string(n) + ":EIO";
      CAPTURE(text);
      Memory memory;
      {
        Opened disk("/root", disk::faulty_files(memory.files(), *disk::parse_fault(text)));
        const Answer answer = disk.ask(Keep{"p/q/whole", whole});
        failed = !confirmed(answer);
        if (failed) CHECK(failure_of(answer).code == EIO);
      }
      CHECK(memory.still_open() == 0);
      auto left = memory.after_power_cut();
      if (!failed || left.count("p/q/whole")) CHECK(left["p/q/whole"] == whole);

      Opened later(memory); // what is left is in nobody's way
      CHECK(confirmed(later.ask(Keep{"p/q/whole", whole})));
      CHECK(memory.after_power_cut()["p/q/whole"] == whole);
    }
    CHECK(n > 2); // there was such a call
  }
}

TEST_CASE("what could not be written whole does not stay: a full disk is not filled for good") {
  Folder folder;
  Opened disk(folder.path,
              disk::faulty_files(disk::posix_files(), *disk::parse_fault("fail-write:1")));
  CHECK(failure_of(disk.ask(Keep{"whole", whole})).operation == disk::Operation::write);
  CHECK(names_in(folder.path).empty());
  CHECK(confirmed(disk.ask(Keep{"whole", whole})));
}

TEST_CASE("appends, kept files and readings of small folders are answered in the order of their "
          "submission") {
  Memory memory;
  Opened disk(memory);
  std::vector<disk::Ticket> tickets;
  for (int i = 0; i < 20; ++i) {
    tickets.push_back(disk.submit(Append{"log", "line\n"}));
    tickets.push_back(disk.submit(Keep{"p/" + std::to_string(i), "small"}));
    tickets.push_back(disk.submit(ReadFolder{"p", ""}));
  }
  const std::vector<Answer> answers = disk.await(tickets.size());
  REQUIRE(answers.size() == tickets.size());
  for (std::size_t i = 0; i < answers.size(); ++i) {
    CHECK(answers[i].ticket == tickets[i]);
    CHECK(confirmed(answers[i]));
    if (i % 3 == 2) CHECK(answers[i].files.size() == i / 3 + 1);
  }
}
