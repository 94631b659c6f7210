#include "disk/faulty.hpp"

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <map>
#include <thread>
#include <utility>

namespace disk {
namespace {

using Call = Fault::Call;

constexpr int largest = 1'000'000;

constexpr std::pair<std::string_view, Call> calls[] = {
    {"fail", Call::any},           {"fail-write", Call::write},   {"fail-force", Call::force},
    {"fail-open", Call::open},     {"fail-folder", Call::folder}, {"fail-read", Call::read},
    {"fail-rename", Call::rename}, {"fail-name", Call::name},
};

constexpr std::pair<std::string_view, int> codes[] = {
    {"ENOSPC", ENOSPC}, {"EIO", EIO},       {"EROFS", EROFS},   {"EMFILE", EMFILE},
    {"EACCES", EACCES}, {"EDQUOT", EDQUOT}, {"ESTALE", ESTALE},
};

template <class Table>
auto look_up(const Table& table, std::string_view word)
    -> std::optional<decltype(table[0].second)> {
  for (const auto& [name, value] : table)
    if (name == word) return value;
  return {};
}

std::optional<int> parse_number(std::string_view text) {
  int number = 0;
  const char* end = text.data() + text.size();
  const auto [stopped, wrong] = std::from_chars(text.data(), end, number);
  if (wrong != std::errc() || stopped != end || number < 1 || number > largest) return {};
  return number;
}

// The text up to the next colon, and off with both.
std::string_view cut_word(std::string_view& text) {
  const std::string_view word = text.substr(0, text.find(':'));
  text.remove_prefix(std::min(text.size(), word.size() + 1));
  return word;
}

class FaultyFiles final : public Files {
public:
  FaultyFiles(std::unique_ptr<Files> inner, Fault fault)
      : inner_(std::move(inner)), fault_(fault) {}

  Done make_folder(const Path& folder) override {
    if (strikes(Call::folder)) return {fault_.code};
    return inner_->make_folder(folder);
  }

  Opened open_new(const Path& file) override {
    if (strikes(Call::open)) return {fault_.code, -1};
    return inner_->open_new(file);
  }

  Done write(int handle, std::string_view bytes) override {
    if (!strikes(Call::write)) return inner_->write(handle, bytes);
    const Done half = inner_->write(handle, bytes.substr(0, bytes.size() / 2));
    return {half.code != 0 ? half.code : fault_.code};
  }

  Done force(int handle) override {
    if (strikes(Call::force)) return {fault_.code};
    dawdle();
    return inner_->force(handle);
  }

  Done force_folder(const Path& folder) override {
    if (strikes(Call::folder)) return {fault_.code};
    dawdle();
    return inner_->force_folder(folder);
  }

  Sized size_under(int handle, const Path& file) override {
    if (fault_.call == Call::name && strikes(Call::name)) return {fault_.code, 0};
    return inner_->size_under(handle, file);
  }

  void close(int handle) override { inner_->close(handle); }

  Done rename(const Path& from, const Path& to) override {
    if (strikes(Call::rename)) return {fault_.code};
    return inner_->rename(from, to);
  }

  Done remove(const Path& file) override {
    if (strikes(Call::rename)) return {fault_.code};
    return inner_->remove(file);
  }

  Listed list(const Path& folder) override {
    if (strikes(Call::read)) return {fault_.code, {}, {}};
    return inner_->list(folder);
  }

  Sized size(const Path& file) override {
    if (strikes(Call::read)) return {fault_.code, 0};
    return inner_->size(file);
  }

  Bytes read(const Path& file) override {
    if (strikes(Call::read)) return {fault_.code, {}};
    return inner_->read(file);
  }

  Bytes read_piece(const Path& file, std::uint64_t at, std::size_t most) override {
    if (strikes(Call::read)) return {fault_.code, {}};
    return inner_->read_piece(file, at, most);
  }

private:
  // Counts this call, and says whether it is one that fails.
  bool strikes(Call call) {
    if (fault_.kind != Fault::Kind::fail) return false;
    if (fault_.call != Call::any && fault_.call != call) return false;
    ++counted_;
    return fault_.from ? counted_ >= fault_.nth : counted_ == fault_.nth;
  }

  void dawdle() const {
    if (fault_.kind == Fault::Kind::slow) std::this_thread::sleep_for(fault_.delay);
  }

  const std::unique_ptr<Files> inner_;
  const Fault fault_;
  long long counted_ = 0;
};

class SilentDisk final : public Disk {
public:
  explicit SilentDisk(std::unique_ptr<Disk> inner) : inner_(std::move(inner)) {}

  Ticket submit(Request request) override {
    ++last_ticket_;
    if (std::holds_alternative<ReadFolder>(request))
      ours_[inner_->submit(std::move(request))] = last_ticket_;
    return last_ticket_;
  }

  std::vector<Answer> answers() override {
    std::vector<Answer> come = inner_->answers();
    for (Answer& answer : come) {
      const auto known = ours_.find(answer.ticket);
      answer.ticket = known->second;
      if (answer.to_come == 0) ours_.erase(known);
    }
    return come;
  }

private:
  const std::unique_ptr<Disk> inner_;
  std::map<Ticket, Ticket> ours_; // from the inner disk's tickets, of reads under way
  Ticket last_ticket_ = 0;
};

}

std::optional<Fault> parse_fault(std::string_view text) {
  if (text == "silent") return Fault{.kind = Fault::Kind::silent};
  // A colon at the very end announces a word that does not come.
  if (text.empty() || text.back() == ':') return {};
  std::string_view kind = cut_word(text);
  const auto number = parse_number(cut_word(text));
  if (!number) return {};
  if (kind == "slow" && text.empty())
    return Fault{.kind = Fault::Kind::slow, .delay = std::chrono::milliseconds(*number)};

  constexpr std::string_view from = "-from";
  const bool and_after =
      kind.size() > from.size() && kind.substr(kind.size() - from.size()) == from;
  if (and_after) kind.remove_suffix(from.size());
  const auto call = look_up(calls, kind);
  const auto code = text.empty() ? ENOSPC : look_up(codes, text);
  if (!call || !code) return {};
  return Fault{.call = *call, .nth = *number, .from = and_after, .code = *code};
}

std::unique_ptr<Files> faulty_files(std::unique_ptr<Files> inner, Fault fault) {
  return std::make_unique<FaultyFiles>(std::move(inner), fault);
}

std::unique_ptr<Disk> silent_disk(std::unique_ptr<Disk> inner) {
  return std::make_unique<SilentDisk>(std::move(inner));
}

}
