#include "paper/qr.hpp"

#include <cstdlib>
#include <memory>

// browser_qr.js: row by row, a byte each. The page has fetched by now what makes it.
extern "C" unsigned char* slabside_qr(const char* text, int* side);

namespace paper {

std::optional<Qr> qr_of(const std::string& text) {
  if (text.empty() || text.size() > most_qr_bytes) return std::nullopt;
  Qr qr;
  const std::unique_ptr<unsigned char, decltype(&std::free)> dark(
      slabside_qr(text.c_str(), &qr.modules), &std::free);
  qr.dark.assign(dark.get(), dark.get() + qr.modules * qr.modules);
  return qr;
}

}
