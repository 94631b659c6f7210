// What is learnt from, and what was learnt, as JSON: for whoever computes elsewhere, in a thread or
// in a worker of a browser. Bytes in, bytes out; numbers come back to the last bit.
//
// A problem: {"pigments": [[ln_oil, kappa, q], ...], "tools": [sd, ...], "batches": [shared_sd,
// ...], "segments": [{"batch": 0, "pigments": [[0, 1.5], ...]}, ...], "notes": [{"segment": 0,
// "ln_mL": 1.1, "sd": 0.01, "tools": [[0, 1], ...], "felt": 2, "dry_gum": 0.293}, ...], "priors":
// {"theta": [[centre, sd], ... seven], "alpha": [centre, sd], "slips": true, "strength": [centre,
// sd], "drying": 3.9, "walk": 0.015}, "earlier": a result, or not there, "told": {"pigments",
// "priors"} as another studio lets expect them, or not there}. A pigment that was told of has a
// fourth entry, true. A result: the fields of RangeFit by their names; "end" is "found",
// "separated", "no_convergence" or "no_peak".
#pragma once

#include "paint/range/told.hpp"

#include <string>
#include <string_view>

namespace paint {

std::string bytes_of(const LearnProblem& problem, const LearnPriors& priors = {},
                     const RangeFit* earlier = nullptr, const ToldVariant* told = nullptr);
std::string bytes_of(const RangeFit& fit);

// Errors: learn_not_json, learn_field.
words::Result<RangeFit> fit_from(std::string_view bytes);

// A problem's bytes to its result's. Errors: learn_not_json, learn_field, and as learn().
words::Result<std::string> learn_bytes(std::string_view problem);

}
