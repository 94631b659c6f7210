// What another studio tells: what is read keeps to the ranges that TOLD.md names, and reads the
// same again.
#include "paint/range/told.hpp"

#include "fuzz/must.hpp"
#include "paint/catalogue.hpp"
#include "paint/range/learn_facts.hpp"

#include <cstdint>
#include <set>

using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto read = paint::told_from({reinterpret_cast<const char*>(data), size});
  if (!read) {
    must(!words::message(read.error()).empty(), "a fault has words");
    return 0;
  }
  const std::size_t count = read->pigments.size();
  must(count > 0 && read->ln_demands.size() == count, "each pigment has its demand");
  must(read->covariance.size() == count * (count + 1) / 2, "and its row");
  std::set<std::string> names;
  for (const std::string& name : read->pigments)
    must(paint::in_catalogue(name) && names.insert(name).second, "a pigment is known, and once");
  paint::LearnProblem problem;
  for (const std::string& name : read->pigments) {
    const paint::LearnPigment usual = paint::learn_facts(paint::in_catalogue(name)->facts);
    problem.pigments.push_back(paint::facts_told(*read, usual, name));
    must(problem.pigments.back().q >= 1e-3, "no pigment is known for certain");
  }
  must(!paint::fault_of(problem, paint::priors_told(*read)), "they can be reckoned with");
  must(paint::told_from(paint::bytes_of(*read)).has_value() ||
           paint::bytes_of(*read).size() > paint::most_told_bytes,
       "it can be told on");
  return 0;
}
