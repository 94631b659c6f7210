#include "commands/script.hpp"

#include "bench/pads_book.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "paint/measure.hpp"
#include "session/bytes.hpp"
#include "words/commands_says.hpp"
#include "words/lists.hpp"
#include "words/session_says.hpp"

#include <array>
#include <cmath>
#include <utility>

namespace commands {

namespace {

using Say = words::CommandsSay;
template <class T>
using Result = words::Result<T>;
using Words = std::vector<std::string>;

Words split(std::string_view line) {
  Words out;
  std::string word;
  for (const char c : line) {
    if (c != ' ' && c != '\t')
      word += c;
    else if (!word.empty())
      out.push_back(std::exchange(word, ""));
  }
  if (!word.empty()) out.push_back(word);
  return out;
}

std::string joined(const Words& words, std::size_t from) {
  std::string out;
  for (std::size_t i = from; i < words.size(); ++i) out += (i > from ? " " : "") + words[i];
  return out;
}

// `unit` is said behind what it may be.
Result<double> number(const std::string& text, double least, double most, const char* unit = "") {
  const auto value = paint::typed_number(text);
  if (!value) return value;
  if (!(*value >= least && *value <= most))
    return words::failure(Say::script_number_range,
                          {text, words::Number(least, 2), words::Number(most, 0), unit});
  return *value;
}

Result<std::int64_t> milliseconds(std::string text, double least_s) {
  const char unit = text.empty() ? ' ' : text.back();
  const double factor = unit == 'h' ? 3600 : unit == 'm' ? 60 : 1;
  if (unit == 's' || unit == 'm' || unit == 'h') text.pop_back();
  const char* said = unit == 'h' ? " h" : unit == 'm' ? " min" : " s";
  const auto value = number(text, least_s / factor, most_script_s / factor, said);
  if (!value) return tl::make_unexpected(value.error());
  return std::llround(*value * factor * 1000);
}

Result<Action> read_at(const Words& w) {
  const auto when = moment(joined(w, 1));
  if (!when) return tl::make_unexpected(when.error());
  return At{*when};
}

Result<Action> read_display(const Words& w) {
  const auto wrong = words::failure(Say::script_display);
  if (w.size() < 2 || w.size() > 3) return wrong;
  const std::size_t times = w[1].find('x');
  if (times == std::string::npos) return wrong;
  const auto wide = number(w[1].substr(0, times), 50, 1000);
  const auto high = number(w[1].substr(times + 1), 50, 1000);
  if (!wide || !high) return wrong;
  if (w.size() == 3 && w[2] != "left" && w[2] != "right") return wrong;
  const bool right = w.size() == 3 && w[2] == "right";
  return Shown{{{*wide, *high}, right ? bench::Hand::right : bench::Hand::left}};
}

Result<Action> read_seed(const Words& w) {
  const auto value = number(joined(w, 1), 0, 4294967295.0);
  if (!value) return tl::make_unexpected(value.error());
  return Seed{static_cast<std::uint32_t>(*value)};
}

Result<Action> read_id(const Words& w) {
  const bool session = w[0] == "session";
  const std::string id = joined(w, 1);
  const bool good = id.size() == (session ? 8 : 4) &&
                    id.find_first_not_of("0123456789abcdef") == std::string::npos;
  if (!good) return words::failure(Say::script_id, {id, session ? "8" : "4"});
  return Named{session ? Named::session : Named::device, id};
}

// "x10" at the end of a tap; a pad's own last word never looks so.
std::optional<std::string> times_of(const std::string& word) {
  const bool is = word.size() > 1 && word[0] == 'x' &&
                  word.find_first_not_of("0123456789", 1) == std::string::npos;
  return is ? std::optional(word.substr(1)) : std::nullopt;
}

Result<Action> read_tap(Words w) {
  Tapped tap;
  if (w.size() > 3 && w[w.size() - 2] == "every") {
    const auto every = milliseconds(w.back(), 0.1);
    if (!every) return tl::make_unexpected(every.error());
    tap.every_ms = *every;
    w.resize(w.size() - 2);
  }
  if (const auto times = w.size() > 2 ? times_of(w.back()) : std::nullopt) {
    const auto count = number(*times, 1, most_taps, " taps");
    if (!count) return tl::make_unexpected(count.error());
    tap.times = static_cast<int>(*count);
    w.pop_back();
  }
  const auto named = pad_of_name(joined(w, 1));
  if (!named) return tl::make_unexpected(named.error());
  tap.pad = *named;
  return tap;
}

Result<Action> read_type(const Words& w) {
  const std::string digits = joined(w, 1);
  const bool good = !digits.empty() && digits.size() <= 8 &&
                    digits.find_first_not_of("0123456789.,") == std::string::npos;
  if (!good) return words::failure(Say::script_type, {digits});
  return Typed{digits};
}

// The text keeps its spaces: it is what stands behind the field's name.
Result<Action> read_write(const Words& w, std::string_view line) {
  using bench::BookPad;
  using bench::ShelfPad;
  struct Field {
    const char* name;
    bench::PadKind pad;
    const char* arg = "";
  };
  constexpr std::array fields{Field{"name", bench::PlanPad::name},
                              Field{"search", bench::SharedPad::search},
                              Field{"note", BookPad::note_text},
                              Field{"batch_name", BookPad::name_text},
                              Field{"label_line", BookPad::label_line},
                              Field{"card_name", ShelfPad::says, "name"},
                              Field{"card_lot", ShelfPad::says, "lot"},
                              Field{"made_on", ShelfPad::says, "made_on"},
                              Field{"keep_until", ShelfPad::says, "keep_until"},
                              Field{"currency", ShelfPad::jar_says, "currency"},
                              Field{"jar_lot", ShelfPad::jar_says, "lot"},
                              Field{"bought_on", ShelfPad::jar_says, "on"}};
  for (const Field& field : fields) {
    if (w.size() < 2 || w[1] != field.name) continue;
    const std::size_t behind = line.find(w[1], line.find("write") + 5) + w[1].size();
    const std::size_t text = line.find_first_not_of(" \t", behind);
    return Written{{field.pad, field.arg},
                   text == std::string_view::npos ? "" : std::string(line.substr(text))};
  }
  return words::failure(Say::script_write);
}

Result<Action> read_wait(const Words& w) {
  const auto ms = milliseconds(joined(w, 1), 0);
  if (!ms) return tl::make_unexpected(ms.error());
  return Waited{*ms};
}

Result<Action> read_down(const Words& w) {
  const auto named = pad_of_name(joined(w, 1));
  if (!named) return tl::make_unexpected(named.error());
  return Down{*named};
}

Result<Action> read_action(std::string_view line) {
  const Words w = split(line);
  const std::string& verb = w[0];
  if (verb == "at") return read_at(w);
  if (verb == "display") return read_display(w);
  if (verb == "seed") return read_seed(w);
  if (verb == "session" || verb == "device") return read_id(w);
  if (verb == "tap") return read_tap(w);
  if (verb == "type") return read_type(w);
  if (verb == "key" && w.size() > 1) return Pressed{joined(w, 1)};
  if (verb == "write") return read_write(w, line);
  if (verb == "wait") return read_wait(w);
  if (verb == "down") return read_down(w);
  if (w.size() > 1) return words::failure(Say::script_no_such_line, {std::string(line)});
  if (verb == "slide") return Slide{};
  if (verb == "up") return Up{};
  if (verb == "stop") return Stop{};
  return words::failure(Say::script_no_such_line, {verb});
}

Result<Action> checked(std::string_view line) {
  if (line.size() > longest_script_line)
    return words::failure(Say::script_line_too_long, {std::to_string(longest_script_line)});
  if (!session::is_utf8(line)) return words::failure(words::SessionSay::text_not_utf8);
  return read_action(line);
}

bool says_nothing(std::string_view line) {
  const std::size_t first = line.find_first_not_of(" \t");
  return first == std::string_view::npos || line[first] == '#';
}

struct Spent {
  double taps = 0;
  double ms = 0;
  void operator()(const Tapped& t) {
    taps += t.times;
    ms += static_cast<double>(t.every_ms) * t.times;
  }
  void operator()(const Typed& t) { taps += static_cast<double>(t.digits.size()); }
  void operator()(const Pressed&) { ++taps; }
  void operator()(const Waited& w) { ms += static_cast<double>(w.ms); }
  template <words::one_of<At, Shown, Seed, Named, Written, Down, Slide, Up, Stop> Nothing>
  void operator()(const Nothing&) {}
  bool too_much() const { return taps > most_taps || ms > most_script_s * 1000; }
};

}

words::Result<bench::PadId> pad_of_name(const std::string& name) {
  const auto known = bench::pad_named(name);
  if (!known) return words::failure(Say::script_no_such_pad, {name});
  return *known;
}

words::Error not_there(const bench::PadId& pad, const bench::Layout& layout) {
  std::string there;
  for (const bench::Pad& one : layout.pads)
    there += (there.empty() ? "" : ", ") + bench::name_of(one.id);
  return {Say::script_pad_not_there, {bench::name_of(pad), there}};
}

words::Result<std::vector<ScriptLine>> read_script(std::string_view text) {
  const auto fault = [](std::size_t number, const words::Error& error) {
    return words::failure(Say::script_line, {std::to_string(number), words::Inner(error)});
  };
  if (text.size() > most_script_bytes)
    return words::failure(Say::script_too_long, {std::to_string(most_script_bytes)});
  text = session::without_bom(text);
  std::vector<ScriptLine> script;
  Spent spent;
  std::size_t number = 0;
  while (!text.empty()) {
    ++number;
    const std::size_t end = text.find('\n');
    std::string_view line = text.substr(0, end);
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    if (says_nothing(line)) continue;
    auto action = checked(line);
    if (!action) return fault(number, action.error());
    std::visit(spent, *action);
    if (spent.too_much()) return fault(number, {Say::script_too_much, {}});
    script.push_back({number, *std::move(action)});
  }
  return script;
}

}
