#include "commands/paper.hpp"

#include "bench/choices.hpp"
#include "commands/clock.hpp"
#include "commands/handed.hpp"
#include "commands/matched.hpp"
#include "commands/paper_pictures.hpp"
#include "commands/show.hpp"
#include "disk/whole_file.hpp"
#include "paper/blank_card.hpp"
#include "paper/sheet.hpp"
#include "paper/table.hpp"
#include "session/by_batch.hpp"
#include "session/shelf.hpp"
#include "studio/sentences.hpp"
#include "words/commands_says.hpp"

#include <cerrno>
#include <ostream>

namespace commands {

namespace {

using Say = words::CommandsSay;
using Status = words::Result<int>;

bool ends_with(const std::string& name, std::string_view ending) {
  return name.size() >= ending.size() &&
         name.compare(name.size() - ending.size(), ending.size(), ending) == 0;
}

bool kept_back(const session::Shelf& shelf, const session::Batch& batch, const Destination& to) {
  return !to.with_recipes && session::keeps_amounts(shelf, batch);
}

session::Shelf shelf_in(const std::vector<session::Log>& logs) {
  return session::shelf_of(session::all_of(logs));
}

}

words::Result<void> write_new(const std::string& file, std::string_view bytes) {
  const auto failed = disk::write_new(*disk::posix_files(), file, bytes);
  if (!failed) return {};
  if (failed->code == EEXIST) return words::failure(Say::file_there, {file});
  return tl::make_unexpected(studio::error(*failed));
}

Status hand_on(const std::string& bytes, const Destination& to) {
  if (!to.file) {
    to.out << bytes;
    return 0;
  }
  if (auto written = write_new(*to.file, bytes); !written)
    return tl::make_unexpected(written.error());
  to.out << printable(words::say(Say::paper_made, {*to.file})) << '\n';
  return 0;
}

Status make_sheet(const std::vector<session::Log>& logs, const std::string& wanted,
                  const PictureHome& photos, const Destination& to) {
  const auto batch = find_batch(logs, wanted);
  if (!batch) return tl::make_unexpected(batch.error());
  // Where nothing could be learnt, the sheet has the guess, and says that it is one.
  const auto ranges = session::learn_ranges(session::all_of(logs));
  const std::string sheet =
      paper::sheet({*batch, session::offsets_of(logs), ranges ? &*ranges : nullptr,
                    kept_back(shelf_in(logs), *batch, to), true});
  return hand_on(with_pictures(sheet, photos), to);
}

Status make_labels(const std::vector<session::Log>& logs, const std::string& wanted,
                   const paper::LabelPlan& plan, const Destination& to) {
  const bool svg = to.file && ends_with(*to.file, ".svg");
  if (to.file && !svg && !ends_with(*to.file, ".html"))
    return words::failure(Say::labels_bad_ending, {*to.file});
  const auto batch = find_batch(logs, wanted);
  if (!batch) return tl::make_unexpected(batch.error());
  const paper::Offsets offsets = session::offsets_of(logs);
  const paper::Handed handed{*batch, offsets};
  const auto bytes = svg ? paper::labels_as_svg(handed, plan) : paper::labels_as_html(handed, plan);
  if (!bytes) return tl::make_unexpected(bytes.error());
  return hand_on(*bytes, to);
}

namespace {

words::Error no_binder(const std::vector<const session::Card*>& binders,
                       const std::string& wanted) {
  std::string names;
  for (const session::Card* card : binders) names += (names.empty() ? "" : ", ") + card->name;
  if (names.empty()) return {Say::labels_no_binders, {wanted}};
  return {Say::labels_no_binder, {wanted, names}};
}

}

Status make_binder_labels(const std::vector<session::Log>& logs, const std::string& wanted,
                          const paper::LabelPlan& plan, const Destination& to) {
  if (to.file && !ends_with(*to.file, ".html"))
    return words::failure(Say::labels_binder_ending, {*to.file});
  const bench::Bench bench = bench_of(logs, real_now());
  const auto binders = bench::shelf_of(bench, session::CardKind::binder);
  for (const session::Card* card : binders) {
    const bool named = wanted == card->name || wanted == card->name + ", " + card->lot;
    if (card->id != wanted && !named) continue;
    const auto bytes =
        paper::binder_labels_as_html(*card, preservative_drops(bench, card->id), plan);
    if (!bytes) return tl::make_unexpected(bytes.error());
    return hand_on(*bytes, to);
  }
  return tl::make_unexpected(no_binder(binders, wanted));
}

Status make_paint_list(const std::vector<session::Log>& logs, const Destination& to) {
  const bench::Now now = real_now();
  const bench::Bench bench = bench_of(logs, now);
  if (bench.batches.empty()) return words::failure(Say::paints_none);
  const auto file = handed_file(bench, {bench::PaperKind::paints, {}}, now);
  if (!file) return tl::make_unexpected(file.error());
  return hand_on(file->bytes, to);
}

Status make_swatch_card(const std::vector<session::Log>& logs, const std::string& wanted,
                        const paper::Size& sheet, const Destination& to) {
  const auto batch = find_batch(logs, wanted);
  if (!batch) return tl::make_unexpected(batch.error());
  const paper::Offsets offsets = session::offsets_of(logs);
  return hand_on(paper::swatch_cards({{*batch, offsets}}, sheet), to);
}

Status make_table(const std::vector<session::Log>& logs, const std::optional<std::string>& wanted,
                  bool totals, const Destination& to) {
  std::vector<session::Batch> batches;
  const session::Logs all = session::all_of(logs);
  if (wanted) {
    auto batch = find_batch(logs, *wanted);
    if (!batch) return tl::make_unexpected(batch.error());
    batches.push_back(*std::move(batch));
  } else {
    const session::Lessons lessons = session::lessons_of(all);
    const auto about = session::by_batch(all);
    std::string discarded;
    for (const std::string& id : session::batch_ids(all)) {
      auto batch = session::fold(about.at(id), id, std::nullopt, lessons);
      if (batch && batch->discarded)
        discarded = id;
      else if (batch)
        batches.push_back(*std::move(batch));
    }
    if (batches.empty() && !discarded.empty())
      return words::failure(Say::show_all_discarded, {discarded});
  }
  if (batches.empty()) return words::failure(Say::show_no_batches);
  const std::string first = batches.front().name;
  const session::Shelf shelf = shelf_in(logs);
  std::erase_if(batches, [&](const auto& batch) { return kept_back(shelf, batch, to); });
  if (batches.empty()) return words::failure(Say::table_kept_back, {first});
  const paper::Offsets offsets = session::offsets_of(logs);
  return hand_on(totals ? paper::totals_table(batches, offsets)
                        : paper::additions_table(batches, offsets),
                 to);
}

}
