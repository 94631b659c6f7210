// The one error of the pure rooms: which sentence, and what goes into it. It has no words yet, and
// its numbers are numbers.
#pragma once

#include "words/say.hpp"

#include <tl/expected.hpp>

#include <utility>

namespace words {

struct Error {
  Sentence what;
  Args args;
  bool operator==(const Error&) const = default;
};

template <class T>
using Result = tl::expected<T, Error>;

inline tl::unexpected<Error> failure(Sentence what, Args args = {}) {
  return tl::make_unexpected(Error{what, std::move(args)});
}

inline std::string message(const Error& error) { return say(error.what, error.args); }

}
