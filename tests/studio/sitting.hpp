// A session saved on disks in memory that fail as told, and what is left of it when the power goes.
#pragma once

#include "disk/faulty.hpp"
#include "disk/rig.hpp"
#include "session/reader.hpp"
#include "studio/journal.hpp"

#include <doctest/doctest.h>

#include <cerrno>

namespace sitting {

using namespace studio;

inline session::Line line(std::uint64_t n, session::Event event) {
  const auto ms = static_cast<std::int64_t>(n) * 1000;
  return {n, ms, 1795617120000 + ms, n == 0 ? "" : "7f3a91c2", std::move(event)};
}

// Began, and then additions whose amount is their number.
inline session::Line line(std::uint64_t n) {
  if (n > 0) return line(n, session::Added{"gum_12", session::Unit::g, static_cast<double>(n), ""});
  session::Began began;
  began.session = "c41e08d5";
  began.device = "a83f";
  began.local = "2026-11-25T15:32:00+01:00";
  return line(n, began);
}

inline std::vector<disk::Fault> faults(std::vector<std::string> texts) {
  std::vector<disk::Fault> out;
  for (const std::string& text : texts) out.push_back(disk::parse_fault(text).value());
  return out;
}

// One disk in memory below several faults: the first sees every call, the next what it lets pass.
struct Spoilt {
  rig::Memory memory;
  std::unique_ptr<disk::Disk> disk;

  Spoilt(const std::vector<disk::Fault>& faults, const rig::Bell& bell) {
    auto files = memory.files();
    for (auto f = faults.rbegin(); f != faults.rend(); ++f)
      files = disk::faulty_files(std::move(files), *f);
    disk = disk::open_disk("/root", std::move(files), bell.wake());
  }
};

struct Sitting {
  rig::Bell bell;
  Spoilt home, fallback;
  std::unique_ptr<Journal> journal;
  std::vector<std::uint64_t> saved; // as reported
  std::vector<std::string> failed;

  explicit Sitting(const std::vector<disk::Fault>& at_home, bool with_fallback = false,
                   const std::vector<disk::Fault>& at_fallback = {})
      : home(at_home, bell), fallback(at_fallback, bell),
        journal(
            std::make_unique<Journal>(*home.disk, with_fallback ? fallback.disk.get() : nullptr)) {}

  void append(std::uint64_t n) { journal->append(line(n)); }

  void poll() {
    for (const News& news : journal->poll()) {
      if (const auto* s = std::get_if<Saved>(&news)) saved.push_back(s->n);
      if (const auto* f = std::get_if<Failed>(&news)) failed.push_back(words::message(f->reason));
    }
  }

  // Until everything is confirmed, or cannot be for now.
  void settle() {
    for (;;) {
      const long rings = bell.rings();
      poll();
      if (journal->unsaved() == 0 || journal->stuck()) return;
      bell.wait_past(rings);
    }
  }

  // Lines up to here were said to be safe; -1: none.
  std::int64_t confirmed() const {
    return saved.empty() ? -1 : static_cast<std::int64_t>(saved.back());
  }

  std::vector<std::string> files_left() {
    std::vector<std::string> names;
    for (auto* spoilt : {&home, &fallback})
      for (const auto& [name, bytes] : spoilt->memory.after_power_cut()) names.push_back(name);
    return names;
  }

  // What a reader finds after the power went. The beginning of a part that starts at line 0 stands
  // for that line.
  std::vector<session::Line> left() {
    std::vector<session::File> files;
    for (auto* spoilt : {&home, &fallback})
      for (const auto& [name, bytes] : spoilt->memory.after_power_cut())
        files.push_back(session::read_file(name, bytes));
    const auto logs = session::join_parts(files);
    REQUIRE(logs.size() <= 1);
    if (logs.empty()) return {};
    CHECK(logs[0].session == "c41e08d5");
    CHECK(logs[0].device == "a83f");
    std::vector<session::Line> lines = logs[0].lines;
    const bool began =
        !lines.empty() && std::holds_alternative<session::Began>(lines.front().event);
    if (began) lines.erase(lines.begin());
    lines.insert(lines.begin(), line(0));
    return lines;
  }
};

}
