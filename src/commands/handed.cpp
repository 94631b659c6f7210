#include "commands/handed.hpp"

#include "bench/folds.hpp"
#include "paper/labels.hpp"
#include "paper/sheet.hpp"
#include "paper/table.hpp"
#include "session/by_batch.hpp"
#include "session/shelf.hpp"
#include "words/commands_says.hpp"

#include <algorithm>

namespace commands {

namespace {

using Say = words::CommandsSay;
using bench::PaperKind;

constexpr std::size_t longest_stem = 80; // bytes: names of files end at 255

bool is_plain(unsigned char c) {
  return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c >= 0x80;
}

bool goes_on(unsigned char c) { return (c & 0xc0) == 0x80; } // within a letter of UTF-8

}

std::string file_stem(const std::string& name) {
  std::string out;
  for (const char c : name) {
    if (is_plain(static_cast<unsigned char>(c)))
      out += c;
    else if (!out.empty() && out.back() != '-')
      out += '-';
  }
  std::size_t end = std::min(out.size(), longest_stem);
  while (end > 0 && end < out.size() && goes_on(static_cast<unsigned char>(out[end]))) --end;
  out.resize(end);
  if (!out.empty() && out.back() == '-') out.pop_back();
  return out.empty() ? "batch" : out;
}

words::Result<HandedFile> handed_file(const bench::Bench& bench, const bench::PaperWanted& wanted) {
  const bench::Folded batch = bench::kept_fold(bench, wanted.batch);
  if (!batch) return words::failure(Say::paper_no_batch);
  const bool mine = session::keeps_amounts(session::shelf_of(session::all_of(bench.logs)), *batch);
  const paper::Handed handed{*batch, bench.offsets, &bench.learning.ranges, mine};
  const std::string stem = file_stem(batch->name);
  if (wanted.kind == PaperKind::sheet)
    return HandedFile{stem + "-sheet", ".html", paper::sheet(handed)};
  if (wanted.kind == PaperKind::labels) {
    auto labels = paper::labels_as_html(handed, {});
    if (!labels) return tl::make_unexpected(labels.error());
    return HandedFile{stem + "-labels", ".html", *std::move(labels)};
  }
  if (mine) return words::failure(Say::paper_kept_back, {batch->name});
  return HandedFile{stem + "-table", ".csv", paper::additions_table({*batch}, bench.offsets)};
}

}
