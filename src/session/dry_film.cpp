#include "session/dry_film.hpp"

#include "paint/film.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace session {

using Say = words::SessionSay;
using words::say;

std::optional<paint::Amount> pvc_of(const Batch& batch) {
  const paint::Standing& s = batch.standing;
  if (!(s.pigment_mL.value > 0) || !(s.gum_g.value > 0)) return std::nullopt;
  const auto pvc = paint::pvc(s.pigment_mL, s.gum_g, s.glycerin_g, s.honey_g, batch.places.room,
                              humidity_u(batch));
  return pvc ? std::optional(*pvc) : std::nullopt;
}

std::string pvc_number(const paint::Amount& pvc) {
  const double u = std::max(1.0, std::ceil(100 * paint::uncertainty(pvc)));
  return say(Say::pvc_number, {words::number(100 * pvc.value, 0), words::number(u, 0)});
}

std::string pvc_words(const paint::Amount& pvc) { return say(Say::pvc_words, {pvc_number(pvc)}); }

}
