#include "bench/hands.hpp"

namespace hands {

Hands::Hands(Display display) : b(start("c41e08d5", "a83f", display, now())) { give(Loaded{}); }
Hands::Hands(const Hands&) = default;
Hands::Hands(Hands&&) noexcept = default;
Hands& Hands::operator=(const Hands&) = default;
Hands& Hands::operator=(Hands&&) noexcept = default;
Hands::~Hands() = default;

Now Hands::now() {
  return {wall, run, 60, [this] { return ++ids; }};
}

void Hands::give(Input input) {
  const Effects effects = step(b, std::move(input), now());
  lines.insert(lines.end(), effects.append.begin(), effects.append.end());
  wake = effects.wake_at;
  cues.insert(cues.end(), effects.cues.begin(), effects.cues.end());
}

void Hands::pass_ms(std::int64_t ms) {
  wall += ms;
  run += ms;
}

void Hands::wait(double seconds) {
  pass_ms(static_cast<std::int64_t>(seconds * 1000));
  give(Tick{});
}

void Hands::open_after(const Hands& before, double after_s, Screen on) {
  wall = before.wall + static_cast<std::int64_t>(after_s * 1000);
  session::Log log = before.b.logs.front();
  log.session = "0ther";
  b.screen = on;
  give(Loaded{{log}, {}, {}});
}

Rect Hands::box(const std::string& name) {
  const auto id = pad_named(name);
  REQUIRE_MESSAGE(id, name);
  const Layout l = layout(b);
  const Pad* pad = pad_of(l, *id);
  REQUIRE_MESSAGE(pad, name);
  return pad->box;
}

bool Hands::shows(const std::string& name) {
  const Layout l = layout(b);
  return pad_of(l, *pad_named(name)) != nullptr;
}

void Hands::point(Pointer::Phase phase, Point at, int finger) {
  give(Pointer{phase, at, run, ++poll, finger});
}

void Hands::down(const std::string& name) { point(Pointer::down, box(name).centre()); }

void Hands::tap(const std::string& name) {
  const Point at = box(name).centre();
  point(Pointer::down, at);
  pass_ms(90);
  point(Pointer::up, at);
  pass_ms(210);
}

void Hands::type(const std::string& digits) {
  for (const char c : digits) tap(c == '.' ? "point" : std::string("digit ") + c);
  tap("enter");
}

void Hands::choose(const std::string& pigment) {
  if (!shows("pigment " + pigment) && shows("another_pigment")) tap("another_pigment");
  b.plan.search = pigment;
  tap("pigment " + pigment);
  if (shows("leave")) tap("leave");
  b.plan.search.clear();
}

void Hands::begin() {
  choose("pb28");
  tap("weigh");
  type("12");
  tap("begin");
}

void Hands::gather() {
  begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) tap(pad);
  type("9");
  for (const char* pad : {"pass", "pass", "pass", "gather"}) tap(pad);
}

SlabView Hands::slab() { return std::get<SlabView>(view(b, now()).screen); }

const std::vector<Size>& displays() {
  static const std::vector<Size> sizes{{218, 136}, {237, 148}, {280, 175}, {136, 218}, {148, 237}};
  return sizes;
}

}
