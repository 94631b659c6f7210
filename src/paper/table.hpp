// Tables for a spreadsheet. Amounts in g; the columns, in order:
//
// additions: batch (id), batch_name, at (ISO 8601 by the clock of the device), clock_s (since the
// batch was opened), material, card (id), amount, unit (g, drops, spoons; count_lost: nobody knows
// how many), tool (its name), g and u_g (its standard uncertainty; empty where it is not in the
// sums), place (slab, jar, pans), state (withdrawn, corrected, not_summed, or empty)
//
// totals: batch, batch_name, opened_at, material, card, kind, g, u_g, drops, spoons, weighed_g,
// count_lost (yes or empty), and ratio and u_ratio of the batch: g of binder to 10 g of pigment
#pragma once

#include "paper/facts.hpp"

#include <string>
#include <vector>

namespace paper {

std::string additions_table(const std::vector<session::Batch>& batches, const Offsets& offsets);
std::string totals_table(const std::vector<session::Batch>& batches, const Offsets& offsets);

}
