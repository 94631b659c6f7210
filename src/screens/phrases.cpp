#include "screens/phrases.hpp"

#include "bench/card_facts.hpp"
#include "bench/materials.hpp"
#include "words/bench_says.hpp"
#include "words/lists.hpp"
#include "words/pans_says.hpp"
#include "words/plan_says.hpp"
#include "words/ranges_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace screens {

using Say = words::ScreensSay;
using words::say;

namespace {

using session::TroubleKind;

struct TroubleWords {
  words::Sentence sign;                           // how it is told
  words::Sentence usual, stronger, by_gum, loose; // what is done about it
};
constexpr words::EnumTable<TroubleKind, TroubleWords> troubles{
    {{TroubleKind::wont_wet,
      {Say::sign_wont_wet, Say::remedy_wont_wet, Say::remedy_wont_wet_more, Say::remedy_wont_wet,
       Say::remedy_wont_wet}},
     {TroubleKind::gelling,
      {Say::sign_gelling, Say::remedy_gelling, Say::remedy_gelling_more,
       Say::remedy_gelling_gum_short, Say::remedy_gelling_loose}},
     {TroubleKind::gummy,
      {Say::sign_gummy, Say::remedy_gummy, Say::remedy_gummy, Say::remedy_gummy_gum_short,
       Say::remedy_gummy_loose}},
     {TroubleKind::gritty,
      {Say::sign_gritty, Say::remedy_gritty, Say::remedy_gritty_more, Say::remedy_gritty,
       Say::remedy_gritty}},
     {TroubleKind::foams,
      {Say::sign_foams, Say::remedy_foams, Say::remedy_foams, Say::remedy_foams,
       Say::remedy_foams}},
     {TroubleKind::separates,
      {Say::sign_separates, Say::remedy_separates, Say::remedy_separates,
       Say::remedy_separates_gum_enough, Say::remedy_separates}},
     {TroubleKind::smells,
      {Say::sign_smells, Say::remedy_smells, Say::remedy_smells, Say::remedy_smells,
       Say::remedy_smells}}}};

words::Sentence sentence_of(const bench::Remedy& r) {
  const TroubleWords& of = troubles[r.trouble];
  switch (r.way) {
  case bench::Remedy::usual: return of.usual;
  case bench::Remedy::stronger: return of.stronger;
  case bench::Remedy::by_gum: return of.by_gum;
  case bench::Remedy::loose: return of.loose;
  }
  return of.usual;
}

}

std::string trouble_sign(TroubleKind trouble) { return say(troubles[trouble].sign); }

