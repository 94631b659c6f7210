#include "notes/amount.hpp"

#include "notes/amount_words.hpp"
#include "notes/tokens.hpp"
#include "words/letter_case.hpp"
#include "words/letters.hpp"
#include "words/notes_says.hpp"

#include <algorithm>

namespace notes {

namespace {

using Say = words::NotesSay;
using Kind = TokenKind;

struct Found {
  NotedAmount amount;
  std::size_t end = 0; // token behind it
};

// Reads the tokens of one cell; `at` goes on as they are taken.
class Reader {
public:
  Reader(std::string_view cell, const CellFormat& format)
      : cell_(cell), format_(format), tokens_(tokens_of(cell)) {}

  const std::vector<Token>& tokens() const { return tokens_; }

  // An amount that begins at this token; absent where none does.
  words::Result<std::optional<Found>> amount_at(std::size_t from) {
    at_ = from;
    while (at_ < tokens_.size() && (is_about(key()) || key() == "~" || key() == "≈")) ++at_;
    const bool minus = key() == "-" && kind(1) == Kind::number;
    if (minus && from == 0) return words::failure(Say::amount_negative, {text(at_, at_ + 2)});
    const bool in_letters = kind() == Kind::word;
    const auto value = number();
    if (!value) return tl::make_unexpected(value.error());
    if (!*value) return std::nullopt;
    Found found{{**value}, 0};
    if (auto fault = take_range(found.amount)) return tl::make_unexpected(*fault);
    if (auto fault = take_unit(found.amount)) return tl::make_unexpected(*fault);
    if (in_letters && found.amount.unit == Unit::none) return std::nullopt; // "a" is no number
    take_remark(found.amount);
    found.end = at_;
    return found;
  }

  std::string text(std::size_t from, std::size_t to) const {
    if (from >= to || from >= tokens_.size()) return "";
    const std::size_t begin = tokens_[from].from;
    return std::string(cell_.substr(begin, tokens_[to - 1].to - begin));
  }

private:
  const std::string& key(std::size_t ahead = 0) const {
    static const std::string none;
    return at_ + ahead < tokens_.size() ? tokens_[at_ + ahead].key : none;
  }
  Kind kind(std::size_t ahead = 0) const {
    return at_ + ahead < tokens_.size() ? tokens_[at_ + ahead].kind : Kind::sign;
  }

  words::Result<std::optional<double>> number() {
    if (kind() == Kind::fraction) return tokens_[at_++].fraction;
    if (kind() == Kind::word) return in_words();
    if (kind() != Kind::number) return std::nullopt;
    if (key(1) == "/" && kind(2) == Kind::number) return broken();
    auto whole = number_of(tokens_[at_++].key, format_.decimal);
    if (!whole) return tl::make_unexpected(whole.error());
    if (kind() == Kind::fraction) return *whole + tokens_[at_++].fraction;
    if (kind() == Kind::number && key(1) == "/" && kind(2) == Kind::number) {
      const auto rest = broken();
      if (!rest) return rest;
      return *whole + **rest;
    }
    return *whole;
  }

  // 1/4
  words::Result<std::optional<double>> broken() {
    const auto above = number_of(key(), format_.decimal),
               below = number_of(key(2), format_.decimal);
    if (!above || !below || !(*below > 0))
      return words::failure(Say::number_none, {text(at_, at_ + 3)});
    at_ += 3;
    return *above / *below;
  }

  // two; a half; three quarters; one and a half
  std::optional<double> in_words() {
    const std::size_t from = at_;
    std::optional<double> whole = number_word(key());
    if (!whole && is_article(key())) whole = 1;
    if (whole) ++at_;
    if (whole && (key() == "and" || key() == "und") && is_article(key(1)) &&
        fraction_word(key(2))) {
      *whole += *fraction_word(key(2));
      at_ += 3;
      return whole;
    }
    if (const auto share = fraction_word(key())) {
      ++at_;
      if (is_article(key())) ++at_;
      return whole.value_or(1) * *share;
    }
    if (!whole) at_ = from;
    return whole;
  }

