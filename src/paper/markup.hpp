// HTML and SVG that are well-formed XML by construction: a piece of markup is made by these
// functions alone, and whatever text goes in comes out as text. No name of an element or attribute
// comes from outside.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace paper {

class Markup {
public:
  Markup() = default; // nothing
  const std::string& bytes() const { return bytes_; }
  Markup& operator+=(const Markup& more) {
    bytes_ += more.bytes_;
    return *this;
  }

private:
  explicit Markup(std::string bytes) : bytes_(std::move(bytes)) {}
  std::string bytes_;
  friend Markup text(std::string_view);
  friend struct Writer;
};

struct Attribute {
  const char* name;
  std::string value;
};
using Attributes = std::vector<Attribute>;

// Line breaks and tabs as spaces, other control characters and bytes that are no UTF-8 as U+FFFD.
Markup text(std::string_view any);

Markup element(const char* name, const Attributes& attributes, const std::vector<Markup>& inside);
Markup element(const char* name, const Attributes& attributes = {}); // empty
Markup element(const char* name, const Attributes& attributes, std::string_view inside);

// "<meta …/>", which HTML gives no end.
Markup void_element(const char* name, const Attributes& attributes);

// A whole HTML5 document that an XML parser reads too: `style` is CSS without <, > and &, which
// the two would read differently; a title may be anything.
std::string document(std::string_view title, const char* style, const std::vector<Markup>& body);

// A length or a place in a drawing: at most three decimals, and 0 for what is not a number.
std::string mm(double value);

// "#rrggbb" of 0xRRGGBB.
std::string hex(unsigned colour);

}