std::string remedy_words(const bench::Remedy& r) {
  return say(sentence_of(r), {tapped_words(r.amount), grams_number(r.g)});
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
  std::string operator()(const session::Planned& p) const {
    return p.pans > 0 ? say(Say::did_plan_pans, {std::to_string(p.pans)}) : say(Say::did_plan);
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
  std::string operator()(const session::Confirmed& c) const {
    return say(Say::did_confirm, {grams_words(c.g)});
  }
  std::string operator()(const session::RoomSet& r) const {
    return say(Say::did_room, {reading_words(r.celsius), reading_words(r.humidity * 100)});
  }
  std::string operator()(const session::Opened&) const { return say(Say::did_opened); }
  std::string operator()(const session::Gathered&) const { return say(Say::did_gathered); }
  std::string operator()(const session::Closed&) const { return say(Say::did_closed); }
  std::string operator()(const session::Unknown&) const { return say(Say::did_unknown); }
  std::string operator()(const session::Photo&) const { return say(Say::did_photo); }
  template <words::one_of<session::Began, session::LaidOut, session::PutAway, session::Bought,
                          session::StockWeighed, session::Making, session::Told, session::GoesOn,
                          session::SetAside, session::Withdrawn, session::Corrected, session::Gone,
                          session::Discarded, session::ClockJumped, session::Left>
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

}

std::string event_words(const session::Event& event, const std::string& card_name) {
  return std::visit(EventWords{card_name}, event);
}

std::string from_to_words(double low_g, double high_g) {
  const std::string low = grams_number(low_g), high = grams_number(high_g);
  return low == high ? high : say(Say::advice_from_to, {low, high});
}

namespace {
std::string first_of_plan(const bench::Planned::Helping& h) {
  const std::string grams = from_to_words(h.low_g, h.high_g);
  return is_nothing(h.amount)
             ? say(words::PlanSay::plan_first, {grams})
             : say(words::PlanSay::plan_first_spoons, {tapped_words(h.amount), grams});
}
}

std::string binder_words(const bench::Planned& p) {
  std::string how = first_of_plan(p.first_helping);
  if (p.rest_spoons > 0)
    how = say(words::PlanSay::plan_rest, {how, tapped_words({p.rest_spoons, 0, 0})});
  else if (p.drops > 0)
    how = say(words::PlanSay::plan_rest_drops, {how, amount_words(session::Unit::drops, p.drops)});
  else if (p.rest_g > 0)
    how = say(words::PlanSay::plan_rest, {how, grams_words(p.rest_g)});
  return say(words::PlanSay::plan_binder, {grams_number(p.binder_g), how});
}

std::string mark_words(const bench::TrailMark& mark) { return std::visit(MarkWords{}, mark.what); }

namespace {

std::string one_to_come(const bench::ToComeView& one) {
  if (!one.g) return one.name;
  const std::string amount =
      is_nothing(one.amount) ? grams_words(*one.g) : tapped_words(one.amount);
  const bool more = bench::pigment_to_come(one) && one.begun;
  return say(more ? Say::to_come_more_of : Say::to_come_one, {amount, one.name});
}

}

std::string amounts_to_come(const std::vector<bench::ToComeView>& to_come,
                            bool (*is)(const bench::ToComeView&)) {
  std::string list;
  for (const bench::ToComeView& one : to_come) {
    if (!is(one)) continue;
    list += (list.empty() ? "" : ", ") + one_to_come(one);
  }
  return list;
}

std::string to_come_words(const std::vector<bench::ToComeView>& to_come) {
  const std::string pigments = amounts_to_come(to_come, bench::pigment_to_come);
  const std::string others = amounts_to_come(
      to_come, [](const bench::ToComeView& one) { return !bench::pigment_to_come(one); });
  if (!pigments.empty()) return say(Say::to_come_weigh_out, {pigments});
  return others.empty() ? "" : say(Say::to_come, {others});
}

std::string shortest_to_come_words(const std::vector<bench::ToComeView>& to_come) {
  if (to_come.size() == 1) return "";
  return say(Say::to_come_count, {std::to_string(to_come.size())});
}

std::string short_to_come_words(const std::vector<bench::ToComeView>& to_come) {
  if (to_come.size() == 1) return "";
  return say(Say::to_come_and_more,
             {one_to_come(to_come.front()), std::to_string(to_come.size() - 1)});
}

std::string minutes_words(double minutes) {
  const double step = minutes < 10 ? 1 : 5;
  return words::number(std::max(1.0, step * std::round(minutes / step)), 0);
}

std::string mulling_words(const bench::MullingNeeded& needed) {
  const paint::Interval& minutes = needed.minutes;
  return needed.batches > 0 ? minutes_words(minutes.middle)
                            : say(words::PlanSay::plan_from_to,
                                  {minutes_words(minutes.low), minutes_words(minutes.high)});
}

std::string money_words(double amount, const std::string& currency) {
  constexpr double small = 0.1;
  if (amount <= 0) return say(Say::money_none); // of gifts alone
  const int decimals = amount > 0 && amount < small ? 3 : 2;
  const bool sign = currency.empty() || !std::isalpha(static_cast<unsigned char>(currency[0]));
  return say(sign ? Say::money : Say::money_in_words, {currency, words::number(amount, decimals)});
}

std::string binder_range_words(const bench::BinderRange& r) {
  using bench::BinderRange;
  const words::Args said{r.binder, grams_number(r.g), grams_number(r.low_g),
                         grams_number(r.high_g)};
  if (r.told) return say(words::RangesSay::range_in_told, said);
  switch (r.than) {
  case BinderRange::as_taught: return say(words::RangesSay::range_in_binder, said);
  case BinderRange::stronger: return say(words::RangesSay::range_in_stronger, said);
  case BinderRange::thinner: return say(words::RangesSay::range_in_thinner, said);
  case BinderRange::never_felt: return say(words::RangesSay::range_unfelt, said);
  }
  return "";
}

std::string gum_words(const bench::Advice& a) {
  using bench::Advice;
  if (!a.gum || *a.gum == paint::GumState::enough) return "";
  if (a.kind == Advice::too_loose) return say(Say::gum_no_pigment);
  if (a.kind != Advice::add_drops) return "";
  return say(*a.gum == paint::GumState::too_little ? Say::gum_too_little : Say::gum_too_much);
}

std::string sticky_words(paint::Tack tack) {
  switch (tack) {
  case paint::Tack::dries: break; // says nothing
  case paint::Tack::may_stay_sticky: return say(Say::sweet_enough);
  case paint::Tack::stays_sticky: return say(Say::sweet_too_much);
  }
  return "";
}

// Whole hours up to three days, then whole days: the range is wide enough. Where it begins
// within a day, its beginning is said in hours. Days to the nearest: rounded down, "in 1 day" would
// be said of paint that is firm in two.
std::string span_words(double low_h, double high_h) {
  constexpr double day_h = 24, days_from_h = 3 * day_h;
  const bool to_days = high_h > days_from_h, from_days = to_days && low_h >= day_h;
  const double low = from_days ? std::round(low_h / day_h) : std::floor(std::max(1.0, low_h)),
               high = std::ceil(to_days ? high_h / day_h : high_h);
  const words::PansSay what = from_days ? words::PansSay::pans_in_days
                              : to_days ? words::PansSay::pans_in_hours_to_days
                                        : words::PansSay::pans_in_hours;
  return say(what, {words::number(low, 0),
                    words::number(from_days == to_days ? std::max(low + 1, high) : high, 0)});
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

std::string left_out_words(const std::vector<session::Warning>& warnings) {
  const auto count = std::count_if(warnings.begin(), warnings.end(),
                                   [](const auto& w) { return session::leaves_out(w.kind); });
  if (count == 0) return "";
  return count == 1 ? say(words::ScreensSay::entry_left_out)
                    : say(words::ScreensSay::entries_left_out, {std::to_string(count)});
}

std::string notice_words(const bench::Notice& notice) {
  if (notice.error) return words::message(*notice.error);
  return notice.not_counted ? not_counted_words(*notice.not_counted) : "";
}

}
