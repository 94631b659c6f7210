#include "session/event.hpp"

#include "session/lists.hpp"

namespace session {

Event::Event() = default;
Event::Event(const Event&) = default;
Event::Event(Event&&) noexcept = default;
Event& Event::operator=(const Event&) = default;
Event& Event::operator=(Event&&) noexcept = default;
Event::~Event() = default;

bool operator==(const Event& a, const Event& b) {
  return static_cast<const EventKinds&>(a) == static_cast<const EventKinds&>(b);
}

std::string_view name_of(Feel v) { return lists::feels[v].name; }
std::string_view name_of(By v) { return lists::tools[v].name; }
std::string_view name_of(Stage v) { return lists::stages[v].name; }
std::string_view name_of(MakingStep v) { return lists::making_steps[v].name; }
std::string_view name_of(Specks v) { return lists::specks[v].name; }
std::string_view name_of(TroubleKind v) { return lists::troubles[v].name; }
std::string_view name_of(PhotoOf v) { return lists::photos_of[v].name; }
std::string_view name_of(Place v) { return lists::places[v].name; }
std::string_view name_of(State v) { return lists::states[v].name; }
std::string_view name_of(Became v) { return lists::verdicts[v].name; }

namespace {
template <class E, class Row>
std::optional<E> named(const words::EnumTable<E, Row>& list, std::string_view name) {
  return list.find(&Row::name, name);
}
}

bool is_nameless(const Opened& opened) {
  return opened.name.find_first_not_of(' ') == std::string::npos;
}

std::optional<Feel> feel_named(std::string_view s) { return named(lists::feels, s); }
std::optional<By> by_named(std::string_view s) { return named(lists::tools, s); }
std::optional<Stage> stage_named(std::string_view s) { return named(lists::stages, s); }
std::optional<MakingStep> making_step_named(std::string_view s) {
  return named(lists::making_steps, s);
}
std::optional<Specks> specks_named(std::string_view s) { return named(lists::specks, s); }
std::optional<TroubleKind> trouble_named(std::string_view s) { return named(lists::troubles, s); }
std::optional<PhotoOf> photo_of_named(std::string_view s) { return named(lists::photos_of, s); }
std::optional<Place> place_named(std::string_view s) { return named(lists::places, s); }
std::optional<State> state_named(std::string_view s) { return named(lists::states, s); }
std::optional<Became> became_named(std::string_view s) { return named(lists::verdicts, s); }

}
