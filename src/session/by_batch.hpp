// Of many sessions those that speak of a batch, so that folding all batches takes no longer than
// their lines.
#pragma once

#include "session/batch.hpp"

#include <map>

namespace session {

// In the order of `logs`, which must outlive it.
std::map<std::string, Logs> by_batch(const Logs& logs);

}
