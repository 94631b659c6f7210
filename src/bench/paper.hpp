// What is handed on from the window: files that can be printed.
#pragma once

#include "words/error.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bench {

enum class PaperKind { sheet, labels, table, paints, swatch_card, binder_labels };

struct PaperWanted {
  PaperKind kind = PaperKind::sheet;
  std::vector<std::string> of; // batches; of binder_labels the card
  std::string line = {};       // of the maker's own, on labels
};

enum class PaperWay {
  into_folder, // of the studio
  to_print,    // of the browser: what becomes of it there, nobody tells
  saved,       // by the browser, where it saves files
};
struct PaperWritten { // the answer to Effects.paper
  words::Result<std::string> file;
  PaperWay way = PaperWay::into_folder;
};
struct PaperNotShown { // the file lies there, but nothing came up that shows it
  words::Error why;
};

struct PaperDesk {
  std::string folder;                   // where such files are put; empty: this device has none
  bool in_browser = false;              // which prints or saves them instead
  bool writing = false;                 // an answer is still to come
  std::string written;                  // the file that was written last
  PaperWay way = PaperWay::into_folder; // that one's
  std::optional<words::Error> failure;
};

inline bool is_there(const PaperDesk& desk) { return desk.in_browser || !desk.folder.empty(); }

}
