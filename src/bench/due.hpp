// What waits, of all batches and of the shelf: a function of what is indexed of the batches, the
// cards, what was bought and weighed of them, and the clock.
#pragma once

#include "bench/book_index.hpp"
#include "session/making.hpp"
#include "session/stock.hpp"

#include <array>

namespace bench {

// A verdict is asked for after so many days since the last pour (common practice, no source).
inline constexpr std::array asked_days{1, 3, 10, 30};
// A hand that leaves the slab for no longer than this is still at work there.
inline constexpr std::int64_t at_slab_ms = 30 * 60'000;
// A thing with a last day is named so many days before it.
inline constexpr int use_up_days = 14;

struct Due {
  std::string of; // batch; of the shelf: card; of binder that is made: that of its jar; to be
                  // handed on: all
  enum class What {
    on_slab,
    in_jar,
    next_layer,
    weigh_pan,
    verdict,
    use_up,
    runs_low,
    making,
    hand_on
  };
  What what = What::next_layer;
  int day = 0;            // of the verdict
  std::int64_t since = 0; // ms since 1970: from when it is due, perhaps to come; runs_low: 0
  int pan = 0;            // that is to be weighed
  bool operator==(const Due&) const = default;
};
std::string name_of(const Due& due); // "verdict BATCH"
bool is_of_shelf(const Due& due);
bool is_settled(const BookEntry& entry); // the last verdict that is asked for was given

// In the order they are due: paint that lies open on the slab first, what runs low, which has no
// day, after them, and last what has been due for asks_lapse_ms. Of several days whose verdict
// nobody gave the last one counts; a verdict given after a day's ask settles it and those before.
// What was left in the jar after a pour waits there where no layer is due, whatever the verdict on
// the rest. Poured paint waits until its last verdict was given, and asks_lapse_ms after the last
// pour at least; paint that never was poured until it is poured, judged or put away, and binder
// until its jar is filled or it is given up. Of binders of one name all that is left counts as one,
// and the newest is named. What lies here alone waits until it is handed on, however long.
std::vector<Due> due(const BookIndex& index, const std::vector<session::Card>& shelf,
                     const session::Stocks& stock, std::int64_t now_ms, int utc_offset_min,
                     const session::Makings& makings = {},
                     std::optional<std::int64_t> here_alone_since = {});
std::vector<Due> due(const Bench& bench, const Now& now);
// How many of them are not to come, and not so old that they stand last.
std::size_t due_now(const Bench& bench, const Now& now);

int verdict_day_due(const Bench& bench, const std::string& batch, const Now& now); // 0: none
bool layer_due(const Bench& bench, const std::string& batch, const Now& now);

}
