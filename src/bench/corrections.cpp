#include "bench/corrections.hpp"

#include "bench/record.hpp"

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
  const auto line = open ? std::optional(open->line) : number ? number->line : std::nullopt;
  if (!bench.folded || !line) return nullptr;
  for (const session::Entry& e : bench.folded->entries)
    if (e.ref == *line) return &e;
  return nullptr;
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
  return std::nullopt;
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
  return std::nullopt;
}

}
