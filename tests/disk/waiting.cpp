// Who waits for whom. A force that waits until the test lets it go stands for a slow disk, so that
// what happens meanwhile is counted and no time is measured.
#include "disk/rig.hpp"

#include <doctest/doctest.h>

#include <atomic>
#include <thread>
#include <utility>

using namespace rig;

TEST_CASE("submit does not wait for the disk, and lines that waited share a force") {
  Memory memory;
  Opened disk(memory);
  memory.hold_forces();
  std::string expected = "first\n";
  disk.submit(Append{"x", "first\n"});
  memory.wait_for_held_force();
  // All of these return while the first force is still held: a submit that waited would hang here.
  for (int i = 0; i < 50; ++i) {
    const std::string line = std::to_string(i) + "\n";
    expected += line;
    disk.submit(Append{"x", line});
  }
  CHECK(disk.disk->answers().empty());
  CHECK(memory.after_power_cut().empty());

  const int forces = memory.forces(), writes = memory.writes();
  memory.let_forces_go();
  CHECK(disk.await(51).size() == 51);
  CHECK(memory.forces() - forces <= 2);
  CHECK(memory.writes() - writes <= 2);
  CHECK(memory.after_power_cut()["x"] == expected);
}

TEST_CASE("each of two files is forced once for what waited") {
  Memory memory;
  Opened disk(memory);
  REQUIRE(confirmed(disk.ask(Append{"x", "0"})));
  REQUIRE(confirmed(disk.ask(Append{"y", "0"})));
  memory.hold_forces();
  disk.submit(Append{"x", "1"});
  memory.wait_for_held_force();
  for (int i = 0; i < 20; ++i) disk.submit(Append{i % 2 ? "x" : "y", "2"});
  const int forces = memory.forces();
  memory.let_forces_go();
  CHECK(disk.await(21).size() == 21);
  CHECK(memory.forces() - forces == 2);
  CHECK(memory.after_power_cut()["x"] == "01" + std::string(10, '2'));
  CHECK(memory.after_power_cut()["y"] == "0" + std::string(10, '2'));
}

TEST_CASE("the end waits until all that was submitted is written, and closes every file") {
  Memory memory;
  std::string expected;
  {
    Opened disk(memory);
    memory.hold_forces();
    for (int i = 0; i < 100; ++i) {
      disk.submit(Append{"x", std::to_string(i) + "\n"});
      expected += std::to_string(i) + "\n";
    }
    memory.wait_for_held_force();
    std::thread later([&] { memory.let_forces_go(); });
    disk.disk.reset();
    later.join();
  }
  CHECK(memory.after_power_cut()["x"] == expected);
  CHECK(memory.still_open() == 0);
}

namespace {

constexpr int very_many = 100'000;

// A folder of far more than anybody waits for, each of its files a piece of its own.
class Endless final : public rig::Passing {
public:
  explicit Endless(std::function<void()> before_first) : before_first_(std::move(before_first)) {}

  disk::Listed list(const Path& folder) override {
    if (folder.filename() != "endless") return Passing::list(folder);
    disk::Listed listed;
    for (int i = 0; i < very_many; ++i) listed.names.push_back(std::to_string(i));
    return listed;
  }
  disk::Bytes read_piece(const Path& file, std::uint64_t at, std::size_t most) override {
    if (file.parent_path().filename() != "endless") return Passing::read_piece(file, at, most);
    if (const auto first = std::exchange(before_first_, nullptr)) first();
    return {0, at == 0 ? std::string(std::size_t{1} << 20, 'x') : ""};
  }

private:
  std::function<void()> before_first_;
};

}

TEST_CASE("while a folder is read lines come between, whole files and folders wait for its end") {
  const Folder folder;
  std::filesystem::create_directory(folder.path / "s");
  for (const char* name : {"a", "b", "c"})
    put(folder.path / "s" / name, std::string(std::size_t{1} << 20, 'x'));
  Opened disk(folder.path);
  const auto s = disk.submit(ReadFolder{"s", ""}), t = disk.submit(ReadFolder{"t", ""});
  const auto whole = disk.submit(disk::Keep{"whole", "w"}), line = disk.submit(Append{"x", "1"});
  std::vector<disk::Ticket> order;
  for (const Answer& answer : disk.await(7)) order.push_back(answer.ticket);
  CHECK(order == std::vector{s, s, s, s, t, whole, line}); // the last piece says that it was
}

TEST_CASE("at the end a folder is read no further, and what was to be written is") {
  const Folder folder;
  std::atomic<disk::Disk*> at = nullptr;
  std::atomic<int> pieces = 0;
  // All is submitted before the first piece is there, so that the reading is under way for sure.
  auto files = std::make_unique<Endless>([&] {
    at.load()->submit(disk::Keep{"whole", "w"});
    at.load()->submit(ReadFolder{"endless", ""});
    at.load()->submit(Append{"x", "1"});
  });
  auto disk = disk::open_disk(folder.path, std::move(files), [&] {
    at.load()->answers(); // away with the bytes
    ++pieces;
  });
  at = disk.get();
  disk->submit(ReadFolder{"endless", ""});
  while (pieces == 0) std::this_thread::yield();
  disk.reset();
  CHECK(pieces < very_many);
  CHECK(bytes_of(folder.path / "whole") == "w");
  CHECK(bytes_of(folder.path / "x") == "1");
}

TEST_CASE("a disk that was given nothing to do goes at once") {
  Memory memory;
  Opened disk(memory);
  CHECK(disk.disk->answers().empty());
  disk.disk.reset();
  CHECK(disk.bell.rings() == 0);
}

TEST_CASE("wake comes after the answers, and may use the disk") {
  Memory memory;
  Bell bell;
  std::unique_ptr<disk::Disk> disk;
  std::vector<Answer> come;
  const std::function<void()> ring = bell.wake();
  // Had wake been called under the lock, the first call in it would hang.
  disk = disk::open_disk("/root", memory.files(), [&] {
    for (Answer& answer : disk->answers()) come.push_back(std::move(answer));
    if (come.size() == 1) disk->submit(Append{"x", "2"});
    if (come.size() == 2) ring();
  });
  disk->submit(Append{"x", "1"});
  bell.wait_past(0);
  REQUIRE(come.size() == 2);
  CHECK(confirmed(come[0]));
  CHECK(confirmed(come[1]));
  CHECK(memory.after_power_cut()["x"] == "12");
}

TEST_CASE("wake may be empty") {
  Memory memory;
  disk::open_disk("/root", memory.files(), {})->submit(Append{"x", "1"});
  CHECK(memory.after_power_cut()["x"] == "1");
}

TEST_CASE("several threads submit; each one's own lines stay in its order") {
  Memory memory;
  {
    Opened disk(memory);
    std::vector<std::thread> threads;
    for (char who = 'a'; who < 'e'; ++who)
      threads.emplace_back([&disk, who] {
        for (char n = '0'; n <= '9'; ++n) disk.submit(Append{"x", {who, n}});
      });
    for (std::thread& thread : threads) thread.join();
    CHECK(disk.await(40).size() == 40);
  }
  const std::string bytes = memory.after_power_cut()["x"];
  REQUIRE(bytes.size() == 80);
  std::map<char, std::string> by_thread;
  for (std::size_t i = 0; i < bytes.size(); i += 2) by_thread[bytes[i]] += bytes[i + 1];
  for (char who = 'a'; who < 'e'; ++who) CHECK(by_thread[who] == "0123456789");
}