  std::optional<words::Error> take_range(NotedAmount& amount) {
    if (!is_to(key())) return std::nullopt;
    const std::size_t from = at_++;
    const auto end = number();
    if (!end) return end.error();
    if (!*end) {
      at_ = from;
      return std::nullopt;
    }
    if (!(**end > amount.value))
      return words::Error{Say::amount_range_falls, {text(from - 1, at_)}};
    amount.up_to = **end;
    amount.value = (amount.value + **end) / 2;
    return std::nullopt;
  }

  void skip_level() {
    while (kind() == Kind::word && is_level(key())) ++at_;
    while (is_article(key())) ++at_;
  }

  std::optional<words::Error> take_unit(NotedAmount& amount) {
    skip_level();
    if (key() == "%") return words::Error{Say::amount_percent, {}};
    if (kind() != Kind::word) return std::nullopt;
    if (is_heaped(key()) && kind(1) == Kind::word)
      return words::Error{Say::amount_heaped, {text(at_, at_ + 2)}};
    if (is_pinch(key())) return words::Error{Say::amount_no_size, {text(at_, at_ + 1)}};
    if (take_tool(amount)) return std::nullopt;
    std::size_t words = 1;
    auto unit = unit_of(key());
    if (!unit && kind(1) == Kind::word) { // "tea spoon"
      unit = unit_of(key() + key(1));
      words = 2;
    }
    if (!unit) return std::nullopt;
    at_ += words;
    amount.unit = unit->unit;
    amount.value *= unit->of;
    if (amount.up_to) *amount.up_to *= unit->of;
    skip_level();
    return std::nullopt;
  }

  // The longest name of a spoon of the workshop's that stands here.
  bool take_tool(NotedAmount& amount) {
    std::string name;
    std::size_t best = 0;
    for (std::size_t words = 1; words <= 4 && kind(words - 1) == Kind::word; ++words) {
      name += key(words - 1);
      const auto is = [&](const Tool& tool) { return tool.key == name; };
      const auto found = std::find_if(format_.tools.begin(), format_.tools.end(), is);
      if (found == format_.tools.end()) continue;
      amount.unit = Unit::tool;
      amount.tool = found->card;
      best = words;
    }
    at_ += best;
    return best > 0;
  }

  void take_remark(NotedAmount& amount) {
    if (key() != "(") return;
    std::size_t end = at_;
    while (end < tokens_.size() && tokens_[end].key != ")") ++end;
    if (end == tokens_.size()) return;
    amount.remark = text(at_ + 1, end);
    at_ = end + 1;
  }

  std::string_view cell_;
  const CellFormat& format_;
  std::vector<Token> tokens_;
  std::size_t at_ = 0;
};

std::string trimmed(std::string text) {
  constexpr std::string_view around = " \t\r\n:-=,;(";
  text.erase(0, text.find_first_not_of(around));
  text.erase(text.find_last_not_of(around) + 1);
  return text;
}

// Ends of the pieces in which a cell names one thing each.
std::vector<std::size_t> ends_of_pieces(const std::vector<Token>& tokens) {
  std::vector<std::size_t> ends;
  int brackets = 0;
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    brackets += tokens[at].key == "(";
    brackets -= tokens[at].key == ")";
    const bool of_a_number = at + 2 < tokens.size() && is_article(tokens[at + 1].key) &&
                             fraction_word(tokens[at + 2].key) && at > 0 &&
                             (number_word(tokens[at - 1].key) || is_article(tokens[at - 1].key));
    if (brackets <= 0 && is_and(tokens[at].key) && !of_a_number) ends.push_back(at);
  }
  ends.push_back(tokens.size());
  return ends;
}

// "3 g of white", "white 3 g", "white (3 g)", "white"; without a name where it is an amount alone.
words::Result<Named> piece_of(std::string_view cell, const CellFormat& format) {
  Reader reader(cell, format);
  const std::size_t size = reader.tokens().size();
  const auto first = reader.amount_at(0);
  if (!first) return tl::make_unexpected(first.error());
  if (*first) {
    std::size_t at = (*first)->end;
    while (at + 1 < size && is_of(reader.tokens()[at].key)) ++at;
    return Named{(*first)->amount, trimmed(reader.text(at, size))};
  }
  for (std::size_t at = 1; at < size; ++at) {
    const auto last = reader.amount_at(at);
    if (!last || !*last || (*last)->amount.unit == Unit::none) continue;
    const bool bracketed = reader.tokens()[at - 1].key == "(" && (*last)->end + 1 == size &&
                           reader.tokens()[size - 1].key == ")";
    if ((*last)->end == size || bracketed)
      return Named{(*last)->amount, trimmed(reader.text(0, at))};
  }
  return Named{std::nullopt, trimmed(std::string(cell))};
}

}

