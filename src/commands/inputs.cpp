#include "commands/inputs.hpp"

#include "commands/check.hpp"
#include "commands/show.hpp"
#include "studio/journal.hpp"
#include "studio/sentences.hpp"
#include "words/commands_says.hpp"

#include <cerrno>
#include <fstream>
#include <ostream>

namespace commands {

using Say = words::CommandsSay;

namespace {

// An empty folder is an empty one. A folder that cannot be looked into may be one: reading it says
// why not.
bool is_studio(const studio::Path& folder) {
  if (folder.empty()) return false;
  std::error_code failed;
  const auto sessions = std::filesystem::status(folder / studio::sessions_folder, failed);
  if (sessions.type() != std::filesystem::file_type::not_found) return true;
  return std::filesystem::is_directory(folder, failed) &&
         (std::filesystem::is_empty(folder, failed) || failed);
}

}

studio::Path fallback_of(const Arguments& a, const studio::Path& home) {
  return a.value("--fallback")
      .value_or(studio::fallback_folder(studio::state_folder(), home).string());
}

std::optional<words::Error> fault_of_studio(const studio::Path& home, const studio::Path& beside) {
  std::error_code ignored, failed;
  const auto there = std::filesystem::status(home, failed);
  if (!is_directory(there) && !std::filesystem::is_directory(beside, ignored)) {
    if (exists(there) || there.type() == std::filesystem::file_type::not_found)
      return words::Error{Say::no_studio, {home.string()}};
    return studio::error(disk::Operation::list, home, failed.value());
  }
  if (is_studio(home) || is_studio(beside)) return std::nullopt;
  return words::Error{Say::not_a_studio, {home.string()}};
}

words::Result<Studio> studio_of(const Arguments& a) {
  Studio s{a.value("--studio").value_or(studio::default_studio().string()), {}};
  s.fallback = fallback_of(a, s.home);
  if (auto none = fault_of_studio(s.home, s.fallback)) return tl::make_unexpected(*std::move(none));
  return s;
}

words::Result<studio::Reading> read_studio(const Studio& where) {
  studio::Reading reading = studio::read_all(where.home, where.fallback);
  if (reading.files.empty() && !reading.faults.empty())
    return tl::make_unexpected(std::move(reading.faults.front()));
  return reading;
}

words::Result<std::string> bytes_of_file(const std::string& path, std::size_t most) {
  const auto unread = [&](int code) {
    return tl::make_unexpected(studio::error(disk::Operation::read, path, code));
  };
  std::error_code failed;
  const auto status = std::filesystem::status(path, failed);
  if (is_directory(status)) return words::failure(Say::not_a_file, {path});
  if (exists(status) && !is_regular_file(status))
    return words::failure(Say::not_a_plain_file, {path});
  std::ifstream in(path, std::ios::binary);
  if (!in.is_open()) return unread(errno);
  std::string bytes(most + 1, '\0');
  in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  if (in.bad()) return unread(errno);
  bytes.resize(static_cast<std::size_t>(in.gcount()));
  return bytes;
}

words::Result<std::optional<disk::Fault>> disk_fault_of(const Arguments& a) {
  const auto text = a.value("--fault");
  if (!text) return std::nullopt;
  const auto fault = disk::parse_fault(*text);
  if (!fault) return words::failure(Say::bad_fault, {*text});
  return fault;
}

std::vector<session::File> taken_out(std::vector<session::File>& left) {
  std::vector<session::File> whole = std::exchange(left, {});
  for (session::File& file : whole) {
    std::vector<session::Line> lines = std::exchange(file.lines, {});
    left.push_back(file);
    file.lines = std::move(lines);
  }
  return whole;
}

void say_what_is_lacking(const studio::Reading& left, const std::vector<session::Log>& logs,
                         std::ostream& err) {
  for (const words::Error& fault : left.faults) err << printable(words::message(fault)) << '\n';
  if (const std::size_t places = damaged_places(findings(left, logs)); places > 0)
    err << words::say(Say::read_with_damage,
                      {words::counted(places, Say::count_place, Say::count_places)})
        << '\n';
}

words::Result<std::vector<session::Log>> logs_of(const Arguments& a, std::ostream& err) {
  const auto where = studio_of(a);
  if (!where) return tl::make_unexpected(where.error());
  auto reading = read_studio(*where);
  if (!reading) return tl::make_unexpected(reading.error());
  std::vector<session::Log> logs = session::join_parts(taken_out(reading->files));
  say_what_is_lacking(*reading, logs, err);
  return logs;
}

}
