// The pigment catalogue: what is read keeps to the ranges that its header names.
#include "paint/catalogue.hpp"

#include "fuzz/must.hpp"

#include <cstdint>
#include <set>

using fuzz::must;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto read = paint::read_catalogue({reinterpret_cast<const char*>(data), size});
  if (!read) {
    must(!words::message(read.error()).empty(), "a fault has words");
    return 0;
  }
  std::set<std::string> ids;
  for (const paint::CataloguePigment& p : *read) {
    must(!p.id.empty() && ids.insert(p.id).second, "an id stands once");
    must(!p.name.empty() && !p.sources.empty(), "a pigment has a name and a source");
    must(p.facts.g_per_mL >= 0.5 && p.facts.g_per_mL <= 20, "density is in range");
    must(p.facts.oil_g_per_100g >= 1 && p.facts.oil_g_per_100g <= 1000, "oil is in range");
    must(p.bulk_loose >= 0.01 && p.bulk_loose <= p.bulk_tapped && p.bulk_tapped <= 5,
         "bulk densities rise, in range");
    must(p.colour <= 0xffffff, "a colour is a colour");
  }
  return 0;
}
