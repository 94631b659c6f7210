#include "words/language_says.hpp"

namespace words {

std::string_view english(LanguageSay id) {
  using Say = LanguageSay;
  switch (id) {
  case Say::tag: return "en";
  case Say::own_name: return "English";
  case Say::decimal_sign: return ".";
  case Say::date_time: return "{0} {1}, {2}";
  case Say::date: return "{0} {1} {2}";
  case Say::month_names: return "Jan Feb March April May June July Aug Sept Oct Nov Dec";
  case Say::day_names: return "Sunday Monday Tuesday Wednesday Thursday Friday Saturday";
  case Say::weekday_date: return "{0} {1} {2}";
  case Say::day_month: return "{0} {1}";
  case Say::date_typed: return "2026-11-25";
  }
  return "";
}

}
