#include "commands/alone.hpp"

#include "bench/record.hpp"
#include "commands/folders.hpp"

namespace commands {

std::vector<session::Line> session_of(std::vector<session::Event> events,
                                      std::vector<session::Log> logs, const bench::Now& now) {
  const Setup setup = usual_setup(std::nullopt, now);
  bench::Bench bench = bench::start(setup.session, setup.device, setup.display, now);
  bench::step(bench, bench::Loaded{std::move(logs), {}, {}}, now);
  bench::Effects said;
  for (session::Event& event : events) bench::record(bench, "", std::move(event), now, said);
  bench::record(bench, "", session::Left{}, now, said);
  return said.append;
}

}
