#include "bench/keys.hpp"

#include "bench/materials.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "bench/touch.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

struct Arrow {
  std::string_view key;
  int right, down;
};
constexpr std::array<Arrow, 4> arrows{
    {{"Left", -1, 0}, {"Right", 1, 0}, {"Up", 0, -1}, {"Down", 0, 1}}};

bool bounces(const Keys& keys, const Key& key) {
  return keys.last_up && keys.last_up->name == key.name && keys.last_up->poll != key.poll &&
         key.ms - keys.last_up->ms < bounce_ms;
}

// A digit goes to the number pad while it is open.
std::optional<PadId> typed_into_number(const Bench& bench, const std::string& key) {
  if (!bench.number) return std::nullopt;
  if (key.size() == 1 && key[0] >= '0' && key[0] <= '9') return PadId{NumberPad::digit, key};
  if (key == "." || key == ",") return PadId{NumberPad::point, ""};
  if (key == "Backspace") return PadId{NumberPad::erase, ""};
  if (key == "Enter") return PadId{NumberPad::enter, ""};
  return std::nullopt;
}

std::optional<PadId> by_ring(Bench& bench, const std::string& key) {
  const Layout pads = layout(bench);
  for (const Arrow& arrow : arrows)
    if (arrow.key == key) {
      bench.keys.focus = beside(pads, bench.keys.focus, arrow.right, arrow.down);
      return std::nullopt;
    }
  if (key == "Escape" && pad_of(pads, {SharedPad::leave, ""})) return PadId{SharedPad::leave, ""};
  const bool pressed = key == "Enter" || key == "Space";
  return pressed && bench.keys.focus && pad_of(pads, *bench.keys.focus) ? bench.keys.focus
                                                                        : std::nullopt;
}

// One key for a pad, and one pad for a key.
void bind(Bench& bench, const std::string& key) {
  std::erase_if(bench.tablet.keys, [&](const auto& k) { return k.second == *bench.keys.binding; });
  bench.tablet.keys[key] = *bench.keys.binding;
  bench.keys.binding.reset();
}

}

std::optional<PadId> meant(const Bench& bench, const PadId& bound) {
  PadId pad = bound;
  if (bound.kind == SlabPad::add) {
    const auto materials = materials_of(bench);
    const auto first = std::find_if(materials.begin(), materials.end(), [&](const auto& card) {
      return session::name_of(card.kind()) == bound.arg;
    });
    if (first == materials.end()) return std::nullopt;
    pad.arg = first->id;
  }
  return pad_of(layout(bench), pad) ? std::optional(pad) : std::nullopt;
}

std::optional<PadId> beside(const Layout& pads, const std::optional<PadId>& from, int right,
                            int down) {
  if (pads.pads.empty()) return std::nullopt;
  const Pad* here = from ? pad_of(pads, *from) : nullptr;
  if (!here) return pads.pads.front().id;
  const Point at = here->box.centre();
  const Pad* next = here;
  double nearest = HUGE_VAL;
  for (const Pad& pad : pads.pads) {
    const double dx = pad.box.centre().x - at.x, dy = pad.box.centre().y - at.y;
    const double along = dx * right + dy * down,
                 across = std::abs(dx * down) + std::abs(dy * right);
    if (along < 1 || along + 2 * across >= nearest) continue;
    nearest = along + 2 * across;
    next = &pad;
  }
  return next->id;
}

KeyMeans key_means(Bench& bench, const Key& key) {
  if (!key.down) {
    bench.keys.last_up = {key.name, key.ms, key.poll};
    bench.keys.flash.reset();
    return {};
  }
  if (bounces(bench.keys, key)) return {{}, NotCounted::bounced, false};
  if (bench.keys.binding) {
    bind(bench, key.name);
    return {{}, {}, true};
  }
  if (bench.locked) return {};
  std::optional<PadId> tap = typed_into_number(bench, key.name);
  const auto bound = bench.tablet.keys.find(key.name);
  if (!tap && bound != bench.tablet.keys.end()) tap = meant(bench, bound->second);
  if (!tap && bound == bench.tablet.keys.end()) tap = by_ring(bench, key.name);
  bench.keys.flash = tap;
  return {tap, std::nullopt, false};
}

}
