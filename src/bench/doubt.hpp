// A weighing that what was counted contradicts: what is asked about it, on the slab and on the
// number pad.
#pragma once

#include "bench/bench.hpp"

namespace bench {

struct Doubt {
  words::Error why;
  double g = 0;                // as it was typed
  std::optional<double> meant; // one slip of the finger away, and what was counted agrees with it
  bool can_count = false;      // said to be right, it counts
};

// Of a line of the batch on the slab; absent where nothing contradicts it.
std::optional<Doubt> doubt_about(const Bench& bench, const session::Entry& line);

// Opens the line last written where it is to be asked about.
void ask_if_doubted(Bench& bench);

std::string grams_arg(double g); // "84", "84.3"

// Twenty drops of a dropper that would weigh twice or half of what its card says, and are surely
// not what it says.
std::optional<words::Error> doubt_about_drops(const session::Card& dropper, double g);

// What is left in the jars of a card that is a quarter of them off what was counted, or more than
// they ever held; next to nothing, where more than nothing is said.
std::optional<words::Error> doubt_about_left(const Bench& bench, const session::Card& card,
                                             double g);
std::optional<words::Error> doubt_about_bought(double g);

// So many g of a card typed for the slab, in place of `was_g`: more than its jar had left, a liquid
// that makes paint three times as loose as it may be, more powder than twice what was planned, or
// more than many slabs take.
std::optional<words::Error> doubt_about_added(const Bench& bench, const std::string& card, double g,
                                              double was_g);
// Of a plan: what it asks for by a number, or g of one pigment.
std::optional<words::Error> doubt_about_wanted(const Bench& bench, double wanted);
std::optional<words::Error> doubt_about_so_much(const session::Card& card, double g);

// A pan that weighs more than it did when it was weighed before, with nothing poured since, or less
// than the powder in it. `line`: that is corrected, else null.
std::optional<words::Error> doubt_about_pan(const session::Batch& batch, int number, double g,
                                            const session::Entry* line);

// Binder that is made: more in its jar than went in, or so many drops or g of a preservative that
// it would be a tenth of it.
std::optional<words::Error> doubt_about_jar(const Bench& bench, double g);
std::optional<words::Error> doubt_about_dose(const Bench& bench, double amount);

// A pigment of the plan that was never weighed, before the first of the paint is poured or the
// batch is closed.
std::optional<words::Error> doubt_about_left_out(const session::Batch& batch);
// Asks that, once for a batch: the same tap once more says that it is meant so. True: it was asked.
bool asks_what_is_left_out(Bench& bench, const session::Batch& batch, const Now& now);

// More than lies there; of an earlier line, which is corrected, more than ever went in.
std::optional<words::Error> fault_of_spilt(const session::Batch& batch, const session::Lost& lost,
                                           bool earlier);
// So many g of paint in one pan, beyond its rim.
std::optional<words::Error> fault_of_pour(const session::Batch& batch, int number, double g);

}
