#include "commands/handed.hpp"

#include "bench/choices.hpp"
#include "bench/folds.hpp"
#include "bench/paint_chart.hpp"
#include "paper/blank_card.hpp"
#include "paper/labels.hpp"
#include "paper/paint_list.hpp"
#include "paper/sheet.hpp"
#include "paper/table.hpp"
#include "session/by_batch.hpp"
#include "session/shelf.hpp"
#include "words/moments.hpp"
#include "words/paper_says.hpp"

#include <algorithm>
#include <set>

namespace commands {

namespace {

using bench::PaperKind;
using words::PaperSay;

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
  return out.empty() ? words::say(PaperSay::stem_nameless) : out;
}

namespace {

using Batches = std::vector<session::Batch>;

// Those of them that can be read.
Batches batches_of(const bench::Bench& bench, const std::vector<std::string>& ids) {
  if (ids.size() == 1) // as it shows
    if (const bench::Folded batch = bench::kept_fold(bench, ids[0])) return {*batch};
  Batches out;
  const session::Logs all = session::all_of(bench.logs);
  const auto about = session::by_batch(all);
  for (const std::string& id : ids) {
    const auto logs = about.find(id);
    if (logs == about.end()) continue;
    if (auto batch = session::fold(logs->second, id, std::nullopt, bench.lessons))
      out.push_back(*std::move(batch));
  }
  return out;
}

std::vector<paper::Handed> handed_of(const bench::Bench& bench, const Batches& batches) {
  const session::Shelf shelf = session::shelf_of(session::all_of(bench.logs));
  std::vector<paper::Handed> out;
  for (const session::Batch& batch : batches)
    out.push_back(
        {batch, bench.offsets, &bench.learning.ranges, session::keeps_amounts(shelf, batch), true});
  return out;
}

// A label for each pan that was poured, at least one.
words::Result<std::string> labels_of(const std::vector<paper::Handed>& all,
                                     const std::string& line) {
  paper::LabelPlan plan;
  plan.line = line;
  if (all.size() == 1) return paper::labels_as_html(all.front(), plan);
  std::vector<paper::LabelOrder> orders;
  for (const paper::Handed& one : all)
    orders.push_back({one, std::max(1, bench::left_of(one.batch).pans)});
  return paper::labels_as_html(orders, plan);
}

words::Result<std::string> table_of(const bench::Bench& bench,
                                    const std::vector<paper::Handed>& all) {
  Batches shown;
  for (const paper::Handed& one : all)
    if (!one.keeps_amounts) shown.push_back(one.batch);
  if (shown.empty()) return words::failure(PaperSay::paper_kept_back, {all.front().batch.name});
  return paper::additions_table(shown, bench.offsets);
}

paper::ListedPaint listed(const bench::Bench& bench, const Batches& batches) {
  const session::Batch& latest = batches.front();
  paper::ListedPaint out;
  out.name = latest.name;
  out.pigments = paper::pigments_of(latest);
  out.colour = session::colour_of(latest);
  out.batch = latest.id;
  out.day = words::date(session::made_at(latest), paper::offset_of({latest, bench.offsets}));
  for (const session::Batch& batch : batches) {
    if (!out.swatch && batch.swatch) out.colour = session::colour_of(batch);
    out.swatch = out.swatch || batch.swatch.has_value();
    const bench::PaintLeft left = bench::left_of(batch);
    out.jar_mL += left.jar_mL;
    out.pans += left.pans;
    out.on_slab = out.on_slab || left.on_slab;
  }
  return out;
}

// Those of which one of the batches is; of all of them where none is named.
HandedFile list_of_paints(const bench::Bench& bench, const std::vector<std::string>& of,
                          const bench::Now& now) {
  const std::set<std::string> wanted(of.begin(), of.end());
  const auto is_wanted = [&](const std::string& id) { return wanted.count(id) > 0; };
  std::vector<paper::ListedPaint> all;
  for (const bench::PaintMade& paint : bench::paints_by_colour(bench)) {
    const auto& ids = paint.batches;
    if (!wanted.empty() && std::none_of(ids.begin(), ids.end(), is_wanted)) continue;
    if (const Batches batches = batches_of(bench, ids); !batches.empty())
      all.push_back(listed(bench, batches));
  }
  return {words::say(PaperSay::stem_paints), ".html",
          paper::paint_list(all, words::date(now.wall_ms, now.utc_offset_min))};
}

words::Result<HandedFile> label_of_binder(const bench::Bench& bench,
                                          const bench::PaperWanted& wanted) {
  const std::string& id = wanted.of.at(0);
  const session::Card* card = bench::card_anywhere(bench, id);
  if (!card) return words::failure(PaperSay::paper_no_card, {id});
  paper::LabelPlan a_few; // a row of a sheet: for the jar, and one that comes off
  a_few.label = paper::jar_label;
  a_few.count = 3;
  a_few.line = wanted.line;
  auto labels = paper::binder_labels_as_html(*card, preservative_drops(bench, id), a_few);
  if (!labels) return tl::make_unexpected(labels.error());
  return HandedFile{words::say(PaperSay::stem_labels, {file_stem(card->name)}), ".html",
                    *std::move(labels)};
}

words::Result<HandedFile> as_file(std::string stem, const char* ending,
                                  words::Result<std::string> bytes) {
  if (!bytes) return tl::make_unexpected(bytes.error());
  return HandedFile{std::move(stem), ending, *std::move(bytes)};
}

}

double preservative_drops(const bench::Bench& bench, const std::string& jar) {
  const session::Shelf shelf = session::shelf_of(session::all_of(bench.logs), bench.offsets);
  const auto making = shelf.makings.find(jar);
  if (making == shelf.makings.end()) return 0;
  const auto* step = session::begun(making->second, session::MakingStep::preserve);
  return step ? step->drops : 0;
}

words::Result<HandedFile> handed_file(const bench::Bench& bench, const bench::PaperWanted& wanted,
                                      const bench::Now& now) {
  if (wanted.kind == PaperKind::paints) return list_of_paints(bench, wanted.of, now);
  if (wanted.kind == PaperKind::binder_labels) return label_of_binder(bench, wanted);
  const Batches batches = batches_of(bench, wanted.of);
  if (batches.empty()) return words::failure(PaperSay::paper_no_batch);
  const auto all = handed_of(bench, batches);
  const bool one = all.size() == 1;
  const std::string stem = one ? file_stem(batches.front().name)
                               : words::say(PaperSay::stem_batches, {std::to_string(all.size())});
  switch (wanted.kind) {
  case PaperKind::sheet:
    return as_file(words::say(PaperSay::stem_sheet, {stem}), ".html",
                   one ? paper::sheet(all.front()) : paper::sheets(all));
  case PaperKind::labels:
    return as_file(words::say(PaperSay::stem_labels, {stem}), ".html", labels_of(all, wanted.line));
  case PaperKind::table:
    return as_file(words::say(PaperSay::stem_table, {stem}), ".csv", table_of(bench, all));
  case PaperKind::swatch_card:
    return as_file(words::say(PaperSay::stem_swatch_card, {stem}), ".html",
                   paper::swatch_cards(all, paper::a4));
  case PaperKind::paints:
  case PaperKind::binder_labels: break; // above
  }
  return words::failure(PaperSay::paper_no_batch);
}

}
