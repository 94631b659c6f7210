#include "screens/lettering.hpp"

#include "screens/broken_words.hpp"
#include "screens/measure.hpp"
#include "screens/theme.hpp"
#include "words/letters.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <string_view>
#include <utility>

namespace screens {

namespace {

// Of a ratio written with spaces ("1 : 2") nothing is left alone.
std::vector<std::string> with_ratios(std::vector<std::string> words) {
  for (std::size_t i = 1; i + 1 < words.size(); ++i) {
    if (words[i] != ":") continue;
    words[i - 1] += " : " + words[i + 1];
    const auto at = words.begin() + static_cast<std::ptrdiff_t>(i);
    words.erase(at, at + 2);
    --i;
  }
  return words;
}

bool is_number(const std::string& word) {
  const bool led = word.size() > 1 && (word[0] == '(' || word[0] == '-');
  const char first = word.empty() ? 'x' : led ? word[1] : word[0];
  return (first >= '0' && first <= '9') || word.rfind("½", 0) == 0 || word.rfind("¼", 0) == 0 ||
         word.rfind("¾", 0) == 0;
}

bool is_unit(std::string word) {
  while (!word.empty() && std::string(".,;:)").find(word.back()) != std::string::npos)
    word.pop_back();
  static const std::set<std::string> units{"g", "kg",  "mg", "mL", "mm", "min", "h",  "s",
                                           "%", "tsp", "°C", "℃",  "K",  "TL",  "EL", "tbsp"};
  return units.count(word) > 0;
}

// A number stays with its unit, and what it is counted within with what it is.
std::vector<std::string> with_units(const std::vector<std::string>& words) {
  std::vector<std::string> out;
  for (const std::string& word : words) {
    const bool goes_on = !out.empty() && is_number(out.back()) &&
                         (is_unit(word) || word == "±" || word == "×" || word == "+" ||
                          (is_number(word) && out.back().size() > 2 &&
                           (out.back().rfind("±") == out.back().size() - 2 ||
                            out.back().rfind("×") == out.back().size() - 2 ||
                            out.back().rfind(" +") == out.back().size() - 2)));
    if (goes_on)
      out.back() += " " + word;
    else
      out.push_back(word);
  }
  return out;
}

// A hyphen between letters or digits; behind a space that keeps its line it is a minus.
bool is_hyphen(const std::string& word) {
  if (word.size() < 2 || word.back() != '-') return false;
  const std::string nbsp = "\u00a0";
  return word.size() <= nbsp.size() ||
         word.compare(word.size() - 1 - nbsp.size(), nbsp.size(), nbsp) != 0;
}

// A hyphen inside a word ends a piece too; no space follows it then.
std::vector<std::string> split(const std::string& words) {
  std::vector<std::string> out;
  std::string word;
  for (const char c : words + " ") {
    if (c != ' ') word += c;
    if ((c == ' ' || is_hyphen(word)) && !word.empty()) out.push_back(std::exchange(word, {}));
  }
  return with_ratios(std::move(out));
}

bool ends_in_hyphen(const std::string& word) { return word.size() > 1 && word.back() == '-'; }

std::string joined(const std::vector<std::string>& words, std::size_t from, std::size_t to) {
  std::string out;
  for (std::size_t i = from; i < to; ++i)
    out += (i > from && !ends_in_hyphen(words[i - 1]) ? " " : "") + words[i];
  return out;
}

// The longest beginning that has room with `end` behind it.
std::string beginning(const std::string& words, const std::string& end, double width, double cap,
                      bool bold) {
  std::size_t last = 0;
  for (std::size_t at = 0; at < words.size();) {
    words::next_letter(words, at);
    if (width_mm(words.substr(0, at) + end, cap, bold) > width) break;
    last = at;
  }
  return words.substr(0, last);
}

std::size_t letters_in(const std::string& words) {
  std::size_t count = 0;
  for (std::size_t at = 0; at < words.size(); ++count) words::next_letter(words, at);
  return count;
}

std::string first_letters(const std::string& words, std::size_t count) {
  std::size_t at = 0;
  while (count-- > 0 && at < words.size()) words::next_letter(words, at);
  return words.substr(0, at);
}

// Behind a break stand so many letters at least: fewer read like a word of their own.
constexpr std::size_t least_behind = 3;

bool is_vowel(char32_t letter) {
  return std::u32string_view(U"aeiouyäöüAEIOUYÄÖÜ").find(letter) != std::u32string_view::npos;
}

// What a vowel behind other letters is spoken with: ch, ck, sch and their like, bl, gr and theirs,
// or one consonant.
std::size_t spoken_together(const std::u32string& letters, std::size_t vowel) {
  const auto before = [&](std::size_t back) {
    return vowel >= back ? letters[vowel - back] : U' ';
  };
  const auto one_of = [](char32_t letter, std::u32string_view among) {
    return among.find(letter) != std::u32string_view::npos;
  };
  const char32_t last = before(1), second = before(2);
  if (last == U'h' && second == U'c' && before(3) == U's') return 3;
  if (one_of(last, U"hk") && one_of(second, U"cpts")) return 2;
  if (one_of(last, U"lr") && one_of(second, U"bcdfgkpt")) return 2;
  return 1;
}

// Before what the next vowel is spoken with, where English and German mostly break.
bool begins_syllable(const std::u32string& letters, std::size_t at) {
  if (is_vowel(letters[at])) return false;
  std::size_t vowel = at;
  while (vowel < letters.size() && !is_vowel(letters[vowel])) ++vowel;
  return vowel < letters.size() && spoken_together(letters, vowel) == vowel - at;
}

// How many letters stand before the break: `most`, or fewer where a syllable ends.
std::size_t before_break(const std::string& word, std::size_t most) {
  std::u32string letters;
  for (std::size_t at = 0; at < word.size();) letters += words::next_letter(word, at);
  for (std::size_t at = most; at > 1 && at + 1 < letters.size(); --at)
    if (begins_syllable(letters, at)) return at;
  return most;
}

// A word wider than the line is broken, since half a name says less than a broken one.
std::vector<std::string> broken(const std::vector<std::string>& words, double width, double cap,
                                bool bold) {
  std::vector<std::string> out;
  for (std::string word : words) {
    while (width_mm(word, cap, bold) > width) {
      const std::string room = beginning(word, std::string(break_hyphen), width, cap, bold);
      const std::size_t all = letters_in(word);
      const std::size_t most =
          std::min(letters_in(room), all > least_behind ? all - least_behind : 0);
      const std::string head = first_letters(room, before_break(word, most));
      if (head.empty()) break;
      out.push_back(head + std::string(break_hyphen));
      word.erase(0, head.size());
    }
    out.push_back(word);
  }
  return out;
}

// As many words to a line as there is room for.
std::vector<std::string> greedy(const std::vector<std::string>& words, double width, double cap,
                                bool bold) {
  std::vector<std::string> lines;
  for (std::size_t from = 0; from < words.size();) {
    std::size_t to = from + 1;
    while (to < words.size() && width_mm(joined(words, from, to + 1), cap, bold) <= width) ++to;
    lines.push_back(joined(words, from, to));
    from = to;
  }
  return lines;
}

// Two lines look best when they are about as long as each other.
std::vector<std::string> balanced(const std::vector<std::string>& words, double cap, bool bold) {
  std::vector<std::string> best;
  double shortest = 1e9;
  for (std::size_t at = 1; at < words.size(); ++at) {
    const std::string upper = joined(words, 0, at), lower = joined(words, at, words.size());
    const double widest = std::max(width_mm(upper, cap, bold), width_mm(lower, cap, bold));
    if (widest >= shortest) continue;
    shortest = widest;
    best = {upper, lower};
  }
  return best;
}

// Of more lines none longer than it must be, so that no word is left alone on one.
std::vector<std::string> evened(const std::vector<std::string>& words, double width, double cap,
                                bool bold) {
  std::vector<std::string> best = greedy(words, width, cap, bold);
  constexpr double finest_mm = 0.5;
  double too_narrow = 0, wide = width;
  while (wide - too_narrow > finest_mm) {
    const double middle = (wide + too_narrow) / 2;
    auto lines = greedy(words, middle, cap, bold);
    const bool narrow = std::all_of(lines.begin(), lines.end(), [&](const std::string& line) {
      return width_mm(line, cap, bold) <= width;
    });
    const bool as_many = narrow && lines.size() <= best.size();
    (as_many ? wide : too_narrow) = middle;
    if (as_many) best = std::move(lines);
  }
  return best;
}

}

std::string gone_on(std::string line, const std::string& next) {
  if (line.ends_with(break_hyphen))
    line.resize(line.size() - break_hyphen.size());
  else if (!ends_in_hyphen(line))
    line += ' ';
  return line + next;
}

std::string cut_to(const std::string& words, double width, double cap, bool bold) {
  if (width_mm(words, cap, bold) <= width) return words;
  std::string head = beginning(words, "…", width, cap, bold);
  while (!head.empty() && head.back() == ' ') head.pop_back();
  return head + "…";
}

namespace {

// Absent where the words do not go into so many lines of that width.
std::optional<Lines> whole(const std::vector<std::string>& words, double width, double cap,
                           bool bold, int max_lines, bool even) {
  auto lines = greedy(words, width, cap, bold);
  const bool narrow = std::all_of(lines.begin(), lines.end(), [&](const std::string& line) {
    return width_mm(line, cap, bold) <= width;
  });
  if (!narrow || static_cast<int>(lines.size()) > max_lines) return std::nullopt;
  if (even && lines.size() == 2) lines = balanced(words, cap, bold);
  if (even && lines.size() > 2) lines = evened(words, width, cap, bold);
  return Lines{lines, cap, false};
}

}

Lines fitted(const std::string& text, double width, const Lettering& l, int max_lines, bool even) {
  const auto words = split(text);
  std::vector<double> caps{l.cap_mm};
  for (auto c = cap::all.rbegin(); c != cap::all.rend(); ++c)
    if (*c < l.cap_mm && *c >= l.least_mm) caps.push_back(*c);
  for (const auto& pieces : {with_units(words), words})
    for (const double c : caps)
      if (const auto lines = whole(pieces, width, c, l.bold, max_lines, even)) return *lines;
  if (const auto bracket = text.find(" ("); bracket != std::string::npos) {
    Lines lines = fitted(text.substr(0, bracket), width, l, max_lines, even);
    lines.shortened = true;
    return lines;
  }
  const double c = caps.back();
  const auto pieces = max_lines > 1 ? broken(words, width, c, l.bold) : words;
  if (const auto lines = whole(pieces, width, c, l.bold, max_lines, false)) return *lines;
  auto lines = greedy(pieces, width, c, l.bold);
  const auto most = static_cast<std::size_t>(max_lines);
  for (std::size_t i = most; i < lines.size(); ++i)
    lines[most - 1] = gone_on(lines[most - 1], lines[i]);
  if (lines.size() > most) lines.resize(most);
  for (std::string& line : lines) line = cut_to(line, width, c, l.bold);
  return {lines, c, true};
}

}
