#include "screens/phrases.hpp"

#include "bench/materials.hpp"
#include "words/bench_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"

#include <array>

namespace screens {

using Say = words::ScreensSay;
using words::say;

std::string trouble_sign(session::TroubleKind trouble) {
  constexpr std::array ids{Say::sign_wont_wet, Say::sign_gelling, Say::sign_gummy,
                           Say::sign_gritty,   Say::sign_foams,   Say::sign_separates,
                           Say::sign_smells};
  return say(ids[static_cast<std::size_t>(trouble)]);
}

std::string remedy_words(const bench::Remedy& r) {
  const std::vector<std::string> args{std::to_string(r.drops), grams_number(r.g)};
  switch (r.trouble) {
  case session::TroubleKind::wont_wet:
    return say(r.more ? Say::remedy_wont_wet_more : Say::remedy_wont_wet, args);
  case session::TroubleKind::gelling:
    return say(r.more ? Say::remedy_gelling_more : Say::remedy_gelling, args);
  case session::TroubleKind::gritty:
    return say(r.more ? Say::remedy_gritty_more : Say::remedy_gritty, args);
  case session::TroubleKind::gummy: return say(Say::remedy_gummy, args);
  case session::TroubleKind::foams: return say(Say::remedy_foams, args);
  case session::TroubleKind::separates: return say(Say::remedy_separates, args);
  case session::TroubleKind::smells: return say(Say::remedy_smells, args);
  }
  return "";
}

std::string next_words(const bench::Amount& amount) {
  return amount.unit == session::Unit::g ? say(Say::amount_weigh)
                                         : amount_words(amount.unit, amount.count);
}

std::string fact_words(const std::string& which) {
  struct Named {
    std::string_view name;
    words::Sentence words;
  };
  constexpr std::array facts{Named{"g_per_mL", Say::fact_g_per_mL},
                             Named{"oil", Say::fact_oil},
                             Named{"heap", Say::fact_heap},
                             Named{"made_g", Say::fact_made_g},
                             Named{"gum", Say::fact_gum},
                             Named{"water", Say::fact_water},
                             Named{"honey", Say::fact_honey},
                             Named{"glycerin", Say::fact_glycerin},
                             Named{"preservative", Say::fact_preservative},
                             Named{"drops_20_g", Say::fact_drops},
                             Named{"water_g", Say::fact_water_full},
                             Named{"cm2", Say::fact_cm2}};
  for (const Named& fact : facts)
    if (fact.name == which) return say(fact.words);
  return which;
}

std::string amount_pad_words(const std::string& arg) {
  const auto amount = bench::amount_named(arg);
  return amount ? next_words(*amount) : arg;
}

namespace {

std::string much_words(const session::Much& much) {
  if (much.g) return grams_words(*much.g);
  if (much.share == 1) return say(Say::much_all);
  if (much.share == 0.5) return say(Say::much_half);
  return say(Say::much_share, {paint::written(much.share * 100, 0)});
}

struct EventWords {
  const std::string& card;

