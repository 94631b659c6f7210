// The commands that hand something on.
#pragma once

#include "commands/arguments.hpp"
#include "commands/paper.hpp"
#include "commands/play.hpp"

#include <iosfwd>

namespace commands {

using Status = words::Result<int>;

struct Io {
  std::ostream& out;
  std::ostream& err;
  const Onlooker& onlooker;
};

Destination destination(const Arguments& a, Io io);

Status run_sheet(const Arguments& a, Io io);
Status run_labels(const Arguments& a, Io io);
Status run_paints(const Arguments& a, Io io);
Status run_card(const Arguments& a, Io io);
Status run_table(const Arguments& a, Io io);

}
