#include "bench/corrections.hpp"

#include "bench/doubt.hpp"
#include "bench/pads_more.hpp"
#include "bench/record.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <charconv>

namespace bench {

std::vector<const session::Entry*> correctable(const Bench& bench) {
  std::vector<const session::Entry*> out;
  if (!bench.folded) return out;
  for (auto e = bench.folded->entries.rbegin(); e != bench.folded->entries.rend(); ++e)
    if (!e->withdrawn && by_hand(e->event)) out.push_back(&*e);
  return out;
}

namespace {

constexpr std::int64_t run_gap_ms = 120000; // a longer pause parts two runs
constexpr std::size_t fewest_in_run = 3;

const session::Added* drops_in(const session::Entry& e) {
  const auto* added = std::get_if<session::Added>(&e.event);
  return added && added->unit == session::Unit::drops ? added : nullptr;
}

bool goes_on(const session::Entry& later, const session::Entry& earlier) {
  const auto *a = drops_in(later), *b = drops_in(earlier);
  return a && b && a->of == b->of && a->with == b->with && later.at - earlier.at <= run_gap_ms;
}

std::vector<std::vector<const session::Entry*>> runs_of(const Bench& bench) {
  std::vector<std::vector<const session::Entry*>> runs;
  for (const session::Entry* e : correctable(bench)) {
    if (runs.empty() || !goes_on(*runs.back().back(), *e)) runs.emplace_back();
    runs.back().push_back(e);
  }
  return runs;
}

}

std::vector<ListedLine> lines_listed(const Bench& bench, const LinesPanel& panel) {
  std::vector<ListedLine> all, of_run;
  for (auto& run : runs_of(bench)) {
    const bool opened = panel.run && std::any_of(run.begin(), run.end(), [&](const auto* e) {
                          return e->ref == *panel.run;
                        });
    const bool apart = opened || run.size() < fewest_in_run;
    for (const session::Entry* e : run)
      if (apart) (opened ? of_run : all).push_back({{MorePad::line, arg_of(e->ref)}, {e}});
    if (!apart) all.push_back({{MorePad::run, arg_of(run.front()->ref)}, std::move(run)});
  }
  return of_run.empty() ? all : of_run;
}

std::string arg_of(const session::Ref& line) { return line.session + " " + std::to_string(line.n); }

std::optional<session::Ref> line_named(std::string_view arg) {
  const auto space = arg.rfind(' ');
  if (space == std::string_view::npos) return std::nullopt;
  session::Ref ref{std::string(arg.substr(0, space)), 0};
  const auto digits = arg.substr(space + 1);
  const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), ref.n);
  if (read.ec != std::errc() || read.ptr != digits.data() + digits.size()) return std::nullopt;
  return ref;
}

const session::Entry* line_chosen(const Bench& bench) {
  const auto* open = std::get_if<LinePanel>(&bench.panel);
  const auto* number = std::get_if<NumberPanel>(&bench.panel);
  const auto* material = std::get_if<MaterialsPanel>(&bench.panel);
  const auto line = open       ? std::optional(open->line)
                    : number   ? number->line
                    : material ? material->line
                               : std::nullopt;
  if (!bench.folded || !line) return nullptr;
  for (const session::Entry& e : bench.folded->entries)
    if (e.ref == *line) return &e;
  return nullptr;
}

bool corrects_material(const Bench& bench) {
  const session::Entry* line = is_open<NumberPanel>(bench.panel) ? nullptr : line_chosen(bench);
  // A question that opened by itself must not change what the pads beside it do.
  const bool asked = is_open<LinePanel>(bench.panel) && line && doubt_about(bench, *line);
  return line && has_material(line->event) && !asked;
}

std::int64_t moved_by_ms(const Bench& bench, const session::Entry& line) {
  for (const session::Log& log : bench.logs)
    if (log.session == line.ref.session)
      for (const session::Line& told : log.lines)
        if (told.n == line.ref.n) return line.at - told.at;
  return 0;
}

std::optional<double> amount_in(const session::Event& event) {
  if (const auto* a = std::get_if<session::Added>(&event)) return a->amount;
  if (const auto* b = std::get_if<session::BottleWeighed>(&event)) return b->g;
  if (const auto* w = std::get_if<session::Weighed>(&event)) return w->g;
  if (const auto* p = std::get_if<session::PanWeighed>(&event)) return p->g;
  if (const auto* l = std::get_if<session::Lost>(&event); l && l->into.empty())
    return l->quantity.g;
  return std::nullopt;
}

bool has_material(const session::Event& event) {
  return std::holds_alternative<session::Added>(event) ||
         std::holds_alternative<session::BottleWeighed>(event);
}

words::Result<session::Corrected::Says>
with_material(const session::Event& event, const session::Card& card, const std::string& tool) {
  const bool liquid = session::is_liquid(card.kind());
  if (const auto* b = std::get_if<session::BottleWeighed>(&event)) {
    if (!liquid) return words::failure(words::BenchSay::bottle_of_liquid, {card.name});
    return session::BottleWeighed{card.id, b->g};
  }
  session::Added other = std::get<session::Added>(event);
  if (!liquid && other.unit != session::Unit::g)
    return words::failure(words::BenchSay::powder_is_weighed, {card.name});
  other.of = card.id;
  other.with = tool;
  return other;
}

std::optional<session::Corrected::Says> with_amount(const session::Event& event, double amount) {
  if (auto a = std::get_if<session::Added>(&event)) {
    session::Added other = *a;
    other.amount = amount;
    return other;
  }
  if (auto b = std::get_if<session::BottleWeighed>(&event))
    return session::BottleWeighed{b->of, amount};
  if (auto w = std::get_if<session::Weighed>(&event))
    return session::Weighed{w->place, amount, w->tare_g};
  if (auto p = std::get_if<session::PanWeighed>(&event)) return session::PanWeighed{p->pan, amount};
  if (auto l = std::get_if<session::Lost>(&event); l && l->quantity.g)
    return session::Lost{l->from, {l->quantity.share, amount}, l->into};
  return std::nullopt;
}

}
