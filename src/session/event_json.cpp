#include "session/event_json.hpp"

#include "session/bytes.hpp"
#include "session/card_json.hpp"
#include "session/making_json.hpp"
#include "session/photo_json.hpp"
#include "words/lists.hpp"
#include "words/session_says.hpp"

namespace session {

namespace {

constexpr const char* format_name = "slabside-session";
constexpr double most_g = 5000;
constexpr std::int64_t most_pans = Planned::most_pans;
constexpr double most_parts = 1000;
constexpr double most_price = 1e9;
constexpr std::int64_t far = std::int64_t{1} << 53;

struct UnitField {
  const char* name;
  double most;
};
constexpr words::EnumTable<Unit, UnitField> units{{{Unit::g, {"g", most_g}},
                                                   {Unit::drops, {"drops", most::drops}},
                                                   {Unit::spoons, {"spoons", most::spoons}}}};

// Which event is to be read.
template <class E>
struct An {};

Added read(An<Added>, Fields& f) {
  Added a;
  a.of = f.text("of");
  a.unit = f.has("drops") ? Unit::drops : f.has("spoons") ? Unit::spoons : Unit::g;
  a.amount = f.number(units[a.unit].name, 0, units[a.unit].most);
  if (a.unit != Unit::g) a.with = f.text("with");
  return a;
}

Began read(An<Began>, Fields& f) {
  Began b;
  if (f.text("format") != format_name) f.reject(words::SessionSay::file_of_other_format);
  b.version = static_cast<int>(f.integer("version", 1, 1000000));
  b.session = f.text("session");
  b.part = static_cast<int>(f.integer("part", 0, 1000000));
  if (b.part > 0) b.from = static_cast<std::uint64_t>(f.integer("from", 0, far));
  b.device = f.text("device");
  b.local = f.text("local");
  return b;
}

Quantity read_quantity(Fields& f) {
  Quantity m;
  if (f.has("g"))
    m.g = f.number("g", 0, most_g);
  else
    m.share = f.number("share", 0, 1);
  return m;
}

void write_quantity(const Quantity& m, Json& j) {
  if (m.g)
    j["g"] = number(*m.g);
  else
    j["share"] = number(m.share);
}

Planned read(An<Planned>, Fields& f) {
  Planned p;
  if (f.has("pans")) {
    p.pans = static_cast<int>(f.integer("pans", 1, most_pans));
    p.in = f.text("in");
  }
  for (const Value* object : f.objects_or_none("takes")) {
    Fields inner(*object);
    Planned::Take& take = p.takes.emplace_back(Planned::Take{inner.text("of"), {}});
    if (inner.has("g")) take.g = inner.number("g", 0, most_g);
    if (inner.has("parts")) take.parts = inner.number("parts", 0, most_parts);
    f.take_fault_of(inner);
  }
  p.recipe = f.text_or("recipe", "");
  return p;
}

Weighed read(An<Weighed>, Fields& f) {
  return {f.word("place", place_named), f.number("g", 0, most::gross_g),
          f.number_or("tare_g", 0, most::gross_g, 0)};
}

Poured read(An<Poured>, Fields& f) {
  Poured p;
  p.first = static_cast<int>(f.integer("first", 1, most_pans));
  p.last = static_cast<int>(f.integer("last", p.first, most_pans));
  p.in = f.text("in");
  if (f.has("g")) p.g = f.number("g", 0, most_g);
  return p;
}

Verdict read(An<Verdict>, Fields& f) {
  Verdict v{f.word("as", became_named)};
  if (f.has("pan")) v.pan = static_cast<int>(f.integer("pan", 1, most_pans));
  return v;
}

Photo read(An<Photo>, Fields& f) { return read_photo(f); }

Event read_known(const std::string& kind, Fields& f);

// Only some kinds can be corrected; a correction to any other is not understood.
std::optional<Corrected::Says> sayable(Event event) {
  return std::visit(
      [](auto&& e) -> std::optional<Corrected::Says> {
        if constexpr (std::is_constructible_v<Corrected::Says, decltype(e)>)
          return Corrected::Says(std::move(e));
        else
          return std::nullopt;
      },
      std::move(event));
}

Event read(An<Corrected>, Fields& f) {
  Corrected c;
  c.line = f.ref("line");
  if (f.has("by_ms")) c.by_ms = f.integer("by_ms", -far, far);
  if (!f.has("says")) return c;
  Fields inner(f.object("says"));
  const std::string kind = inner.text("e");
  auto says = sayable(read_known(kind, inner));
  f.take_fault_of(inner);
  if (inner.unknown_word() || !says) return Unknown{};
  c.says = Immutable(*std::move(says));
  return c;
}

Gone read(An<Gone>, Fields& f) {
  return {static_cast<std::uint64_t>(f.integer("to", 0, far)), f.text("why")};
}

LaidOut read(An<LaidOut>, Fields& f) { return {read_card(f)}; }
PutAway read(An<PutAway>, Fields& f) { return {f.text("card")}; }
Bought read(An<Bought>, Fields& f) {
  Bought b{f.text("of"), f.number("g", 0, most::gross_g)};
  if (f.has("price")) b.price = f.number("price", 0, most_price);
  b.currency = f.text_or("currency", "");
  b.lot = f.text_or("lot", "");
  b.on = f.text_or("on", "");
  return b;
}
StockWeighed read(An<StockWeighed>, Fields& f) {
  return {f.text("of"), f.number("g", 0, most::gross_g),
          f.number_or("tare_g", 0, most::gross_g, 0)};
}
Making read(An<Making>, Fields& f) { return read_making(f); }
Told read(An<Told>, Fields& f) { return {f.text("range")}; }
Opened read(An<Opened>, Fields& f) { return {f.text("name"), f.text_or("again_of", "")}; }
RoomSet read(An<RoomSet>, Fields& f) {
  return {f.number("celsius", -50, 100), f.number("humidity", 0, 1), f.yes("guessed")};
}
CautionsSeen read(An<CautionsSeen>, Fields&) { return {}; }
Felt read(An<Felt>, Fields& f) { return {f.word("as", feel_named), f.word("by", by_named)}; }
StageBegan read(An<StageBegan>, Fields& f) { return {f.word("stage", stage_named)}; }
GoesOn read(An<GoesOn>, Fields&) { return {}; }
Dot read(An<Dot>, Fields& f) { return {f.word("specks", specks_named)}; }
Trouble read(An<Trouble>, Fields& f) { return {f.word("what", trouble_named)}; }
BottleWeighed read(An<BottleWeighed>, Fields& f) {
  return {f.text("of"), f.number("g", 0, most::gross_g)};
}
CountLost read(An<CountLost>, Fields& f) { return {f.text("of")}; }
Moved read(An<Moved>, Fields& f) {
  return {f.word("from", place_named), f.word("to", place_named), read_quantity(f)};
}
Lost read(An<Lost>, Fields& f) {
  return {f.word("from", place_named), read_quantity(f), f.text_or("into", "")};
}
AsBefore read(An<AsBefore>, Fields& f) { return {f.ref("line")}; }
Found read(An<Found>, Fields& f) { return {f.word("as", state_named)}; }
PanWeighed read(An<PanWeighed>, Fields& f) {
  return {static_cast<int>(f.integer("pan", 1, most_pans)), f.number("g", 0, most::gross_g)};
}
Noted read(An<Noted>, Fields& f) { return {f.text("text")}; }
SetAside read(An<SetAside>, Fields& f) { return {f.ref("line")}; }
Confirmed read(An<Confirmed>, Fields& f) {
  return {f.ref("line"), f.number("g", 0, most::gross_g)};
}
Withdrawn read(An<Withdrawn>, Fields& f) { return {f.ref("line")}; }
Gathered read(An<Gathered>, Fields&) { return {}; }
Closed read(An<Closed>, Fields&) { return {}; }
Discarded read(An<Discarded>, Fields&) { return {}; }
ClockJumped read(An<ClockJumped>, Fields& f) {
  return {f.integer("by_ms", -far, far), f.text("local")};
}
Left read(An<Left>, Fields&) { return {}; }

template <std::size_t at>
Event read_from(const std::string& kind, Fields& f) {
  if constexpr (at < std::variant_size_v<EventKinds>) {
    using E = std::variant_alternative_t<at, EventKinds>;
    if constexpr (!std::is_same_v<E, Unknown>)
      if (same_name(kind, E::word)) return read(An<E>{}, f);
    return read_from<at + 1>(kind, f);
  } else {
    return Unknown{};
  }
}

Event read_known(const std::string& kind, Fields& f) { return read_from<0>(kind, f); }

std::string_view word_of(const Unknown& unknown) { return unknown.e; }
template <class E>
std::string_view word_of(const E&) {
  return E::word;
}

}

std::string_view kind_of(const Event& event) {
  return std::visit([](const auto& e) { return word_of(e); }, event);
}

namespace {

Json json(const Ref& line) { return {line.session, line.n}; }

void write(const Began& b, Json& j) {
  j["format"] = format_name;
  j["version"] = b.version;
  j["session"] = b.session;
  j["part"] = b.part;
  if (b.part > 0) j["from"] = b.from;
  j["device"] = b.device;
  j["local"] = b.local;
}
void write(const LaidOut& l, Json& j) { write_card(*l.card, j); }
void write(const PutAway& p, Json& j) { j["card"] = p.card; }
void write(const Bought& b, Json& j) {
  j["of"] = b.of;
  j["g"] = number(b.g);
  if (b.price) j["price"] = number(*b.price);
  const auto text = [&](const char* name, const std::string& value) {
    if (!value.empty()) j[name] = value;
  };
  text("currency", b.currency);
  text("lot", b.lot);
  text("on", b.on);
}
void write(const StockWeighed& w, Json& j) {
  j["of"] = w.of;
  j["g"] = number(w.g);
  if (w.tare_g > 0) j["tare_g"] = number(w.tare_g);
}
void write(const Making& m, Json& j) { write_making(m, j); }
void write(const Told& t, Json& j) { j["range"] = t.range; }
void write(const Opened& o, Json& j) {
  j["name"] = o.name;
  if (!o.again_of.empty()) j["again_of"] = o.again_of;
}
void write(const Planned& p, Json& j) {
  if (p.pans > 0) {
    j["pans"] = p.pans;
    j["in"] = p.in;
  }
  for (const Planned::Take& take : p.takes) {
    Json one = {{"of", take.of}};
    if (take.g) one["g"] = number(*take.g);
    if (take.parts) one["parts"] = number(*take.parts);
    j["takes"].push_back(std::move(one));
  }
  if (!p.recipe.empty()) j["recipe"] = p.recipe;
}
void write(const RoomSet& r, Json& j) {
  j["celsius"] = number(r.celsius);
  j["humidity"] = number(r.humidity);
  if (r.guessed) j["guessed"] = true;
}
void write(const CautionsSeen&, Json&) {}
void write(const Added& a, Json& j) {
  j["of"] = a.of;
  j[units[a.unit].name] = number(a.amount);
  if (a.unit != Unit::g) j["with"] = a.with;
}
void write(const Felt& f, Json& j) {
  j["as"] = name_of(f.as);
  j["by"] = name_of(f.by);
}
void write(const StageBegan& s, Json& j) { j["stage"] = name_of(s.stage); }
void write(const GoesOn&, Json&) {}
void write(const Dot& d, Json& j) { j["specks"] = name_of(d.specks); }
void write(const Trouble& t, Json& j) { j["what"] = name_of(t.what); }
void write(const BottleWeighed& b, Json& j) {
  j["of"] = b.of;
  j["g"] = number(b.g);
}
void write(const CountLost& c, Json& j) { j["of"] = c.of; }
void write(const Moved& m, Json& j) {
  j["from"] = name_of(m.from);
  j["to"] = name_of(m.to);
  write_quantity(m.quantity, j);
}
void write(const Lost& l, Json& j) {
  j["from"] = name_of(l.from);
  write_quantity(l.quantity, j);
  if (!l.into.empty()) j["into"] = l.into;
}
void write(const Weighed& w, Json& j) {
  j["place"] = name_of(w.place);
  j["g"] = number(w.g);
  if (w.tare_g > 0) j["tare_g"] = number(w.tare_g);
}
void write(const AsBefore& a, Json& j) { j["line"] = json(a.line); }
void write(const Found& f, Json& j) { j["as"] = name_of(f.as); }
void write(const Poured& p, Json& j) {
  j["first"] = p.first;
  j["last"] = p.last;
  j["in"] = p.in;
  if (p.g) j["g"] = number(*p.g);
}
void write(const PanWeighed& p, Json& j) {
  j["pan"] = p.pan;
  j["g"] = number(p.g);
}
void write(const Verdict& v, Json& j) {
  j["as"] = name_of(v.as);
  if (v.pan > 0) j["pan"] = v.pan;
}
void write(const Noted& n, Json& j) { j["text"] = n.text; }
void write(const SetAside& s, Json& j) { j["line"] = json(s.line); }
void write(const Confirmed& c, Json& j) {
  j["line"] = json(c.line);
  j["g"] = number(c.g);
}
void write(const Withdrawn& w, Json& j) { j["line"] = json(w.line); }
void write(const Corrected& c, Json& j) {
  j["line"] = json(c.line);
  if (c.by_ms) j["by_ms"] = *c.by_ms;
  std::visit(words::Overloaded{[](const std::monostate&) {},
                               [&](const auto& says) {
                                 Json inner = {{"e", word_of(says)}};
                                 write(says, inner);
                                 j["says"] = std::move(inner);
                               }},
             *c.says);
}
void write(const Photo& p, Json& j) { write_photo(p, j); }
void write(const Gone& g, Json& j) {
  j["to"] = g.to;
  j["why"] = g.why;
}
void write(const Gathered&, Json&) {}
void write(const Closed&, Json&) {}
void write(const Discarded&, Json&) {}
void write(const ClockJumped& c, Json& j) {
  j["by_ms"] = c.by_ms;
  j["local"] = c.local;
}
void write(const Left&, Json&) {}
void write(const Unknown& u, Json& j) { j.update(Json::parse(u.json, nullptr, false)); }

}

void write_fields(const Event& event, Json& j) {
  std::visit([&](const auto& e) { write(e, j); }, event);
}

Unknown unknown_from(const std::string& kind, const Tree& line) {
  Json rest = *read_object(line.line); // it was one a moment ago
  for (const char* name : {"n", "t", "at", "e", "batch", "p", "c"}) rest.erase(name);
  return {kind, rest.dump()};
}

words::Result<Event> read_event(const std::string& kind, const Tree& line) {
  Fields fields(line.object());
  Event event = read_known(kind, fields);
  if (fields.fault()) return tl::make_unexpected(*fields.fault());
  if (fields.unknown_word() || std::holds_alternative<Unknown>(event))
    return unknown_from(kind, line);
  return event;
}

}
