#include "session/photo_json.hpp"

#include "session/card_json.hpp"
#include "session/event.hpp"
#include "words/session_says.hpp"

namespace session {

namespace {

constexpr double most_lightness = 150; // 100 is the paper
constexpr double most_chroma = 200;
constexpr std::int64_t longest_side = 32'768; // pixels, of any photo

bool is_sha256(const std::string& text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

DoubtParts read_doubts(Fields& lab) {
  const auto own = [&](const char* name) { return lab.number(name, 0, most_chroma); };
  const auto white = [&](const char* name) { return lab.number(name, -most_chroma, most_chroma); };
  return {own("l_own"),     own("a_own"),     own("b_own"),
          white("l_white"), white("a_white"), white("b_white")};
}

Measured read_measured(Fields& f) {
  Measured m;
  m.shown = read_colour(f);
  Fields lab(f.object("lab"));
  m.l = lab.number("l", 0, most_lightness);
  m.a = lab.number("a", -most_chroma, most_chroma);
  m.b = lab.number("b", -most_chroma, most_chroma);
  m.l_u = lab.number("l_u", 0, most_chroma);
  m.a_u = lab.number("a_u", 0, most_chroma);
  m.b_u = lab.number("b_u", 0, most_chroma);
  if (lab.has("l_own")) m.parts = read_doubts(lab);
  f.take_fault_of(lab);
  return m;
}

PhotoPart read_part(const Value& object, Fields& f) {
  Fields part(object);
  PhotoPart p;
  p.x = part.integer("x", 0, longest_side);
  p.y = part.integer("y", 0, longest_side);
  p.width = part.integer("width", 1, longest_side);
  p.height = part.integer("height", 1, longest_side);
  f.take_fault_of(part);
  return p;
}

ReadAt read_regions(Fields& f) {
  ReadAt at;
  at.paint = read_part(f.object("paint"), f);
  for (const Value* each : f.objects_or_none("paper")) at.paper.push_back(read_part(*each, f));
  return at;
}

SpecksSeen read_specks(Fields& f) {
  SpecksSeen seen{f.word("specks", specks_named)};
  if (f.has("counted")) seen.counted = f.word("counted", specks_named);
  return seen;
}

void write_doubts(const DoubtParts& p, Json& lab) {
  lab["l_own"] = number(p.l_own);
  lab["a_own"] = number(p.a_own);
  lab["b_own"] = number(p.b_own);
  lab["l_white"] = number(p.l_white);
  lab["a_white"] = number(p.a_white);
  lab["b_white"] = number(p.b_white);
}

Json written(const PhotoPart& p) {
  return {{"x", p.x}, {"y", p.y}, {"width", p.width}, {"height", p.height}};
}

}

Photo read_photo(Fields& f) {
  Photo p{f.text("sha256"), f.text("ending"), f.word("of", photo_of_named)};
  if (!is_sha256(p.sha256)) f.reject(words::SessionSay::field_not_a_photo, "sha256");
  if (p.ending != "jpg" && p.ending != "png")
    f.reject(words::SessionSay::field_not_a_photo, "ending");
  if (p.of == PhotoOf::swatch && f.has("lab")) p.measured = read_measured(f);
  if (p.measured && f.has("paint")) p.read_at = read_regions(f);
  if (p.of == PhotoOf::dot && f.has("specks")) p.specks = read_specks(f);
  return p;
}

void write_photo(const Photo& p, Json& j) {
  j["sha256"] = p.sha256;
  j["ending"] = p.ending;
  j["of"] = name_of(p.of);
  if (p.specks) j["specks"] = name_of(p.specks->as);
  if (p.specks && p.specks->counted) j["counted"] = name_of(*p.specks->counted);
  if (!p.measured) return;
  const Measured& m = *p.measured;
  j["colour"] = colour_text(m.shown);
  j["lab"] = {{"l", number(m.l)},     {"a", number(m.a)},     {"b", number(m.b)},
              {"l_u", number(m.l_u)}, {"a_u", number(m.a_u)}, {"b_u", number(m.b_u)}};
  if (m.parts) write_doubts(*m.parts, j["lab"]);
  if (!p.read_at) return;
  j["paint"] = written(p.read_at->paint);
  j["paper"] = Json::array();
  for (const PhotoPart& paper : p.read_at->paper) j["paper"].push_back(written(paper));
}

}
