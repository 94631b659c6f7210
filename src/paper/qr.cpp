#include "paper/qr.hpp"

#include <qrcodegen/qrcodegen.hpp>

namespace paper {

std::optional<Qr> qr_of(const std::string& text) {
  if (text.empty() || text.size() > most_qr_bytes) return std::nullopt;
  const auto code = qrcodegen::QrCode::encodeText(text.c_str(), qrcodegen::QrCode::Ecc::MEDIUM);
  Qr qr{code.getSize(), {}};
  for (int y = 0; y < qr.modules; ++y)
    for (int x = 0; x < qr.modules; ++x) qr.dark.push_back(code.getModule(x, y));
  return qr;
}

}
