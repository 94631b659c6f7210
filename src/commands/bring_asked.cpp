#include "bench/plan_state.hpp"
#include "commands/arguments.hpp"
#include "commands/bring.hpp"
#include "notes/amount_words.hpp"
#include "words/commands_says.hpp"

#include <algorithm>

namespace commands {

namespace {

using Say = words::CommandsSay;

// "C=amount" or "3=binder:drops"
std::optional<words::Error> ask_column(notes::Asked& asked, const std::string& text) {
  const words::Error bad{Say::bring_bad_column, {text}};
  const std::size_t equals = text.find('=');
  if (equals == std::string::npos) return bad;
  const std::size_t colon = std::min(text.find(':', equals), text.size());
  const auto column = notes::column_named(text.substr(0, equals));
  const auto role = notes::role_named(text.substr(equals + 1, colon - equals - 1));
  notes::Unit unit = notes::Unit::none;
  if (colon < text.size()) {
    const auto word = notes::unit_of(notes::key_of(text.substr(colon + 1)));
    if (!word || word->of != 1) return bad;
    unit = word->unit;
  }
  if (!column || !role || asked.columns.count(*column)) return bad;
  asked.columns[*column] = {*role, unit};
  return std::nullopt;
}

// A word of a short list; what the option means without one where it is not given.
template <class T>
std::optional<words::Error> take_word(const Arguments& a, const std::string& option, T& into,
                                      const std::vector<std::pair<const char*, T>>& may_be) {
  const auto given = a.value(option);
  if (!given) return std::nullopt;
  std::string all;
  for (const auto& [word, means] : may_be) {
    all += (all.empty() ? "" : ", ") + std::string(word);
    if (*given != word) continue;
    into = means;
    return std::nullopt;
  }
  return words::Error{Say::bring_bad_word, {*given, option, all}};
}

}

std::optional<words::Error> ask(Bringing& what, const Arguments& a) {
  using namespace notes;
  using Between = std::optional<Separator>;
  for (const std::string& column : a.all("--column"))
    if (auto fault = ask_column(what.asked, column)) return fault;
  what.how.binder = a.value("--binder").value_or("");
  what.how.new_pigments = a.has("--new-pigments");
  what.how.mine = a.has("--mine");
  what.how.most_pigments = bench::most_pigments;
  auto fault = take_word<Decimal>(a, "--decimal", what.asked.decimal,
                                  {{"comma", Decimal::comma}, {"point", Decimal::point}});
  if (!fault)
    fault =
        take_word<DateOrder>(a, "--dates", what.asked.dates,
                             {{"day", DateOrder::day_first}, {"month", DateOrder::month_first}});
  if (!fault)
    fault = take_word<Between>(a, "--separator", what.separator,
                               {{"comma", Separator::comma},
                                {"semicolon", Separator::semicolon},
                                {"tab", Separator::tab},
                                {"bar", Separator::bar}});
  if (!fault)
    fault = take_word<SpoonsOf>(a, "--spoons", what.how.spoons,
                                {{"metric", SpoonsOf::metric},
                                 {"us", SpoonsOf::us},
                                 {"uk", SpoonsOf::uk},
                                 {"australia", SpoonsOf::australia}});
  return fault;
}

}
