#include "paper/sheet.hpp"

#include "paint/catalogue.hpp"
#include "paint/in_words.hpp"
#include "paper/palette.hpp"
#include "paper/sheet_style.hpp"
#include "paper/svg.hpp"
#include "paper/trail.hpp"
#include "session/dry_film.hpp"
#include "session/in_words.hpp"
#include "words/moments.hpp"
#include "words/paper_says.hpp"
#include "words/session_says.hpp"

#include <cmath>
#include <map>

namespace paper {

using namespace session;
using Say = words::PaperSay;
using words::say;

namespace {

// A name that somebody gave keeps its own direction to itself.
Markup given(std::string_view name) { return element("bdi", {}, name); }

Markup titled(const char* style, words::Sentence title, std::vector<Markup> inside) {
  inside.insert(inside.begin(), element("h2", {}, say(title)));
  return element("section", {{"class", style}}, inside);
}

const char* size_of(const std::string& name) {
  return name.size() <= 40 ? "short" : name.size() <= 200 ? "long" : "endless";
}

// The heap of powder in the pigment's own colour.
Markup heap(const Batch& batch) {
  const auto pigments = pigments_of(batch);
  const std::uint32_t colour = colour_of(batch);
  return element("svg",
                 {{"xmlns", "http://www.w3.org/2000/svg"},
                  {"width", "15mm"},
                  {"height", "10mm"},
                  {"viewBox", "0 0 15 10"}},
                 {element("path", {{"d", "M0.5 9.5C4 9.5 4 1 7.5 1S11 9.5 14.5 9.5Z"},
                                   {"fill", pigments.empty() ? css(ink::paper) : hex(colour)},
                                   {"stroke", css(ink::text)},
                                   {"stroke-width", "0.5"},
                                   {"stroke-linejoin", "round"}})});
}

Markup head(const Handed& handed) {
  const Batch& batch = handed.batch;
  std::vector<Markup> about{element("h1", {{"class", size_of(batch.name)}}, {given(batch.name)})};
  for (const Card& pigment : pigments_of(batch))
    about.push_back(element("p", {}, {given(pigment_words(pigment))}));
  const int offset = offset_of(handed);
  std::vector<Markup> when{element("p", {},
                                   words::date(made_at(batch), offset) + ", " +
                                       words::time_of_day(made_at(batch), offset)),
                           element("p", {}, say(Say::sheet_batch, {batch.id})),
                           element("p", {}, progress_words(batch.progress))};
  if (!batch.again_of.empty())
    when.push_back(element("p", {}, {given(say(Say::sheet_again, {batch.again_of}))}));
  if (!knows_zone(handed)) when.push_back(element("p", {}, say(Say::sheet_utc)));
  return element(
      "header", {},
      {heap(batch), element("div", {}, about), element("div", {{"class", "when"}}, when)});
}

Markup figure(const std::string& number, const std::string& caption) {
  return element("div", {}, {element("b", {}, number), element("span", {}, caption)});
}

std::string ratio_words(const std::optional<paint::Amount>& ratio, int most) {
  return ratio && std::isfinite(ratio->value) ? paint::number_words(*ratio, most) : "–";
}

Markup figures(const Batch& batch) {
  const paint::Standing& s = batch.standing;
  const paint::Room& room = batch.places.room;
  std::string where = say(Say::sheet_room);
  if (batch.room_guessed) where += ", " + say(words::SessionSay::plan_guess);
  const auto pvc = pvc_of(batch);
  return element(
      "div", {{"class", "figures"}},
      {figure(ratio_words(s.binder_ratio, 2), say(words::SessionSay::ratio_caption)),
       figure(ratio_words(s.flow_put_in, 1), say(Say::sheet_flow_put_in)),
       figure(ratio_words(s.flow_now, 1),
              say(batch.progress == Progress::open ? Say::sheet_flow_now : Say::sheet_flow_last)),
       figure(batch.newer ? "–" : paint::number_words(batch.dried_mL, 1), say(Say::sheet_dried)),
       figure(pvc ? pvc_number(*pvc) : "–", say(words::SessionSay::pvc_caption)),
       figure(say(words::SessionSay::book_room,
                  {paint::reading_words(room.celsius), paint::reading_words(room.humidity * 100)}),
              where)});
}

Markup row(const std::vector<Markup>& cells) { return element("tr", {}, cells); }

Markup number_cell(const std::string& number) {
  return element("td", {{"class", "number"}}, number);
}

Markup material_row(const Batch& batch, const Total& total) {
  const bool pigment = is_coloured(total.card);
  std::string how = total_words(total, measures_in(batch, total.card));
  if (total.count_lost) how += (how.empty() ? "" : ", ") + say(Say::sheet_count_lost);
  return row({element("td", {}, {given(pigment ? pigment_words(total.card) : total.card.name)}),
              element("td", {{"class", "quiet"}}, how),
              number_cell(batch.newer ? "–" : paint::grams_words(total.grams))});
}

Markup name_row(const Total& total) {
  const bool pigment = is_coloured(total.card);
  return row({element("td", {}, {given(pigment ? pigment_words(total.card) : total.card.name)})});
}

Markup materials(const Handed& handed) {
  const Batch& batch = handed.batch;
  std::vector<Markup> rows;
  for (const Total& total : went_in(batch))
    rows.push_back(handed.keeps_amounts ? name_row(total) : material_row(batch, total));
  if (rows.empty()) rows.push_back(row({element("td", {}, say(words::SessionSay::amount_none))}));
  return titled("", words::SessionSay::book_went_in,
                {element("table", {}, {element("tbody", {}, rows)})});
}

Markup pass_row(const Handed& handed, const Pass& pass) {
  const Batch& batch = handed.batch;
  const auto at = batch.opened_at + static_cast<std::int64_t>(pass.start * 1000);
  const double lasted = pass.end.value_or(batch.clock) - pass.start;
  return row({element("td", {}, stage_words(pass)),
              element("td", {{"class", "quiet"}}, words::time_of_day(at, offset_of(handed))),
              number_cell(words::minutes_seconds(lasted))});
}

Markup passes(const Handed& handed) {
  std::vector<Markup> rows;
  for (const Pass& pass : handed.batch.passes)
    if (pass.stage != Stage::resting) rows.push_back(pass_row(handed, pass));
  if (rows.empty()) rows.push_back(row({element("td", {}, say(words::SessionSay::book_no_pass))}));
  return titled("", words::SessionSay::book_at_slab,
                {element("table", {}, {element("tbody", {}, rows)})});
}

Markup drawn(const Handed& handed) {
  const Trail drawing = trail(handed);
  std::vector<Markup> inside{drawing.svg};
  std::vector<Markup> rest;
  for (const TimelineItem& t : drawing.left)
    rest.push_back(element(
        "li", {},
        {text(words::date_and_time(t.at, offset_of(handed, t.line)) + "  "), given(t.words)}));
  if (!rest.empty()) inside.push_back(element("ul", {{"class", "rest"}}, rest));
  return element("section", {{"class", "trail"}}, inside);
}

std::string pan_words(const Batch& batch, const Verdict& verdict, std::int64_t at) {
  const std::string became = became_words(verdict.as);
  const std::string what =
      verdict.pan == 0 ? became
                       : say(words::SessionSay::sheet_pan, {std::to_string(verdict.pan), became});
  const auto poured = last_pour(batch.pans, at);
  return poured ? what + ", " + days_since_pour_words((at - *poured) / a_day_ms) : what;
}

// What is told of pans, and what somebody wrote.
std::string afterwards(const Batch& batch, const Entry& entry) {
  const Event& event = entry.event;
  if (const auto* poured = std::get_if<Poured>(&event))
    return pour_words(*poured) + ", " + card_name(batch, poured->in);
  if (const auto* pan = std::get_if<PanWeighed>(&event))
    return say(words::SessionSay::did_weigh_pan,
               {std::to_string(pan->pan), paint::grams_words(pan->g)});
  if (const auto* verdict = std::get_if<Verdict>(&event))
    return pan_words(batch, *verdict, entry.at);
  if (const auto* noted = std::get_if<Noted>(&event)) return noted->text;
  return "";
}

Markup pans(const Handed& handed) {
  std::vector<Markup> rows;
  for (const Entry& e : handed.batch.entries) {
    const std::string what = e.withdrawn ? "" : afterwards(handed.batch, e);
    if (what.empty()) continue;
    rows.push_back(row({element("td", {{"class", "quiet day"}},
                                words::date_and_time(e.at, offset_of(handed, e.ref))),
                        element("td", {}, {given(what)})}));
  }
  if (rows.empty()) return {};
  return titled("", Say::sheet_pans, {element("table", {}, {element("tbody", {}, rows)})});
}

std::string photo_words(PhotoOf of) {
  switch (of) {
  case PhotoOf::slab: return say(Say::photo_slab);
  case PhotoOf::dot: return say(Say::photo_dot);
  case PhotoOf::swatch: return say(Say::photo_swatch);
  case PhotoOf::pan: return say(Say::photo_pan);
  }
  return "";
}

Markup picture(const Photo& photo) {
  const std::string words = photo_words(photo.of);
  return element(
      "p", {},
      {element("img", {{"src", "photos/" + photo.sha256 + "." + photo.ending}, {"alt", words}}),
       element("span", {{"class", "quiet"}}, words)});
}

// The last of each kind; a swatch first, as it was read last.
Markup photos(const Handed& handed) {
  if (!handed.with_photos) return {};
  std::map<int, Markup> of;
  for (const Entry& e : handed.batch.entries)
    if (const auto* photo = std::get_if<Photo>(&e.event); photo && !e.withdrawn)
      of[photo->of == PhotoOf::swatch ? 0 : 1 + static_cast<int>(photo->of)] = picture(*photo);
  std::vector<Markup> all;
  for (const auto& [kind, markup] : of) all.push_back(markup);
  return all.empty() ? Markup{}
                     : titled("", Say::sheet_photos, {element("div", {{"class", "photos"}}, all)});
}

// Nothing that is missing is passed over in silence.
Markup broken(const Batch& batch) {
  std::vector<Markup> said;
  const auto say_it = [&](const std::string& sentence) {
    said.push_back(element("p", {}, {given(sentence)}));
  };
  if (batch.newer) say_it(say(words::SessionSay::batch_of_newer_format));
  if (batch.damaged) say_it(say(Say::show_damaged));
  for (const Warning& warning : batch.warnings) say_it(warning_words(warning));
  return said.empty() ? Markup{} : titled("broken", Say::sheet_not_whole, std::move(said));
}

Markup care(const Batch& batch) {
  std::vector<std::vector<paint::Caution>> asked;
  std::vector<Markup> list;
  for (const Card& pigment : pigments_of(batch)) {
    asked.push_back(paint::cautions_of(pigment.id, pigment_of(pigment).cautions));
    if (!paint::in_catalogue(pigment.id) && pigment_of(pigment).cautions.empty())
      list.push_back(
          element("li", {}, {given(say(Say::care_pigment_not_known, {pigment_words(pigment)}))}));
  }
  for (const words::Sentence sentence : paint::cautions_for(asked))
    list.push_back(element("li", {}, say(sentence)));
  return titled("care", Say::sheet_care, {element("ul", {}, list)});
}

std::vector<Markup> parts_of_sheet(const Handed& handed) {
  const Batch& batch = handed.batch;
  if (handed.keeps_amounts)
    return {head(handed), materials(handed),
            element("p", {{"class", "quiet"}}, say(Say::sheet_keeps_amounts)), broken(batch),
            care(batch)};
  return {head(handed),
          figures(batch),
          element("div", {{"class", "two"}}, {materials(handed), passes(handed)}),
          drawn(handed),
          photos(handed),
          pans(handed),
          broken(batch),
          care(batch),
          element("footer", {}, say(Say::sheet_foot))};
}

}

std::string sheet(const Handed& handed) {
  return document(handed.batch.name, sheet_style, parts_of_sheet(handed));
}

std::string sheets(std::vector<Handed> all) {
  std::vector<Markup> pages;
  for (std::size_t i = 0; i < all.size(); ++i) {
    all[i].place = static_cast<int>(i) + 1;
    pages.push_back(element("div", {{"class", "sheet"}}, parts_of_sheet(all[i])));
  }
  return document(title_of(all.size(), all.empty() ? nullptr : &all[0].batch, Say::sheets_title),
                  sheet_style, pages);
}

}
