#include "notes/pairing.hpp"

#include "words/notes_says.hpp"

#include <algorithm>

namespace notes {

namespace {

using Say = words::NotesSay;

class Pairing {
public:
  Pairing(std::vector<Column>& columns, const std::vector<Pairable>& all)
      : columns_(columns), all_(all) {}

  void pair() {
    const auto number = [&](std::size_t at) { return all_[at].heading.number; };
    const auto kind = [&](std::size_t at, bool amounts) {
      const auto role = amounts ? all_[at].heading.of : std::optional(columns_[at].role);
      return role && (amounts || !all_[at].has_amounts) ? std::string(name_of(*role)) : "";
    };
    pair_by(Say::why_of_heading,
            [&](std::size_t at, bool) { return key_of(all_[at].heading.rest); });
    pair_by(Say::why_of_heading, [&](std::size_t at, bool amounts) {
      return number(at).empty() || kind(at, amounts).empty() ? "" : kind(at, amounts) + number(at);
    });
    for (const bool unnumbered : {false, true}) // names first, then amounts
      pair_by(Say::why_of_heading, [&](std::size_t at, bool amounts) {
        return amounts == unnumbered && !number(at).empty() ? "" : kind(at, amounts);
      });
    pair_by(Say::why_of_number, [&](std::size_t at, bool amounts) {
      return (amounts ? says_of_what(at) : all_[at].has_amounts) ? "" : number(at);
    });
    for (const bool others : {false, true}) // what may be other numbers goes last
      pair_by(Say::why_of_place, [&](std::size_t at, bool amounts) {
        const bool out = says_of_what(at) || (!others && may_be_others(at));
        return (amounts ? out : all_[at].has_amounts) ? "" : "any";
      });
    for (std::size_t at = 0; at < columns_.size(); ++at)
      if (columns_[at].role == Role::amount && !columns_[at].of) leave(at);
  }

private:
  bool says_of_what(std::size_t at) const {
    const Heading& heading = all_[at].heading;
    return heading.whole || (heading.of && all_[at].says_amounts);
  }
  bool may_be_others(std::size_t at) const {
    return !columns_[at].heading.empty() && !all_[at].heading.role && !all_[at].says_amounts;
  }
  bool is_amounts(std::size_t at) const {
    const Column& column = columns_[at];
    const bool asked = column.why.what == words::Sentence(Say::why_asked);
    const bool of_liquid = liquid_of(column.role) && all_[at].says_amounts && !asked;
    return !column.of && column.card.empty() && (column.role == Role::amount || of_liquid);
  }
  bool is_names(std::size_t at) const {
    const Column& column = columns_[at];
    const bool names = column.role == Role::pigment || liquid_of(column.role);
    return names && column.card.empty() && !is_amounts(at) && !taken_.count(at);
  }

  // Those of the same key; one that has none takes no part.
  template <class KeyOf>
  void pair_by(Say why, KeyOf key_for) {
    std::map<std::string, std::vector<std::size_t>> groups;
    for (std::size_t at = 0; at < columns_.size(); ++at) {
      if (!is_amounts(at) && !is_names(at)) continue;
      const std::string key = key_for(at, is_amounts(at));
      if (!key.empty()) groups[key].push_back(at);
    }
    for (const auto& [key, group] : groups) pair_by_place(group, why);
  }

  // Amounts that follow each other are of as many names before them, in the same order; what is
  // left, of the nearest behind. In one pass, since a table may be thousands of columns wide.
  void pair_by_place(const std::vector<std::size_t>& group, Say why) {
    std::vector<std::size_t> before; // without amounts yet
    for (std::size_t at = 0, behind = 0; at < group.size();) {
      if (!is_amounts(group[at])) {
        if (is_names(group[at])) before.push_back(group[at]);
        ++at;
        continue;
      }
      std::size_t end = at;
      while (end < group.size() && is_amounts(group[end])) ++end;
      const std::size_t many = std::min(end - at, before.size()), from = before.size() - many;
      for (std::size_t place = from; place < before.size(); ++place)
        bind(group[at++], before[place], why);
      before.resize(from);
      for (behind = std::max(behind, end); at < end; ++at) {
        while (behind < group.size() && !is_names(group[behind])) ++behind;
        if (behind < group.size()) bind(group[at], group[behind], why);
      }
    }
  }

  void bind(std::size_t amounts, std::size_t names, Say why) {
    Column& column = columns_[amounts];
    column.role = Role::amount;
    column.of = names;
    taken_.insert(names);
    const bool told =
        why == Say::why_of_heading && column.why.what == words::Sentence(Say::why_heading);
    if (!told) column.why = {why, {words::Inner(column.why)}};
  }

  // Of a liquid that no other column names.
  void leave(std::size_t at) {
    Column& column = columns_[at];
    const auto of = all_[at].heading.of;
    if (of && liquid_of(*of)) {
      column.role = *of;
      return;
    }
    column.role = Role::note;
    column.why = {Say::why_amount_of_nothing, {}};
  }

  std::vector<Column>& columns_;
  const std::vector<Pairable>& all_;
  std::set<std::size_t> taken_; // columns of names that have their amounts
};

}

void pair_amounts(std::vector<Column>& columns, const std::vector<Pairable>& all) {
  Pairing(columns, all).pair();
}

}
