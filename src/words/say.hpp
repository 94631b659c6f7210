// Every sentence the program says, by id. Screens and rooms hold ids and numbers; the words are
// made from them last, here, in the language that is spoken.
#pragma once

#include "words/languages.hpp"
#include "words/numbers.hpp"
#include "words/sentence.hpp"

#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace words {

// The English sentence with {0}, {1} ... where the arguments go.
std::string_view pattern(Sentence sentence);

// In that language; the English one where it has no such sentence.
std::string pattern(Sentence sentence, Language language);

// What say() speaks from now on, English until then. Any thread may be speaking meanwhile.
void say_in(Language language);
Language spoken();

// About 30 % longer, with marks on its letters, the slots as they are: it shows what would not fit
// or has no glyph before there is a translator.
std::string pseudo(std::string_view english);

struct Error;

// A sentence within another, which makes words of both.
class Inner {
public:
  explicit Inner(Error error);
  const Error& operator*() const { return *is_; }
  bool operator==(const Inner& other) const;

private:
  std::shared_ptr<const Error> is_;
};

// What goes into a sentence: a text as it stands, a number, or another sentence.
struct Arg {
  std::variant<std::string, Number, Inner> is;

  Arg(std::string text) : is(std::move(text)) {}
  Arg(const char* text) : is(std::string(text)) {}
  Arg(Number number) : is(number) {}
  Arg(Inner inner) : is(std::move(inner)) {}
  bool operator==(const Arg&) const = default;
};
using Args = std::vector<Arg>;

std::string written(const Arg& arg);

// The finished sentence. An argument that the pattern does not name is left out.
std::string say(Sentence sentence, const Args& args = {});

// Of a thing that can be counted: "1 line", "0 lines".
std::string counted(std::size_t many, Sentence one, Sentence others);

}
