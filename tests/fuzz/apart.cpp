#include "fuzz/apart.hpp"

#include "fuzz/seal.hpp"

#include <algorithm>
#include <cctype>
#include <iterator>
#include <random>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

namespace fuzz {

std::vector<std::string_view> files_in(std::string_view input) {
  std::vector<std::string_view> files;
  for (;;) {
    const std::size_t end = input.find('\xff');
    files.push_back(input.substr(0, end));
    if (end == std::string_view::npos) return files;
    input.remove_prefix(end + 1);
  }
}

// Parts of one session, one that says nothing, and a file of another device.
std::string name_of_file(std::size_t place) {
  const char* names[] = {"2026-11-25T143200Z-07bd-5e1f20c70b94.jsonl",
                         "2026-11-25T143200Z-07bd-5e1f20c70b94.1.jsonl",
                         "2026-11-25T143200Z-07bd-5e1f20c70b94.2.jsonl", "copy",
                         "2026-11-26T090000Z-a83f-c41e08d55a10.jsonl"};
  return names[std::min<std::size_t>(place, 4)];
}

Pieces taken_apart(std::string_view input) {
  Pieces files;
  for (std::string_view file : files_in(input)) {
    files.emplace_back();
    while (!file.empty()) {
      const std::size_t end = std::min(file.find('\n'), file.size());
      const std::string_view line = file.substr(0, end);
      const bool sealed = seal_of(line).has_value();
      files.back().push_back(
          {std::string(line.substr(0, line.size() - (sealed ? seal_length : 0))), sealed});
      file.remove_prefix(std::min(end + 1, file.size()));
    }
  }
  return files;
}

namespace {

// From a key to the next comma or quote.
std::string value_of(const std::string& text, const std::string& key) {
  const std::size_t at = text.find(key);
  if (at == std::string::npos) return "";
  const std::size_t from = at + key.size();
  return text.substr(from, text.find_first_of(",\"}", from) - from);
}

std::uint32_t seed_of(const std::vector<Piece>& file) {
  for (const Piece& piece : file) {
    if (piece.text.find("\"e\":\"began\"") == std::string::npos) continue;
    if (value_of(piece.text, "\"version\":") == "1") return 0;
    return crc(value_of(piece.text, "\"session\":\"") + "." + value_of(piece.text, "\"part\":"), 0);
  }
  return 0;
}

}

std::string put_together(const Pieces& files) {
  std::string out;
  for (const auto& file : files) {
    if (&file != &files.front()) out += '\xff';
    std::uint32_t check = 0;
    const std::uint32_t seed = seed_of(file);
    for (const Piece& piece : file) {
      if (piece.torn_off) check ^= 1;
      out += (piece.sealed ? sealed(piece.text, check, check, seed) : piece.text) + '\n';
    }
  }
  return out;
}

namespace {

using Random = std::minstd_rand;

std::size_t below(Random& random, std::size_t limit) { return random() % limit; }

// What stands behind a key, up to the comma or the closing sign.
std::pair<std::size_t, std::size_t> value_at(const std::string& text, std::size_t key_end) {
  if (text[key_end] != '"') {
    const std::size_t end = text.find_first_of(",}]", key_end);
    return {key_end, std::min(end, text.size()) - key_end};
  }
  const std::size_t end = text.find('"', key_end + 1);
  return {key_end, (end == std::string::npos ? text.size() : end + 1) - key_end};
}

std::vector<std::pair<std::size_t, std::size_t>> values_in(const std::string& text) {
  std::vector<std::pair<std::size_t, std::size_t>> values;
  for (std::size_t at = text.find("\":"); at != std::string::npos; at = text.find("\":", at + 2))
    if (at + 2 < text.size()) values.push_back(value_at(text, at + 2));
  return values;
}

// Numbers at the edges of what the format page allows, and words of its closed lists.
const std::string& some_value(Random& random) {
  static const std::vector<std::string> values{"0",
                                               "1",
                                               "2",
                                               "-1",
                                               "0.5",
                                               "1e308",
                                               "-0.0",
                                               "9007199254740992",
                                               "9007199254740993",
                                               "18446744073709551615",
                                               "-9007199254740992",
                                               "1e-320",
                                               "true",
                                               "null",
                                               "[]",
                                               "{}",
                                               "[\"5e1f20c70b94\",3]",
                                               "{\"e\":\"added\",\"of\":\"gum_12\",\"g\":1}",
                                               "\"\"",
                                               "\"g\"",
                                               "\"began\"",
                                               "\"left\"",
                                               "\"withdrawn\"",
                                               "\"corrected\"",
                                               "\"gone\"",
                                               "\"photo\"",
                                               "\"added\"",
                                               "\"stage\"",
                                               "\"resting\"",
                                               "\"mulling\"",
                                               "\"muller\"",
                                               "\"right\"",
                                               "\"pigment\"",
                                               "\"binder\"",
                                               "\"dropper\"",
                                               "\"spoon\"",
                                               "\"honey\"",
                                               "\"gum_12\"",
                                               "\"kiln_red\"",
                                               "\"9a04d3e1c26f\"",
                                               "\"5e1f20c70b94\"",
                                               "\"later_kind\""};
  return values[below(random, values.size())];
}

void mutate(std::string& text) {
  std::string room = text;
  room.resize(text.size() + 64);
  const std::size_t size =
      LLVMFuzzerMutate(reinterpret_cast<std::uint8_t*>(room.data()), text.size(), room.size());
  text = room.substr(0, size);
  std::replace(text.begin(), text.end(), '\n', ' ');
}

void change_a_value(std::string& text, Random& random) {
  const auto values = values_in(text);
  if (values.empty()) return mutate(text);
  const auto [at, length] = values[below(random, values.size())];
  std::string value = text.substr(at, length);
  if (below(random, 2) == 0)
    value = some_value(random);
  else
    mutate(value);
  text.replace(at, length, value);
}

void number(std::vector<Piece>& file) {
  std::size_t n = 0;
  for (Piece& piece : file) {
    const std::string start = "{\"n\":";
    const std::size_t end = piece.text.find(',');
    if (piece.text.compare(0, start.size(), start) == 0 && end != std::string::npos)
      piece.text.replace(0, end, start + std::to_string(n++));
  }
}

void change_places(Pieces& files, std::vector<Piece>& file, std::size_t at, Random& random) {
  const auto piece = file.begin() + static_cast<std::ptrdiff_t>(at);
  std::vector<Piece>& other = files[below(random, files.size())];
  switch (below(random, 6)) {
  case 0: file.erase(piece); break;
  case 1: std::swap(*piece, file[below(random, file.size())]); break;
  case 2: file.insert(piece, Piece(*piece)); break;
  case 3: other.push_back(Piece(*piece)); break;
  case 4: file.erase(piece, file.end()); break;
  default: number(file); break;
  }
}

void change_files(Pieces& files, std::size_t place, Random& random) {
  std::vector<Piece> copy = files[place];
  if (below(random, 2) == 0 || files.size() > 4) {
    std::swap(files[place], files[below(random, files.size())]);
  } else {
    // A later part: its beginning, and the lines from there on.
    const std::size_t from = copy.empty() ? 0 : below(random, copy.size());
    if (from > 0) {
      copy.erase(copy.begin() + 1, copy.begin() + static_cast<std::ptrdiff_t>(from));
      const std::size_t part = copy[0].text.find("\"part\":0");
      if (part != std::string::npos)
        copy[0].text.replace(part, 8, "\"part\":1,\"from\":" + std::to_string(from));
    }
    files.push_back(std::move(copy));
  }
}

}

void change(Pieces& files, std::uint32_t seed) {
  Random random(seed);
  const std::size_t place = below(random, files.size());
  std::vector<Piece>& file = files[place];
  if (file.empty()) return file.push_back({"{\"n\":0,\"t\":0,\"at\":0,\"e\":\"left\"", true});
  const std::size_t at = below(random, file.size());
  switch (below(random, 10)) {
  case 0: return mutate(file[at].text);
  case 1: file[at].torn_off = true; return;
  case 2: file[at].sealed = !file[at].sealed; return;
  case 3: return change_files(files, place, random);
  case 4:
  case 5:
  case 6: return change_places(files, file, at, random);
  default: return change_a_value(file[at].text, random);
  }
}

}
