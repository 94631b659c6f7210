#include "session/making_json.hpp"

#include "session/card_json.hpp"

namespace session {

namespace {

bool is_done_to_jar(MakingStep step) {
  return step == MakingStep::thinned || step == MakingStep::thickened || step == MakingStep::dried;
}

Making::Start read_start(Fields& f) {
  Making::Start start;
  start.by = f.text_or("by", "");
  start.parts = read_parts(f);
  start.spoons = f.number_or("spoons", 0, most::spoons, 0);
  if (start.spoons > 0) start.with = f.text("with");
  return start;
}

void read_amounts(Making& m, Fields& f) {
  switch (m.step) {
  case MakingStep::gum_in: m.start = read_start(f); return;
  case MakingStep::preserve:
  case MakingStep::dose:
    m.drops = f.number_or("drops", 0, most::drops, 0);
    m.g = f.number_or("g", 0, most::gross_g, 0);
    return;
  case MakingStep::thinned:
  case MakingStep::thickened:
  case MakingStep::dried:
    m.g = f.number("g", 0, most::gross_g);
    m.had_g = f.number("had_g", 0, most::gross_g);
    return;
  case MakingStep::steep:
  case MakingStep::strain:
  case MakingStep::sweeten:
  case MakingStep::into_jar:
  case MakingStep::given_up: return;
  }
}

}

Making read_making(Fields& f) {
  Making m{f.word("step", making_step_named), f.text("of")};
  if (f.unknown_word()) return m; // what a step to come says with it, nobody knows here
  read_amounts(m, f);
  for (const Value* object : f.objects_or_none("takes")) {
    Fields inner(*object);
    m.takes.push_back({inner.text("of"), inner.number("g", 0, most::gross_g)});
    f.take_fault_of(inner);
  }
  return m;
}

void write_making(const Making& m, Json& j) {
  j["step"] = name_of(m.step);
  j["of"] = m.of;
  if (!m.start->by.empty()) j["by"] = m.start->by;
  if (m.step == MakingStep::gum_in) write_parts(m.start->parts, j);
  const auto amount = [&](const char* name, double value) {
    if (value > 0) j[name] = number(value);
  };
  amount("spoons", m.start->spoons);
  if (m.start->spoons > 0) j["with"] = m.start->with;
  amount("drops", m.drops);
  const bool of_jar = is_done_to_jar(m.step);
  if (of_jar || m.g > 0) j["g"] = number(m.g);
  if (of_jar) j["had_g"] = number(m.had_g);
  for (const Making::Take& take : m.takes) {
    Json one = {{"of", take.of}, {"g", number(take.g)}};
    j["takes"].push_back(std::move(one));
  }
}

}
