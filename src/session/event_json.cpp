#include "session/event_json.hpp"

#include "session/bytes.hpp"
#include "session/card_json.hpp"
#include "words/session_says.hpp"

namespace session {

namespace {

constexpr const char* format_name = "slabside-session";
constexpr double most_g = 5000;
constexpr double most_gross_g = 100000; // with what it lies in
constexpr double most_drops = 10000;
constexpr double most_spoons = 1000;
constexpr std::int64_t most_pans = 1000;
constexpr std::int64_t far = std::int64_t{1} << 53;

template <class... F>
struct Overloaded : F... {
  using F::operator()...;
};
template <class... F>
Overloaded(F...) -> Overloaded<F...>;

const char* field_of(Unit unit) {
  switch (unit) {
  case Unit::drops: return "drops";
  case Unit::spoons: return "spoons";
  default: return "g";
  }
}

Added read_added(Fields& f) {
  Added a;
  a.of = f.text("of");
  a.unit = f.has("drops") ? Unit::drops : f.has("spoons") ? Unit::spoons : Unit::g;
  const double most = a.unit == Unit::drops    ? most_drops
                      : a.unit == Unit::spoons ? most_spoons
                                               : most_g;
  a.amount = f.number(field_of(a.unit), 0, most);
  if (a.unit != Unit::g) a.with = f.text("with");
  return a;
}

Began read_began(Fields& f) {
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

bool is_sha256(const std::string& text) {
  return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

Much read_much(Fields& f) {
  Much m;
  if (f.has("g"))
    m.g = f.number("g", 0, most_g);
  else
    m.share = f.number("share", 0, 1);
  return m;
}

void write_much(const Much& m, Json& j) {
  if (m.g)
    j["g"] = number(*m.g);
  else
    j["share"] = number(m.share);
}

Weighed read_weighed(Fields& f) {
  return {f.word("place", place_named), f.number("g", 0, most_gross_g),
          f.number_or("tare_g", 0, most_gross_g, 0)};
}

Poured read_poured(Fields& f) {
  Poured p;
  p.first = static_cast<int>(f.integer("first", 1, most_pans));
  p.last = static_cast<int>(f.integer("last", p.first, most_pans));
  p.in = f.text("in");
  if (f.has("g")) p.g = f.number("g", 0, most_g);
  return p;
}

Verdict read_verdict(Fields& f) {
  Verdict v{f.word("as", became_named)};
  if (f.has("pan")) v.pan = static_cast<int>(f.integer("pan", 1, most_pans));
  return v;
}

Photo read_photo(Fields& f) {
  Photo p{f.text("sha256"), f.text("ending"), f.word("of", photo_of_named)};
  if (!is_sha256(p.sha256)) f.reject(words::SessionSay::field_not_a_photo, "sha256");
  if (p.ending != "jpg" && p.ending != "png")
    f.reject(words::SessionSay::field_not_a_photo, "ending");
  return p;
}

Event read_known(const std::string& kind, Fields& f);

// The corrected line's own kinds; a correction to any other is not understood.
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

Event read_corrected(Fields& f) {
  Corrected c;
  c.line = f.ref("line");
  if (f.has("by_ms")) c.by_ms = f.integer("by_ms", -far, far);
  if (!f.has("says")) return c;
  const Json object = f.object("says");
  Fields inner(object);
  const std::string kind = inner.text("e");
  auto says = sayable(read_known(kind, inner));
  f.take_fault_of(inner);
  if (inner.unknown_word() || !says) return Unknown{};
  c.says = Boxed(*std::move(says));
  return c;
}

Gone read_gone(Fields& f) {
  return {static_cast<std::uint64_t>(f.integer("to", 0, far)), f.text("why")};
}

Event read_known(const std::string& kind, Fields& f) {
  if (kind == "began") return read_began(f);
  if (kind == "laid_out") return LaidOut{read_card(f)};
  if (kind == "put_away") return PutAway{f.text("card")};
  if (kind == "opened") return Opened{f.text("name"), f.text_or("again_of", "")};
  if (kind == "room")
    return RoomSet{f.number("celsius", -50, 100), f.number("humidity", 0, 1), f.yes("guessed")};
  if (kind == "cautions_seen") return CautionsSeen{};
  if (kind == "added") return read_added(f);
  if (kind == "felt") return Felt{f.word("as", feel_named), f.word("by", by_named)};
  if (kind == "stage") return StageBegan{f.word("stage", stage_named)};
  if (kind == "dot") return Dot{f.word("specks", specks_named)};
  if (kind == "trouble") return Trouble{f.word("what", trouble_named)};
  if (kind == "bottle_weighed") return BottleWeighed{f.text("of"), f.number("g", 0, most_gross_g)};
  if (kind == "count_lost") return CountLost{f.text("of")};
  if (kind == "moved")
    return Moved{f.word("from", place_named), f.word("to", place_named), read_much(f)};
  if (kind == "lost") return Lost{f.word("from", place_named), read_much(f), f.text_or("into", "")};
  if (kind == "weighed") return read_weighed(f);
  if (kind == "as_before") return AsBefore{f.ref("line")};
  if (kind == "found") return Found{f.word("as", state_named)};
  if (kind == "poured") return read_poured(f);
  if (kind == "pan_weighed")
    return PanWeighed{static_cast<int>(f.integer("pan", 1, most_pans)),
                      f.number("g", 0, most_gross_g)};
  if (kind == "verdict") return read_verdict(f);
  if (kind == "noted") return Noted{f.text("text")};
  if (kind == "set_aside") return SetAside{f.ref("line")};
  if (kind == "withdrawn") return Withdrawn{f.ref("line")};
  if (kind == "corrected") return read_corrected(f);
  if (kind == "photo") return read_photo(f);
  if (kind == "gone") return read_gone(f);
  if (kind == "gathered") return Gathered{};
  if (kind == "closed") return Closed{};
  if (kind == "clock_jumped") return ClockJumped{f.integer("by_ms", -far, far), f.text("local")};
  if (kind == "left") return Left{};
  return Unknown{};
}

}

std::string_view kind_of(const Event& event) {
  return std::visit(
      Overloaded{[](const Began&) { return std::string_view("began"); },
                 [](const LaidOut&) { return std::string_view("laid_out"); },
                 [](const PutAway&) { return std::string_view("put_away"); },
                 [](const Opened&) { return std::string_view("opened"); },
                 [](const RoomSet&) { return std::string_view("room"); },
                 [](const CautionsSeen&) { return std::string_view("cautions_seen"); },
                 [](const Added&) { return std::string_view("added"); },
                 [](const Felt&) { return std::string_view("felt"); },
                 [](const StageBegan&) { return std::string_view("stage"); },
                 [](const Dot&) { return std::string_view("dot"); },
                 [](const Trouble&) { return std::string_view("trouble"); },
                 [](const BottleWeighed&) { return std::string_view("bottle_weighed"); },
                 [](const CountLost&) { return std::string_view("count_lost"); },
                 [](const Moved&) { return std::string_view("moved"); },
                 [](const Lost&) { return std::string_view("lost"); },
                 [](const Weighed&) { return std::string_view("weighed"); },
                 [](const AsBefore&) { return std::string_view("as_before"); },
                 [](const Found&) { return std::string_view("found"); },
                 [](const Poured&) { return std::string_view("poured"); },
                 [](const PanWeighed&) { return std::string_view("pan_weighed"); },
                 [](const Verdict&) { return std::string_view("verdict"); },
                 [](const Noted&) { return std::string_view("noted"); },
                 [](const SetAside&) { return std::string_view("set_aside"); },
                 [](const Withdrawn&) { return std::string_view("withdrawn"); },
                 [](const Corrected&) { return std::string_view("corrected"); },
                 [](const Photo&) { return std::string_view("photo"); },
                 [](const Gone&) { return std::string_view("gone"); },
                 [](const Gathered&) { return std::string_view("gathered"); },
                 [](const Closed&) { return std::string_view("closed"); },
                 [](const ClockJumped&) { return std::string_view("clock_jumped"); },
                 [](const Left&) { return std::string_view("left"); },
                 [](const Unknown& u) { return std::string_view(u.e); }},
      event);
}

namespace {

void write_corrected(const Corrected& c, Json& j) {
  j["line"] = {c.line.session, c.line.n};
  if (c.by_ms) j["by_ms"] = *c.by_ms;
  std::visit(
      [&](const auto& says) {
        if constexpr (!std::is_same_v<std::decay_t<decltype(says)>, std::monostate>) {
          Json inner = {{"e", kind_of(says)}};
          write_fields(says, inner);
          j["says"] = std::move(inner);
        }
      },
      *c.says);
}

}

void write_fields(const Event& event, Json& j) {
  std::visit(Overloaded{[&](const Began& b) {
                          j["format"] = format_name;
                          j["version"] = b.version;
                          j["session"] = b.session;
                          j["part"] = b.part;
                          if (b.part > 0) j["from"] = b.from;
                          j["device"] = b.device;
                          j["local"] = b.local;
                        },
                        [&](const LaidOut& l) { write_card(*l.card, j); },
                        [&](const PutAway& p) { j["card"] = p.card; },
                        [&](const Opened& o) {
                          j["name"] = o.name;
                          if (!o.again_of.empty()) j["again_of"] = o.again_of;
                        },
                        [&](const RoomSet& r) {
                          j["celsius"] = number(r.celsius);
                          j["humidity"] = number(r.humidity);
                          if (r.guessed) j["guessed"] = true;
                        },
                        [&](const CautionsSeen&) {},
                        [&](const Added& a) {
                          j["of"] = a.of;
                          j[field_of(a.unit)] = number(a.amount);
                          if (a.unit != Unit::g) j["with"] = a.with;
                        },
                        [&](const Felt& f) {
                          j["as"] = name_of(f.as);
                          j["by"] = name_of(f.by);
                        },
                        [&](const StageBegan& s) { j["stage"] = name_of(s.stage); },
                        [&](const Dot& d) { j["specks"] = name_of(d.specks); },
                        [&](const Trouble& t) { j["what"] = name_of(t.what); },
                        [&](const BottleWeighed& b) {
                          j["of"] = b.of;
                          j["g"] = number(b.g);
                        },
                        [&](const CountLost& c) { j["of"] = c.of; },
                        [&](const Moved& m) {
                          j["from"] = name_of(m.from);
                          j["to"] = name_of(m.to);
                          write_much(m.much, j);
                        },
                        [&](const Lost& l) {
                          j["from"] = name_of(l.from);
                          write_much(l.much, j);
                          if (!l.into.empty()) j["into"] = l.into;
                        },
                        [&](const Weighed& w) {
                          j["place"] = name_of(w.place);
                          j["g"] = number(w.g);
                          if (w.tare_g > 0) j["tare_g"] = number(w.tare_g);
                        },
                        [&](const AsBefore& a) {
                          j["line"] = {a.line.session, a.line.n};
                        },
                        [&](const Found& f) { j["as"] = name_of(f.as); },
                        [&](const Poured& p) {
                          j["first"] = p.first;
                          j["last"] = p.last;
                          j["in"] = p.in;
                          if (p.g) j["g"] = number(*p.g);
                        },
                        [&](const PanWeighed& p) {
                          j["pan"] = p.pan;
                          j["g"] = number(p.g);
                        },
                        [&](const Verdict& v) {
                          j["as"] = name_of(v.as);
                          if (v.pan > 0) j["pan"] = v.pan;
                        },
                        [&](const Noted& n) { j["text"] = n.text; },
                        [&](const SetAside& s) {
                          j["line"] = {s.line.session, s.line.n};
                        },
                        [&](const Withdrawn& w) {
                          j["line"] = {w.line.session, w.line.n};
                        },
                        [&](const Corrected& c) { write_corrected(c, j); },
                        [&](const Photo& p) {
                          j["sha256"] = p.sha256;
                          j["ending"] = p.ending;
                          j["of"] = name_of(p.of);
                        },
                        [&](const Gone& g) {
                          j["to"] = g.to;
                          j["why"] = g.why;
                        },
                        [&](const Gathered&) {},
                        [&](const Closed&) {},
                        [&](const ClockJumped& c) {
                          j["by_ms"] = c.by_ms;
                          j["local"] = c.local;
                        },
                        [&](const Left&) {},
                        [&](const Unknown& u) { j.update(Json::parse(u.json, nullptr, false)); }},
             event);
}

Unknown unknown_from(const std::string& kind, const Json& object) {
  Json rest = object;
  for (const char* name : {"n", "t", "at", "e", "batch", "p", "c"}) rest.erase(name);
  return {kind, rest.dump()};
}

words::Result<Event> read_event(const std::string& kind, const Json& object) {
  Fields fields(object);
  Event event = read_known(kind, fields);
  if (fields.fault()) return tl::make_unexpected(*fields.fault());
  if (fields.unknown_word() || std::holds_alternative<Unknown>(event))
    return unknown_from(kind, object);
  return event;
}

}