  std::string operator()(const session::Added& a) const {
    return say(words::SessionSay::did_added, {card, amount_words(a.unit, a.amount)});
  }
  std::string operator()(const session::Felt& f) const { return feel_words(f.as); }
  std::string operator()(const session::Dot& d) const { return specks_words(d.specks); }
  std::string operator()(const session::Trouble& t) const { return trouble_words(t.what); }
  std::string operator()(const session::StageBegan& s) const {
    if (s.stage == session::Stage::wetting_out) return say(words::BenchSay::stage_wetting_out);
    return say(s.stage == session::Stage::mulling ? Say::stage_mull : Say::stage_scrape);
  }
  std::string operator()(const session::BottleWeighed& b) const {
    return say(Say::did_bottle, {card, grams_words(b.g)});
  }
  std::string operator()(const session::Moved& m) const {
    return say(Say::did_move,
               {much_words(m.much), session::place_words(m.from), session::place_words(m.to)});
  }
  std::string operator()(const session::Lost& l) const {
    return say(Say::did_lose, {much_words(l.much), session::place_words(l.from)});
  }
  std::string operator()(const session::Weighed& w) const {
    return say(Say::did_weigh_paint, {session::place_words(w.place), grams_words(w.g)});
  }
  std::string operator()(const session::Found& f) const {
    return say(f.as == session::State::wet ? Say::did_found_wet : Say::did_found_dry);
  }
  std::string operator()(const session::CautionsSeen&) const { return say(Say::did_see_cautions); }
  std::string operator()(const session::Poured& p) const { return session::pour_words(p); }
  std::string operator()(const session::PanWeighed& p) const {
    return say(words::SessionSay::did_weigh_pan, {std::to_string(p.pan), grams_words(p.g)});
  }
  std::string operator()(const session::Verdict& v) const { return became_words(v.as); }
  std::string operator()(const session::Noted& n) const { return n.text; }
  std::string operator()(const session::AsBefore&) const { return say(Say::did_as_before); }
  std::string operator()(const session::CountLost&) const {
    return say(Say::did_lost_count, {card});
  }
  std::string operator()(const session::RoomSet& r) const {
    return say(Say::did_room, {reading_words(r.celsius), reading_words(r.humidity * 100)});
  }
  std::string operator()(const session::Opened&) const { return say(Say::did_opened); }
  std::string operator()(const session::Gathered&) const { return say(Say::did_gathered); }
  std::string operator()(const session::Closed&) const { return say(Say::did_closed); }
  std::string operator()(const session::Unknown&) const { return say(Say::did_unknown); }
  template <class Other>
  std::string operator()(const Other&) const {
    return say(Say::did_other);
  }
};

struct MarkWords {
  std::string operator()(session::Feel feel) const { return feel_words(feel); }
  std::string operator()(session::Specks specks) const { return specks_words(specks); }
  std::string operator()(session::TroubleKind trouble) const { return trouble_words(trouble); }
};

std::string thicken_words(const bench::Advice& a) {
  const std::string dry = a.dry_min > 0
                              ? say(Say::advice_let_dry_minutes, {std::to_string(a.dry_min)})
                              : say(Say::advice_let_dry);
  std::string pigments;
  for (const bench::Advice::Pigment& p : a.pigments)
    pigments +=
        (pigments.empty() ? "" : " + ") + say(Say::advice_pigment, {grams_number(p.g), p.name});
  return pigments.empty() ? dry : say(Say::advice_or_pigment, {dry, pigments});
}

std::string hint_words(const bench::Advice& a) {
  using bench::Advice;
  switch (a.kind) {
  case Advice::weigh_pigment: return say(Say::advice_weigh_pigment);
  case Advice::first_helping:
    return say(Say::advice_first_helping, {grams_number(a.low_g), grams_number(a.high_g)});
  case Advice::add_drops:
    return say(a.by_knife ? Say::advice_add_by_knife : Say::advice_add,
               {a.spoons > 0 ? amount_words(session::Unit::spoons, a.spoons)
                             : amount_words(session::Unit::drops, a.drops)});
  case Advice::mull_and_judge:
    return say(a.by_knife ? Say::advice_judge_by_knife : Say::advice_mull_and_judge);
  case Advice::keep_going: return say(a.by_knife ? Say::advice_go_on_by_knife : Say::advice_go_on);
  case Advice::there: return say(Say::advice_there);
  case Advice::too_loose: return thicken_words(a);
  case Advice::gathered: return say(Say::advice_gathered);
  }
  return "";
}

}

std::string event_words(const session::Event& event, const std::string& card_name) {
  return std::visit(EventWords{card_name}, event);
}

std::string mark_words(const bench::TrailMark& mark) { return std::visit(MarkWords{}, mark.what); }

std::string advice_words(const bench::Advice& a) {
  using bench::Advice;
  const bool from_range = a.kind == Advice::add_drops || a.kind == Advice::too_loose ||
                          a.kind == Advice::first_helping || a.kind == Advice::mull_and_judge;
  const std::string hint = hint_words(a);
  return from_range && a.hint ? say(Say::advice_guess, {hint}) : hint;
}

std::string gum_words(const bench::Advice& a) {
  if (a.kind == bench::Advice::there) return say(Say::gum_short);
  constexpr std::array ids{Say::gum_too_little, Say::gum_enough, Say::gum_too_much};
  return say(ids[static_cast<std::size_t>(*a.gum)]);
}

std::string sticky_words(paint::Tack tack) {
  return say(tack == paint::Tack::stays_sticky ? Say::sweet_too_much : Say::sweet_enough);
}

std::string not_counted_words(bench::NotCounted why) {
  constexpr std::array ids{Say::not_counted_bounced, Say::not_counted_slid, Say::not_counted_rested,
                           Say::not_counted_other_finger};
  return say(ids[static_cast<std::size_t>(why)]);
}

std::string notice_words(const bench::Notice& notice) {
  if (notice.error) return words::message(*notice.error);
  return notice.not_counted ? not_counted_words(*notice.not_counted) : "";
}

}
