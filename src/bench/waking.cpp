#include "bench/waking.hpp"

#include "bench/making.hpp"
#include "bench/pads_top_bar.hpp"
#include "bench/record.hpp"
#include "bench/scrolling.hpp"
#include "bench/sound_cues.hpp"
#include "bench/touch.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

constexpr std::int64_t drying_ms = 20000; // how often an untouched slab is folded again
constexpr std::int64_t holding_ms = 100;  // while the unlocking pad is held
constexpr std::int64_t frame_ms = 16;     // while the marker glides or a list runs on

std::int64_t next_whole(std::int64_t from, std::int64_t now, std::int64_t each) {
  return now + each - (now - from) % each;
}

}

std::optional<std::int64_t> wake_at(const Bench& bench, const Now& now) {
  const std::int64_t minute = now.run_ms + 60000 - now.wall_ms % 60000;
  std::int64_t wake = minute;
  const auto sooner = [&](std::int64_t at) { wake = std::min(wake, at); };
  if (bench.touch.press && bench.touch.press->pad.kind == TopBarPad::unlock)
    sooner(now.run_ms + holding_ms);
  if (bench.notice.until_ms > now.run_ms) sooner(bench.notice.until_ms);
  if (const auto bell = bell_at(bench)) sooner(*bell);
  if (const auto bell = making_bell_at(bench)) sooner(now.run_ms + *bell - now.wall_ms);
  if (const auto row = next_row_at(bench)) sooner(std::max(*row, now.run_ms + frame_ms));
  if (bench.screen != Screen::slab || !bench.folded) return wake;
  if (bench.glide) sooner(now.run_ms + frame_ms);
  if (const session::Pass* pass = running(*bench.folded)) {
    const std::int64_t since = std::llround((bench.folded->clock - pass->start) * 1000);
    sooner(next_whole(bench.folded_run_ms - since, now.run_ms, 1000));
  }
  if (bench.folded->progress == session::Progress::open) sooner(now.run_ms + drying_ms);
  return wake;
}

}
