// The page in a browser starts with a part of B612: assets/browser/letters.txt. What any screen
// draws by itself is in it, so that only a name can want another face.
#include "screens/draw.hpp"
#include "screens/measure.hpp"
#include "screens/views.hpp"
#include "words/letters.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <sstream>

namespace page_letters_test {

namespace {

std::set<char32_t> letters_of(std::string_view text) {
  std::set<char32_t> all;
  for (std::size_t at = 0; at < text.size();) all.insert(words::next_letter(text, at));
  return all;
}

std::set<char32_t> of_the_page() {
  std::ifstream file(SLABSIDE_ROOT "/assets/browser/letters.txt");
  std::ostringstream text;
  text << file.rdbuf();
  return letters_of(text.str());
}

}

TEST_CASE("every letter that a screen draws in B612 comes with the page") {
  const std::set<char32_t> known = of_the_page();
  REQUIRE(known.size() > 200);
  std::set<char32_t> missing;
  for (const views::Case& c : views::all())
    for (const screens::Shape& shape : screens::draw(c.view))
      if (const auto* text = std::get_if<screens::Text>(&shape))
        for (const char32_t letter : letters_of(text->words))
          if (known.count(letter) == 0 && screens::rank_with(letter, text->bold) == 0)
            missing.insert(letter);
  for (const char32_t letter : missing) {
    CAPTURE(static_cast<unsigned>(letter));
    CHECK_MESSAGE(false, "not in letters.txt");
  }
}

}
