// Who waits for whom. A force that waits until the test lets it go stands for a slow disk, so that
// what happens meanwhile is counted and no time is measured.
#include "disk/rig.hpp"

#include <doctest/doctest.h>

#include <thread>

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
