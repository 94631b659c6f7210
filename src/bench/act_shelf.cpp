#include "bench/act.hpp"
#include "bench/card_cautions.hpp"
#include "bench/card_colour.hpp"
#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/colour_chart.hpp"
#include "bench/making.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/recipes.hpp"
#include "bench/record.hpp"
#include "bench/shelf.hpp"
#include "bench/shelf_list.hpp"
#include "bench/stock.hpp"
#include "session/resolve.hpp"
#include "words/calendar.hpp"

#include <algorithm>

namespace bench {

namespace {

const session::Card* find(const std::vector<session::Card>& cards, const std::string& id) {
  const auto at =
      std::find_if(cards.begin(), cards.end(), [&](const auto& c) { return c.id == id; });
  return at == cards.end() ? nullptr : &*at;
}

void close_card(Bench& bench) {
  bench.shelf_page.card.reset();
  bench.shelf_page.changed = bench.shelf_page.is_new = false;
  bench.shelf_page.choosing = false;
  bench.shelf_page.on = CardPage::facts;
}

void turn_choice(ShelfState& page, const std::string& which) {
  const auto choice = choice_named(which);
  if (!choice) return;
  if (*choice == ChoiceKind::cautions) {
    page.choosing = true;
    page.caution_page = 0;
    return;
  }
  page.card = with_next(*page.card, *choice);
  page.changed = true;
}

void open_card(Bench& bench, const std::string& id) {
  bench.paper.written.clear(); // of another card
  ShelfState& page = bench.shelf_page;
  close_card(bench);
  const auto* card = find(page.away ? bench.away : bench.shelf, id);
  if (!card) return;
  page.card = *card;
  if (is_read(*card) && !page.away) page.on = CardPage::reading;
}

// From its figures, its jars or the chart: to what is read where it is, else the card is closed.
void back_to_card(Bench& bench) {
  ShelfState& page = bench.shelf_page;
  const bool from_chart = page.on == CardPage::hues || page.on == CardPage::shades;
  if (page.card && from_chart)
    page.on = CardPage::facts;
  else if (page.card && is_read(*page.card) && !page.away)
    page.on = CardPage::reading;
  else if (page.on == CardPage::jars)
    page.on = CardPage::facts;
  else
    close_card(bench);
}

void choose_shade(ShelfState& page, const std::string& place) {
  auto* pigment = std::get_if<session::PigmentCard>(&page.card->facts);
  if (!pigment) return;
  pigment->colour = chart_shades(page.hue)[static_cast<std::size_t>(std::stoi(place))];
  page.changed = true;
  page.on = CardPage::facts;
}

void read_batch(Bench& bench, const std::string& batch) {
  bench.book.page = BatchPage{batch, {}};
  go_to(bench, Screen::book);
}

// Laid out as it is, it is the maker's own.
void tick(Bench& bench, const Now& now, Effects& effects) {
  record(bench, "", session::LaidOut{*bench.shelf_page.card}, now, effects);
  restock(bench);
  bench.shelf_page.others = false;
}

// The card as it is, in another colour.
void take_colour(Bench& bench, std::uint32_t colour, const Now& now, Effects& effects) {
  bench.shelf_page.card = with_colour(*bench.shelf_page.card, colour);
  record(bench, "", session::LaidOut{*bench.shelf_page.card}, now, effects);
  restock(bench);
}

void take_swatch(Bench& bench, const Now& now, Effects& effects) {
  if (const auto swatch = swatch_to_take(bench, *bench.shelf_page.card))
    take_colour(bench, swatch->colour, now, effects);
}

void give_back_colour(Bench& bench, const Now& now, Effects& effects) {
  if (const auto colour = colour_to_give_back(*bench.shelf_page.card))
    take_colour(bench, *colour, now, effects);
}

void plan_card(Bench& bench, const session::Card& card, const Now& now) {
  const std::string id = card.id;
  if (card.kind() != session::CardKind::recipe) return plan_pigment(bench, id, now);
  go_to(bench, Screen::plan); // first, so that what is gone is said there
  use_recipe(bench, id, now);
}

std::vector<session::Ref> laid_out_by(const Bench& bench, const std::string& card) {
  std::vector<session::Ref> out;
  for (const session::Resolved& line : session::resolve(session::all_of(bench.logs), "").lines) {
    const auto* laid = std::get_if<session::LaidOut>(line.event);
    if (laid && !line.withdrawn && laid->card->id == card) out.push_back(line.ref);
  }
  return out;
}

// Tapped again it is not the maker's own any more, unless more was said of it than that.
void tick_or_not(Bench& bench, const std::string& id, const Now& now, Effects& effects) {
  const session::Card* known = find(bench.shelf, id);
  if (!known) return;
  const session::Card card = *known;
  if (!is_mine(bench, card)) {
    record(bench, "", session::LaidOut{card}, now, effects);
    return restock(bench);
  }
  if (is_in_use(bench, id) || !ships_so(card))
    return say_error(bench, {words::BenchSay::card_stays_own, {card.name}}, now);
  for (const session::Ref& line : laid_out_by(bench, id))
    record(bench, "", session::Withdrawn{line}, now, effects);
  restock(bench);
}

void all_ticked(ShelfState& page) {
  page.ticking = false;
  page.list = {};
  page.search.clear();
}

void new_card(Bench& bench, const Now& now) {
  ShelfState& page = bench.shelf_page;
  page.card = blank_card(page.kind, fresh_id(now));
  page.is_new = page.changed = true;
}

// With what was typed on it: so it is had back.
void put_away(Bench& bench, const Now& now, Effects& effects) {
  if (!keep_card(bench, now, effects)) return;
  const std::string id = bench.shelf_page.card->id;
  record(bench, "", session::PutAway{id}, now, effects);
  restock(bench);
  close_card(bench);
  std::erase_if(bench.plan.blend, [&](const BlendPart& part) { return part.card == id; });
}

void bring_back(Bench& bench, const Now& now, Effects& effects) {
  record(bench, "", session::LaidOut{*bench.shelf_page.card}, now, effects);
  restock(bench);
  close_card(bench);
}

}

bool keep_card(Bench& bench, const Now& now, Effects& effects) {
  ShelfState& page = bench.shelf_page;
  if (!page.card || !page.changed) return true;
  const std::int64_t today = words::day_number(now.wall_ms, now.utc_offset_min);
  read_typed_dates(*page.card, today);
  if (auto fault = fault_of(*page.card, today)) {
    say_error(bench, *std::move(fault), now);
    return false;
  }
  record(bench, "", session::LaidOut{*page.card}, now, effects);
  restock(bench);
  page.changed = page.is_new = false;
  return true;
}

bool leave_card(Bench& bench, const Now& now, Effects& effects) {
  const ShelfState& page = bench.shelf_page;
  if (page.card && page.is_new && *page.card == blank_card(page.kind, page.card->id))
    close_card(bench);
  return keep_card(bench, now, effects);
}

words::Result<double> set_fact(Bench& bench, const std::string& which, double value) {
  ShelfState& page = bench.shelf_page;
  if (!page.card) return value;
  auto card = with_fact(*page.card, which, value);
  if (!card) return tl::make_unexpected(card.error());
  page.card = *std::move(card);
  page.changed = true;
  return value;
}

void say_on_card(Bench& bench, const std::string& which, const std::string& text) {
  ShelfState& page = bench.shelf_page;
  if (!page.card) return;
  std::string& at = which == "lot"          ? page.card->lot
                    : which == "made_on"    ? page.card->made_on
                    : which == "keep_until" ? page.card->keep_until
                                            : page.card->name;
  page.changed |= at != text;
  at = text;
}

namespace {

void show_kind(ShelfState& page, const std::string& name) {
  if (const auto kind = shelf_tabs.find(&ShelfTab::name, std::string_view(name))) page.kind = *kind;
  page.list = {};
  page.others = page.ticking = false;
}

// What leaves the open card; it is kept before.
void act_beside_card(Bench& bench, ShelfPad pad, const std::string& arg, const Now& now) {
  ShelfState& page = bench.shelf_page;
  switch (pad) {
  case ShelfPad::kind_of: show_kind(page, arg); return close_card(bench);
  case ShelfPad::kept_away:
    page.away = !page.away;
    page.ticking = false;
    page.list = {};
    return close_card(bench);
  case ShelfPad::card: return open_card(bench, arg);
  case ShelfPad::new_card: return new_card(bench, now);
  case ShelfPad::card_done: return back_to_card(bench);
  case ShelfPad::others:
    page.others = !page.others;
    page.list = {};
    return close_card(bench);
  case ShelfPad::jars: return open_jars(bench, now);
  case ShelfPad::make: return plan_card(bench, *page.card, now);
  case ShelfPad::batch_of: return read_batch(bench, arg);
  case ShelfPad::strength: open_strength(bench, page.card->id); return go_to(bench, Screen::binder);
  case ShelfPad::binder_label:
  case ShelfPad::make_binder: // see screens.hpp
  case ShelfPad::to_card:
  case ShelfPad::tick:
  case ShelfPad::own:
  case ShelfPad::own_done:
  case ShelfPad::as_swatch:
  case ShelfPad::as_catalogue:
  case ShelfPad::change:
  case ShelfPad::chart:
  case ShelfPad::hue:
  case ShelfPad::shade:
  case ShelfPad::jar_g:
  case ShelfPad::jar_price:
  case ShelfPad::jar_says:
  case ShelfPad::jar_in:
  case ShelfPad::jar_back:
  case ShelfPad::left_g:
  case ShelfPad::put_away:
  case ShelfPad::bring_back:
  case ShelfPad::fact:
  case ShelfPad::says:
  case ShelfPad::choice:
  case ShelfPad::caution:
  case ShelfPad::more_cautions:
  case ShelfPad::cautions_chosen: return; // are on it
  }
}

// As it is kept: what was changed on the card is kept first.
void label_binder(Bench& bench, const Now& now, Effects& effects) {
  const std::string card = bench.shelf_page.card->id;
  if (bench.paper.writing || !keep_card(bench, now, effects)) return;
  bench.paper.writing = true;
  bench.paper.written.clear();
  bench.paper.failure.reset();
  effects.paper = PaperWanted{PaperKind::binder_labels, {card}, bench.tablet.label_line};
  effects.keep_tablet = true; // with that line
}

}

void act_on_shelf(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  ShelfState& page = bench.shelf_page;
  const auto own = pad.kind.as<ShelfPad>();
  if (!own) return;
  switch (*own) {
  case ShelfPad::fact:
  case ShelfPad::jar_g:
  case ShelfPad::jar_price:
  case ShelfPad::left_g: return open_number(bench, pad);
  case ShelfPad::jar_in:
  case ShelfPad::jar_back: return act_on_jars(bench, *own, now, effects);
  case ShelfPad::tick: return tick(bench, now, effects);
  case ShelfPad::own: return tick_or_not(bench, pad.arg, now, effects);
  case ShelfPad::own_done: return all_ticked(page);
  case ShelfPad::binder_label: return label_binder(bench, now, effects);
  case ShelfPad::as_swatch: return take_swatch(bench, now, effects);
  case ShelfPad::as_catalogue: return give_back_colour(bench, now, effects);
  case ShelfPad::change: page.on = CardPage::facts; return;
  case ShelfPad::chart: page.on = CardPage::hues; return;
  case ShelfPad::hue:
    page.hue = std::stoi(pad.arg);
    page.on = CardPage::shades;
    return;
  case ShelfPad::shade: return choose_shade(page, pad.arg);
  case ShelfPad::choice: return turn_choice(page, pad.arg);
  case ShelfPad::caution:
    turn_caution(*page.card, pad.arg);
    page.changed = true;
    return;
  case ShelfPad::more_cautions: ++page.caution_page; return;
  case ShelfPad::cautions_chosen: page.choosing = false; return;
  case ShelfPad::put_away: return page.is_new ? close_card(bench) : put_away(bench, now, effects);
  case ShelfPad::bring_back: return bring_back(bench, now, effects);
  case ShelfPad::says:
  case ShelfPad::jar_says: return; // text fields
  case ShelfPad::to_card: return back_to_card(bench);
  case ShelfPad::jars:
  case ShelfPad::make:
  case ShelfPad::make_binder:
  case ShelfPad::strength:
  case ShelfPad::batch_of:
    if (keep_card(bench, now, effects)) act_beside_card(bench, *own, pad.arg, now);
    return;
  case ShelfPad::others:
  case ShelfPad::kind_of:
  case ShelfPad::kept_away:
  case ShelfPad::card:
  case ShelfPad::new_card:
  case ShelfPad::card_done:
    if (leave_card(bench, now, effects)) act_beside_card(bench, *own, pad.arg, now);
    return;
  }
}

}
