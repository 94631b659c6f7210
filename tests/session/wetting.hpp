// A batch in its first minutes.
#pragma once

#include "make.hpp"

namespace make {

// Some binder in, then under the knife.
inline Writer wetting_out(paint::Recipe binder = {.gum = 1, .water = 2}) {
  Writer w("c41e08d5");
  w.card(pigment("pb28", 4, 30));
  w.card(liquid("gum", CardKind::binder, binder));
  w.put("a", Opened{"Blue"});
  w.put("a", Added{"pb28", Unit::g, 12, ""});
  w.put("a", Added{"gum", Unit::g, 4, ""});
  w.put("a", StageBegan{Stage::wetting_out});
  return w;
}

}
