#include "paper/markup.hpp"

#include "words/language_says.hpp"
#include "words/letters.hpp"
#include "words/say.hpp"

#include <cmath>

namespace paper {

using words::is_control;
using words::next_letter;
using words::no_letter;
using words::put_letter;

struct Writer {
  static Markup made(std::string bytes) { return Markup(std::move(bytes)); }
};

namespace {

std::string escaped(std::string_view any) {
  std::string out;
  for (std::size_t at = 0; at < any.size();) {
    const char32_t letter = next_letter(any, at);
    switch (letter) {
    case '<': out += "&lt;"; break;
    case '>': out += "&gt;"; break;
    case '&': out += "&amp;"; break;
    case '"': out += "&quot;"; break;
    case '\'': out += "&#39;"; break;
    case '\t':
    case '\n':
    case '\r': out += ' '; break;
    default: put_letter(out, is_control(letter) ? no_letter : letter);
    }
  }
  return out;
}

std::string opening(const char* name, const Attributes& attributes) {
  std::string out = "<" + std::string(name);
  for (const Attribute& a : attributes)
    out += " " + std::string(a.name) + "=\"" + escaped(a.value) + "\"";
  return out;
}

}

Markup text(std::string_view any) { return Markup(escaped(any)); }

Markup element(const char* name, const Attributes& attributes, const std::vector<Markup>& inside) {
  std::string out = opening(name, attributes) + ">";
  for (const Markup& part : inside) out += part.bytes();
  return Writer::made(out + "</" + name + ">");
}

Markup element(const char* name, const Attributes& attributes) {
  return element(name, attributes, std::vector<Markup>{});
}

Markup element(const char* name, const Attributes& attributes, std::string_view inside) {
  return element(name, attributes, std::vector<Markup>{text(inside)});
}

Markup void_element(const char* name, const Attributes& attributes) {
  return Writer::made(opening(name, attributes) + "/>");
}

std::string document(std::string_view title, const char* style, const std::vector<Markup>& body) {
  const Markup head =
      element("head", {},
              {void_element("meta", {{"charset", "utf-8"}}),
               void_element("meta", {{"name", "viewport"}, {"content", "width=device-width"}}),
               element("title", {}, title), element("style", {}, style)});
  const Markup html = element(
      "html",
      {{"xmlns", "http://www.w3.org/1999/xhtml"}, {"lang", words::say(words::LanguageSay::tag)}},
      {head, element("body", {}, body)});
  return "<!DOCTYPE html>\n" + html.bytes() + "\n";
}

std::string mm(double value) {
  if (!std::isfinite(value)) return "0";
  std::string out = words::invariant(value, 3);
  out.erase(out.find_last_not_of('0') + 1);
  if (out.back() == '.') out.pop_back();
  return out;
}

std::string hex(unsigned colour) {
  constexpr const char* digits = "0123456789abcdef";
  std::string out = "#";
  for (int shift = 20; shift >= 0; shift -= 4) out += digits[colour >> shift & 15];
  return out;
}

}
