#include "screens/phrases.hpp"

#include "bench/materials.hpp"

#include <array>
#include <cmath>

namespace screens {

using words::fixed;
using words::Say;
using words::say;

namespace {

// Quarters as they are written on spoons; other counts with as many digits as they need.
std::string count_words(double count) {
  const double whole = std::floor(count);
  const double rest = count - whole;
  const std::string head = whole > 0 ? fixed(whole, 0) : "";
  if (rest == 0) return fixed(count, 0);
  if (rest == 0.25) return head + "¼";
  if (rest == 0.5) return head + "½";
  if (rest == 0.75) return head + "¾";
  return paint::written(count, paint::decimals_as_read(count, 2));
}

std::string two_digits(int n) { return (n < 10 ? "0" : "") + std::to_string(n); }

std::int64_t floor_div(std::int64_t a, std::int64_t b) { return a / b - (a % b < 0 ? 1 : 0); }

std::string month_name(int month) { // 1 to 12
  const std::string names = say(Say::month_names);
  std::size_t from = 0;
  for (int i = 1; i < month; ++i) from = names.find(' ', from) + 1;
  return names.substr(from, names.find(' ', from) - from);
}

struct MonthDay {
  int month, day;
};

// Days since 1970 to a date: H. Hinnant's civil_from_days, "chrono-Compatible Low-Level Date
// Algorithms", for the proleptic Gregorian calendar.
MonthDay month_day(std::int64_t days) {
  days += 719468; // from 0000-03-01
  const std::int64_t day_of_era = days - floor_div(days, 146097) * 146097;
  const std::int64_t year_of_era =
      (day_of_era - day_of_era / 1460 + day_of_era / 36524 - day_of_era / 146096) / 365;
  const std::int64_t day_of_year =
      day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const std::int64_t month = (5 * day_of_year + 2) / 153; // from March
  return {static_cast<int>(month < 10 ? month + 3 : month - 9),
          static_cast<int>(day_of_year - (153 * month + 2) / 5 + 1)};
}

}

std::string feel_words(session::Feel feel) {
  constexpr std::array ids{Say::feel_wont_move, Say::feel_too_sticky, Say::feel_right,
                           Say::feel_too_loose, Say::feel_too_runny};
  return say(ids[static_cast<std::size_t>(feel)]);
}

std::string specks_words(session::Specks specks) {
  constexpr std::array ids{Say::specks_many, Say::specks_few, Say::specks_none};
  return say(ids[static_cast<std::size_t>(specks)]);
}

std::string trouble_words(session::TroubleKind trouble) {
  constexpr std::array ids{Say::trouble_wont_wet, Say::trouble_gelling, Say::trouble_gummy,
                           Say::trouble_gritty,   Say::trouble_foams,   Say::trouble_separates,
                           Say::trouble_smells};
  return say(ids[static_cast<std::size_t>(trouble)]);
}

std::string trouble_sign(session::TroubleKind trouble) {
  constexpr std::array ids{Say::sign_wont_wet, Say::sign_gelling, Say::sign_gummy,
                           Say::sign_gritty,   Say::sign_foams,   Say::sign_separates,
                           Say::sign_smells};
  return say(ids[static_cast<std::size_t>(trouble)]);
}

std::string became_words(session::Became became) {
  constexpr std::array ids{Say::became_good,       Say::became_full,   Say::became_sunken,
                           Say::became_cracked,    Say::became_sticky, Say::became_rubs_off,
                           Say::became_wont_rewet, Say::became_mould};
  return say(ids[static_cast<std::size_t>(became)]);
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

std::string amount_words(session::Unit unit, double amount) {
  if (unit == session::Unit::g) return grams_words(amount);
  if (unit == session::Unit::spoons) return say(Say::amount_spoons, {count_words(amount)});
  return amount == 1 ? say(Say::amount_drop) : say(Say::amount_drops, {count_words(amount)});
}

std::string next_words(const bench::Amount& amount) {
  return amount.unit == session::Unit::g ? say(Say::amount_weigh)
                                         : amount_words(amount.unit, amount.count);
}

std::string fact_words(const std::string& which) {
  struct Named {
    std::string_view name;
    Say words;
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

std::string place_words(session::Place place) {
  constexpr std::array ids{Say::place_slab, Say::place_jar, Say::place_pans};
  return say(ids[static_cast<std::size_t>(place)]);
}

std::string much_words(const session::Much& much) {
  if (much.g) return grams_words(*much.g);
  if (much.share == 1) return say(Say::much_all);
  if (much.share == 0.5) return say(Say::much_half);
  return say(Say::much_share, {paint::written(much.share * 100, 0)});
}

struct EventWords {
  const std::string& card;

  std::string operator()(const session::Added& a) const {
    return say(Say::did_added, {card, amount_words(a.unit, a.amount)});
  }
  std::string operator()(const session::Felt& f) const { return feel_words(f.as); }
  std::string operator()(const session::Dot& d) const { return specks_words(d.specks); }
  std::string operator()(const session::Trouble& t) const { return trouble_words(t.what); }
  std::string operator()(const session::StageBegan& s) const {
    if (s.stage == session::Stage::wetting_out) return say(Say::stage_wetting_out);
    return say(s.stage == session::Stage::mulling ? Say::stage_mull : Say::stage_scrape);
  }
  std::string operator()(const session::BottleWeighed& b) const {
    return say(Say::did_bottle, {card, grams_words(b.g)});
  }
  std::string operator()(const session::Moved& m) const {
    return say(Say::did_move, {much_words(m.much), place_words(m.from), place_words(m.to)});
  }
  std::string operator()(const session::Lost& l) const {
    return say(Say::did_lose, {much_words(l.much), place_words(l.from)});
  }
  std::string operator()(const session::Weighed& w) const {
    return say(Say::did_weigh_paint, {place_words(w.place), grams_words(w.g)});
  }
  std::string operator()(const session::Found& f) const {
    return say(f.as == session::State::wet ? Say::did_found_wet : Say::did_found_dry);
  }
  std::string operator()(const session::CautionsSeen&) const { return say(Say::did_see_cautions); }
  std::string operator()(const session::Poured& p) const {
    const std::vector<std::string> pans{std::to_string(p.first), std::to_string(p.last)};
    return say(p.first == p.last ? Say::did_pour : Say::did_pour_pans, pans);
  }
  std::string operator()(const session::PanWeighed& p) const {
    return say(Say::did_weigh_pan, {std::to_string(p.pan), grams_words(p.g)});
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
  case Advice::there: return say(Say::advice_there);
  case Advice::too_loose:
    return a.pigment_g > 0 ? say(Say::advice_let_dry_or_pigment, {grams_number(a.pigment_g)})
                           : say(Say::advice_let_dry);
  case Advice::gathered: return say(Say::advice_gathered);
  }
  return "";
}

}

std::string event_words(const session::Event& event, const std::string& card_name) {
  return std::visit(EventWords{card_name}, event);
}

std::string mark_words(const bench::TrailMark& mark) { return std::visit(MarkWords{}, mark.what); }

std::string stage_words(const session::Pass& pass) {
  if (pass.stage == session::Stage::wetting_out) return say(Say::stage_wetting_out_short);
  if (pass.stage == session::Stage::resting) return say(Say::stage_resting);
  return say(Say::stage_pass, {std::to_string(pass.number)});
}

std::string advice_words(const bench::Advice& a) {
  using bench::Advice;
  const bool from_range = a.kind == Advice::add_drops || a.kind == Advice::too_loose ||
                          a.kind == Advice::first_helping || a.kind == Advice::mull_and_judge;
  const std::string hint = hint_words(a);
  return from_range && a.rests_on == paint::RestsOn::class_guess ? say(Say::advice_guess, {hint})
                                                                 : hint;
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

std::string minutes_seconds(double seconds) {
  const auto whole = static_cast<std::int64_t>(std::isfinite(seconds) && seconds > 0 ? seconds : 0);
  return std::to_string(whole / 60) + ":" + two_digits(static_cast<int>(whole % 60));
}

std::string time_of_day(std::int64_t ms, int utc_offset_min) {
  const std::int64_t minutes = floor_div(ms, 60000) + utc_offset_min;
  const auto of_day = static_cast<int>(minutes - floor_div(minutes, 1440) * 1440);
  return two_digits(of_day / 60) + ":" + two_digits(of_day % 60);
}

std::string date_and_time(std::int64_t ms, int utc_offset_min) {
  const MonthDay d = month_day(floor_div(floor_div(ms, 60000) + utc_offset_min, 1440));
  return say(Say::date_time,
             {std::to_string(d.day), month_name(d.month), time_of_day(ms, utc_offset_min)});
}

std::string grams_number(double grams) {
  return paint::written(grams, paint::decimals_of_grams(grams));
}

std::string grams_words(double grams) { return say(Say::amount_grams, {grams_number(grams)}); }

std::string grams_words(const paint::Amount& grams) {
  const auto text = paint::grams_written(grams);
  return text ? say(Say::amount_grams, {*text}) : grams_words(grams.value);
}

std::string number_words(const paint::Amount& amount, int most) {
  const auto text = paint::shown(amount, 1);
  return text && text->decimals <= most ? text->value : paint::written(amount.value, most);
}

std::string reading_words(double value) {
  return paint::written(value, paint::decimals_as_read(value));
}

std::string total_words(const session::Total& total) {
  std::string out;
  const auto add = [&](const std::string& part) { out += (out.empty() ? "" : " + ") + part; };
  if (total.weighed_g > 0) add(say(Say::amount_weighed));
  double spoons = 0;
  for (const auto& [spoon, count] : total.spoons) spoons += count;
  if (spoons > 0) add(amount_words(session::Unit::spoons, spoons));
  if (total.drops > 0) add(amount_words(session::Unit::drops, total.drops));
  return out;
}

}
