#include "commands/run_paper.hpp"

#include "commands/inputs.hpp"
#include "session/bytes.hpp"
#include "words/commands_says.hpp"

namespace commands {

namespace {

using Say = words::CommandsSay;

words::Result<paper::Size> size_of_sheet(const Arguments& a) {
  const std::string sheet = a.value("--sheet").value_or("a4");
  if (sheet != "a4" && sheet != "letter") return words::failure(Say::labels_bad_sheet, {sheet});
  return sheet == "a4" ? paper::a4 : paper::letter_size;
}

words::Result<paper::LabelPlan> label_plan(const Arguments& a) {
  paper::LabelPlan plan;
  if (a.value("--binder")) plan.label = paper::jar_label;
  const auto sheet = size_of_sheet(a);
  if (!sheet) return tl::make_unexpected(sheet.error());
  plan.sheet = *sheet;
  if (const auto text = a.value("--mm")) {
    const auto size = paper::label_size(*text);
    if (!size) return tl::make_unexpected(size.error());
    plan.label = *size;
  }
  if (const auto text = a.value("--count")) {
    const auto count = paper::label_count(*text);
    if (!count) return tl::make_unexpected(count.error());
    plan.count = *count;
  }
  plan.line = a.value("--line").value_or("");
  if (session::first_characters(plan.line, session::longest_text) != plan.line)
    return words::failure(Say::labels_line_long, {std::to_string(session::longest_text)});
  return plan;
}

}

Destination destination(const Arguments& a, Io io) {
  return {a.value("--out"), io.out, a.has("--with-recipes")};
}

Status run_sheet(const Arguments& a, Io io) {
  if (!a.value("--batch")) return words::failure(Say::batch_missing, {"sheet"});
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  const auto where = studio_of(a);
  if (!where) return tl::make_unexpected(where.error());
  const PictureHome photos{std::filesystem::absolute(where->home), disk::posix_files,
                           thumbs_folder(), ""};
  return make_sheet(*logs, *a.value("--batch"), photos, destination(a, io));
}

Status run_labels(const Arguments& a, Io io) {
  const auto batch = a.value("--batch"), binder = a.value("--binder");
  if (!batch && !binder) return words::failure(Say::batch_missing, {"labels"});
  if (batch && binder) return words::failure(Say::labels_batch_or_binder);
  const auto plan = label_plan(a);
  if (!plan) return tl::make_unexpected(plan.error());
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  if (binder) return make_binder_labels(*logs, *binder, *plan, destination(a, io));
  return make_labels(*logs, *batch, *plan, destination(a, io));
}

Status run_paints(const Arguments& a, Io io) {
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  return make_paint_list(*logs, destination(a, io));
}

Status run_card(const Arguments& a, Io io) {
  if (!a.value("--batch")) return words::failure(Say::batch_missing, {"card"});
  const auto sheet = size_of_sheet(a);
  if (!sheet) return tl::make_unexpected(sheet.error());
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  return make_swatch_card(*logs, *a.value("--batch"), *sheet, destination(a, io));
}

Status run_table(const Arguments& a, Io io) {
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  return make_table(*logs, a.value("--batch"), a.has("--totals"), destination(a, io));
}

}
