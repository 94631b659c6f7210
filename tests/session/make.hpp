// Short ways to write a log by hand.
#pragma once

#include "session/batch.hpp"

namespace make {

using namespace session;

inline Card pigment(std::string id, double g_per_mL, double oil) {
  return {std::move(id), "Test pigment",
          PigmentCard{"", 0, {g_per_mL, 0, oil, 0, paint::PigmentClass::mineral}}};
}

inline Card liquid(std::string id, CardKind kind, paint::Recipe recipe) {
  return {id, id, LiquidCard{kind, recipe}};
}

inline Card pan(std::string id, double mL) {
  return {std::move(id), "half pan", PanCard{{mL, 0.05}}};
}

inline Card slab(std::string id, double cm2) { return {id, id, SlabCard{cm2}}; }
inline Card muller(std::string id, double cm2) { return {id, id, MullerCard{cm2}}; }

// Of an invented batch: a third pigment, some gum and water.
inline Card paint_of(std::string id, double g_per_mL) {
  Card c = pigment(std::move(id), g_per_mL, 30);
  c.facts = PaintCard{pigment_of(c), {.pigment = 5, .gum = 2, .water = 6, .honey = 0.5}};
  c.lot = "jar 3";
  c.made_on = "2026-11-20";
  c.keep_until = "2027-05-20";
  c.made_g = 13.5;
  return c;
}

inline Card dropper(std::string id, double mL, double u, CardKind with) {
  return {std::move(id), "green bulb", DropperCard{{mL, u}, with}};
}

// A log whose lines are numbered, timed and stamped from one clock.
struct Writer {
  Log log;
  std::int64_t at0 = 1795617120000;
  std::int64_t t = 0; // ms

  explicit Writer(std::string session = "c41e08d5") {
    log.session = session;
    log.device = "a83f";
    Began began;
    began.session = session;
    began.device = "a83f";
    began.local = "2026-11-25T15:32:00+01:00";
    put("", began);
  }

  Ref put(std::string batch, Event event) {
    const std::uint64_t n = log.lines.empty() ? 0 : log.lines.back().n + 1;
    log.lines.push_back({n, t, at0 + t, std::move(batch), std::move(event)});
    return {log.session, n};
  }
  Ref card(const Card& c) { return put("", LaidOut{c}); }
  void wait(double seconds) { t += static_cast<std::int64_t>(seconds * 1000); }
};

inline Batch folded(const std::vector<Log>& logs, const std::string& batch) {
  return *fold(all_of(logs), batch);
}

}
