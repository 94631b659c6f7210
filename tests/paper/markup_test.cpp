#include "paper/markup.hpp"
#include "words/letters.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace markup_test {

using namespace paper;
using words::next_letter;
using words::put_letter;

TEST_CASE("text stays text") {
  CHECK(text("a < b & \"c\" 'd' >").bytes() == "a &lt; b &amp; &quot;c&quot; &#39;d&#39; &gt;");
  CHECK(text("tab\tline\nend\r").bytes() == "tab line end ");
  CHECK(text(std::string("nul\0esc\x1b", 8)).bytes() == "nul\xef\xbf\xbd"
                                                        "esc\xef\xbf\xbd");
  CHECK(text("c1 \xc2\x9b, DEL \x7f").bytes() == "c1 \xef\xbf\xbd, DEL \xef\xbf\xbd");
  CHECK(text("墨 é 🎨").bytes() == "墨 é 🎨");
}

// Bytes that are no UTF-8 by RFC 3629: 3 (no surrogates, nothing above 10FFFF, the shortest form).
TEST_CASE("bytes that are no letters are said to be none, one at a time") {
  const std::string none = "\xef\xbf\xbd";
  CHECK(text("\xff").bytes() == none);
  CHECK(text("\xc0\xaf").bytes() == none + none);
  CHECK(text("\xe0\x80\xaf").bytes() == none + none + none);
  CHECK(text("\xed\xa0\x80").bytes() == none + none + none);
  CHECK(text("\xf4\x90\x80\x80").bytes() == none + none + none + none);
  CHECK(text("\xe2\x82").bytes() == none + none); // cut short
  CHECK(text("\xef\xbf\xbe").bytes() == none);    // U+FFFE, which XML knows no character for
}

TEST_CASE("every letter that is one comes back as the bytes it was") {
  for (const char32_t letter :
       {U'a', U'é', U'\u07FF', U'\u0800', U'墨', U'\U00010000', U'\U0010FFFD'}) {
    std::string bytes;
    put_letter(bytes, letter);
    std::size_t at = 0;
    CHECK(next_letter(bytes, at) == letter);
    CHECK(at == bytes.size());
  }
}

TEST_CASE("an element holds attributes, text and elements, and is always closed") {
  CHECK(element("p", {{"class", "a\"b"}}, "x<y").bytes() == "<p class=\"a&quot;b\">x&lt;y</p>");
  CHECK(element("td").bytes() == "<td></td>"); // HTML would take <td/> for an opening
  CHECK(element("ul", {}, {element("li", {}, "1"), element("li", {}, "2")}).bytes() ==
        "<ul><li>1</li><li>2</li></ul>");
  CHECK(void_element("meta", {{"charset", "utf-8"}}).bytes() == "<meta charset=\"utf-8\"/>");
}

TEST_CASE("lengths and colours as drawings want them") {
  CHECK(mm(0) == "0");
  CHECK(mm(38) == "38");
  CHECK(mm(215.9) == "215.9");
  CHECK(mm(1.0 / 3) == "0.333");
  CHECK(mm(-0.0001) == "0");
  CHECK(mm(std::nan("")) == "0");
  CHECK(mm(INFINITY) == "0");
  CHECK(hex(0x1F3FA0) == "#1f3fa0");
  CHECK(hex(0) == "#000000");
}

}
