// What the catalogue's figures rest on, in the language that is spoken.
#include "screens/sources.hpp"

#include "words/languages.hpp"
#include "words/numbers.hpp"
#include "words/say.hpp"
#include "words/shelf_says.hpp"

#include <array>

namespace screens {

using Say = words::ShelfSay;
using words::say;

namespace {

constexpr std::array sources{Say::from_gettens_table,    Say::from_gettens_page,
                             Say::from_church,           Say::from_polymers,
                             Say::from_museum,           Say::from_article,
                             Say::from_bone_black,       Say::from_cadmium,
                             Say::from_coatings,         Say::from_both_tables,
                             Say::from_linseed,          Say::from_linseed_red,
                             Say::from_linseed_pozzuoli, Say::from_standard,
                             Say::from_supplier,         Say::from_supplier_and_example,
                             Say::from_supplier_and_kin, Say::from_supplier_mica};

std::string said(const std::string& source) {
  for (const Say id : sources)
    if (words::pattern(id, words::Language::english) == source) return say(id);
  return source;
}

// "2.7 to 3.2", "50 and more", "17 to 22 mL".
std::string figure_said(std::string figure) {
  const std::string and_more = " and more", to = " to ";
  if (const auto at = figure.find(and_more); at != std::string::npos)
    return say(Say::from_least, {figure_said(figure.substr(0, at))});
  if (const auto at = figure.find(to); at != std::string::npos)
    return say(Say::from_range,
               {figure_said(figure.substr(0, at)), figure_said(figure.substr(at + to.size()))});
  if (const auto at = figure.find('.'); at != std::string::npos)
    figure.replace(at, 1, words::decimal_sign());
  return figure;
}

}

std::string source_words(const std::string& from) {
  const auto at = from.rfind(" (");
  if (at == std::string::npos || from.back() != ')') return said(from);
  const std::string figure = from.substr(at + 2, from.size() - at - 3);
  return say(Say::from_there, {said(from.substr(0, at)), figure_said(figure)});
}

}
