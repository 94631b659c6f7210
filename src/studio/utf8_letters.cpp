#include "studio/utf8_letters.hpp"

#include <initializer_list>

namespace studio {

Utf8Letters::Utf8Letters() {
  for (const char* name : {"C.UTF-8", "en_US.UTF-8"})
    if (!own_) own_ = newlocale(LC_CTYPE_MASK, name, locale_t{});
  if (own_) before_ = uselocale(own_);
}

Utf8Letters::~Utf8Letters() {
  if (!own_) return;
  uselocale(before_);
  freelocale(own_);
}

}
