// What is handed on, written to a file that was not there or printed: sheet, labels, table.
#pragma once

#include "commands/picture_home.hpp"
#include "paper/labels.hpp"
#include "session/reader.hpp"
#include "words/error.hpp"

#include <iosfwd>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace commands {

// A new file, or where none is named `out`.
struct Destination {
  std::optional<std::string> file;
  std::ostream& out;
  bool with_recipes = false; // amounts of recipes marked their maker's own too
};

// Errors: file_there, disk_open_failed, disk_write_failed, disk_force_failed.
words::Result<void> write_new(const std::string& file, std::string_view bytes);

// Errors: those of write_new.
words::Result<int> hand_on(const std::string& bytes, const Destination& to);

// Of a batch found as find_batch() finds it. Errors: those, and file_there, disk_open_failed,
// disk_write_failed, disk_force_failed.
words::Result<int> make_sheet(const std::vector<session::Log>& logs, const std::string& batch,
                              const PictureHome& photos, const Destination& to);

// Errors besides: those of paper::labels_as_html and labels_as_svg, and labels_bad_ending for a
// file that is neither.
words::Result<int> make_labels(const std::vector<session::Log>& logs, const std::string& batch,
                               const paper::LabelPlan& plan, const Destination& to);

// Of a binder on the shelf, by its card or its name. Errors: labels_no_binder, labels_no_binders,
// labels_binder_ending, and those of paper::binder_labels_as_html.
words::Result<int> make_binder_labels(const std::vector<session::Log>& logs,
                                      const std::string& binder, const paper::LabelPlan& plan,
                                      const Destination& to);

// All paints, as the Book has them by colour. Error besides: paints_none.
words::Result<int> make_paint_list(const std::vector<session::Log>& logs, const Destination& to);

words::Result<int> make_swatch_card(const std::vector<session::Log>& logs, const std::string& batch,
                                    const paper::Size& sheet, const Destination& to);

// Of all batches where none is named; without those whose amounts are their maker's own. Error
// besides: table_kept_back where nothing else is left.
words::Result<int> make_table(const std::vector<session::Log>& logs,
                              const std::optional<std::string>& batch, bool totals,
                              const Destination& to);

}
