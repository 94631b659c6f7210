#include "paper/timeline.hpp"

#include "paint/in_words.hpp"
#include "paper/facts.hpp"
#include "session/in_words.hpp"
#include "words/session_says.hpp"

#include <functional>

namespace paper {

using namespace session;
using Say = words::SessionSay;
using words::say;

namespace {

// The additions of one material that are told together.
struct Run {
  std::string of;
  double g = 0, drops = 0, spoons = 0;

  void add(const Added& added) {
    (added.unit == Unit::g ? g : added.unit == Unit::drops ? drops : spoons) += added.amount;
  }
  std::string words(const Batch& batch) const {
    std::string much;
    const auto say_of = [&](Unit unit, double amount) {
      if (amount > 0) much += (much.empty() ? "" : " + ") + amount_words(unit, amount);
    };
    say_of(Unit::g, g);
    say_of(Unit::spoons, spoons);
    say_of(Unit::drops, drops);
    return say(Say::did_added, {card_name(batch, of), much.empty() ? say(Say::amount_none) : much});
  }
};

struct Words {
  std::string operator()(Feel feel) const { return feel_words(feel); }
  std::string operator()(Specks specks) const { return specks_words(specks); }
  std::string operator()(TroubleKind trouble) const { return trouble_words(trouble); }
  std::string operator()(OffSlab) const { return say(Say::progress_gathered); }
  std::string operator()(Put) const { return ""; } // a run has its own
};

std::optional<Sign> sign_of(const Event& event) {
  if (const auto* felt = std::get_if<Felt>(&event)) return felt->as;
  if (const auto* dot = std::get_if<Dot>(&event)) return dot->specks;
  if (const auto* trouble = std::get_if<Trouble>(&event)) return trouble->what;
  if (std::holds_alternative<Gathered>(event)) return OffSlab{};
  return std::nullopt;
}

bool parts_runs(const Event& event) {
  return std::holds_alternative<StageBegan>(event) || sign_of(event).has_value();
}

}

std::vector<TimelineItem> timeline(const Batch& batch) {
  std::vector<TimelineItem> out;
  std::optional<Run> run; // its place is the last of `out`
  for (const Entry& e : batch.entries) {
    if (e.withdrawn) continue;
    if (parts_runs(e.event)) run.reset();
    if (const auto* added = std::get_if<Added>(&e.event)) {
      const bool goes_on = run && run->of == added->of;
      if (!goes_on) run = Run{added->of};
      run->add(*added);
      if (goes_on) out.pop_back();
      out.push_back({e.ref, e.clock, e.at, e.flow, Put{}, run->words(batch)});
    } else if (const auto sign = sign_of(e.event)) {
      out.push_back({e.ref, e.clock, e.at, e.flow, *sign, std::visit(Words{}, *sign)});
    }
  }
  return out;
}

}
