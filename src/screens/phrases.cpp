#include "screens/phrases.hpp"

#include "bench/card_facts.hpp"
#include "bench/materials.hpp"
#include "words/bench_says.hpp"
#include "words/lists.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"

namespace screens {

using Say = words::ScreensSay;
using words::say;

namespace {

using session::TroubleKind;

struct TroubleWords {
  words::Sentence sign;         // how it is told
  words::Sentence remedy, more; // what is done about it, the first time and again
};
constexpr words::EnumTable<TroubleKind, TroubleWords> troubles{
    {{TroubleKind::wont_wet, {Say::sign_wont_wet, Say::remedy_wont_wet, Say::remedy_wont_wet_more}},
     {TroubleKind::gelling, {Say::sign_gelling, Say::remedy_gelling, Say::remedy_gelling_more}},
     {TroubleKind::gummy, {Say::sign_gummy, Say::remedy_gummy, Say::remedy_gummy}},
     {TroubleKind::gritty, {Say::sign_gritty, Say::remedy_gritty, Say::remedy_gritty_more}},
     {TroubleKind::foams, {Say::sign_foams, Say::remedy_foams, Say::remedy_foams}},
     {TroubleKind::separates, {Say::sign_separates, Say::remedy_separates, Say::remedy_separates}},
     {TroubleKind::smells, {Say::sign_smells, Say::remedy_smells, Say::remedy_smells}}}};

}

std::string trouble_sign(TroubleKind trouble) { return say(troubles[trouble].sign); }

std::string remedy_words(const bench::Remedy& r) {
  const TroubleWords& of = troubles[r.trouble];
  return say(r.more ? of.more : of.remedy, {std::to_string(r.drops), grams_number(r.g)});
}

std::string next_words(const bench::TapAmount& amount) {
  return amount.unit == session::Unit::g ? say(Say::amount_weigh)
                                         : amount_words(amount.unit, amount.count);
}

std::string fact_words(const std::string& which) {
  const words::Sentence words = bench::say_of_fact(which);
  return words == words::Sentence{} ? which : say(words);
}

std::string amount_pad_words(const std::string& arg) {
  const auto amount = bench::amount_named(arg);
  return amount ? next_words(*amount) : arg;
}

namespace {

std::string quantity_words(const session::Quantity& quantity) {
  if (quantity.g) return grams_words(*quantity.g);
  if (quantity.share == 1) return say(Say::much_all);
  if (quantity.share == 0.5) return say(Say::much_half);
  return say(Say::much_share, {paint::written(quantity.share * 100, 0)});
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
    switch (s.stage) {
    case session::Stage::wetting_out: return say(words::BenchSay::stage_wetting_out);
    case session::Stage::mulling: return say(Say::stage_mull);
    case session::Stage::resting: return say(Say::stage_scrape);
    }
    return "";
  }
  std::string operator()(const session::BottleWeighed& b) const {
    return say(Say::did_bottle, {card, grams_words(b.g)});
  }
  std::string operator()(const session::Moved& m) const {
    return say(Say::did_move, {quantity_words(m.quantity), session::place_words(m.from),
                               session::place_words(m.to)});
  }
  std::string operator()(const session::Lost& l) const {
    return say(Say::did_lose, {quantity_words(l.quantity), session::place_words(l.from)});
  }
  std::string operator()(const session::Weighed& w) const {
    return say(Say::did_weigh_paint, {session::place_words(w.place), grams_words(w.g)});
  }
  std::string operator()(const session::Found& f) const {
    switch (f.as) {
    case session::State::wet: return say(Say::did_found_wet);
    case session::State::dry: return say(Say::did_found_dry);
    }
    return "";
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
  template <words::one_of<session::Began, session::LaidOut, session::PutAway, session::GoesOn,
                          session::SetAside, session::Withdrawn, session::Corrected, session::Photo,
                          session::Gone, session::Discarded, session::ClockJumped, session::Left>
                Other>
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
  switch (*a.gum) {
  case paint::GumState::too_little: return say(Say::gum_too_little);
  case paint::GumState::enough: return say(Say::gum_enough);
  case paint::GumState::too_much: return say(Say::gum_too_much);
  }
  return "";
}

std::string sticky_words(paint::Tack tack) {
  switch (tack) {
  case paint::Tack::dries: break; // says nothing
  case paint::Tack::may_stay_sticky: return say(Say::sweet_enough);
  case paint::Tack::stays_sticky: return say(Say::sweet_too_much);
  }
  return "";
}

std::string not_counted_words(bench::NotCounted why) {
  switch (why) {
  case bench::NotCounted::bounced: return say(Say::not_counted_bounced);
  case bench::NotCounted::slid: return say(Say::not_counted_slid);
  case bench::NotCounted::rested: return say(Say::not_counted_rested);
  case bench::NotCounted::other_finger: return say(Say::not_counted_other_finger);
  }
  return "";
}

std::string notice_words(const bench::Notice& notice) {
  if (notice.error) return words::message(*notice.error);
  return notice.not_counted ? not_counted_words(*notice.not_counted) : "";
}

}
