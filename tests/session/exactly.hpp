// A whole folded batch, so that two can be compared to the last digit.
#pragma once

#include "session/batch.hpp"

#include <cstdio>
#include <string>

namespace exactly {

using namespace session;

struct Told {
  std::string text;

  void put(double v) {
    char digits[40];
    std::snprintf(digits, sizeof digits, "%a ", v);
    text += digits;
  }
  void put(const std::string& s) { text += s + " "; }
  void put(const Ref& ref) { text += ref.session + ":" + std::to_string(ref.n) + " "; }
  void put(const paint::Amount& a) {
    put(a.value);
    put(a.variance);
    for (const auto& [tool, share] : a.shares) put(tool), put(share);
  }
  void put(const paint::Interval& i) { put(i.low), put(i.middle), put(i.high); }
  template <class T>
  void put(const std::optional<T>& v) {
    if (v)
      put(*v);
    else
      text += "- ";
  }
  void line(const char* what) { text += std::string("\n") + what + " "; }
};

inline void tell(Told& out, const Places& places) {
  for (const auto& [place, lying] : places.at) {
    out.line("place");
    out.put(double(place));
    for (const paint::Portion& p : lying.paint.contents) out.put(p.card), out.put(p.grams);
    out.put(lying.paint.water_gone);
    out.put(lying.paint.alcohol_g);
    for (const auto& [name, share] : lying.paint.alcohol_by) out.put(name), out.put(share);
    for (const double v : {lying.sums.pigment_g, lying.sums.pigment_mL, lying.sums.gum_g,
                           lying.sums.honey_g, lying.sums.glycerin_g})
      out.put(v);
  }
  out.line("air");
  for (const double v : {double(places.spread), places.room.celsius, places.room.humidity,
                         places.bench.ln_factor, places.bench.ln_u})
    out.put(v);
}

inline void tell(Told& out, const paint::Standing& s) {
  out.line("standing");
  for (const auto* a :
       {&s.pigment_g, &s.pigment_mL, &s.binder_g, &s.liquid_g, &s.liquid_mL, &s.liquid_mL_now,
        &s.water_lost_mL, &s.gum_g, &s.glycerin_g, &s.honey_g, &s.water_g, &s.alcohol_g})
    out.put(*a);
  for (const auto* a :
       {&s.binder_ratio, &s.flow_put_in, &s.flow_now, &s.over_oil_point, &s.gum_strength,
        &s.gum_per_pigment, &s.humectant_to_gum, &s.pigment_fraction})
    out.put(*a);
}

inline void tell_lines(Told& out, const Batch& b) {
  for (const Entry& e : b.entries) {
    out.line("entry");
    out.put(e.ref);
    out.put(e.clock);
    out.put(double(e.at));
    out.put(double(e.event.index()));
    out.put(std::string(e.withdrawn ? "withdrawn" : "") + (e.corrected ? "corrected" : ""));
    out.put(e.flow_before);
    out.put(e.flow);
    out.put(e.grams);
    out.put(double(e.place));
  }
  for (const Feeling& f : b.feelings) {
    out.line("felt");
    out.put(f.line);
    for (const double v :
         {double(f.as), f.flow, f.scatter, f.lost_mL, f.dried_off, f.pigment_sd, f.dry_gum,
          f.gum_put_in, f.mulled_s, double(f.unwetted), double(f.repeats), double(f.set_aside)})
      out.put(v);
    for (const auto& [tool, sd] : f.tools) out.put(tool), out.put(sd);
    for (const auto& [card, mL] : f.pigments) out.put(card), out.put(mL);
  }
  for (const Warning& w : b.warnings) {
    out.line("warning");
    out.put(double(w.kind));
    out.put(w.ref);
  }
}

inline std::string told(const Batch& b) {
  Told out;
  out.put(b.id + "/" + b.name + "/" + b.again_of);
  for (const double v : {double(b.cautions_seen), double(b.opened_at), double(b.last_at),
                         double(b.progress), double(b.room_guessed), double(b.powder_is_dry),
                         b.clock, double(b.damaged), double(b.newer)})
    out.put(v);
  out.put(b.dried_mL);
  if (b.plan) {
    out.put(b.plan->line.session + " " + std::to_string(b.plan->line.n) + b.plan->of.in);
    out.put(double(b.plan->of.pans));
    for (const Planned::Take& take : b.plan->of.takes) {
      out.put(take.of);
      out.put(take.g.value_or(-1));
      out.put(take.parts.value_or(-1));
    }
  }
  tell_lines(out, b);
  for (const Total& t : b.totals) {
    out.line("total");
    out.put(t.card.id);
    out.put(t.grams);
    for (const double v : {t.drops, t.weighed_g, double(t.count_lost)}) out.put(v);
    for (const auto& [spoon, n] : t.spoons) out.put(spoon), out.put(n);
  }
  for (const Pass& p : b.passes) {
    out.line("pass");
    for (const double v : {double(p.stage), double(p.number), p.start}) out.put(v);
    out.put(p.end);
  }
  for (const Pan& p : b.pans) {
    out.line("pan");
    out.put(double(p.number));
    for (const PouredLayer& l : p.layers)
      for (const double v : {l.clock, double(l.at), l.wet_mL, l.dry_mL}) out.put(v);
    for (const PanReading& r : p.readings)
      for (const double v : {r.clock, double(r.at), r.g}) out.put(v);
  }
  for (const TrailPoint& p : b.trail) {
    out.line("point");
    for (const double v : {p.clock, p.flow, double(p.after_gap)}) out.put(v);
  }
  for (const Judged& j : b.verdicts) {
    out.line("verdict");
    out.put(j.line);
    for (const double v : {double(j.at), double(j.verdict.as), double(j.verdict.pan)}) out.put(v);
  }
  if (b.swatch) out.line("swatch");
  if (b.swatch)
    for (const double v : {double(b.swatch->shown), b.swatch->l, b.swatch->a, b.swatch->b})
      out.put(v);
  tell(out, b.places);
  tell(out, b.standing);
  return out.text;
}

inline std::string told(const std::optional<Batch>& b) { return b ? told(*b) : "none"; }

inline bool same(const std::optional<Batch>& a, const std::optional<Batch>& b) {
  if (told(a) != told(b)) return false;
  if (!a) return true;
  for (std::size_t i = 0; i < a->entries.size(); ++i)
    if (!(a->entries[i].event == b->entries[i].event)) return false;
  for (std::size_t i = 0; i < a->warnings.size(); ++i)
    if (a->warnings[i].of != b->warnings[i].of || a->warnings[i].why != b->warnings[i].why)
      return false;
  return a->cards == b->cards;
}

}
