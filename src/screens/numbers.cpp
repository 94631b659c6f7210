// The numbers: the binder ratio large, and beside it the few sentences that matter now.
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/making_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"
#include "words/slab_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using Say = words::SlabSay;
using words::say;

namespace {

// Upright the panel is two rows of cells: room for larger letters.
bool tall(const Rect& area) { return area.h > 36; }

constexpr double sentence_step = 1.85; // from baseline to baseline, in heights of a capital

enum class Tone { advice, plain, quiet, caution };

struct Sentence {
  std::string words;
  Tone tone = Tone::plain;
  int max_lines = 2;
  std::string shorter = {};  // where there is no room for all of it
  std::string shortest = {}; // likewise, for that
};

// That entries are not in the sums; of a single one why, where there is room.
void add_left_out(std::vector<Sentence>& out, const std::vector<session::Warning>& warnings) {
  const auto last = std::find_if(warnings.rbegin(), warnings.rend(),
                                 [](const session::Warning& w) { return leaves_out(w.kind); });
  if (last == warnings.rend()) return;
  const std::string many = left_out_words(warnings);
  if (!last->why) return out.push_back({many, Tone::plain});
  const std::string why = words::message(*last->why);
  const bool single = many == say(words::ScreensSay::entry_left_out);
  out.push_back({single ? say(Say::left_out_why, {why}) : say(Say::last_left_out, {many, why}),
                 Tone::plain, 4, many});
}

void add_jar(std::vector<Sentence>& out, const bench::JarView& jar) {
  const std::string g = number_words(jar.g, 1);
  const double percent = std::round(jar.on_tools * 100 - 0.01); // a half falls, to the last digit
  out.push_back({percent >= 1 ? say(Say::jar_and_glass, {g, paint::written(percent, 0)})
                              : say(Say::jar_holds, {g}),
                 Tone::quiet});
}

// Every pigment has to be there before anything else is advised.
bool waits_for_pigment(const bench::SlabView& slab) {
  return std::any_of(slab.to_come.begin(), slab.to_come.end(), bench::pigment_to_come);
}

std::string tack_words(const bench::SlabView& slab) {
  const std::string tack = sticky_words(*slab.advice.sticky);
  return slab.room_guessed ? say(words::ScreensSay::by_guessed_room, {tack}) : tack;
}

// Binder, honey or glycerin belongs to the paint before it is gathered.
bool belongs_in(const bench::SlabView& slab) {
  return std::any_of(slab.to_come.begin(), slab.to_come.end(), [](const bench::ToComeView& one) {
    return one.kind == session::CardKind::binder || bench::sweet_to_come(one);
  });
}

bool goes_first(const bench::ToComeView& one) { return one.first; }

bool has_first(const bench::SlabView& slab) {
  return std::any_of(slab.to_come.begin(), slab.to_come.end(), goes_first);
}

// But for what the advice names, and for water in paint that flows right.
std::vector<bench::ToComeView> not_yet_said(const bench::SlabView& slab) {
  std::vector<bench::ToComeView> rest = slab.to_come;
  std::erase_if(rest, goes_first);
  if (bench::is_nearly_done(slab.advice) || slab.advice.kind == bench::Advice::there)
    std::erase_if(rest, [](const auto& one) { return one.kind == session::CardKind::water; });
  return rest;
}

// Some of each is there: the maker may have no more of it.
bool may_be_all(const bench::SlabView& slab) {
  return slab.advice.kind == bench::Advice::first_helping &&
         std::all_of(slab.to_come.begin(), slab.to_come.end(), [](const bench::ToComeView& one) {
           return !bench::pigment_to_come(one) || one.begun;
         });
}

// What goes in is for all of the paint, not for the portion under the muller.
bool is_added_to(const bench::SlabView& slab) {
  using bench::Advice;
  const Advice& a = slab.advice;
  if (a.kind == Advice::first_helping || a.by_knife || waits_for_pigment(slab)) return false;
  return a.kind == Advice::add_drops || a.kind == Advice::give_back || !a.pigments.empty() ||
         a.gum == paint::GumState::too_little || has_first(slab);
}

std::string short_portions_words(const bench::SlabView& slab) {
  return say(is_added_to(slab) ? Say::add_to_all_in_short : Say::in_portions,
             {std::to_string(slab.portions)});
}

std::string portions_words(const bench::SlabView& slab, bool weigh_out) {
  const bool before = weigh_out || slab.advice.kind == bench::Advice::first_helping;
  return say(before || slab.advice.by_knife ? Say::wet_out_all
             : is_added_to(slab)            ? Say::add_to_all
                                            : Say::in_portions,
             {std::to_string(slab.portions)});
}

// How much in all is of no use to who has been told that it is enough.
void add_in_all(std::vector<Sentence>& out, const bench::SlabView& slab) {
  using bench::Advice;
  const Advice::Kind kind = slab.advice.kind;
  if (bench::is_nearly_done(slab.advice) || kind == Advice::there || kind == Advice::gathered)
    return;
  if (slab.planned_g)
    out.push_back({say(Say::planned_in_all, {grams_number(*slab.planned_g)}), Tone::plain});
  else if (slab.last_time_g)
    out.push_back({say(Say::last_time, {grams_number(*slab.last_time_g)}), Tone::plain});
  if (slab.by_recipe_g)
    out.push_back({say(Say::by_recipe, {grams_number(*slab.by_recipe_g)}), Tone::plain});
}

Sentence first_sentence(const bench::SlabView& slab, bool weigh_out) {
  if (slab.newer) return {say(words::SessionSay::batch_of_newer_format), Tone::caution};
  if (weigh_out) return {to_come_words(slab.to_come), Tone::advice, 3};
  if (is_right_in_all(slab.advice) && !slab.advice.sticky && belongs_in(slab))
    return {say(Say::right_to_come), Tone::advice, 3};
  if (has_first(slab))
    return {say(slab.advice.by_knife ? Say::add_first_by_knife : Say::add_first,
                {amounts_to_come(slab.to_come, goes_first)}),
            Tone::advice, slab.dust ? 2 : 3};
  if (is_right_in_all(slab.advice) && !slab.advice.sticky && !slab.softening && slab.portions > 1)
    return {say(words::ScreensSay::advice_there_portions, {std::to_string(slab.portions)}),
            Tone::advice, 3};
  Sentence advice{right_words(slab.advice, slab.softening, slab.room_guessed), Tone::advice, 3};
  if (slab.advice.kind == bench::Advice::first_helping && slab.dust) {
    advice.max_lines = 2; // the mask has to be read too: the grams may give way
    advice.shorter = advice.words.substr(0, advice.words.find(" ("));
  }
  if (slab.softening && is_right_in_all(slab.advice)) {
    auto softening = *slab.softening; // what it loosens like may give way
    softening.loosens = {};
    advice.shorter = right_words(slab.advice, softening, slab.room_guessed);
  }
  if (slab.advice.kind == bench::Advice::give_back)
    advice.shorter = short_give_back_words(slab.advice);
  if (slab.advice.kind != bench::Advice::add_drops && !slab.advice.several) return advice;
  bench::Advice amount = slab.advice; // alone, where the rest has no room
  amount.several = false;
  amount.hint = false;
  advice.shorter = advice_words(amount);
  if (slab.dust) advice.max_lines = 2; // the mask has to be read too
  return advice;
}

void add_portions(std::vector<Sentence>& out, const bench::SlabView& slab, bool weigh_out) {
  out.push_back({portions_words(slab, weigh_out), Tone::plain, 2, short_portions_words(slab)});
}

// In order of weight: what stands in danger comes right after the advice, so that the calmer lines
// are those that give way.
std::vector<Sentence> sentences(const bench::SlabView& slab) {
  std::vector<Sentence> out;
  const bool weigh_out = waits_for_pigment(slab);
  const bool two_dangers = slab.save_failure && slab.dust; // then the advice gives way
  if (!two_dangers) out.push_back(first_sentence(slab, weigh_out));
  if (slab.save_failure)
    out.push_back({say(words::ScreensSay::not_saved, {words::message(*slab.save_failure)}),
                   Tone::caution, two_dangers ? 2 : 3});
  else if (slab.saved_elsewhere)
    out.push_back({say(words::ScreensSay::saved_elsewhere), Tone::caution});
  if (slab.dust)
    out.push_back({say(Say::dust_mask), Tone::caution, 2, say(words::MakingSay::powder_mask)});
  if (slab.flammable) out.push_back({say(Say::no_flame), Tone::caution, 2});
  if (two_dangers) out.push_back(first_sentence(slab, weigh_out));
  const bool in_portions = slab.portions > 1 && slab.advice.specks == bench::SpecksStay::no &&
                           !is_right_in_all(slab.advice);
  if (in_portions && is_added_to(slab)) add_portions(out, slab, weigh_out);
  if (slab.damaged) out.push_back({say(words::ScreensSay::batch_damaged), Tone::caution});
  const bool ahead = std::any_of(slab.warnings.begin(), slab.warnings.end(), [](const auto& w) {
    return w.kind == session::WarningKind::clock_ahead;
  });
  if (ahead) out.push_back({say(Say::another_clock_ahead), Tone::plain});
  add_left_out(out, slab.warnings);
  if (const std::string notice = notice_words(slab.notice); !notice.empty())
    out.push_back({notice, Tone::plain, 4});
  const auto to_come = not_yet_said(slab);
  if (weigh_out && may_be_all(slab))
    out.push_back({say(Say::if_that_is_all, {advice_words(slab.advice)}), Tone::plain, 2});
  if (!weigh_out && !to_come.empty())
    out.push_back({to_come_words(to_come), Tone::plain, 2, short_to_come_words(to_come),
                   shortest_to_come_words(to_come)});
  const bool all_said = is_right_in_all(slab.advice);
  if (slab.softening && !all_said) out.push_back({softening_words(*slab.softening), Tone::plain});
  if (slab.advice.sticky && !all_said) out.push_back({tack_words(slab), Tone::plain});
  if (in_portions && !is_added_to(slab)) add_portions(out, slab, weigh_out);
  add_in_all(out, slab);
  if (const std::string gum = gum_words(slab.advice); !gum.empty())
    out.push_back({gum, Tone::plain});
  if (slab.jar) add_jar(out, *slab.jar);
  if (slab.dried_mL.value >= 0.05)
    out.push_back({say(slab.room_guessed ? Say::dried_off_by_guess : Say::dried_off,
                       {number_words(slab.dried_mL, 1)}),
                   Tone::quiet});
  return out;
}

struct Row {
  std::string words;
  Tone tone;
  bool first = false; // of its sentence
};

// As many lines as there is room for; a sentence that does not fit whole is left out, but the
// advice and a caution right after it are cut rather than left out.
std::vector<Row> rows_of(const std::vector<Sentence>& list, double width, std::size_t room,
                         double cap_mm) {
  std::vector<Row> rows;
  for (std::size_t i = 0; i < list.size() && rows.size() < room; ++i) {
    const Sentence& s = list[i];
    const bool bold = s.tone == Tone::advice || s.tone == Tone::caution;
    const double inner = s.tone == Tone::caution ? width - 3 : width;
    const int left = static_cast<int>(room - rows.size());
    const auto fit = [&](const std::string& all, int most) {
      return fitted(all, inner, {cap_mm, bold, cap_mm}, std::min(most, left), false);
    };
    Lines lines = fit(s.words, s.max_lines);
    for (const std::string& shorter : {s.shorter, s.shortest})
      if (lines.cut && !shorter.empty()) lines = fit(shorter, s.max_lines);
    if (lines.cut && (i >= 2 || (i == 1 && s.tone != Tone::caution))) continue;
    for (const std::string& line : lines.lines)
      rows.push_back({line, s.tone, &line == &lines.lines.front()});
  }
  return rows;
}

void draw_rows(Sheet& sheet, const Rect& area, const std::vector<Row>& rows, double cap_mm) {
  const Theme& t = sheet.theme;
  const double step = cap_mm * sentence_step;
  const Lettering letters{cap_mm, false, cap::body}, bold{cap_mm, true, cap::body};
  const double height = step * static_cast<double>(rows.size()) - (step - cap_mm);
  double y = area.centre().y - height / 2 + cap_mm;
  for (std::size_t i = 0; i < rows.size(); ++i, y += step) {
    const Row& row = rows[i];
    if (row.tone == Tone::caution) {
      // One chip around all lines of a sentence.
      const bool first = i == 0 || rows[i - 1].tone != Tone::caution;
      std::size_t count = 1;
      while (i + count < rows.size() && rows[i + count].tone == Tone::caution) ++count;
      if (first)
        sheet.shapes.push_back(Box{{area.x - 1.5, y - cap_mm - (step - cap_mm) * 0.45, area.w + 1.5,
                                    step * static_cast<double>(count) - 0.35},
                                   1.4,
                                   t.caution,
                                   clear,
                                   0});
      write(sheet, {area.x, y}, Anchor::left, bold, t.caution_ink, row.words, area.w);
      if (row.first) heard_apart(sheet);
      continue;
    }
    const bool advice = row.tone == Tone::advice;
    const Colour colour = advice ? t.right_ink : row.tone == Tone::quiet ? t.quiet : t.ink;
    write(sheet, {area.x, y}, Anchor::left, advice ? bold : letters, colour, row.words, area.w);
    if (row.first) heard_apart(sheet);
  }
}

void draw_ratio(Sheet& sheet, const Rect& area, const bench::SlabView& slab) {
  const Theme& t = sheet.theme;
  if (!slab.ratio || !std::isfinite(slab.ratio->value)) {
    labels(sheet, area, plain(t), {{say(Say::ratio_none), slab_letters, true, 3}}, Anchor::left);
    return;
  }
  const double big = tall(area) ? cap::large : cap::ratio;
  const Lines caption = fitted(say(words::SessionSay::ratio_caption), area.w, slab_letters, 2);
  const double step = cap::body * 1.5;
  const double below = cap::body + step * (static_cast<double>(caption.lines.size()) - 1);
  const double air = std::min(4.0, (area.h - big - below) / 3);
  const double y = area.centre().y - (big + air + below) / 2 - 0.4 + big;
  write(sheet, {area.x, y}, Anchor::left, {big, true, cap::ratio}, t.ink,
        paint::written(slab.ratio->value, slab.ratio_decimals), area.w);
  double line_y = y + air + cap::body;
  for (const std::string& line : caption.lines) {
    write(sheet, {area.x, line_y}, Anchor::left, slab_letters, t.quiet, line, area.w);
    line_y += step;
  }
}

}

void draw_numbers(Sheet& sheet, const bench::SlabView& slab) {
  const Rect& r = sheet.view.layout.side;
  if (r.w <= 0) return;
  panel(sheet, r);
  const double edge = 4, between = 4.5;
  const double caption = width_mm(say(words::SessionSay::ratio_caption), cap::body, false) + 0.5;
  const double left = std::min(caption, r.w * 0.48); // else in two lines
  draw_ratio(sheet, {r.x + edge, r.y, left, r.h}, slab);
  const double x = r.x + edge + left + between;
  const Rect words{x, r.y, r.right() - x - 2.5, r.h};
  const double cap_mm = tall(r) ? cap::head : cap::body;
  const double lines = (r.h - 2.4 - cap_mm) / (cap_mm * sentence_step) + 1;
  const auto room = static_cast<std::size_t>(std::max(1.0, lines));
  draw_rows(sheet, words, rows_of(sentences(slab), words.w, room, cap_mm), cap_mm);
}

}
