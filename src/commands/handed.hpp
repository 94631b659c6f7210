// What the window hands on, as a file to be written.
#pragma once

#include "bench/bench.hpp"

#include <string>

namespace commands {

struct HandedFile {
  std::string stem, ending; // "cobalt blue-sheet", ".html"; a file of another content may be there
  std::string bytes;
};

// As the commands sheet, labels and table make it, and like them without the amounts of a recipe
// that is its maker's own; of several batches one file, a table of those that may be told. Errors:
// those of the labels; paper_no_batch, paper_no_card, paper_kept_back.
words::Result<HandedFile> handed_file(const bench::Bench& bench, const bench::PaperWanted& wanted,
                                      const bench::Now& now);

// In how many drops the preservative of a jar made here went in; 0: in none, or weighed.
double preservative_drops(const bench::Bench& bench, const std::string& jar);

// Of the letters of a name those that any system takes in a file's; never empty.
std::string file_stem(const std::string& name);

}
