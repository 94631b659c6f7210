#include "words/language_says.hpp"

namespace words {

std::string_view english(LanguageSay id) {
  using Say = LanguageSay;
  switch (id) {
  case Say::tag: return "en";
  case Say::date_time: return "{0} {1}, {2}";
  case Say::date: return "{0} {1} {2}";
  case Say::month_names: return "Jan Feb March April May June July Aug Sept Oct Nov Dec";
  }
  return "";
}

}