std::string key_of(std::string_view text) {
  const std::string plain = words::searchable(text);
  std::string out;
  for (std::size_t at = 0; at < plain.size();) {
    const char32_t c = words::next_letter(plain, at);
    const bool plain_letter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (c == U'³') out += '3';
    if (plain_letter || (c >= 0xC0 && c != 0xD7 && c != 0xF7 && c < 0x2000))
      words::put_letter(out, c);
  }
  return out;
}

bool says_none(std::string_view cell) {
  const std::string key = key_of(cell);
  if (is_none_word(key) || key == "0") return true;
  if (!key.empty() || cell.find('?') != std::string_view::npos ||
      cell.find("\xEF\xBF\xBD") != std::string_view::npos)
    return false;
  const auto tokens = tokens_of(cell); // ½ has no key
  return std::none_of(tokens.begin(), tokens.end(), [](const Token& token) {
    return token.kind == TokenKind::number || token.kind == TokenKind::fraction;
  });
}

words::Result<std::optional<NotedAmount>> amount_in(std::string_view cell,
                                                    const CellFormat& format) {
  if (says_none(cell)) return std::nullopt;
  Reader reader(cell, format);
  const auto found = reader.amount_at(0);
  if (!found) return tl::make_unexpected(found.error());
  if (!*found) return words::failure(Say::amount_none);
  const std::size_t end = (*found)->end;
  if (end < reader.tokens().size()) {
    const std::string rest = reader.text(end, reader.tokens().size());
    const bool no_unit = (*found)->amount.unit == Unit::none;
    return words::failure(no_unit ? Say::amount_unit_unknown : Say::amount_and_more, {rest});
  }
  if (!((*found)->amount.value > 0)) return std::nullopt;
  return (*found)->amount;
}

words::Result<std::vector<NotedAmount>> amounts_in(std::string_view cell,
                                                   const CellFormat& format) {
  const std::vector<Token> tokens = tokens_of(cell);
  std::vector<NotedAmount> out;
  std::size_t from = 0;
  for (const std::size_t end : ends_of_pieces(tokens)) {
    if (end == from) return words::failure(Say::amount_none);
    const std::size_t begin = tokens[from].from;
    const auto amount = amount_in(cell.substr(begin, tokens[end - 1].to - begin), format);
    if (!amount) return tl::make_unexpected(amount.error());
    out.push_back(amount->value_or(NotedAmount{}));
    from = end + 1;
  }
  return out;
}

words::Result<std::vector<Named>> named_in(std::string_view cell, const CellFormat& format) {
  const std::vector<Token> tokens = tokens_of(cell);
  std::vector<Named> out;
  std::size_t from = 0;
  for (const std::size_t end : ends_of_pieces(tokens)) {
    if (end > from) {
      const std::size_t begin = tokens[from].from;
      auto piece = piece_of(cell.substr(begin, tokens[end - 1].to - begin), format);
      if (!piece) return tl::make_unexpected(piece.error());
      const bool of_the_last = piece->name.empty() && !out.empty() && !out.back().amount;
      if (of_the_last)
        out.back().amount = piece->amount;
      else if (!piece->name.empty())
        out.push_back(*std::move(piece));
      else if (piece->amount)
        return words::failure(Say::amount_of_what);
    }
    from = end + 1;
  }
  return out;
}

Unit unit_in(std::string_view heading) {
  Unit unit = Unit::none;
  for (const Token& token : tokens_of(heading))
    if (const auto found = unit_of(token.key); found && found->of == 1) unit = found->unit;
  return unit;
}

}
