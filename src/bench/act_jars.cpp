#include "bench/act.hpp"
#include "bench/choices.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/record.hpp"
#include "bench/shelf.hpp"
#include "bench/stock.hpp"
#include "paint/measure.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"
#include "words/say.hpp"
#include "words/typed_date.hpp"

namespace bench {

namespace {

using Say = words::BenchSay;

constexpr double most_g = 100000; // of a jar, and of what is left

std::int64_t today(const Now& now) { return words::day_number(now.wall_ms, now.utc_offset_min); }

session::Bought empty_jar(const Bench& bench, const Now& now) {
  const std::string currency = prices(bench).currency;
  session::Bought jar;
  jar.of = bench.shelf_page.card->id;
  jar.currency = currency.empty() ? words::say(Say::usual_currency) : currency;
  jar.on = words::date_of(today(now));
  return jar;
}

std::optional<words::Error> fault_of_jar(const session::Bought& jar, const Now& now) {
  if (!(jar.g > 0)) return words::Error{Say::jar_needs_g, {}};
  if (jar.price && jar.currency.empty()) return words::Error{Say::jar_needs_currency, {}};
  const auto day = words::days_of(jar.on);
  if (!jar.on.empty() && !day)
    return words::Error{Say::not_a_date, {jar.on, words::typed_example()}};
  if (day && *day > today(now)) return words::Error{Say::bought_in_future, {jar.on}};
  return std::nullopt;
}

// Whoever reads of a jar can read what is in it.
void lay_out(Bench& bench, const Now& now, Effects& effects) {
  const session::Card& card = *bench.shelf_page.card;
  if (!bench.own.count(card.id)) record(bench, "", session::LaidOut{card}, now, effects);
}

void enter_jar(Bench& bench, const Now& now, Effects& effects) {
  session::Bought jar = bench.shelf_page.jar;
  jar.on = words::typed_date(jar.on, today(now), words::WithoutYear::last);
  if (auto fault = fault_of_jar(jar, now)) return say_error(bench, *std::move(fault), now);
  if (!jar.price) jar.currency.clear();
  lay_out(bench, now, effects);
  record(bench, "", std::move(jar), now, effects);
  restock(bench);
  bench.shelf_page.jar = empty_jar(bench, now);
}

void take_back(Bench& bench, const Now& now, Effects& effects) {
  const auto line = last_entry(bench, bench.shelf_page.card->id);
  if (!line) return;
  record(bench, "", session::Withdrawn{*line}, now, effects);
  restock(bench);
}

words::Result<double> out_of_range(double least) {
  return words::failure(Say::fact_out_of_range,
                        {words::Number(least, 2), words::Number(most_g, 0)});
}

}

void open_jars(Bench& bench, const Now& now) {
  bench.shelf_page.on = CardPage::jars;
  bench.shelf_page.jar = empty_jar(bench, now);
}

void say_on_jar(Bench& bench, const std::string& which, const std::string& text) {
  session::Bought& jar = bench.shelf_page.jar;
  (which == "currency" ? jar.currency : which == "lot" ? jar.lot : jar.on) = text;
}

words::Result<double> set_on_jar(Bench& bench, const PadId& target, double value, const Now& now,
                                 Effects& effects) {
  ShelfState& page = bench.shelf_page;
  if (!page.card) return value;
  if (target.kind == ShelfPad::jar_price) {
    page.jar.price = value;
    return value;
  }
  if (target.kind == ShelfPad::jar_g) {
    if (!(value > 0 && value <= most_g)) return out_of_range(0.01);
    page.jar.g = value;
    return value;
  }
  if (!(value >= 0 && value <= most_g)) return out_of_range(0);
  lay_out(bench, now, effects);
  record(bench, "", session::StockWeighed{page.card->id, value}, now, effects);
  restock(bench);
  return value;
}

void act_on_jars(Bench& bench, ShelfPad pad, const Now& now, Effects& effects) {
  if (pad == ShelfPad::jar_in) enter_jar(bench, now, effects);
  if (pad == ShelfPad::jar_back) take_back(bench, now, effects);
}

}
